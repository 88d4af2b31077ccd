import type { FastifyInstance, FastifyServerOptions } from 'fastify'
import supertest from 'supertest'
import { afterAll } from 'vitest'
import type { Metrics } from '../../src/api/metrics.ts'
import { buildApp } from '../../src/app.ts'
import type { Documents } from '../../src/api/graphql/documents.ts'
import type { Dependencies } from '../../src/operations/operation.ts'
import { realCatalog } from '../catalog/real-catalog.ts'
import { keepContract } from './contract.ts'
import { serviceOf } from './service.ts'

export const clock = '2026-03-01T12:00:00.000Z'
export const publicUrl = 'https://wythe.example'

/** The real catalog, a clock that stands still, and ids that are counted. */
export async function dependencies(): Promise<Dependencies> {
  let ids = 0
  const catalog = await realCatalog()
  return { catalog, now: () => new Date(clock), newId: () => `id-${++ids}` }
}

interface Options {
  readonly deps?: Dependencies
  readonly documents?: Documents
  readonly mostLag?: number
  readonly explorerDir?: string
  readonly logger?: FastifyServerOptions['logger']
  readonly metrics?: Metrics
}

export interface Client {
  readonly app: FastifyInstance
  readonly deps: Dependencies
  readonly http: ReturnType<typeof supertest>
  readonly graphql: (query: string, variables?: object) => supertest.Test
}

/** A caller of a service of its own, which answers however slow the machine is, and which ends with the test file. Its answers are held to the contract. To be called while the file is collected. */
export async function client({ deps, metrics, ...options }: Options = {}): Promise<Client> {
  const used = deps ?? (await dependencies())
  const plain = await serviceOf(used)
  const service = metrics ? { ...plain, records: metrics.counting(plain.records), tally: metrics.tally } : plain
  const app = await buildApp({ deps: service, publicUrl, mostLag: 0, watchers: [...(metrics ? [metrics.time] : []), keepContract()], ...options })
  await app.ready()
  afterAll(async () => {
    await app.close()
    await service.records.close()
  })
  const http = supertest(app.server)
  return { app, deps: used, http, graphql: (query, variables) => http.post('/graphql').set('accept', 'application/graphql-response+json').send({ query, variables }) }
}
