import { resolve } from 'node:path'
import closeWithGrace from 'close-with-grace'
import { pino } from 'pino'
import { metricsPage } from './api/metrics-page.ts'
import { createMetrics, type Metrics } from './api/metrics.ts'
import { buildApp } from './app.ts'
import { readConfig, type Config } from './config.ts'
import { CatalogRefused, openService, type Service } from './service.ts'

const config = configured()
const logger = pino({ level: config.logLevel })
const service = await opened()
const metrics = config.metricsPort === undefined ? undefined : createMetrics()
const drain = config.drainSeconds * 1_000
const app = await buildApp({ deps: counted(service, metrics), publicUrl: config.publicUrl, explorerDir: resolve('dist/explorer'), logger: { level: config.logLevel }, metrics, drain })
const page = metrics && metricsPage(metrics)
closeWithGrace({ delay: drain + 10_000 }, async ({ err }) => {
  if (err) app.log.error({ err }, 'stopping after a fault')
  await app.close()
  await page?.close()
  await service.close()
})
const address = await app.listen({ host: config.host, port: config.port })
const metricsAddress = await page?.listen({ host: config.host, port: config.metricsPort ?? 0 })
const { catalog, sequence } = service.deps.active.state
app.log.info({ address, ...(metricsAddress === undefined ? {} : { metrics: `${metricsAddress}/metrics` }), release: catalog.release, rules: catalog.rules.size, adoptions: sequence, reference: `${config.publicUrl}/reference`, explorer: `${config.publicUrl}/explorer` }, 'ready')

function counted({ deps }: Service, counts: Metrics | undefined): Service['deps'] {
  if (!counts) return deps
  counts.watch(deps.active)
  return { ...deps, records: counts.counting(deps.records), tally: counts.tally }
}

function configured(): Config {
  try {
    return readConfig(process.env)
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`)
    return process.exit(1)
  }
}

async function opened(): Promise<Service> {
  try {
    return await openService(config, logger)
  } catch (error) {
    if (error instanceof CatalogRefused) for (const problem of error.problems) logger.fatal(problem, error.message)
    else logger.fatal({ err: error }, 'the service cannot start')
    return process.exit(1)
  }
}
