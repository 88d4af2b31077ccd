import { printSchema } from 'graphql'
import { buildGraphqlSchema } from '../api/graphql/schema.ts'
import { describedApi } from '../api/rest/described.ts'
import { asyncapiDocument } from '../webhooks/asyncapi.ts'

/** The published contract, as text: the OpenAPI document of the REST door, the SDL of the GraphQL one, and the AsyncAPI document of what is sent. */
export async function contract(): Promise<Readonly<Record<string, string>>> {
  const app = await describedApi('http://127.0.0.1:8080')
  const document = app.swagger()
  await app.close()
  return { 'openapi.json': textOf(document), 'asyncapi.json': textOf(asyncapiDocument(document.info.version)), 'schema.graphql': `${printSchema(buildGraphqlSchema())}\n` }
}

function textOf(document: object): string {
  return `${JSON.stringify(document, null, 2)}\n`
}
