import { describe, expect, test } from 'vitest'
import { ended, startCompiled } from '../cli/run-compiled.ts'
import { startCollector } from './collector.ts'
import { freePort } from './free-port.ts'
import { served } from './served.ts'

/** Tells on the standard error of every module of OpenTelemetry that the process asks for. */
const telling = `data:text/javascript,${encodeURIComponent(`import { register } from 'node:module'
register('data:text/javascript,' + encodeURIComponent("import { writeSync } from 'node:fs'; export async function resolve(name, context, next) { if (name.startsWith('@opentelemetry/')) writeSync(2, 'asked for ' + name + '\\\\n'); return next(name, context) }"))`)}`

describe('the service as a process', () => {
  test.each([
    ['without a collector asks for nothing of OpenTelemetry', {}, false],
    ['that is told not to, too', { OTEL_EXPORTER_OTLP_ENDPOINT: 'http://127.0.0.1:9', OTEL_SDK_DISABLED: 'true' }, false],
    ['with one does', { OTEL_EXPORTER_OTLP_ENDPOINT: 'http://127.0.0.1:9' }, true],
  ])('%s', async (_, environment, asks) => {
    const port = await freePort()
    const child = startCompiled('bundle/server.js', [], { PORT: String(port), LOG_LEVEL: 'error', NODE_OPTIONS: `--import=${telling}`, ...environment })
    const end = ended(child)
    await expect.poll(() => fetch(`http://127.0.0.1:${port}/readyz`).then(({ ok }) => ok, () => false), { timeout: 60_000 }).toBe(true)
    child.kill('SIGTERM')
    expect((await end).stderr.includes('asked for @opentelemetry/')).toBe(asks)
  }, 120_000)

  test('hands over what is left when it ends', async () => {
    const collector = await startCollector()
    const service = await served({ OTEL_EXPORTER_OTLP_ENDPOINT: collector.endpoint, OTEL_BSP_SCHEDULE_DELAY: '3600000', OTEL_SERVICE_NAME: 'openings' })
    await fetch(`${service.address}/v1/hold-points`)
    expect(collector.spans()).toEqual([])
    expect((await service.stop()).code).toBe(0)
    expect(collector.spans().map(({ name }) => name)).toContain('GET /v1/hold-points')
    expect(collector.services()).toEqual(['openings'])
    await collector.close()
  }, 120_000)

  test.each([
    ['where nobody listens', 'http://127.0.0.1:9'],
    ['that has no name', 'http://no-such-host.invalid:4318'],
  ])('answers, and ends in time, with a collector %s', async (_, endpoint) => {
    const service = await served({ OTEL_EXPORTER_OTLP_ENDPOINT: endpoint, OTEL_BSP_SCHEDULE_DELAY: '20', LOG_LEVEL: 'error' })
    const took: number[] = []
    for (let time = 0; time < 30; time += 1) {
      const asked = performance.now()
      expect((await fetch(`${service.address}/v1/hold-points`)).status).toBe(200)
      took.push(performance.now() - asked)
    }
    expect(took.toSorted((a, b) => a - b)[15]).toBeLessThan(500)
    const asked = performance.now()
    expect(await service.stop()).toMatchObject({ code: 0, stderr: '' })
    expect(performance.now() - asked).toBeLessThan(9_000)
  }, 120_000)

  test('does not start with a collector whose address is none', async () => {
    expect(await ended(startCompiled('bundle/server.js', [], { OTEL_EXPORTER_OTLP_ENDPOINT: 'collector' }))).toMatchObject({ code: 1, stderr: expect.stringContaining('OTEL_EXPORTER_OTLP_ENDPOINT') as string })
  })
})
