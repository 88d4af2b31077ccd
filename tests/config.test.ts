import { describe, expect, test } from 'vitest'
import { readConfig } from '../src/config.ts'

test('with nothing set, the service is for this machine alone', () => {
  expect(readConfig({})).toEqual({ host: '127.0.0.1', port: 8080, drainSeconds: 0, logLevel: 'info', catalogDir: './catalog', catalogRelease: 'working', dataDir: './data', graphqlDocumentsOnly: false, webhookTargets: 'public', trustedProxies: [], publicUrl: 'http://127.0.0.1:8080', loopback: true, anonymous: 'evaluate', tracing: false })
})

test('every setting is taken', () => {
  const environment = {
    HOST: '0.0.0.0', PORT: '80', METRICS_PORT: '9464', DRAIN_SECONDS: '5', LOG_LEVEL: 'warn', CATALOG_DIR: '/catalog', CATALOG_RELEASE: 'latest', RELEASE_PUBLIC_KEYS: '/keys',
    DATA_DIR: '/data', DATABASE_URL: 'postgres://wythe@db.example/wythe', GRAPHQL_DOCUMENTS: '/queries', GRAPHQL_DOCUMENTS_ONLY: 'true', PUBLIC_URL: 'https://openings.example/wythe/',
    WEBHOOK_KEY: 'AAECAwQFBgcICQoLDA0ODxAREhMUFRYXGBkaGxwdHh8=', WEBHOOK_TARGETS: 'publicAndLoopback', PATH: '/bin',
    RATE_LIMIT_UNITS: '900', RATE_LIMIT_WINDOW: '30', TRUSTED_PROXIES: '10.0.0.0/8, ::1',
    ANONYMOUS: 'evaluate', OIDC_ISSUER: 'https://login.example/realm/', OIDC_AUDIENCE: 'wythe', OIDC_JWKS_URI: 'https://keys.example/jwks', OTEL_EXPORTER_OTLP_TRACES_ENDPOINT: 'http://collector.example:4318/v1/traces',
  }
  expect(readConfig(environment)).toEqual({
    host: '0.0.0.0', port: 80, metricsPort: 9464, drainSeconds: 5, logLevel: 'warn', catalogDir: '/catalog', catalogRelease: 'latest', releasePublicKeys: '/keys',
    dataDir: '/data', databaseUrl: 'postgres://wythe@db.example/wythe', graphqlDocuments: '/queries', graphqlDocumentsOnly: true, publicUrl: 'https://openings.example/wythe',
    webhookKey: Buffer.from(Array.from({ length: 32 }, (_, index) => index)), webhookTargets: 'publicAndLoopback',
    loopback: false, anonymous: 'evaluate', identityProvider: { issuer: 'https://login.example/realm/', audience: 'wythe', jwksUri: 'https://keys.example/jwks' },
    quota: { units: 900, window: 30 }, trustedProxies: ['10.0.0.0/8', '::1'], tracing: true,
  })
})

test.each([
  [{}, undefined], [{ HOST: 'localhost' }, undefined], [{ HOST: '::1' }, undefined], [{ HOST: '0.0.0.0' }, { units: 3_000, window: 60 }],
  [{ HOST: '0.0.0.0', RATE_LIMIT_UNITS: '0' }, undefined], [{ RATE_LIMIT_UNITS: '10' }, { units: 10, window: 60 }],
])('callers are counted where they come from outside, or where it is asked for: %j', (environment, quota) => {
  expect(readConfig(environment).quota).toEqual(quota)
})

test.each([[{}, 0], [{ HOST: '0.0.0.0' }, 5], [{ HOST: '0.0.0.0', DRAIN_SECONDS: '0' }, 0], [{ DRAIN_SECONDS: '2' }, 2]])('whoever sends requests from outside has time to look elsewhere: %j', (environment, seconds) => {
  expect(readConfig(environment).drainSeconds).toBe(seconds)
})

describe('the address that callers are told', () => {
  test.each([
    [{ PORT: '9000' }, 'http://127.0.0.1:9000'],
    [{ HOST: 'openings.example' }, 'http://openings.example:8080'],
    [{ HOST: '::1' }, 'http://[::1]:8080'],
    [{ PUBLIC_URL: 'https://openings.example' }, 'https://openings.example'],
    [{ PUBLIC_URL: 'http://openings.example:81/' }, 'http://openings.example:81'],
  ])('%j: %s', (environment, publicUrl) => {
    expect(readConfig(environment).publicUrl).toBe(publicUrl)
  })
})

describe('who may ask without a token', () => {
  test.each([
    ['127.0.0.1', true], ['127.8.0.1', true], ['::1', true], ['0:0:0:0:0:0:0:1', true], ['::ffff:127.0.0.1', true], ['localhost', true], ['LOCALHOST', true],
    ['0.0.0.0', false], ['::', false], ['::ffff:10.0.0.1', false], ['10.0.0.1', false], ['192.168.1.4', false], ['127.0.0.1.example', false], ['localhost.example', false], ['openings.example', false], ['0', false],
  ])('at %s anyone may evaluate: %s', (HOST, open) => {
    expect(readConfig({ HOST })).toMatchObject({ loopback: open, anonymous: open ? 'evaluate' : 'none' })
    expect(readConfig({ HOST, ANONYMOUS: 'none' }).anonymous).toBe('none')
    expect(readConfig({ HOST, ANONYMOUS: 'evaluate' }).anonymous).toBe('evaluate')
  })
})

describe('an identity provider', () => {
  const provider = { OIDC_ISSUER: 'https://login.example', OIDC_AUDIENCE: 'wythe' }

  test('is named by issuer and audience, the issuer letter for letter', () => {
    expect(readConfig(provider).identityProvider).toEqual({ issuer: 'https://login.example', audience: 'wythe' })
    expect(readConfig({ ...provider, OIDC_ISSUER: 'http://127.0.0.1:9000/a/' }).identityProvider?.issuer).toBe('http://127.0.0.1:9000/a/')
  })

  test.each([
    [{ OIDC_ISSUER: 'https://login.example' }, ['OIDC_AUDIENCE']],
    [{ OIDC_AUDIENCE: 'wythe' }, ['OIDC_ISSUER']],
    [{ OIDC_JWKS_URI: 'https://keys.example' }, ['OIDC_ISSUER', 'OIDC_AUDIENCE']],
    [{ PORT: 'x', OIDC_AUDIENCE: 'wythe' }, ['PORT', 'OIDC_ISSUER']],
  ])('is refused by half, with all else that is wrong: %j', (environment, names) => {
    expect(() => readConfig(environment)).toThrow(new RegExp(`cannot be used:${names.map((name) => `\\n {2}${name}: .+`).join('')}$`))
  })
})

describe('what cannot be used is refused by name', () => {
  const oidc = { OIDC_ISSUER: 'https://login.example', OIDC_AUDIENCE: 'wythe' }

  test.each([
    ['PORT', ['', ' ', 'http', '-1', '65536', '99999', '80.5', '1e3', '0x50', '8080 ']],
    ['METRICS_PORT', ['', 'on', '65536']],
    ['DRAIN_SECONDS', ['', '-1', '61', '1.5', '5s']],
    ['LOG_LEVEL', ['', 'loud', 'INFO']],
    ['HOST', ['']],
    ['CATALOG_DIR', ['']],
    ['CATALOG_RELEASE', ['', 'newest', '2026', '2026.1', 'v2026.1.0', '../2026.1.0']],
    ['RELEASE_PUBLIC_KEYS', ['']],
    ['DATA_DIR', ['']],
    ['DATABASE_URL', ['', 'db.example', 'mysql://db.example/wythe']],
    ['GRAPHQL_DOCUMENTS', ['']],
    ['GRAPHQL_DOCUMENTS_ONLY', ['', 'yes', 'true']],
    ['WEBHOOK_KEY', ['', 'secret', 'AAECAwQFBgcICQoLDA0ODw==', 'g'.repeat(64)]],
    ['WEBHOOK_TARGETS', ['', 'all', 'loopback']],
    ['ANONYMOUS', ['', 'all', 'true', 'None']],
    ['OIDC_ISSUER', ['', 'login.example', 'http://login.example', 'http://127.0.0.1.example', 'ftp://login.example']],
    ['OIDC_AUDIENCE', ['']],
    ['OIDC_JWKS_URI', ['http://keys.example', 'file:///keys.json']],
    ['RATE_LIMIT_UNITS', ['', '-1', '1.5', 'many']],
    ['RATE_LIMIT_WINDOW', ['', '0', '86401']],
    ['TRUSTED_PROXIES', ['everybody', '10.0.0.0/99', '10.0.0.1,x']],
    ['PUBLIC_URL', ['', 'openings.example', 'ftp://openings.example', 'javascript:alert(1)', '/wythe']],
  ])('%s: %j', (name, values) => {
    for (const value of values) expect(() => readConfig({ ...(name.startsWith('OIDC_') ? oidc : {}), [name]: value }), JSON.stringify(value)).toThrow(new RegExp(`cannot be used:\\n {2}${name}: .+`))
  })

  test('the working catalog, which nobody has signed, where signatures are demanded', () => {
    expect(() => readConfig({ RELEASE_PUBLIC_KEYS: '/keys' })).toThrow(/ {2}CATALOG_RELEASE: must be "latest" or a release/)
    expect(readConfig({ RELEASE_PUBLIC_KEYS: '/keys', CATALOG_RELEASE: '2026.1.0' }).catalogRelease).toBe('2026.1.0')
  })

  test('a port for metrics that is the one of the service', () => {
    expect(() => readConfig({ METRICS_PORT: '8080' })).toThrow(/ {2}METRICS_PORT: must be another than PORT/)
    expect(readConfig({ PORT: '0', METRICS_PORT: '0' }).metricsPort).toBe(0)
  })

  test('a key may be written in hexadecimal too', () => expect(readConfig({ WEBHOOK_KEY: '0a'.repeat(32) }).webhookKey).toEqual(Buffer.alloc(32, 10)))

  test('the ends of the range of ports can be used', () => {
    expect([readConfig({ PORT: '0' }).port, readConfig({ PORT: '65535' }).port]).toEqual([0, 65_535])
  })

  test('all that is wrong is told at once', () => {
    expect(() => readConfig({ PORT: 'x', LOG_LEVEL: 'x', PUBLIC_URL: 'x' })).toThrow(/ {2}PORT: .+\n {2}LOG_LEVEL: .+\n {2}PUBLIC_URL: .+/)
  })
})
