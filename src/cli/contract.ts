import { printSchema } from 'graphql'
import type { ServiceDependencies } from '../api/caller.ts'
import { buildGraphqlSchema } from '../api/graphql/schema.ts'
import { buildApp } from '../app.ts'
import { asyncapiDocument } from '../webhooks/asyncapi.ts'

/** The published contract, as text: the OpenAPI document of the REST door, the SDL of the GraphQL one, and the AsyncAPI document of what is sent. */
export async function contract(deps: ServiceDependencies): Promise<Readonly<Record<string, string>>> {
  const app = await buildApp({ deps, publicUrl: 'http://127.0.0.1:8080' })
  await app.ready()
  const document = app.swagger()
  await app.close()
  return { 'openapi.json': textOf(document), 'asyncapi.json': textOf(asyncapiDocument(document.info.version)), 'schema.graphql': `${printSchema(buildGraphqlSchema())}\n` }
}

function textOf(document: object): string {
  return `${JSON.stringify(document, null, 2)}\n`
}
