import { describe, expect, test } from 'vitest'
import { problemTypes, type ProblemCode } from '../../src/api/problems.ts'
import { operations } from '../../src/operations/index.ts'
import type { FailureCode } from '../../src/operations/operation.ts'
import { client, dependencies, type Client } from '../api/client.ts'
import { withoutAbsent } from './absent.ts'
import { cases, nameOf, otherCatalogs, type Case } from './cases.ts'
import { asPage, fields, operationNames, overGraphql, overRest } from './doors.ts'

const delivered = await client()
const others = Object.fromEntries(await Promise.all(Object.entries(otherCatalogs).map(async ([name, change]) => {
  const deps = await dependencies()
  return [name, await client({ deps: { ...deps, catalog: change(deps.catalog) } })] as const
}))) as Readonly<Record<keyof typeof otherCatalogs, Client>>

const named = cases.map((one, index) => [nameOf(one, index), one] as const)

describe('every operation answers the same over REST and over GraphQL', () => {
  test.each(named.filter(([, { expect }]) => typeof expect !== 'string'))('%s', async (_, one) => {
    const rest = await overRest(clientOf(one), one.operation, one.input)
    const graphql = await overGraphql(clientOf(one), one.operation, one.input)
    expect(rest.status, rest.text).toBe(200)
    expect(graphql.status, graphql.text).toBe(200)
    expect(graphql.body).not.toHaveProperty('errors')
    const value = asPage((graphql.body as { data: Record<string, unknown> }).data[fields[one.operation]])
    expect(withoutAbsent(operations[one.operation].output, withoutTransport(value))).toEqual(withoutTransport(rest.body))
    expectAtLeast(rest.body, one.expect as object)
  })

  test.each(named.filter(([, { expect }]) => typeof expect === 'string'))('%s', async (_, one) => {
    const rest = await overRest(clientOf(one), one.operation, one.input)
    const graphql = await overGraphql(clientOf(one), one.operation, one.input)
    const { code, status, errors } = rest.body as { code: ProblemCode; status: number; errors: readonly { code: string; pointer: string }[] }
    expect(code).toBe(one.expect)
    expect(rest.status).toBe(problemTypes[code].status)
    expect(status).toBe(rest.status)
    expect(errors.map((error) => `${error.code} ${error.pointer}`).toSorted()).toEqual(one.errors?.toSorted())
    const { data, errors: told } = graphql.body as { data: unknown; errors: readonly { message: string; path: readonly string[]; extensions: unknown }[] }
    expect(data).toEqual({ [fields[one.operation]]: null })
    expect(told).toHaveLength(1)
    expect(told[0]).toMatchObject({ message: problemTypes[code].title, path: [fields[one.operation]], extensions: { code, errors } })
  })
})

/** What the types of GraphQL refuse before any operation is asked; the operation has to refuse it too. */
const mistyped: readonly (Pick<Case, 'operation' | 'input'> & { readonly errors: readonly string[] })[] = [
  { operation: 'evaluateOpening', input: { edition: 'irc-2021' }, errors: ['missingKey /opening'] },
  { operation: 'evaluateOpening', input: { edition: 'irc-2021', opening: { opening: { kind: 'hole', width: '4 ft', height: '4 ft' } } }, errors: ['notAllowed /opening/opening/kind'] },
  { operation: 'evaluateOpening', input: { edition: 'irc-2021', opening: { opening: { kind: 'window', width: '4 ft', height: '4 ft' }, hed: {} } }, errors: ['unknownKey /opening/hed'] },
  { operation: 'evaluateOpening', input: { edition: 'irc-2021', opening: { opening: { kind: 'window', width: '4 ft', height: '4 ft' }, head: { flashing: { present: 'yes' } } } }, errors: ['wrongType /opening/head/flashing/present'] },
  { operation: 'evaluateOpening', input: { edition: 'irc-2021', holdPoint: 'lunch', opening: { opening: { kind: 'window', width: '4 ft', height: '4 ft' } } }, errors: ['notAllowed /holdPoint'] },
  { operation: 'listRules', input: { part: 'roof' }, errors: ['notAllowed /part'] },
  { operation: 'listRules', input: { first: 'ten' }, errors: ['wrongType /first'] },
  { operation: 'readForm', input: { edition: 'irc-2021', kind: 'hole', holdPoint: 'handover' }, errors: ['notAllowed /kind'] },
  { operation: 'readForm', input: { edition: 'irc-2021', kind: 'door' }, errors: ['missingKey /holdPoint'] },
  { operation: 'listFacts', input: { seenFrom: 'lunch' }, errors: ['notAllowed /seenFrom'] },
]

describe('what GraphQL refuses by its types, REST refuses too', () => {
  test.each(mistyped.map((one) => [`${one.operation}: ${one.errors.join(', ')}`, one] as const))('%s', async (_, { operation, input, errors }) => {
    const rest = await overRest(delivered, operation, input)
    expect(rest.status).toBe(422)
    expect((rest.body as { errors: readonly { code: string; pointer: string }[] }).errors.map(({ code, pointer }) => `${code} ${pointer}`)).toEqual(errors)
    const graphql = await overGraphql(delivered, operation, input)
    expect(graphql.status).toBe(400)
    expect(graphql.body).not.toHaveProperty('data')
    expect((graphql.body as { errors: readonly object[] }).errors).toHaveLength(1)
  })
})

test('one refusal leaves the other fields of a query standing', async () => {
  const response = await delivered.graphql('{ rule(rule: "no.such-rule") { title } irc: publication(publication: "irc") { publication } }')
  expect(response.status).toBe(200)
  expect(response.body).toMatchObject({ data: { rule: null, irc: { publication: 'irc' } }, errors: [{ path: ['rule'], extensions: { code: 'notFound' } }] })
})

test('a literal in a query is read as the same value in a variable', async () => {
  const literal = await delivered.graphql('{ evaluation(edition: "irc-2021", opening: { lengthUnit: in, opening: { kind: window, width: 48, height: "60" }, head: { support: { bearing: [{ value: 3.5, unit: "in" }, null] } } }) { digest } }')
  const variable = await overGraphql(delivered, 'evaluateOpening', { edition: 'irc-2021', opening: { lengthUnit: 'in', opening: { kind: 'window', width: 48, height: '60' }, head: { support: { bearing: [{ value: 3.5, unit: 'in' }, null] } } } })
  const digestIn = ({ body }: { body: unknown }) => (body as { data?: { evaluation?: { digest?: unknown } } }).data?.evaluation?.digest
  expect(digestIn(literal)).toMatch(/^sha256:[0-9a-f]{64}$/)
  expect(digestIn(literal)).toBe(digestIn(variable))
})

/** Every way in which an operation that keeps nothing can fail. */
const codes: readonly FailureCode[] = ['invalidInput', 'placeMissing', 'notFound', 'unknownJurisdiction', 'unknownEdition', 'severalCodesAdopted', 'catalogFault']

describe('the table', () => {
  test.each(operationNames)('holds an answer of %s', (operation) => {
    expect(cases.filter((one) => one.operation === operation && typeof one.expect !== 'string')).not.toHaveLength(0)
  })

  test.each(codes)('holds a failure with %s', (code) => {
    expect(cases.map((one) => one.expect)).toContain(code)
  })


})

function clientOf({ catalog }: Case): Client {
  return catalog === undefined ? delivered : others[catalog]
}

function withoutTransport(value: unknown): unknown {
  return Object.fromEntries(Object.entries(value as object).filter(([key]) => key !== 'id' && key !== 'evaluatedAt'))
}

/** What is expected is there; of a list, its beginning. */
function expectAtLeast(value: unknown, expected: object): void {
  const { items: first, ...others } = expected as { readonly items?: readonly object[] }
  expect(value).toMatchObject(others)
  if (first === undefined) return
  const { items } = value as { readonly items: readonly object[] }
  expect(first.length === 0 ? items : items.slice(0, first.length)).toMatchObject(first)
}
