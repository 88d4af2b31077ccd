import { z } from 'zod'

const schema = z.object({
  HOST: z.string().min(1).default('127.0.0.1'),
  PORT: z.coerce.number().int().min(0).max(65_535).default(8080),
  LOG_LEVEL: z.enum(['fatal', 'error', 'warn', 'info', 'debug', 'trace', 'silent']).default('info'),
  CATALOG_DIR: z.string().min(1).default('./catalog'),
  PUBLIC_URL: z.url().optional(),
})

export interface Config {
  readonly host: string
  readonly port: number
  readonly logLevel: string
  readonly catalogDir: string
  /** The address under which callers reach the service; problem types point there. */
  readonly publicUrl: string
}

/** Reads the configuration from the environment. Every wrong setting is named at once. */
export function readConfig(environment: Readonly<Record<string, string | undefined>>): Config {
  const parsed = schema.safeParse(environment)
  if (!parsed.success) {
    const wrong = parsed.error.issues.map(({ path, message }) => `  ${path.join('.')}: ${message}`)
    throw new Error(`The configuration cannot be used:\n${wrong.join('\n')}`)
  }
  const { HOST, PORT, LOG_LEVEL, CATALOG_DIR, PUBLIC_URL } = parsed.data
  return { host: HOST, port: PORT, logLevel: LOG_LEVEL, catalogDir: CATALOG_DIR, publicUrl: (PUBLIC_URL ?? `http://${HOST}:${PORT}`).replace(/\/$/, '') }
}
