import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import formats from 'ajv-formats'
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js'
import type { OpenAPIV3_1 } from 'openapi-types'
import { root } from '../read-sources.ts'

/** One exchange as the service saw it: what was asked for by which route, and what went out. */
export interface Exchange {
  readonly method: string
  /** As Fastify writes it, with `:name`; null where there is no such route. */
  readonly route: string | null
  readonly asked: { readonly type: string | undefined; readonly body: unknown; readonly query: Readonly<Record<string, unknown>> }
  readonly answered: { readonly status: number; readonly type: string | undefined; readonly body: string }
}

type Response = OpenAPIV3_1.ResponseObject

/** A part of the document, and where it stands in it. */
interface Found<T> {
  readonly part: T
  readonly pointer: string
}

/** The document that was committed, which callers read; not what the code under test would make of it. */
const document = JSON.parse(readFileSync(join(root, 'openapi/openapi.json'), 'utf8')) as OpenAPIV3_1.Document

/** What stands in an address is text, so that numbers have to be read from it. Either is made when it is first needed. */
const ajvs: { bodies?: Ajv2020; addresses?: Ajv2020 } = {}
const compiled = new Map<string, ValidateFunction>()

/** Media of which each line is a document, which the schema is of; as a request they come in a stream that nobody has read yet. */
const inLines = ['application/x-ndjson', 'application/jsonl']

/** What is not as the document says; nothing of routes that it does not tell of. */
export function contractViolations(exchange: Exchange): readonly string[] {
  const { method, route, answered } = exchange
  const operation = route === null ? undefined : operationAt(method, route)
  if (operation) return [...answerViolations(exchange, responseOf(operation, answered.status)), ...(answered.status < 300 ? requestViolations(exchange, operation) : [])]
  // What is nowhere is refused like everything else.
  return route === null && answered.status >= 400 ? answerViolations(exchange, resolved<Response>('/components/responses/Failed')) : []
}

function operationAt(method: string, route: string): Found<OpenAPIV3_1.OperationObject> | undefined {
  const path = route.replace(/:(\w+)/g, '{$1}')
  const asked = method === 'HEAD' ? 'get' : method.toLowerCase()
  const methods = document.paths?.[path] as Readonly<Record<string, OpenAPIV3_1.OperationObject>> | undefined
  const part = methods && Object.hasOwn(methods, asked) ? methods[asked] : undefined
  return part && { part, pointer: `/paths/${escaped(path)}/${asked}` }
}

function responseOf({ part: { responses = {} }, pointer }: Found<OpenAPIV3_1.OperationObject>, status: number): Found<Response> | undefined {
  const key = [String(status), `${Math.floor(status / 100)}XX`].find((one) => Object.hasOwn(responses, one))
  return key === undefined ? undefined : resolved<Response>(`${pointer}/responses/${key}`)
}

/** The part at a JSON Pointer, or the one that it refers to. */
function resolved<T>(pointer: string): Found<T> {
  const part = pointer.split('/').slice(1).reduce<unknown>((at, key) => (at as Readonly<Record<string, unknown>>)[key.replaceAll('~1', '/').replaceAll('~0', '~')], document) as T
  const { $ref } = part as { readonly $ref?: string }
  return $ref === undefined ? { part, pointer } : resolved($ref.replace('#', ''))
}

function answerViolations({ method, answered: { status, type, body } }: Exchange, response: Found<Response> | undefined): readonly string[] {
  if (!response) return [`${status} is not described`]
  const { content } = response.part
  if (!content) return type === undefined && body === '' ? [] : [`${status} has a body where none is described`]
  const media = mediaTypeOf(type)
  if (!Object.hasOwn(content, media)) return [`${status} is ${media}, described as ${Object.keys(content).join(' or ')}`]
  if (method === 'HEAD') return []
  const values = inLines.includes(media) ? body.trimEnd().split('\n').map((line) => JSON.parse(line) as unknown) : [valueOf(media, body)]
  return values.flatMap((value) => misfits('bodies', `${response.pointer}/content/${escaped(media)}/schema`, value, `${status} answer`))
}

/** What was taken has to be what may be sent. Of entries that are posted together each is taken or refused by itself, so that those that the answer refuses need not. */
function requestViolations({ asked: { type, body, query }, answered }: Exchange, { part: { parameters = [], requestBody }, pointer }: Found<OpenAPIV3_1.OperationObject>): readonly string[] {
  const inQuery = (parameters as readonly OpenAPIV3_1.ParameterObject[]).map((one, index) => ({ ...one, index })).filter((one) => one.in === 'query')
  const found = Object.entries(query).flatMap(([name, value]) => {
    const parameter = inQuery.find((one) => one.name === name)
    return parameter ? misfits('addresses', `${pointer}/parameters/${parameter.index}/schema`, value, `query "${name}"`) : [`query "${name}" was taken and is not described`]
  })
  // A body that nothing is made of is passed over, as HTTP lets servers do.
  if (!requestBody || body === undefined || body === null) return found
  const { content } = requestBody as OpenAPIV3_1.RequestBodyObject
  const media = mediaTypeOf(type)
  if (!Object.hasOwn(content, media)) return [...found, `a body of ${media} was taken and is not described`]
  if (inLines.includes(media)) return found
  const refused = refusedIn(answered.body).map((index) => `request body /entries/${index}/`)
  const wrong = misfits('bodies', `${pointer}/requestBody/content/${escaped(media)}/schema`, typeof body === 'string' ? valueOf(media, body) : body, 'request body')
  return [...found, ...wrong.filter((what) => !refused.some((start) => what.startsWith(start)))]
}

/** Which of the entries that were sent are not taken. */
function refusedIn(body: string): readonly number[] {
  const { results = [] } = (body.startsWith('{') ? JSON.parse(body) : {}) as { readonly results?: readonly { readonly outcome?: string }[] }
  return results.flatMap(({ outcome }, index) => (outcome === 'refused' ? [index] : []))
}

function misfits(kind: 'bodies' | 'addresses', pointer: string, value: unknown, what: string): readonly string[] {
  const key = `${kind} ${pointer}`
  const fits = compiled.get(key) ?? ajvFor(kind).compile({ $ref: `contract#${encodeURI(pointer)}` })
  compiled.set(key, fits)
  return fits(value) ? [] : (fits.errors ?? []).map(({ instancePath, message = '', params }) => `${what} ${instancePath}/ ${message} ${JSON.stringify(params)}`)
}

function ajvFor(kind: 'bodies' | 'addresses'): Ajv2020 {
  const known = ajvs[kind]
  if (known) return known
  const ajv = new Ajv2020({ strict: false, allErrors: kind === 'bodies', coerceTypes: kind === 'addresses' })
  formats.default(ajv)
  ajv.addSchema(document, 'contract')
  ajvs[kind] = ajv
  return ajv
}

function valueOf(media: string, body: string): unknown {
  return media === 'application/json' || media.endsWith('+json') ? JSON.parse(body) : body
}

function mediaTypeOf(type = 'of no type'): string {
  return type.split(';')[0]?.trim().toLowerCase() ?? ''
}

function escaped(key: string): string {
  return key.replaceAll('~', '~0').replaceAll('/', '~1')
}
