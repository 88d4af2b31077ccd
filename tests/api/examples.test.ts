import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { getHttpOperationsFromSpec } from '@stoplight/prism-http'
import { createServer } from '@stoplight/prism-http-server'
import type { OpenAPIV3_1 } from 'openapi-types'
import supertest from 'supertest'
import { afterAll, describe, expect, test } from 'vitest'
import { jurisdictionService } from './jurisdiction.ts'
import { servedDocument } from './served-document.ts'

/**
 * Every operation is asked once, by the example that the document gives, through a proxy that holds both sides to the document:
 * a request or an answer that is not as described comes back as a problem of the proxy, and is named in its header.
 */
const { app, tokenFor } = await jurisdictionService()
const document = await servedDocument(app)
const described = new Map(Object.entries(document.paths ?? {}).flatMap(([path, methods]) =>
  (['get', 'post', 'put', 'delete'] as const).flatMap((method) => {
    const operation = methods?.[method]
    return operation?.operationId === undefined ? [] : [[operation.operationId, { path, method, operation }] as const]
  }),
))

const folder = await mkdtemp(join(tmpdir(), 'wythe-contract-'))
await app.listen({ host: '127.0.0.1', port: 0 })
const upstream = new URL(`http://127.0.0.1:${(app.server.address() as AddressInfo).port}`)
await writeFile(join(folder, 'openapi.json'), JSON.stringify({ ...document, servers: [{ url: upstream.href }] }))
const silent = { trace: nothing, debug: nothing, info: nothing, success: nothing, warn: nothing, error: nothing, fatal: nothing, child: () => silent } as never
const proxy = createServer(await getHttpOperationsFromSpec(join(folder, 'openapi.json')), {
  cors: false,
  components: { logger: silent },
  config: { isProxy: true, upstream, checkSecurity: true, validateRequest: true, validateResponse: true, errors: true, mock: { dynamic: false }, upstreamProxy: undefined },
})
const http = supertest(await proxy.listen(0, '127.0.0.1'))
afterAll(async () => {
  await proxy.close()
  await rm(folder, { recursive: true, force: true })
})

const token = await tokenFor({ kind: 'record' }, { kind: 'administer' }, { kind: 'amend', jurisdiction: 'us-xa-101' })
const { opening } = exampleOf('evaluateOpening') as { opening: { reference: string } }
const project = (exampleOf('createProject') as { id: string }).id
const here = { project, opening: opening.reference }
/** What one step made, for those that follow. */
const made: Record<string, string> = {}

interface Step {
  readonly operation: string
  readonly path?: () => Readonly<Record<string, string>>
  readonly query?: Readonly<Record<string, string>>
  readonly ifMatch?: () => string
  readonly body?: object
  readonly status?: number
  readonly after?: (answer: { readonly body: unknown; readonly headers: Readonly<Record<string, string>> }) => void
}

const draft = () => ({ draft: made['draft'] ?? '' })
const keepsDraft: Step['after'] = ({ body, headers }) => { made['draft'] = (body as { id: string }).id; made['etag'] = headers['etag'] ?? '' }

const webhook = () => ({ webhook: made['webhook'] ?? '' })

const steps: readonly Step[] = [
  { operation: 'live' }, { operation: 'ready' },
  { operation: 'evaluateOpening' },
  { operation: 'evaluateBatch' },
  { operation: 'evaluateOpening', body: { ...(exampleOf('evaluateOpening') as object), keep: true }, after: ({ body }) => { made['evaluation'] = (body as { id: string }).id } },
  { operation: 'readEvaluation', path: () => ({ evaluation: made['evaluation'] ?? '' }) }, { operation: 'reproduceEvaluation', path: () => ({ evaluation: made['evaluation'] ?? '' }) },
  { operation: 'reportOpening' }, { operation: 'readEvaluationReport', path: () => ({ evaluation: made['evaluation'] ?? '' }) },
  { operation: 'drawOpening' }, { operation: 'drawEvaluation', path: () => ({ evaluation: made['evaluation'] ?? '', kind: 'section' }) },
  { operation: 'listRules', query: { first: '3' } }, { operation: 'readRule', path: () => ({ rule: 'lintel.bearing-length' }) },
  { operation: 'listJurisdictions' }, { operation: 'readJurisdiction', path: () => ({ jurisdiction: 'us-xa-101' }) },
  { operation: 'listAmendments' }, { operation: 'readAmendment', path: () => ({ jurisdiction: 'us-xa', instrument: 'rule-210-45' }) },
  { operation: 'listPublications' }, { operation: 'readPublication', path: () => ({ publication: 'irc' }) },
  { operation: 'listReleases' }, { operation: 'listFacts' }, { operation: 'listHoldPoints' },
  { operation: 'readForm', query: { edition: 'irc-2021', kind: 'window', holdPoint: 'lintelSet' } },
  { operation: 'listQuantities' }, { operation: 'readQuantity', path: () => ({ quantity: 'lintel.length' }) },
  { operation: 'computeQuantities' }, { operation: 'takeOff' }, { operation: 'planCuts' }, { operation: 'analyzeDrivingRain' },
  { operation: 'createProject', status: 201 },
  { operation: 'readProject', path: () => ({ project }), after: ({ headers }) => { made['project'] = headers['etag'] ?? '' } },
  { operation: 'changeProject', path: () => ({ project }), ifMatch: () => made['project'] ?? '' },
  { operation: 'listProjects' },
  { operation: 'postEntries', path: () => ({ project }) }, { operation: 'importSchedule', path: () => ({ project }) },
  { operation: 'postFormAnswers', path: () => here }, { operation: 'readOpeningForm', path: () => here, query: { holdPoint: 'lintelSet' } },
  { operation: 'readOpeningRecord', path: () => here }, { operation: 'readOpeningReport', path: () => here }, { operation: 'evaluateRecordedOpening', path: () => here, query: { basis: 'asBuilt' } },
  { operation: 'listOpenings', path: () => ({ project }) }, { operation: 'readJournal', path: () => ({ project }) },
  { operation: 'readBuilding', path: () => ({ project }) }, { operation: 'readBuildingTable', path: () => ({ project, table: 'openings' }) }, { operation: 'readBuildingReport', path: () => ({ project }) },
  ...['sarif', 'oscal', 'bcf'].map((format) => ({ operation: 'exportProject', path: () => ({ project, format }) })),
  { operation: 'createAmendmentDraft', status: 201, after: keepsDraft },
  { operation: 'readAmendmentDraft', path: draft, after: keepsDraft },
  { operation: 'changeAmendmentDraft', path: draft, ifMatch: () => made['etag'] ?? '', after: keepsDraft },
  { operation: 'previewAmendmentDraft', path: draft }, { operation: 'listAmendmentDrafts' },
  { operation: 'adoptAmendmentDraft', path: draft, ifMatch: () => made['etag'] ?? '', status: 201 },
  { operation: 'createAmendmentDraft', status: 201, body: { ...(exampleOf('createAmendmentDraft') as object), amendment: 'us-xa-101/ord-2026-41' }, after: keepsDraft },
  { operation: 'deleteAmendmentDraft', path: draft, ifMatch: () => made['etag'] ?? '' },
  { operation: 'createWebhook', status: 201, after: ({ body }) => { made['webhook'] = (body as { webhook: { webhook: string } }).webhook.webhook } },
  { operation: 'listWebhooks' }, { operation: 'readWebhook', path: webhook }, { operation: 'pingWebhook', path: webhook, status: 202 },
  { operation: 'listDeliveries', path: webhook, after: ({ body }) => { made['delivery'] = (body as { items: readonly { delivery: string }[] }).items[0]?.delivery ?? '' } },
  { operation: 'replayDelivery', path: () => ({ ...webhook(), delivery: made['delivery'] ?? '' }), status: 202 },
  { operation: 'rotateWebhookSecret', path: webhook, status: 201 }, { operation: 'enableWebhook', path: webhook }, { operation: 'deleteWebhook', path: webhook },
  { operation: 'createToken', status: 201, after: ({ body }) => { made['token'] = (body as { token: { id: string } }).token.id } },
  { operation: 'listTokens' }, { operation: 'revokeToken', path: () => ({ token: made['token'] ?? '' }) },
]

describe('each operation by its example, through a proxy that holds both sides to the document', () => {
  test.each(steps.map((step, index) => [`${index + 1}. ${step.operation}`, step] as const))('%s', async (_, step) => {
    const response = await ask(step)
    expect(response.headers['sl-violations']).toBeUndefined()
    expect(response.status, response.text).toBe(step.status ?? 200)
    expect(response.headers['content-type']).toMatch(/; ?charset=utf-8|^application\/(zip|sarif\+json)/)
    step.after?.(response)
  })

  test('leaves none out', () => {
    expect([...described.keys()].filter((name) => !steps.some(({ operation }) => operation === name))).toEqual([])
  })
})

describe('the proxy is awake', () => {
  test('a request that is not as described is named', async () => {
    const response = await http.post('/v1/cut-lists').send({ pieces: 'many', stockLengths: ['10 ft'] })
    expect([response.status, response.text]).toEqual([422, expect.stringContaining('pieces')])
  })

  test('an answer that is not as described is not let through', async () => {
    const { path } = described.get('live') ?? { path: '' }
    const strict = JSON.parse(JSON.stringify(document)) as OpenAPIV3_1.Document
    strict.servers = [{ url: upstream.href }]
    const schema = strict.components?.schemas?.['HealthStatus'] as { required: string[] }
    schema.required = [...schema.required, 'uptime']
    await writeFile(join(folder, 'strict.json'), JSON.stringify(strict))
    const other = createServer(await getHttpOperationsFromSpec(join(folder, 'strict.json')), { cors: false, components: { logger: silent }, config: { isProxy: true, upstream, checkSecurity: false, validateRequest: true, validateResponse: true, errors: true, mock: { dynamic: false } } } as never)
    const response = await supertest(await other.listen(0, '127.0.0.1')).get(path)
    await other.close()
    expect([response.status, response.text]).toEqual([500, expect.stringContaining('uptime')])
  })
})

function ask({ operation: name, path, query = {}, ifMatch, body }: Step) {
  const found = described.get(name)
  if (!found) throw new Error(`the document has no ${name}`)
  const filled = Object.entries(path?.() ?? {}).reduce((address, [key, value]) => address.replace(`{${key}}`, encodeURIComponent(value)), found.path)
  const request = http[found.method](filled).query(query).buffer(true)
  if (found.operation.security?.some((scheme) => 'token' in scheme) ?? false) void request.set('authorization', `Bearer ${token}`)
  if (ifMatch) void request.set('if-match', ifMatch())
  const sent = body ?? exampleOf(name)
  return sent === undefined ? request : request.send(sent)
}

function exampleOf(name: string): object | undefined {
  const body = described.get(name)?.operation.requestBody as OpenAPIV3_1.RequestBodyObject | undefined
  return body?.content['application/json']?.example as object | undefined
}

/** The proxy tells what it finds in its answers. */
function nothing(): undefined {
  return undefined
}
