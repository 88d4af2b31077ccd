import { z } from 'zod'

const portAdvice = 'must be a whole number from 0 to 65535'

const schema = z.object({
  HOST: z.string().min(1).default('127.0.0.1'),
  PORT: z.string().regex(/^\d{1,5}$/, portAdvice).transform(Number).pipe(z.int().max(65_535, portAdvice)).default(8080),
  LOG_LEVEL: z.enum(['fatal', 'error', 'warn', 'info', 'debug', 'trace', 'silent']).default('info'),
  CATALOG_DIR: z.string().min(1).default('./catalog'),
  PUBLIC_URL: z.url({ protocol: /^https?$/, error: 'must be an http or https address' }).optional(),
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
  return { host: HOST, port: PORT, logLevel: LOG_LEVEL, catalogDir: CATALOG_DIR, publicUrl: (PUBLIC_URL ?? `http://${HOST.includes(':') ? `[${HOST}]` : HOST}:${PORT}`).replace(/\/$/, '') }
}
