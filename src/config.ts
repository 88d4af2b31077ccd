import { z } from 'zod'

const portAdvice = 'must be a whole number from 0 to 65535'

const wholeNumber = z.string().regex(/^\d{1,7}$/, 'must be a whole number').transform(Number)

const address = z.union([z.ipv4(), z.ipv6(), z.cidrv4(), z.cidrv6()])

/** What a caller may ask for in a window, where callers come from outside. */
const usualUnits = 3_000

const schema = z.object({
  HOST: z.string().min(1).default('127.0.0.1'),
  PORT: z.string().regex(/^\d{1,5}$/, portAdvice).transform(Number).pipe(z.int().max(65_535, portAdvice)).default(8080),
  LOG_LEVEL: z.enum(['fatal', 'error', 'warn', 'info', 'debug', 'trace', 'silent']).default('info'),
  CATALOG_DIR: z.string().min(1).default('./catalog'),
  CATALOG_RELEASE: z.string().regex(/^(working|latest|\d{4}\.\d+\.\d+)$/, 'must be "working", "latest" or a release like "2026.1.0"').default('working'),
  RELEASE_PUBLIC_KEYS: z.string().min(1).optional(),
  DATA_DIR: z.string().min(1).default('./data'),
  DATABASE_URL: z.url({ protocol: /^postgres(ql)?$/, error: 'must be a postgres:// address' }).optional(),
  RATE_LIMIT_UNITS: wholeNumber.optional(),
  RATE_LIMIT_WINDOW: wholeNumber.pipe(z.int().min(1, 'must be at least 1 second').max(86_400, 'must be at most a day: 86400')).default(60),
  TRUSTED_PROXIES: z.string().transform((list) => list.split(',').map((one) => one.trim()).filter((one) => one !== '')).refine((list) => list.every((one) => address.safeParse(one).success), 'must be addresses or networks like "10.0.0.0/8", with commas between').default([]),
  PUBLIC_URL: z.url({ protocol: /^https?$/, error: 'must be an http or https address' }).optional(),
}).refine(({ CATALOG_RELEASE, RELEASE_PUBLIC_KEYS }) => RELEASE_PUBLIC_KEYS === undefined || CATALOG_RELEASE !== 'working', {
  path: ['CATALOG_RELEASE'],
  message: 'must be "latest" or a release where RELEASE_PUBLIC_KEYS demands signatures: the working catalog is not signed',
})

export interface Config {
  readonly host: string
  readonly port: number
  readonly logLevel: string
  readonly catalogDir: string
  /** "working": the folder as it is; "latest": the newest release that can be trusted; or one release. */
  readonly catalogRelease: string
  /** A PEM file or a folder of them; one of these keys must have signed a release. */
  readonly releasePublicKeys: string | undefined
  readonly dataDir: string
  /** A PostgreSQL database instead of the embedded store. */
  readonly databaseUrl: string | undefined
  /** How much each caller may ask for, on each replica; undefined for any. */
  readonly quota: { readonly units: number; readonly window: number } | undefined
  /** Proxies whose word is taken for the address of a caller. */
  readonly trustedProxies: readonly string[]
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
  const { HOST, PORT, LOG_LEVEL, CATALOG_DIR, CATALOG_RELEASE, RELEASE_PUBLIC_KEYS, DATA_DIR, DATABASE_URL, RATE_LIMIT_UNITS, RATE_LIMIT_WINDOW, TRUSTED_PROXIES, PUBLIC_URL } = parsed.data
  return {
    host: HOST, port: PORT, logLevel: LOG_LEVEL, catalogDir: CATALOG_DIR, catalogRelease: CATALOG_RELEASE, releasePublicKeys: RELEASE_PUBLIC_KEYS,
    dataDir: DATA_DIR, databaseUrl: DATABASE_URL,
    quota: quotaOf(RATE_LIMIT_UNITS ?? (isLoopback(HOST) ? 0 : usualUnits), RATE_LIMIT_WINDOW),
    trustedProxies: TRUSTED_PROXIES,
    publicUrl: (PUBLIC_URL ?? `http://${HOST.includes(':') ? `[${HOST}]` : HOST}:${PORT}`).replace(/\/$/, ''),
  }
}

function quotaOf(units: number, window: number): Config['quota'] {
  return units === 0 ? undefined : { units, window }
}

function isLoopback(host: string): boolean {
  return host === 'localhost' || host === '::1' || host.startsWith('127.')
}
