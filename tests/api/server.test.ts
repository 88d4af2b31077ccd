import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { Agent, get } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { freePort } from './free-port.ts'
import { ended, runCompiled, startCompiled, type Ended } from '../cli/run-compiled.ts'

type Line = Readonly<Record<string, unknown>>

interface Running {
  readonly port: number
  readonly stop: (signal: 'SIGTERM' | 'SIGINT') => Promise<Ended>
}

async function running(environment: Readonly<Record<string, string>> = {}): Promise<Running> {
  const port = await freePort()
  const child = startCompiled('bundle/server.js', [], { PORT: String(port), ...environment })
  const end = ended(child)
  await Promise.race([printed(child.stdout, '"ready"'), end.then(({ stdout, stderr }) => { throw new Error(`ended: ${stdout}${stderr}`) })])
  return { port, stop: (signal) => { child.kill(signal); return end } }
}

describe('the service as a process', () => {
  test('says when it is ready and where, answers, and ends well though a connection is held open', async () => {
    const { port, stop } = await running()
    const agent = new Agent({ keepAlive: true })
    expect(await ask(port, '/livez', agent)).toEqual({ status: 200, body: { status: 'live' } })
    expect(await ask(port, '/readyz', agent)).toMatchObject({ status: 200, body: { status: 'ready', release: expect.any(String) as string } })
    const told = await ask(port, '/v1/rules/none', agent)
    expect(told).toMatchObject({ status: 404, body: { type: `http://127.0.0.1:${port}/problems/notFound`, instance: expect.stringMatching(/^urn:request:[0-9a-f-]{36}$/) as string } })
    const asked = performance.now()
    const { code, stdout, stderr } = await stop('SIGTERM')
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' })
    expect(performance.now() - asked).toBeLessThan(5_000)
    expect(linesOf(stdout).find(({ msg }) => msg === 'ready')).toMatchObject({ address: `http://127.0.0.1:${port}`, release: expect.any(String) as string, rules: expect.any(Number) as number })
    agent.destroy()
  })

  test('ends well when it is interrupted', async () => {
    const { stop } = await running({ LOG_LEVEL: 'info' })
    expect((await stop('SIGINT')).code).toBe(0)
  })

  test('keeps to the level of its log', async () => {
    const port = await freePort()
    const child = startCompiled('bundle/server.js', [], { PORT: String(port), LOG_LEVEL: 'error' })
    const end = ended(child)
    await expect.poll(() => ask(port, '/readyz').then(({ status }) => status, () => 0), { timeout: 10_000 }).toBe(200)
    child.kill('SIGTERM')
    expect(await end).toEqual({ code: 0, stdout: '', stderr: '' })
  })
})

/** A start takes some seconds on a busy machine. */
const severalStarts = 120_000

describe('who is let in', () => {
  test('on this machine anyone may evaluate, and no key is made where nobody sits at a terminal', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'first-start-'))
    const { port, stop } = await running({ DATA_DIR: folder })
    expect((await ask(port, '/v1/facts')).status).toBe(200)
    const { stdout } = await stop('SIGTERM')
    expect(stdout).not.toContain('wythe_')
    const made = await runCompiled('cli/wythe.js', ['create-token', 'operations', '--administer'], { DATA_DIR: folder })
    expect(made).toMatchObject({ code: 0, stdout: expect.stringMatching(/^wythe_[\w-]{43}\n$/) as string })
    const started = await running({ DATA_DIR: folder, HOST: '0.0.0.0' })
    expect(await ask(started.port, '/v1/facts')).toMatchObject({ status: 401, body: { code: 'unauthenticated' } })
    expect((await ask(started.port, '/v1/tokens', undefined, made.stdout.trim())).status).toBe(200)
    expect((await started.stop('SIGTERM')).stdout).not.toContain(made.stdout.trim())
    const chosen = await running({ DATA_DIR: folder, HOST: '0.0.0.0', ANONYMOUS: 'evaluate' })
    expect((await ask(chosen.port, '/v1/facts')).status).toBe(200)
    await chosen.stop('SIGTERM')
    rmSync(folder, { recursive: true })
  }, severalStarts)

  test('an identity provider need not answer for the service to start', async () => {
    const { port, stop } = await running({ HOST: '0.0.0.0', OIDC_ISSUER: `http://127.0.0.1:${await freePort()}`, OIDC_AUDIENCE: 'wythe' })
    expect(await ask(port, '/v1/facts', undefined, 'eyJhbGciOiJFUzI1NiJ9.eyJzdWIiOiJhIn0.AAAA')).toMatchObject({ status: 503, body: { code: 'identityProviderSilent' } })
    await stop('SIGTERM')
  })
})

describe('the service does not start', () => {
  test.each(['0.0.0.0', '::'])('on %s, which others reach, while nobody could be told from anybody else', async (HOST) => {
    const { code, stdout, stderr } = await runCompiled('bundle/server.js', [], { PORT: String(await freePort()), HOST, ANONYMOUS: 'evaluate' })
    expect({ code, stdout }).toEqual({ code: 1, stdout: '' })
    expect(stderr).toMatch(/^The configuration cannot be used:\n {2}HOST: .+create-token.+\n.+OIDC_ISSUER/)
  })

  test('with settings that cannot be used: all are named', async () => {
    const { code, stdout, stderr } = await runCompiled('bundle/server.js', [], { PORT: '80 80', LOG_LEVEL: 'loud', PUBLIC_URL: 'here' })
    expect({ code, stdout }).toEqual({ code: 1, stdout: '' })
    expect(stderr).toMatch(/^The configuration cannot be used:\n {2}PORT: .+\n {2}LOG_LEVEL: .+\n {2}PUBLIC_URL: .+\n$/)
  })

  test('with a catalog that is faulty: every fault is named', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'faulty-'))
    writeFileSync(join(folder, 'one.yaml'), 'one: [')
    writeFileSync(join(folder, 'two.yaml'), 'two: 2')
    const { code, stdout } = await runCompiled('bundle/server.js', [], { PORT: String(await freePort()), CATALOG_DIR: folder })
    rmSync(folder, { recursive: true })
    expect(code).toBe(1)
    expect(linesOf(stdout)).toMatchObject([
      { level: 60, msg: 'catalog refused', code: 'unreadableFile', path: 'one.yaml' },
      { level: 60, msg: 'catalog refused', code: 'unknownDocument', path: 'two.yaml' },
    ])
  })

  test.each(['no-such-catalog', 'tests/fixtures/openings', 'openapi'])('with the catalog %s', async (folder) => {
    const { code, stdout } = await runCompiled('bundle/server.js', [], { PORT: String(await freePort()), CATALOG_DIR: folder })
    expect(code).toBe(1)
    expect(linesOf(stdout).map(({ msg }) => msg)).not.toContain('ready')
    expect(linesOf(stdout)).toContainEqual(expect.objectContaining({ msg: 'catalog refused' }))
  })

  test('where another already listens', async () => {
    const { port, stop } = await running()
    const { code, stdout } = await runCompiled('bundle/server.js', [], { PORT: String(port) })
    await stop('SIGTERM')
    expect(code).toBe(1)
    expect(stdout).toContain('EADDRINUSE')
  })
})

function printed(stream: NodeJS.ReadableStream | null, text: string): Promise<void> {
  let so = ''
  return new Promise((resolve) => {
    stream?.on('data', (data: Buffer) => {
      so += data.toString()
      if (so.includes(text)) resolve()
    })
  })
}

function ask(port: number, path: string, agent?: Agent, token?: string): Promise<{ status: number; body: unknown }> {
  return new Promise((resolve, reject) => {
    get({ host: '127.0.0.1', port, path, agent, headers: token === undefined ? {} : { authorization: `Bearer ${token}` } }, (response) => {
      let text = ''
      response.on('data', (data: Buffer) => { text += data.toString() })
      response.on('end', () => { resolve({ status: response.statusCode ?? 0, body: JSON.parse(text) }) })
    }).on('error', reject)
  })
}

function linesOf(stdout: string): readonly Line[] {
  return stdout.split('\n').filter((line) => line !== '').map((line) => JSON.parse(line) as Line)
}
