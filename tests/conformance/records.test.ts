import { buildClientSchema, getIntrospectionQuery, type IntrospectionQuery } from 'graphql'
import { describe, expect, test } from 'vitest'
import { operations } from '../../src/operations/index.ts'
import { jurisdictionService } from '../api/jurisdiction.ts'
import { withoutAbsent } from './absent.ts'
import { asPage, routeOf } from './doors.ts'
import { fullQuery } from './full-query.ts'
import { servedDocument } from '../api/served-document.ts'

type Service = Awaited<ReturnType<typeof jurisdictionService>>
type Input = Readonly<Record<string, unknown>>
type Step = readonly [operation: keyof typeof operations, field: string, input: Input | ((before: readonly Answered[]) => Input)]

interface Answered {
  readonly value?: unknown
  readonly code?: string
  readonly errors?: unknown
}

const id = (last: number) => `0199a000-0000-7000-8000-${String(last).padStart(12, '0')}`
const project = id(1)
const window = { lengthUnit: 'in', opening: { kind: 'window', width: 48, height: 60 }, head: { support: { kind: 'looseSteelAngle', bearing: 3 } } }
const about = (last: number) => ({ id: id(last), opening: 'w-1', at: '2026-03-02T09:00:00Z', by: 'inspector' })
const member = (value: unknown, name: string) => (value as Readonly<Record<string, unknown>>)[name]

/** A story in which each step builds on those before. */
const story: readonly Step[] = [
  ['createProject', 'createProject', { id: project, title: '12 Quarry Walk', jurisdiction: 'us-xa-101', asOf: '2026-03-01' }],
  ['createProject', 'createProject', { id: project, title: 'Another', jurisdiction: 'us-xa-101', asOf: '2026-03-01' }],
  ['createProject', 'createProject', { id: 'no-uuid', title: '', jurisdiction: 'us-xa-101', asOf: '2026-02-30' }],
  ['readProject', 'project', { project }],
  ['readProject', 'project', { project: id(99) }],
  ['listProjects', 'projects', { first: 1 }],
  ['changeProject', 'changeProject', (before) => ({ project, version: member(before[0]?.value, 'version'), title: 'Quarry Walk', jurisdiction: 'us-xa-101', asOf: '2026-03-01' })],
  ['changeProject', 'changeProject', { project, version: 'sha256:stale', title: 'Quarry Walk', asOf: '2026-03-01', edition: 'irc-2021' }],
  ['postEntries', 'postEntries', { project, entries: [{ ...about(2), design: { description: window } }, { ...about(3), observation: { fact: 'head.support.bearing', member: 'left', value: '8 in', method: 'examine', holdPoint: 'lintelSet' } }] }],
  ['postEntries', 'postEntries', { project, entries: [{ ...about(3), observation: { fact: 'sill.slope', value: '15 deg', method: 'examine', holdPoint: 'jambRise' } }, { ...about(4), signOff: { holdPoint: 'lintelSet' } }, { ...about(5), signOff: { holdPoint: 'lintelSet', reason: 'seen' } }] }],
  ['readOpeningRecord', 'openingRecord', { project, opening: 'w-1' }],
  ['readOpeningRecord', 'openingRecord', { project, opening: 'w-9' }],
  ['evaluateRecordedOpening', 'recordedEvaluation', { project, opening: 'w-1', basis: 'asBuiltOverDesign' }],
  ['listOpenings', 'openings', { project }],
  ['readBuilding', 'building', { project }],
  ['importSchedule', 'importSchedule', { project, import: id(6), at: '2026-03-02T09:00:00Z', by: 'design-office', lengthUnit: 'in', markColumn: 'Mark', csv: 'Mark,Kind,Width,Height\nW-2,window,48,60\nW-3,hole,48,60\n', columns: [{ column: 'Kind', fact: 'opening.kind' }, { column: 'Width', fact: 'opening.width' }, { column: 'Height', fact: 'opening.height' }], takeGoodRows: true }],
  ['readOpeningForm', 'openingForm', { project, opening: 'w-1', holdPoint: 'headFlashing' }],
  ['readJournal', 'journal', { project, first: 3 }],
]

describe('what is recorded is recorded the same over REST and over GraphQL', async () => {
  const [rest, graphql] = await Promise.all([jurisdictionService(), jurisdictionService()])
  const tokens = await Promise.all([rest, graphql].map((service) => service.tokenFor({ kind: 'record' })))
  // Ids are counted by each service: each asks once for what it is described by.
  const schema = await introspected(graphql)
  await servedDocument(rest.app)
  const told: { rest: Answered[]; graphql: Answered[] } = { rest: [], graphql: [] }

  test.each(story.map(([operation, field, input], index) => [`${index + 1}. ${operation}`, operation, field, input] as const))('%s', async (_, operation, field, input) => {
    const inputFor = (before: readonly Answered[]) => (typeof input === 'function' ? input(before) : input)
    told.rest.push(await overRest(rest, tokens[0] ?? '', operation, inputFor(told.rest)))
    told.graphql.push(await overGraphql(graphql, tokens[1] ?? '', { operation, field, query: fullQuery(schema, field) }, inputFor(told.graphql)))
    expect(told.graphql.at(-1)).toEqual(told.rest.at(-1))
  })

  test('both answers and refusals came', () => {
    expect(told.rest.filter(({ value }) => value !== undefined).length).toBeGreaterThan(12)
    expect(new Set(told.rest.flatMap(({ code }) => code ?? []))).toEqual(new Set(['idTaken', 'invalidInput', 'notFound', 'versionStale']))
  })
})

async function overRest({ app, http }: Service, token: string, operation: keyof typeof operations, input: Input): Promise<Answered> {
  const { method, path, described } = routeOf(await servedDocument(app), operation)
  const inPath = (described.parameters ?? []).flatMap((parameter) => ('in' in parameter && parameter.in === 'path' ? [parameter.name] : []))
  const address = inPath.reduce((filled, name) => filled.replace(`{${name}}`, encodeURIComponent(String(input[name]))), path)
  const { version, ...rest } = Object.fromEntries(Object.entries(input).filter(([name]) => !inPath.includes(name)))
  const request = http[method](address).set('authorization', `Bearer ${token}`)
  const response = method === 'get' ? await request.query(rest) : await request.set(version === undefined ? {} : { 'if-match': `"${version as string}"` }).send(rest)
  const body = response.body as { code?: string; errors?: unknown }
  return response.status < 400 ? { value: body } : { code: body.code ?? '', errors: body.errors }
}

interface Asked {
  readonly operation: keyof typeof operations
  readonly field: string
  readonly query: string
}

async function overGraphql({ http }: Service, token: string, { operation, field, query }: Asked, input: Input): Promise<Answered> {
  const response = await http.post('/graphql').set('authorization', `Bearer ${token}`).send({ query, variables: input })
  const { data, errors = [] } = response.body as { data?: Readonly<Record<string, unknown>> | null; errors?: readonly { message: string; extensions?: { code: string; errors: unknown } }[] }
  const value = asPage(data?.[field] ?? null)
  if (value !== null) return { value: withoutAbsent(operations[operation].output, value) }
  return { code: errors[0]?.extensions?.code ?? errors[0]?.message ?? '', errors: errors[0]?.extensions?.errors }
}

async function introspected({ http }: Service) {
  const response = await http.post('/graphql').send({ query: getIntrospectionQuery() })
  return buildClientSchema((response.body as { data: IntrospectionQuery }).data)
}
