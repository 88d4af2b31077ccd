import { printSchema } from 'graphql'
import type { ServiceDependencies } from '../api/caller.ts'
import { buildGraphqlSchema } from '../api/graphql/schema.ts'
import { buildApp } from '../app.ts'

/** The published contract, as text: the OpenAPI document of the REST door and the SDL of the GraphQL one. */
export async function contract(deps: ServiceDependencies): Promise<Readonly<Record<string, string>>> {
  const app = await buildApp({ deps, publicUrl: 'http://127.0.0.1:8080' })
  await app.ready()
  const openapi = `${JSON.stringify(app.swagger(), null, 2)}\n`
  await app.close()
  return { 'openapi.json': openapi, 'schema.graphql': `${printSchema(buildGraphqlSchema())}\n` }
}
