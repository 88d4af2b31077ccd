import { randomUUID } from 'node:crypto'
import { printSchema } from 'graphql'
import { buildGraphqlSchema } from '../api/graphql/schema.ts'
import { buildApp } from '../app.ts'
import type { Catalog } from '../catalog/catalog.ts'

/** The published contract, as text: the OpenAPI document of the REST door and the SDL of the GraphQL one. */
export async function contract(catalog: Catalog): Promise<Readonly<Record<string, string>>> {
  const app = await buildApp({ deps: { catalog, now: () => new Date(), newId: randomUUID }, publicUrl: 'http://127.0.0.1:8080' })
  await app.ready()
  const openapi = `${JSON.stringify(app.swagger(), null, 2)}\n`
  await app.close()
  return { 'openapi.json': openapi, 'schema.graphql': `${printSchema(buildGraphqlSchema())}\n` }
}
