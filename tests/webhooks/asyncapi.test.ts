import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { Ajv } from 'ajv'
import * as formats from 'ajv-formats'
import { describe, expect, test } from 'vitest'
import { asyncapiDocument } from '../../src/webhooks/asyncapi.ts'
import { eventData } from '../../src/webhooks/event.ts'

interface Document {
  readonly channels: { readonly webhook: { readonly messages: object } }
  readonly operations: object
  readonly components: { readonly messages: object; readonly schemas: Readonly<Record<string, { readonly properties?: Readonly<Record<string, object>>; readonly required?: readonly string[] }>> }
}

const committed = readFileSync(join(import.meta.dirname, '../../openapi/asyncapi.json'), 'utf8')
const document = JSON.parse(committed) as Document
/** The schema that the AsyncAPI Initiative publishes for 3.0.0, from its npm package. */
const published = createRequire(import.meta.url)('@asyncapi/specs/schemas/3.0.0-without-$id.json') as object
const ajv = new Ajv({ strict: false, allErrors: true })
formats.default.default(ajv)
const isAsyncapi = ajv.compile(published)

describe('the AsyncAPI document', () => {
  test('is what the code describes; else run npm run generate', () => {
    expect(committed).toBe(`${JSON.stringify(asyncapiDocument('1.0.0'), null, 2)}\n`)
  })

  test('is valid by the published schema of AsyncAPI 3.0.0, which refuses a broken one', () => {
    expect(isAsyncapi(document) ? [] : isAsyncapi.errors).toEqual([])
    expect(isAsyncapi({ ...document, operations: { x: { action: 'shout', channel: { $ref: '#/channels/webhook' } } } })).toBe(false)
    expect(isAsyncapi({ ...document, surplus: 1 })).toBe(false)
  })

  test('has a message, an operation and a schema for each event', () => {
    const names = Object.keys(eventData)
    for (const part of [document.channels.webhook.messages, document.operations, document.components.messages]) expect(Object.keys(part)).toEqual(names)
    for (const name of names) {
      const envelope = document.components.schemas[name]
      expect(envelope?.required).toEqual(['specversion', 'id', 'source', 'type', 'subject', 'time', 'datacontenttype', 'sequence', 'data'])
      expect(envelope?.properties).toHaveProperty('id')
    }
  })

  test('leads every reference somewhere', () => {
    const references = [...committed.matchAll(/"\$ref": "#([^"]+)"/g)].map(([, path = '']) => path)
    expect(references.length).toBeGreaterThan(30)
    const leads = (path: string) => path.split('/').slice(1).reduce<unknown>((node, key) => (node as Record<string, unknown> | undefined)?.[key], document)
    expect(references.filter((path) => leads(path) === undefined)).toEqual([])
  })
})
