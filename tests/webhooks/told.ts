import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Ajv } from 'ajv'
import * as formats from 'ajv-formats'
import { Webhook } from 'standardwebhooks'
import { expect } from 'vitest'
import { isSignedBy } from './public-key.ts'
import type { Arrived } from './receiver.ts'

const read = (path: string) => JSON.parse(readFileSync(join(import.meta.dirname, path), 'utf8')) as object
const ajv = new Ajv({ strict: false, allErrors: true })
formats.default.default(ajv)
/** As the CloudEvents specification publishes it. */
const isCloudEvent = ajv.compile(read('../fixtures/published-schemas/cloudevents-1.0.json'))
ajv.addSchema(read('../../openapi/asyncapi.json'), 'events')

export interface Told {
  readonly id: string
  readonly type: string
  readonly source: string
  readonly subject: string
  readonly sequence: string
  readonly data: Readonly<Record<string, unknown>>
}

/** Takes what arrived as a receiver of another make does: by its signature, checked by secret or public key, as a CloudEvent, and by the published schema of its type. */
export function takenIn({ headers, text }: Arrived, key: string): Told {
  const told = verified(text, headers as Record<string, string>, key) as Told
  expect(headers['content-type']).toBe('application/cloudevents+json; charset=utf-8')
  expect(isCloudEvent(told) ? [] : isCloudEvent.errors).toEqual([])
  const isPublished = ajv.getSchema(`events#/components/schemas/${told.type.replace('wythe.', '')}`)
  expect(isPublished?.(told) === true ? [] : isPublished?.errors).toEqual([])
  expect(headers['webhook-id']).toBe(told.id)
  return told
}

/** Throws, naming the signature, when none fits. The library knows shared secrets only. */
function verified(text: string, headers: Readonly<Record<string, string>>, key: string): unknown {
  if (!key.startsWith('whpk_')) return new Webhook(key).verify(text, headers)
  if (!isSignedBy(key, headers, text)) throw new Error('No matching signature found')
  return JSON.parse(text)
}
