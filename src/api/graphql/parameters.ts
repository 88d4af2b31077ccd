import type { FastifyRequest } from 'fastify'
import { z } from 'zod'

const text = (name: string) => z.string({ error: `"${name}" must be a text.` }).nullish()
const map = (name: string) => z.record(z.string(), z.unknown(), { error: `"${name}" must be an object.` }).nullish()

/** The parameters of a request, over GET as over POST. Others are left to extensions of the protocol. */
const parameters = z.object({
  query: text('query'),
  documentId: text('documentId'),
  operationName: text('operationName'),
  variables: map('variables'),
  extensions: map('extensions'),
}, { error: 'The body must be a JSON object with "query" or "documentId".' })
export type Parameters = z.output<typeof parameters>

export type ReadParameters = { readonly ok: true; readonly parameters: Parameters } | { readonly ok: false; readonly messages: readonly string[] }

/** Nothing is taken for another type than it is of; what is wrong is told all at once. */
export function readParameters({ method, query, body }: Pick<FastifyRequest, 'method' | 'query' | 'body'>): ReadParameters {
  const parsed = parameters.safeParse(method === 'GET' ? fromAddress(query as Readonly<Record<string, unknown>>) : body)
  return parsed.success ? { ok: true, parameters: parsed.data } : { ok: false, messages: parsed.error.issues.map(({ message }) => message) }
}

/** In an address, variables and extensions stand as JSON text. */
function fromAddress(query: Readonly<Record<string, unknown>>): unknown {
  return { ...query, ...unwrapped(query, 'variables'), ...unwrapped(query, 'extensions') }
}

function unwrapped(query: Readonly<Record<string, unknown>>, name: string): object {
  const value = query[name]
  if (typeof value !== 'string') return {}
  if (value === '') return { [name]: null }
  try {
    return { [name]: JSON.parse(value) as unknown }
  } catch {
    return { [name]: value }
  }
}
