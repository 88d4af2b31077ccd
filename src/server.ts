import { availableParallelism } from 'node:os'
import { resolve } from 'node:path'
import closeWithGrace from 'close-with-grace'
import { destination, pino } from 'pino'
import type { Metrics } from './api/metrics.ts'
import { lineThreads } from './api/rest/line-threads.ts'
import type { Tracing } from './api/tracing.ts'
import { buildApp } from './app.ts'
import { readConfig, type Config } from './config.ts'
import { firstKey, hasUsableToken } from './operations/first-key.ts'
import { CatalogRefused, delivererOf, openService, type Service } from './service.ts'

/** More would take more memory than they give time. */
const mostThreads = 4
/** What only some settings ask for is imported where they do, here and below, so that others start without it. */
const config = configured()
/** Waits for each line to be written, so that what is said before an end is said, and in its order. Requests have a logger of their own. */
const logger = pino({ level: config.logLevel }, destination({ sync: true }))
const documents = await orEnd(async () => ({ byId: await namedDocuments(), only: config.graphqlDocumentsOnly }))
const service = await orEnd(() => openService(config, logger))
if (!config.loopback) await refuseToServeStrangers()
else if (process.stdout.isTTY) await showFirstKey()
const doorkeeping = { anonymous: config.anonymous, provider: config.identityProvider && (await import('./api/identity-provider.ts')).identityProvider(config.identityProvider) }
const metrics = config.metricsPort === undefined ? undefined : (await import('./api/metrics.ts')).createMetrics()
const drain = config.drainSeconds * 1_000
const tracing = config.tracing ? (await import('./api/tracing.ts')).startTracing(service.deps.active, logger) : undefined
const deps = traced(counted(service, metrics), tracing)
const cores = availableParallelism()
const app = await buildApp({ deps, publicUrl: config.publicUrl, doorkeeping, quota: config.quota, lineThreads: cores > 1 ? lineThreads({ count: Math.min(cores, mostThreads), log: logger }) : undefined, trustedProxies: config.trustedProxies, explorerDir: resolve('dist/explorer'), documents, logger: { level: config.logLevel }, watchers: [...(tracing ? [tracing.watch] : []), ...(metrics ? [metrics.time] : [])], drain })
const deliveries = delivererOf(deps, logger, tracing?.sending)
const page = metrics && (await import('./api/metrics-page.ts')).metricsPage(metrics)
closeWithGrace({ delay: drain + 10_000 }, async ({ err }) => {
  if (err) app.log.error({ err }, 'stopping after a fault')
  await Promise.all([app.close(), deliveries.stop()])
  await page?.close()
  await tracing?.stop()
  await service.close()
})
const address = await app.listen({ host: config.host, port: config.port })
const metricsAddress = await page?.listen({ host: config.host, port: config.metricsPort ?? 0 })
deliveries.start()
if (config.webhookKey === undefined) app.log.warn('WEBHOOK_KEY is not set: the signing secrets of webhooks are kept in the clear')
const { catalog, sequence } = service.deps.active.state
app.log.info({ address, ...(metricsAddress === undefined ? {} : { metrics: `${metricsAddress}/metrics` }), release: catalog.release, rules: catalog.rules.size, adoptions: sequence, reference: `${config.publicUrl}/reference`, explorer: `${config.publicUrl}/explorer` }, 'ready')

function counted({ deps }: Service, counts: Metrics | undefined): Service['deps'] {
  if (!counts) return deps
  counts.watch(deps.active)
  return { ...deps, records: counts.counting(deps.records), tally: counts.tally }
}

function traced(untraced: Service['deps'], spans: Tracing | undefined): Service['deps'] {
  return spans ? { ...untraced, records: spans.following(untraced.records), follow: spans.follow, tally: both(untraced.tally, spans.tally) } : untraced
}

function both(counts: Service['deps']['tally'], spans: Tracing['tally']): Tracing['tally'] {
  return { evaluated: (evaluation) => { counts?.evaluated(evaluation); spans.evaluated(evaluation) } }
}

async function namedDocuments(): Promise<ReadonlyMap<string, string>> {
  return config.graphqlDocuments === undefined ? new Map() : (await import('./api/graphql/read-documents.ts')).readDocuments(config.graphqlDocuments)
}

function configured(): Config {
  try {
    return readConfig(process.env)
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`)
    return process.exit(1)
  }
}

/** What the service cannot start without; why it cannot be had is the last that is logged. */
async function orEnd<T>(get: () => Promise<T>): Promise<T> {
  try {
    return await get()
  } catch (error) {
    if (error instanceof CatalogRefused) for (const problem of error.problems) logger.fatal(problem, error.message)
    else logger.fatal({ err: error }, 'the service cannot start')
    return process.exit(1)
  }
}

/** An address that others reach is not listened on before somebody can be told from somebody else. */
async function refuseToServeStrangers(): Promise<void> {
  if (config.identityProvider !== undefined || (await hasUsableToken({ ...service.deps, publicUrl: config.publicUrl }))) return
  await service.close()
  process.stderr.write(`The configuration cannot be used:
  HOST: others reach ${config.host}, and there is no token by which to tell who they are. Make one in this store (create-token <title> --administer),
    or name an identity provider with OIDC_ISSUER and OIDC_AUDIENCE, or leave HOST on 127.0.0.1
`)
  process.exit(1)
}

/** Shown to whoever sits at the terminal, once. What goes to a file or a collector of logs would be kept and read by others. */
async function showFirstKey(): Promise<void> {
  const secret = await firstKey({ ...service.deps, publicUrl: config.publicUrl })
  if (secret === undefined) return
  process.stdout.write(`\nA key to make tokens with, shown this once and good for 24 hours:\n\n  ${secret}\n\n  curl -s ${config.publicUrl}/v1/tokens -H 'authorization: Bearer <key>' -H 'content-type: application/json' -d '{ "title": "inspector", "record": true }'\n\n`)
}
