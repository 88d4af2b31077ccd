import { randomUUID } from 'node:crypto'
import { resolve } from 'node:path'
import closeWithGrace from 'close-with-grace'
import { pino } from 'pino'
import { buildApp } from './app.ts'
import { readConfig, type Config } from './config.ts'
import { loadCatalog } from './store/load-catalog.ts'

const config = configured()
const logger = pino({ level: config.logLevel })
const loaded = await loadCatalog(config.catalogDir)
if (!loaded.ok) {
  for (const problem of loaded.problems) logger.fatal(problem, 'catalog refused')
  process.exit(1)
}
const app = await buildApp({
  deps: { catalog: loaded.catalog, now: () => new Date(), newId: randomUUID },
  publicUrl: config.publicUrl,
  explorerDir: resolve('dist/explorer'),
  logger: { level: config.logLevel },
})
closeWithGrace({ delay: 10_000 }, async ({ err }) => {
  if (err) app.log.error({ err }, 'stopping after a fault')
  await app.close()
})
const address = await app.listen({ host: config.host, port: config.port })
app.log.info({ address, release: loaded.catalog.release, rules: loaded.catalog.rules.size, reference: `${config.publicUrl}/reference`, explorer: `${config.publicUrl}/explorer` }, 'ready')

function configured(): Config {
  try {
    return readConfig(process.env)
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`)
    return process.exit(1)
  }
}
