import { resolve } from 'node:path'
import closeWithGrace from 'close-with-grace'
import { pino } from 'pino'
import { buildApp } from './app.ts'
import { readConfig, type Config } from './config.ts'
import { CatalogRefused, openService, type Service } from './service.ts'

const config = configured()
const logger = pino({ level: config.logLevel })
const service = await opened()
const app = await buildApp({ deps: service.deps, publicUrl: config.publicUrl, quota: config.quota, trustedProxies: config.trustedProxies, explorerDir: resolve('dist/explorer'), logger: { level: config.logLevel } })
closeWithGrace({ delay: 10_000 }, async ({ err }) => {
  if (err) app.log.error({ err }, 'stopping after a fault')
  await app.close()
  await service.close()
})
const address = await app.listen({ host: config.host, port: config.port })
const { catalog, sequence } = service.deps.active.state
app.log.info({ address, release: catalog.release, rules: catalog.rules.size, adoptions: sequence, reference: `${config.publicUrl}/reference`, explorer: `${config.publicUrl}/explorer` }, 'ready')

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
