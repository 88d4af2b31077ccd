import { resolve } from 'node:path'
import closeWithGrace from 'close-with-grace'
import { pino } from 'pino'
import { identityProvider } from './api/identity-provider.ts'
import { buildApp } from './app.ts'
import { readConfig, type Config } from './config.ts'
import { firstKey, hasUsableToken } from './operations/first-key.ts'
import { CatalogRefused, openService, type Service } from './service.ts'

const config = configured()
const logger = pino({ level: config.logLevel })
const service = await opened()
if (!config.loopback) await refuseToServeStrangers()
else if (process.stdout.isTTY) await showFirstKey()
const doorkeeping = { anonymous: config.anonymous, provider: config.identityProvider && identityProvider(config.identityProvider) }
const app = await buildApp({ deps: service.deps, publicUrl: config.publicUrl, doorkeeping, explorerDir: resolve('dist/explorer'), logger: { level: config.logLevel } })
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
