import { z } from 'zod'
import { accessOf } from '../../operations/access.ts'
import type { AnyOperation } from '../../operations/operation.ts'
import { wordOf } from '../../operations/scope-word.ts'
import { problemDocument } from '../problem-document.ts'

type JsonSchema = Record<string, unknown>

/** Answers that go out as a file over REST, so that only GraphQL has them as an object. */
const files: readonly string[] = ['ProjectExport', 'Drawing', 'Callout', 'DrawnOutcome']

/** The named schemas of the contract, as JSON Schema 2020-12, each once, by name, whatever order the modules came in. */
export function namedSchemas(): readonly (JsonSchema & { $id: string })[] {
  const { schemas } = z.toJSONSchema(z.globalRegistry, { uri: (id) => `${id}#`, io: 'input', unrepresentable: 'any', override: ({ jsonSchema }) => plain(jsonSchema) })
  return Object.entries(schemas).filter(([id]) => !files.includes(id)).toSorted(([a], [b]) => (a < b ? -1 : 1)).map(([id, schema]) => ({ ...(besideReferences(withoutDialect(schema as JsonSchema)) as JsonSchema), $id: id }))
}

interface Placement {
  /** Which members of the operation's input stand in the path. */
  readonly path?: readonly string[]
  /** Members that the route takes from a header or the body, so that they are no part of the query. */
  readonly elsewhere?: readonly string[]
  /** The body: the whole input, or a text in one of some media types. */
  readonly body?: 'input' | readonly string[]
  readonly status?: number
  /** The status of the same answer where nothing was made, only checked. */
  readonly statusChecked?: number
  /** Media types with their schemas, of an answer that is a file. */
  readonly content?: Readonly<Record<string, { readonly schema: JsonSchema }>>
}

/** The documentation of a route, taken from the operation behind it. */
export function routeSchema(operation: AnyOperation, tag: string, { path = [], elsewhere = [], body, status = 200, statusChecked, content }: Placement = {}) {
  const members = Object.entries(operation.input.shape)
  const inPath = members.filter(([name]) => path.includes(name))
  const inQuery = body === 'input' ? [] : members.filter(([name]) => !path.includes(name) && !elsewhere.includes(name))
  const answered = { description: 'What was asked for.', content: content ?? { 'application/json': { schema: referenceTo(operation.output) } } }
  return {
    operationId: operation.name,
    summary: operation.summary,
    description: operation.description,
    tags: [tag],
    ...(inPath.length > 0 ? { params: objectOf(inPath) } : {}),
    ...(inQuery.length > 0 ? { querystring: objectOf(inQuery) } : {}),
    ...headersOf(operation, elsewhere),
    ...(operation.deprecated ? { deprecated: true } : {}),
    ...(body === undefined ? {} : { body: bodySchema(operation, body) }),
    security: securityOf(operation),
    response: {
      [status]: answered,
      ...(statusChecked === undefined ? {} : { [statusChecked]: { ...answered, description: 'The same, checked only: nothing was made.' } }),
      '4XX': { description: 'What is wrong, where, and how to mend it.', content: { 'application/problem+json': { schema: referenceTo(problemDocument) } } },
      '5XX': { description: 'The service failed, or is too busy. Nothing was decided.', content: { 'application/problem+json': { schema: referenceTo(problemDocument) } } },
    },
  }
}

/** The word of the scope; a list with an empty alternative is for anyone, where the service lets anyone evaluate. */
function securityOf(operation: AnyOperation): readonly Record<string, readonly string[]>[] {
  const access = accessOf(operation)
  const token = { token: [wordOf(access === 'recordAll' ? 'record' : access)] }
  return access === 'evaluate' ? [{}, token] : [token]
}

const ifMatch = { type: 'string', maxLength: 200, description: 'The ETag of what the change is based on. The part up to the semicolon decides: the version.' }
const idempotencyKey = { type: 'string', minLength: 3, maxLength: 257, description: 'A quoted text of the caller\'s own, "8e03978e-40d5-43dd-bc93-6894a57f9324" with its quotes. For 24 hours the same request with the same key is answered as the first time and made once.' }

function headersOf({ makes = false }: AnyOperation, elsewhere: readonly string[]): object {
  const versioned = elsewhere.includes('version')
  const properties = { ...(versioned ? { 'if-match': ifMatch } : {}), ...(makes ? { 'idempotency-key': idempotencyKey } : {}) }
  return Object.keys(properties).length === 0 ? {} : { headers: { type: 'object', properties, ...(versioned ? { required: ['if-match'] } : {}) } }
}

function bodySchema(operation: AnyOperation, body: 'input' | readonly string[]): JsonSchema {
  if (body === 'input') return referenceTo(operation.input)
  return { content: Object.fromEntries(body.map((media) => [media, { schema: media.includes('json') ? { type: 'object' } : { type: 'string', maxLength: 1_048_576 } }])) }
}

export function referenceTo(schema: z.ZodType): JsonSchema {
  const id = z.globalRegistry.get(schema)?.id
  if (id === undefined) throw new Error('a schema of the contract has no id')
  return { $ref: `${id}#` }
}

export function objectOf(members: readonly (readonly [string, unknown])[]): JsonSchema {
  const { properties, required } = z.toJSONSchema(z.object(Object.fromEntries(members) as z.ZodRawShape), { io: 'input', override: ({ jsonSchema }) => plain(jsonSchema) }) as JsonSchema
  const plainMembers = Object.entries(properties as JsonSchema).map(([name, schema]) => [name, besideReferences(withoutNull(schema as JsonSchema))])
  return { type: 'object', properties: Object.fromEntries(plainMembers), ...(required ? { required } : {}) }
}

/** A query has no null: a member is there or it is not. */
function withoutNull({ anyOf, $ref, ...rest }: JsonSchema & { anyOf?: JsonSchema[]; $ref?: string }): JsonSchema {
  const some = anyOf?.filter(({ type }) => type !== 'null')
  if (some?.length === 1) return { ...rest, ...withoutNull(some[0] ?? {}) }
  return { ...rest, ...($ref === undefined ? {} : { $ref: `${$ref.replace('#/$defs/', '')}#` }), ...(some ? { anyOf: some } : {}) }
}

/** As long as each format lets a text be; fractions of a second are bounded where times are read. */
const lengthOf: Readonly<Record<string, number>> = { date: 10, uuid: 36 }

/** The format of a date says it all; its pattern would fill a page. */
function plain(schema: JsonSchema): void {
  const format = String(schema['format'])
  if (format === 'date') delete schema['pattern']
  if (Object.hasOwn(lengthOf, format)) schema['maxLength'] ??= lengthOf[format]
}

/** What stands beside a reference is lost on the way into the document, so the reference goes one deeper. */
function besideReferences(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(besideReferences)
  if (typeof value !== 'object' || value === null) return value
  const { $ref, ...rest } = Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, besideReferences(inner)]))
  if ($ref === undefined) return rest
  const words = Object.fromEntries(Object.entries(rest).filter(([key]) => key === 'title' || key === 'description'))
  return Object.keys(words).length === 0 ? { $ref } : { ...words, allOf: [{ $ref }] }
}

function withoutDialect(schema: JsonSchema): JsonSchema {
  return Object.fromEntries(Object.entries(schema).filter(([key]) => key !== '$schema'))
}
