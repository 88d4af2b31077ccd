import { BlockList, isIP } from 'node:net'
import { z } from 'zod'
import type { AnonymousAccess } from './operations/caller.ts'

const portAdvice = 'must be a whole number from 0 to 65535'

const port = z.string().regex(/^\d{1,5}$/, portAdvice).transform(Number).pipe(z.int().max(65_535, portAdvice))
const mostSeconds = 60
const secondsAdvice = `must be a whole number of seconds from 0 to ${mostSeconds}`

/** Keys that decide who may do what are fetched over TLS, or from this machine. */
const providerAddress = z.url('must be an https address').refine(isFetchedSafely, 'must be an https address; http is for this machine alone')
const wholeNumber = z.string().regex(/^\d{1,7}$/, 'must be a whole number').transform(Number)

/** As OpenTelemetry names it. */
const collector = z.literal('').or(z.url({ protocol: /^https?$/, error: 'must be an http or https address' })).optional()

const address = z.union([z.ipv4(), z.ipv6(), z.cidrv4(), z.cidrv6()])

/** What a caller may ask for in a window, where callers come from outside. */
const usualUnits = 3_000

/** In seconds, where somebody stands in front who has to see that readiness has ended before the last connection is taken. */
const usualDrain = 5

const schema = z.object({
  HOST: z.string().min(1).default('127.0.0.1'),
  PORT: port.default(8080),
  METRICS_PORT: port.optional(),
  DRAIN_SECONDS: z.string().regex(/^\d{1,2}$/, secondsAdvice).transform(Number).pipe(z.int().max(mostSeconds, secondsAdvice)).optional(),
  LOG_LEVEL: z.enum(['fatal', 'error', 'warn', 'info', 'debug', 'trace', 'silent']).default('info'),
  CATALOG_DIR: z.string().min(1).default('./catalog'),
  CATALOG_RELEASE: z.string().regex(/^(working|latest|\d{4}\.\d+\.\d+)$/, 'must be "working", "latest" or a release like "2026.1.0"').default('working'),
  RELEASE_PUBLIC_KEYS: z.string().min(1).optional(),
  DATA_DIR: z.string().min(1).default('./data'),
  DATABASE_URL: z.url({ protocol: /^postgres(ql)?$/, error: 'must be a postgres:// address' }).optional(),
  GRAPHQL_DOCUMENTS: z.string().min(1).optional(),
  GRAPHQL_DOCUMENTS_ONLY: z.enum(['true', 'false'], 'must be true or false').default('false'),
  WEBHOOK_KEY: z.string().regex(/^(?:[A-Za-z0-9+/]{43}=|[0-9a-f]{64})$/, 'must be 32 random bytes in Base64 or lower-case hexadecimal, as `openssl rand -base64 32` makes them').optional(),
  WEBHOOK_TARGETS: z.enum(['public', 'publicAndLoopback']).default('public'),
  RATE_LIMIT_UNITS: wholeNumber.optional(),
  RATE_LIMIT_WINDOW: wholeNumber.pipe(z.int().min(1, 'must be at least 1 second').max(86_400, 'must be at most a day: 86400')).default(60),
  TRUSTED_PROXIES: z.string().transform((list) => list.split(',').map((one) => one.trim()).filter((one) => one !== '')).refine((list) => list.every((one) => address.safeParse(one).success), 'must be addresses or networks like "10.0.0.0/8", with commas between').default([]),
  PUBLIC_URL: z.url({ protocol: /^https?$/, error: 'must be an http or https address' }).optional(),
  ANONYMOUS: z.enum(['evaluate', 'none'], 'must be "evaluate" (anyone may evaluate and read the catalog) or "none"').optional(),
  OIDC_ISSUER: providerAddress.optional(),
  OIDC_AUDIENCE: z.string().min(1).max(500).optional(),
  OIDC_JWKS_URI: providerAddress.optional(),
  OTEL_EXPORTER_OTLP_ENDPOINT: collector,
  OTEL_EXPORTER_OTLP_TRACES_ENDPOINT: collector,
  OTEL_SDK_DISABLED: z.string().optional(),
}).refine(({ CATALOG_RELEASE, RELEASE_PUBLIC_KEYS }) => RELEASE_PUBLIC_KEYS === undefined || CATALOG_RELEASE !== 'working', {
  path: ['CATALOG_RELEASE'],
  message: 'must be "latest" or a release where RELEASE_PUBLIC_KEYS demands signatures: the working catalog is not signed',
}).refine(({ PORT, METRICS_PORT }) => METRICS_PORT === undefined || METRICS_PORT === 0 || METRICS_PORT !== PORT, {
  path: ['METRICS_PORT'],
  message: 'must be another than PORT: what the service counts is not for its callers',
}).refine(({ GRAPHQL_DOCUMENTS, GRAPHQL_DOCUMENTS_ONLY }) => GRAPHQL_DOCUMENTS !== undefined || GRAPHQL_DOCUMENTS_ONLY === 'false', {
  path: ['GRAPHQL_DOCUMENTS_ONLY'],
  message: 'needs GRAPHQL_DOCUMENTS: otherwise no query would be answered',
})

export interface Config {
  readonly host: string
  readonly port: number
  /** Where GET /metrics is answered; nowhere when undefined. */
  readonly metricsPort: number | undefined
  /** How long requests are still taken once readiness has ended. */
  readonly drainSeconds: number
  readonly logLevel: string
  readonly catalogDir: string
  /** "working": the folder as it is; "latest": the newest release that can be trusted; or one release. */
  readonly catalogRelease: string
  /** A PEM file or a folder of them; one of these keys must have signed a release. */
  readonly releasePublicKeys: string | undefined
  readonly dataDir: string
  /** A PostgreSQL database instead of the embedded store. */
  readonly databaseUrl: string | undefined
  /** A folder of GraphQL documents that callers may name by their digest. */
  readonly graphqlDocuments: string | undefined
  /** Other documents are not answered. */
  readonly graphqlDocumentsOnly: boolean
  /** 32 bytes by which the signing secrets of webhooks are encrypted; without it they are kept in the clear. */
  readonly webhookKey: Uint8Array | undefined
  /** Where deliveries may go; to this machine only in development. */
  readonly webhookTargets: 'public' | 'publicAndLoopback'
  /** How much each caller may ask for, on each replica; undefined for any. */
  readonly quota: { readonly units: number; readonly window: number } | undefined
  /** Proxies whose word is taken for the address of a caller. */
  readonly trustedProxies: readonly string[]
  /** The address under which callers reach the service; problem types point there. */
  readonly publicUrl: string
  /** Whether only this machine can reach the service. */
  readonly loopback: boolean
  readonly anonymous: AnonymousAccess
  /** Whose access tokens are taken beside the service's own. */
  readonly identityProvider: { readonly issuer: string; readonly audience: string; readonly jwksUri: string | undefined } | undefined
  /** Whether spans go to a collector, which the variables of OpenTelemetry name. */
  readonly tracing: boolean
}

type Environment = Readonly<Record<string, string | undefined>>

/** Reads the configuration from the environment. Every wrong setting is named at once. */
export function readConfig(environment: Environment): Config {
  return configOf(parsed(environment))
}

function parsed(environment: Environment): z.output<typeof schema> {
  const { success, data, error } = schema.safeParse(environment)
  const wrong = [...(error?.issues ?? []).map(({ path, message }) => `  ${path.join('.')}: ${message}`), ...halves(environment)]
  if (!success || wrong.length > 0) throw new Error(`The configuration cannot be used:\n${wrong.join('\n')}`)
  return data
}

function configOf(settings: z.output<typeof schema>): Config {
  const { HOST, PORT, METRICS_PORT, DRAIN_SECONDS, LOG_LEVEL, CATALOG_DIR, CATALOG_RELEASE, RELEASE_PUBLIC_KEYS, DATA_DIR, DATABASE_URL, GRAPHQL_DOCUMENTS, GRAPHQL_DOCUMENTS_ONLY, WEBHOOK_KEY, WEBHOOK_TARGETS, RATE_LIMIT_UNITS, RATE_LIMIT_WINDOW, TRUSTED_PROXIES, PUBLIC_URL, ANONYMOUS, OIDC_ISSUER, OIDC_AUDIENCE, OIDC_JWKS_URI } = settings
  const loopback = isLoopback(HOST)
  return {
    host: HOST, port: PORT, metricsPort: METRICS_PORT, drainSeconds: DRAIN_SECONDS ?? (loopback ? 0 : usualDrain), logLevel: LOG_LEVEL, catalogDir: CATALOG_DIR, catalogRelease: CATALOG_RELEASE, releasePublicKeys: RELEASE_PUBLIC_KEYS,
    dataDir: DATA_DIR, databaseUrl: DATABASE_URL,
    graphqlDocuments: GRAPHQL_DOCUMENTS, graphqlDocumentsOnly: GRAPHQL_DOCUMENTS_ONLY === 'true',
    webhookKey: WEBHOOK_KEY === undefined ? undefined : Buffer.from(WEBHOOK_KEY, WEBHOOK_KEY.length === 64 ? 'hex' : 'base64'), webhookTargets: WEBHOOK_TARGETS,
    quota: quotaOf(RATE_LIMIT_UNITS ?? (loopback ? 0 : usualUnits), RATE_LIMIT_WINDOW),
    trustedProxies: TRUSTED_PROXIES,
    publicUrl: (PUBLIC_URL ?? `http://${HOST.includes(':') ? `[${HOST}]` : HOST}:${PORT}`).replace(/\/$/, ''),
    loopback, anonymous: ANONYMOUS ?? (loopback ? 'evaluate' : 'none'),
    identityProvider: OIDC_ISSUER !== undefined && OIDC_AUDIENCE !== undefined ? { issuer: OIDC_ISSUER, audience: OIDC_AUDIENCE, jwksUri: OIDC_JWKS_URI } : undefined,
    tracing: isTraced(settings),
  }
}

/** An empty variable is one that is not set, as OpenTelemetry has it. */
function isTraced({ OTEL_EXPORTER_OTLP_ENDPOINT = '', OTEL_EXPORTER_OTLP_TRACES_ENDPOINT = '', OTEL_SDK_DISABLED = '' }: z.output<typeof schema>): boolean {
  return OTEL_SDK_DISABLED.toLowerCase() !== 'true' && `${OTEL_EXPORTER_OTLP_ENDPOINT}${OTEL_EXPORTER_OTLP_TRACES_ENDPOINT}` !== ''
}

function quotaOf(units: number, window: number): Config['quota'] {
  return units === 0 ? undefined : { units, window }
}

/** Settings of an identity provider that are of no use one without the other. */
function halves({ OIDC_ISSUER, OIDC_AUDIENCE, OIDC_JWKS_URI }: Environment): readonly string[] {
  const lacksIssuer = OIDC_ISSUER === undefined && (OIDC_AUDIENCE ?? OIDC_JWKS_URI) !== undefined
  const lacksAudience = OIDC_AUDIENCE === undefined && (OIDC_ISSUER ?? OIDC_JWKS_URI) !== undefined
  return [
    ...(lacksIssuer ? ['  OIDC_ISSUER: must be given too: it says whose access tokens are taken'] : []),
    ...(lacksAudience ? ['  OIDC_AUDIENCE: must be given too: a token that was made for another service is not taken here'] : []),
  ]
}

const thisMachine = new BlockList()
thisMachine.addSubnet('127.0.0.0', 8, 'ipv4')
thisMachine.addAddress('::1', 'ipv6')

function isLoopback(host: string): boolean {
  if (host.toLowerCase() === 'localhost') return true
  const version = isIP(host)
  return version !== 0 && thisMachine.check(host, version === 6 ? 'ipv6' : 'ipv4')
}

function isFetchedSafely(address: string): boolean {
  if (!URL.canParse(address)) return false
  const { protocol, hostname } = new URL(address)
  return protocol === 'https:' || (protocol === 'http:' && isLoopback(hostname.replace(/^\[|\]$/g, '')))
}
