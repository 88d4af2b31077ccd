import { createConfig, lintFromString } from '@redocly/openapi-core'
import spectral from '@stoplight/spectral-core'
import owasp from '@stoplight/spectral-owasp-ruleset'
import parsers from '@stoplight/spectral-parsers'
import rulesets from '@stoplight/spectral-rulesets'
import { afterAll, describe, expect, test } from 'vitest'
import { client } from './client.ts'
import { waivers, type Waiver } from './contract-waivers.ts'
import { schemasReached } from './openapi-changes.ts'
import { servedDocument } from './served-document.ts'

interface Complaint {
  readonly linter: Waiver['linter']
  readonly rule: string
  readonly at: string
  readonly message: string
}

const { app } = await client()
const document = await servedDocument(app)
const text = JSON.stringify(document)
const sentSchemas = schemasReached(document, 'parameters', 'requestBody')
const used = new Set<Waiver>()

describe('the contract has nothing against it that is not waived with a reason', () => {
  test('by the recommended rules of Redocly', async () => {
    expect(unwaived(await byRedocly(text))).toEqual([])
  }, 60_000)

  test('by the rules of Spectral for OpenAPI and for the OWASP API Security Top 10 of 2023', async () => {
    expect(unwaived(await bySpectral(text))).toEqual([])
  }, 120_000)

  afterAll(() => {
    // Last, since the linters have to have spoken.
    expect(waivers.filter((waiver) => !used.has(waiver)).map(({ rule, at }) => `${rule} at ${String(at)}`)).toEqual([])
  })
})

describe('the linters are awake', () => {
  const broken = JSON.parse(text) as { paths: Record<string, Record<string, { operationId?: string; responses: object }>>; components: { schemas: Record<string, unknown> } }
  broken.paths['/v1/rules'] = { get: { operationId: 'listFacts', responses: { 200: { description: 'x', content: { 'application/json': { schema: { $ref: '#/components/schemas/Nowhere' } } } } } } }
  const request = broken.components.schemas['ProjectRequest'] as { properties: Record<string, object> }
  request.properties['title'] = { type: 'string' }
  const brokenText = JSON.stringify(broken)

  test('Redocly sees a reference to nowhere and a name used twice', async () => {
    expect((await byRedocly(brokenText)).map(({ rule }) => rule)).toEqual(expect.arrayContaining(['no-unresolved-refs', 'operation-operationId-unique']))
  }, 60_000)

  test('no waiver reaches a text without a bound in what is sent', () => {
    const complaint: Complaint = { linter: 'spectral', rule: 'owasp:api4:2023-string-limit', at: '/components/schemas/ProjectRequest/properties/title', message: '' }
    expect(unwaived([complaint])).toEqual([complaint])
    expect(unwaived([{ ...complaint, at: '/components/schemas/Project/properties/title' }])).toEqual([])
  })
})

function unwaived(complaints: readonly Complaint[]): readonly Complaint[] {
  return complaints.filter((complaint) => {
    const waiver = waivers.find(({ linter, rule, at }) => linter === complaint.linter && rule === complaint.rule && at.test(complaint.at))
    const aboutBounds = /-(string|array)-limit$/.test(complaint.rule)
    if (waiver === undefined || (aboutBounds && sentSchemas.has(/^\/components\/schemas\/([^/]+)/.exec(complaint.at)?.[1] ?? '') && !sentUnbounded.has(complaint.at))) return true
    used.add(waiver)
    return false
  })
}

async function byRedocly(source: string): Promise<readonly Complaint[]> {
  const problems = await lintFromString({ source, absoluteRef: '/openapi.json', config: await createConfig({ extends: ['recommended'] }) })
  return problems.map(({ ruleId, message, location }) => ({ linter: 'redocly', rule: ruleId, at: (location[0] as { pointer?: string }).pointer?.replace(/^#/, '') ?? '', message }))
}

async function bySpectral(source: string): Promise<readonly Complaint[]> {
  const linter = new spectral.Spectral()
  linter.setRuleset({ extends: [rulesets.oas, owasp] } as never)
  const problems = await linter.run(new spectral.Document(source, parsers.Json, '/openapi.json'))
  return problems.map(({ code, message, path }) => ({ linter: 'spectral', rule: String(code), at: `/${path.map((key) => String(key).replaceAll('/', '~1')).join('/')}`, message }))
}

/** Names of questions are those of a form that the service made; any other is refused by itself, and all together are bounded by the body. */
const sentUnbounded: ReadonlySet<string> = new Set(['/components/schemas/FormAnswers/propertyNames'])
