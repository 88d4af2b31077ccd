import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { buildSchema, findBreakingChanges } from 'graphql'
import type { OpenAPIV3_1 } from 'openapi-types'
import { describe, expect, test } from 'vitest'
import { breakingChanges } from './openapi-changes.ts'

/**
 * What callers were promised stays. A change that is meant: say in its commit who is broken and how they mend it, and accept it with
 * `cp openapi/* tests/fixtures/contract/`. An addition needs nothing, and becomes a promise with the next copy.
 */
const promised = (name: string) => readFileSync(join(import.meta.dirname, '../fixtures/contract', name), 'utf8')
const committed = (name: string) => readFileSync(join(import.meta.dirname, '../../openapi', name), 'utf8')
const openapi = (text: string) => JSON.parse(text) as OpenAPIV3_1.Document

describe('nothing that was promised is broken', () => {
  test('over GraphQL', () => {
    expect(findBreakingChanges(buildSchema(promised('schema.graphql')), buildSchema(committed('schema.graphql'))).map(({ description }) => description)).toEqual([])
  })

  test('over REST', () => {
    expect(breakingChanges(openapi(promised('openapi.json')), openapi(committed('openapi.json')))).toEqual([])
  })
})

describe('a break is seen', () => {
  const sdl = committed('schema.graphql')

  test('over GraphQL: a field that is gone', () => {
    const without = sdl.replace(/\n {2}verdict: [^\n]+/, '')
    expect(without).not.toBe(sdl)
    expect(findBreakingChanges(buildSchema(sdl), buildSchema(without))).not.toEqual([])
  })

  test.each([
    ['an operation that is gone', (at) => { delete at('paths')['/v1/facts'] }, ['get /v1/facts is gone']],
    ['a parameter that is gone', (at) => { const get = at('paths', '/v1/rules', 'get'); get['parameters'] = (get['parameters'] as Named[]).filter(({ name }) => name !== 'part') }, ['get /v1/rules: query part is gone']],
    ['a parameter that is now required', (at) => { (at('paths', '/v1/rules', 'get')['parameters'] as Named[]).filter(({ name }) => name === 'part').forEach((one) => Object.assign(one, { required: true })) }, ['get /v1/rules: query part is required']],
    ['a member that is now required', (at) => { (at('components', 'schemas', 'ProjectRequest')['required'] as string[]).push('edition') }, ['ProjectRequest/edition is required of what is sent']],
    ['an answer that is gone', (at) => { delete at('components', 'schemas', 'Project', 'properties')['title'] }, ['Project/title is gone']],
    ['a choice that is gone', (at) => { (at('components', 'schemas', 'ProblemCode')['enum'] as string[]).shift() }, ['ProblemCode: "invalidInput" is gone']],
  ] as const satisfies readonly (readonly [string, (at: Reach) => void, readonly string[]])[])('over REST: %s', (_, change, expected) => {
    const document = openapi(committed('openapi.json'))
    change(reachInto(document))
    expect(breakingChanges(openapi(committed('openapi.json')), document)).toEqual(expected)
  })

  test('an addition is none', () => {
    const document = openapi(committed('openapi.json'))
    const at = reachInto(document)
    at('paths')['/v1/new'] = { get: { responses: {} } }
    at('components', 'schemas', 'Project', 'properties')['more'] = { type: 'string' };
    (at('paths', '/v1/rules', 'get')['parameters'] as object[]).push({ in: 'query', name: 'more' })
    expect(breakingChanges(openapi(committed('openapi.json')), document)).toEqual([])
  })
})

type Node = Record<string, unknown>
type Reach = (...keys: readonly string[]) => Node
interface Named { readonly name: string }

function reachInto(document: object): Reach {
  return (...keys) => keys.reduce<Node>((node, key) => node[key] as Node, document as Node)
}
