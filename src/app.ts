import helmet from '@fastify/helmet'
import underPressure from '@fastify/under-pressure'
import Fastify, { type FastifyInstance, type FastifyServerOptions } from 'fastify'
import { boundRequests } from './api/bounds.ts'
import { identifyCallers, type Doorkeeping, type ServiceDependencies } from './api/caller.ts'
import { handleBrokenRequest, handleError, notFoundHandler } from './api/faults.ts'
import { noDocuments, type Documents } from './api/graphql/documents.ts'
import { graphql } from './api/graphql/index.ts'
import { nothingCompiled } from './api/nothing-compiled.ts'
import { awaitRequests } from './api/patience.ts'
import { pages } from './api/pages.ts'
import type { Quota } from './api/quota-keeper.ts'
import { watchMethods } from './api/rest/allowed-methods.ts'
import { health } from './api/rest/health.ts'
import { rest } from './api/rest/index.ts'
import type { LineThreads } from './api/rest/line-threads.ts'
import { reference } from './api/rest/reference.ts'
import { logTraces } from './api/trace.ts'

declare module 'fastify' {
  interface FastifyInstance {
    deps: ServiceDependencies
    publicUrl: string
  }
}

/** Looks on at every request and answer, through hooks of its own. It is given the application before there are routes. */
export type Watcher = (app: FastifyInstance) => void

export interface AppOptions {
  readonly deps: ServiceDependencies
  readonly publicUrl: string
  /** Anyone may evaluate when left out, and only the service's own tokens are taken. */
  readonly doorkeeping?: Doorkeeping
  readonly explorerDir?: string | undefined
  /** GraphQL documents that callers may name. */
  readonly documents?: Documents
  /** By how many milliseconds the event loop may lag before callers are told to come again; 0 for any. */
  readonly mostLag?: number
  /** How much each caller may ask for; without it nobody counts. */
  readonly quota?: Quota | undefined
  /** The proxies whose word is taken for the address of a caller. */
  readonly trustedProxies?: readonly string[]
  /** Beside the thread that serves, for long batches; they end with the application. */
  readonly lineThreads?: LineThreads | undefined
  readonly logger?: FastifyServerOptions['logger']
  readonly watchers?: readonly Watcher[]
  /** How many milliseconds requests are still taken after readiness has ended, so that whoever sends them can look elsewhere. */
  readonly drain?: number
}

/** As long may a request be on its way, in milliseconds: a weather file over a slow line. */
const patience = 300_000
const largestBody = 1_048_576
/** Longer than any id, so that the operation and not the router refuses it. */
const longestParameter = 500

/** Everything that a page shows comes from this service; the service itself may stand behind plain HTTP. */
const policy = { 'style-src': ["'self'", "'unsafe-inline'"], 'font-src': ["'self'", 'data:'], 'upgrade-insecure-requests': null }

/** Builds the service. Never listens and never reads the environment. */
export async function buildApp({ deps, publicUrl, doorkeeping = { anonymous: 'evaluate' }, explorerDir, documents = noDocuments, mostLag = 1_000, quota, trustedProxies = [], lineThreads, logger = false, watchers = [], drain = 0 }: AppOptions): Promise<FastifyInstance> {
  const endBroken = handleBrokenRequest(publicUrl, deps.newId)
  const app = Fastify({
    logger,
    bodyLimit: largestBody,
    requestTimeout: 0, // awaitRequests sees to it, since a batch may last
    trustProxy: [...trustedProxies],
    genReqId: () => deps.newId(),
    childLoggerFactory: logTraces(deps.newTraceId),
    schemaController: nothingCompiled,
    forceCloseConnections: 'idle',
    return503OnClosing: false, // what is under way is answered, and readiness tells that the end has begun
    routerOptions: { maxParamLength: longestParameter },
    clientErrorHandler: endBroken,
    frameworkErrors: (error, request, reply) => void handleError(error, request, reply),
  })
  app.removeContentTypeParser('text/plain')
  app.decorate('deps', deps).decorate('publicUrl', publicUrl).decorate('quotaKeeper', quota ? (await import('./api/quota-keeper.ts')).keepQuota(quota) : null).decorate('lineThreads', lineThreads ?? null)
  app.addHook('onClose', async () => { await lineThreads?.close() })
  app.setErrorHandler(handleError)
  app.setNotFoundHandler(notFoundHandler(watchMethods(app)))
  for (const watch of watchers) watch(app)
  awaitRequests(app, patience, (socket) => endBroken(Object.assign(new Error('too slow'), { code: 'ERR_HTTP_REQUEST_TIMEOUT' }), socket))
  boundRequests(app)
  await app.register(helmet, { contentSecurityPolicy: { directives: policy } })
  await app.register(underPressure, { maxEventLoopDelay: mostLag, retryAfter: 10 })
  await app.register(reference)
  await app.register(health, { drain })
  await app.register(async (doors) => {
    identifyCallers(doors, doorkeeping)
    await doors.register(rest, { prefix: '/v1' })
    await doors.register(graphql, { documents })
  })
  await app.register(pages, { explorerDir })
  return app
}
