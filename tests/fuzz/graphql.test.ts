import fc from 'fast-check'
import { getNamedType, isEnumType, isInputObjectType, isListType, isNonNullType, isObjectType, type GraphQLField, type GraphQLInputType, type GraphQLOutputType } from 'graphql'
import { expect, test } from 'vitest'
import { buildGraphqlSchema } from '../../src/api/graphql/schema.ts'
import { damaged, hostile } from './hostile.ts'
import { cases, fuzzedService, holdsUp } from './service.ts'

const { ask, ids } = await fuzzedService()
const schema = buildGraphqlSchema()
const roots = [['query', schema.getQueryType()], ['mutation', schema.getMutationType()]] as const
const operations = roots.flatMap(([kind, root]) => Object.values(root?.getFields() ?? {}).map((field) => ({ kind, field })))

const words = ['us-xa', 'us-xa-101', 'irc', 'irc-2021', '2026-03-01', '2026-03-01T12:00:00Z', 'lintel.bearing-length', 'lintel.length', 'w-1', 'inspector', '48 in', ...ids]

function valueOf(type: GraphQLInputType, depth = 0): fc.Arbitrary<unknown> {
  if (isNonNullType(type)) return valueOf(type.ofType, depth)
  if (isListType(type)) return fc.array(valueOf(type.ofType, depth + 1), { maxLength: 3 })
  if (isEnumType(type)) return fc.oneof({ weight: 9, arbitrary: fc.constantFrom(...type.getValues().map(({ name }) => name)) }, { weight: 1, arbitrary: hostile })
  if (isInputObjectType(type)) {
    const fields = Object.values(type.getFields())
    const required = fields.filter(({ type: own }) => isNonNullType(own)).map(({ name }) => name)
    if (depth > 6) return fc.constant({})
    return fc.subarray(fields.map(({ name }) => name), { maxLength: Math.min(4, fields.length) }).chain((some) => fc.record(Object.fromEntries([...new Set([...required, ...some])].map((name) => [name, valueOf(fields.find((field) => field.name === name)?.type as GraphQLInputType, depth + 1)]))))
  }
  const own = type.name === 'Int' ? fc.integer({ min: -5, max: 300 }) : type.name === 'Boolean' ? fc.boolean() : fc.oneof(fc.constantFrom(...words), fc.string({ maxLength: 20 }), fc.uuid())
  return fc.oneof({ weight: 9, arbitrary: own }, { weight: 1, arbitrary: hostile })
}

function selectionOf(type: GraphQLOutputType, depth = 0): fc.Arbitrary<string> {
  const named = getNamedType(type)
  if (!isObjectType(named)) return fc.constant('')
  const fields = Object.values(named.getFields()).filter((field) => depth < 3 || !isObjectType(getNamedType(field.type)))
  if (fields.length === 0) return fc.constant('{ __typename }')
  return fc.subarray(fields, { minLength: 1, maxLength: Math.min(5, fields.length) }).chain((some) => fc.tuple(...some.map((field) => selectionOf(field.type, depth + 1).map((inner) => `${field.name} ${inner}`))).map((all) => `{ ${all.join(' ')} }`))
}

function requestFor(kind: string, { name, args, type }: GraphQLField<unknown, unknown>): fc.Arbitrary<{ query: string; variables: unknown }> {
  const declared = args.map((arg) => `$${arg.name}: ${arg.type.toString()}`).join(', ')
  const passed = args.map((arg) => `${arg.name}: $${arg.name}`).join(', ')
  const inBrackets = (text: string) => (text === '' ? '' : `(${text})`)
  const variables = fc.record(Object.fromEntries(args.map((arg) => [arg.name, valueOf(arg.type)])))
  const query = selectionOf(type).map((selection) => `${kind}${inBrackets(declared)} { ${name}${inBrackets(passed)} ${selection} }`)
  return fc.record({ query: query.chain((text) => fc.oneof({ weight: 6, arbitrary: fc.constant(text) }, { weight: 1, arbitrary: damaged(text) })), variables })
}

test.each(operations.map((one) => [`${one.kind} ${one.field.name}`, one] as const))('whatever is asked of %s, it is answered', async (_, { kind, field }) => {
  await fc.assert(
    fc.asyncProperty(requestFor(kind, field as GraphQLField<unknown, unknown>), async (payload) => {
      const response = await holdsUp(ask({ method: 'POST', url: '/graphql', payload, headers: { accept: 'application/graphql-response+json' } }))
      const { data, errors } = response.json<{ data?: unknown; errors?: readonly unknown[] }>()
      expect(data !== undefined || (errors?.length ?? 0) > 0).toBe(true)
    }),
    { numRuns: Math.max(8, Math.round(cases / operations.length)) },
  )
}, 600_000 + cases * 100)
