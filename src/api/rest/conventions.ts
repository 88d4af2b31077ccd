import { problemDocument } from '../problem-document.ts'
import { referenceTo } from './schemas.ts'

interface Operation {
  readonly parameters?: readonly { readonly in: string; readonly name: string }[]
  readonly requestBody?: { readonly content?: Readonly<Record<string, { readonly schema?: { readonly $ref?: string } }>> }
  readonly responses?: Responses
}

interface Body { properties?: Record<string, unknown>; required?: readonly string[] }
interface Described { description?: string; headers?: object }
type Responses = Record<string, Described | { readonly $ref: string }>

/** As much of an OpenAPI document as is added to. */
interface Document {
  components?: { readonly schemas?: Readonly<Record<string, Body>>; readonly [more: string]: unknown }
  servers?: object[]
  paths?: Readonly<Record<string, Readonly<Record<string, Operation>>>>
}

const text = (description: string, example: string, maxLength = 1_000) => ({ description, schema: { type: 'string', maxLength }, example })

const headers = {
  ETag: text('Strong: changes with every byte of the answer. Of what can be changed, the part before the semicolon is the version that If-Match has to name.', '"Qm9keSBvZiB0aGUgYW5zd2Vy"'),
  CacheControl: text('Who may keep the answer, and whether it has to be asked for again.', 'public, no-cache'),
  RateLimitPolicy: text('The quota: so many units (q) in so many seconds (w). Not there when nobody counts.', '"default";q=3000;w=60'),
  RateLimit: text('What is left of it: units (r) and seconds until there are all again (t).', '"default";r=2995;t=41'),
  RetryAfter: { description: 'Seconds to wait.', schema: { type: 'integer', minimum: 1, maximum: 86_400, format: 'int32' }, example: 41 },
  Link: text('The next page (rel="next"), and what to read about a deprecation (rel="deprecation").', '<https://wythe.example/v1/rules?after=b2ZmaWNl>; rel="next"', 4_000),
} as const satisfies Record<string, object>

const header = (name: keyof typeof headers) => ({ $ref: `#/components/headers/${name}` })
const quotaHeaders = { 'RateLimit-Policy': header('RateLimitPolicy'), RateLimit: header('RateLimit') }

/** What every operation has in common, and no route says by itself: quotas, conditional reading, refusals for anybody. */
export function withConventions(document: Document): void {
  const problem = { 'application/problem+json': { schema: { $ref: `#/components/schemas/${String(referenceTo(problemDocument)['$ref']).replace('#', '')}` } } }
  document.components = {
    ...document.components,
    headers,
    responses: {
      NotModified: { description: 'The caller has it already: it sent this ETag in If-None-Match.', headers: { ETag: header('ETag') } },
      Unauthenticated: { description: 'A token was sent that is unknown, expired or revoked, or one is needed.', headers: quotaHeaders, content: problem },
      QuotaExceeded: { description: 'More was asked for than the quota allows.', headers: { ...quotaHeaders, 'Retry-After': header('RetryAfter') }, content: problem },
      Failed: { description: 'The service failed. Nothing was decided.', content: problem },
    },
  }
  document.servers = (document.servers ?? []).map((server) => ({ ...server, 'x-internal': false }))
  for (const [path, methods] of Object.entries(document.paths ?? {})) {
    for (const [method, operation] of Object.entries(methods)) {
      leaveOutOfBody(operation, document)
      if (operation.responses && path.startsWith('/v1/')) describe(operation.responses, method)
    }
  }
}

/** What stands in the address or in a header is not said again in the body, although the operation takes all of it as one. */
function leaveOutOfBody({ parameters = [], requestBody }: Operation, { components }: Document): void {
  const elsewhere = parameters.flatMap(({ in: place, name }) => (place === 'path' ? [name] : name === 'if-match' ? ['version'] : []))
  const name = requestBody?.content?.['application/json']?.schema?.$ref?.split('/').at(-1)
  const body = name === undefined ? undefined : components?.schemas?.[name]
  if (!body?.properties || elsewhere.length === 0) return
  body.properties = Object.fromEntries(Object.entries(body.properties).filter(([member]) => !elsewhere.includes(member)))
  if (body.required) body.required = body.required.filter((member) => !elsewhere.includes(member))
}

function describe(responses: Responses, method: string): void {
  const reading = method === 'get'
  for (const [status, response] of Object.entries(responses)) {
    if ('$ref' in response) continue
    const made = status.startsWith('2')
    response.headers = { ...(made ? { ETag: header('ETag'), 'Cache-Control': header('CacheControl') } : {}), ...(made && reading ? { Link: header('Link') } : {}), ...(status.startsWith('5') ? {} : quotaHeaders) }
  }
  if (reading) responses['304'] = { $ref: '#/components/responses/NotModified' }
  responses['401'] = { $ref: '#/components/responses/Unauthenticated' }
  responses['429'] = { $ref: '#/components/responses/QuotaExceeded' }
  responses['500'] = { $ref: '#/components/responses/Failed' }
}
