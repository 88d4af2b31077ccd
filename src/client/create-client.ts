import createOpenapiClient, { type Client } from 'openapi-fetch'
import type { paths } from './schema.d.ts'

export type WytheClient = Client<paths>

/** A client whose paths, bodies and answers have the types of the contract. The token is needed for what is recorded or adopted. */
export function createClient(baseUrl: string, token?: string): WytheClient {
  return createOpenapiClient<paths>({ baseUrl, ...(token === undefined ? {} : { headers: { authorization: `Bearer ${token}` } }) })
}

interface Answered<T> {
  readonly data?: T | undefined
  readonly error?: unknown
  readonly response: Response
}

/** What was answered; a refusal is thrown as the problem document that it came with. */
export function valueOf<T>({ data, error, response }: Answered<T>): T {
  if (data === undefined) throw new Error(`${response.url} answered ${response.status}: ${JSON.stringify(error)}`)
  return data
}
