import { execFile } from 'node:child_process'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { buildApp } from '../src/app.ts'
import { readConfig } from '../src/config.ts'
import { realCatalog } from './catalog/real-catalog.ts'
import { root } from './read-sources.ts'
import { serviceOf } from './api/service.ts'

interface Instruction {
  readonly name: string
  readonly text: string
}

interface Compose {
  readonly services: Readonly<Record<string, Readonly<Record<string, unknown>> & { build: { context: string; dockerfile: string }; ports: readonly string[] }>>
}

const file = readFileSync(join(root, 'docker/Dockerfile'), 'utf8')
const instructions = instructionsOf(file)
const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { scripts: Readonly<Record<string, string>>; engines: { node: string } }
const compose = parse(readFileSync(join(root, 'docker/compose.yaml'), 'utf8')) as Compose

describe('the image', () => {
  test('copies what there is, and what the ignore file lets in', () => {
    const copied = named('COPY').map(({ text }) => text.split(/\s+/)).filter(([first]) => !first?.startsWith('--from')).flatMap((words) => words.slice(0, -1))
    const letIn = readFileSync(join(root, 'docker/Dockerfile.dockerignore'), 'utf8').split('\n').filter((line) => line.startsWith('!')).map((line) => line.slice(1))
    expect(copied.filter((path) => !existsSync(join(root, path)))).toEqual([])
    expect([...new Set(copied)].toSorted()).toEqual(letIn.toSorted())
  })

  test('takes from earlier stages only', () => {
    const stages = named('FROM').flatMap(({ text }) => / AS (\w+)$/.exec(text)?.[1] ?? [])
    const from = named('COPY').flatMap(({ text }) => /--from=(\w+)/.exec(text)?.[1] ?? [])
    expect(from.length).toBeGreaterThan(0)
    expect(from.filter((stage) => !stages.includes(stage))).toEqual([])
  })

  test('runs scripts that exist', () => {
    const scripts = named('RUN').flatMap(({ text }) => [...text.matchAll(/npm run ([\w:-]+)/g)].map(([, script]) => script ?? ''))
    expect(scripts.length).toBeGreaterThan(0)
    expect(scripts.filter((script) => !Object.hasOwn(manifest.scripts, script))).toEqual([])
  })

  test('has the catalog where the build proves it', () => {
    const at = (text: string) => instructions.findIndex((one) => one.text === text)
    expect(at('catalog ./catalog')).toBeGreaterThan(-1)
    expect(at('catalog ./catalog')).toBeLessThan(at('npm run build'))
  })

  test('starts the service as npm start does', () => {
    expect((JSON.parse(only('CMD')) as readonly string[]).join(' ')).toBe(manifest.scripts['start'])
  })

  test('pins Node by its major version, one that the package allows', () => {
    const versions = named('FROM').map(({ text }) => Number(/^node:(\d+)-slim\b/.exec(text)?.[1]))
    expect(new Set(versions).size).toBe(1)
    expect(versions[0]).toBeGreaterThanOrEqual(Number.parseInt(manifest.engines.node.replace('>=', ''), 10))
  })

  test('does not run as root', () => {
    const lastStage = instructions.slice(instructions.findLastIndex(({ name }) => name === 'FROM'))
    expect(lastStage.filter(({ name }) => name === 'USER').map(({ text }) => text)).toEqual(['node'])
  })

  test('asks for its health at an address that the service has', async () => {
    const app = await buildApp({ deps: await serviceOf({ catalog: await realCatalog(), now: () => new Date(), newId: () => 'id' }), publicUrl: 'http://127.0.0.1:8080', mostLag: 0 })
    const url = /PORT\}(\/\w+)`/.exec(healthScript())?.[1] ?? ''
    expect(app.hasRoute({ method: 'GET', url })).toBe(true)
    await app.close()
  })

  test.each([[200, 0], [503, 1]])('takes an answer of %i for exit code %i', async (status, code) => {
    const server = createServer((_, response) => response.writeHead(status).end())
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
    const answered = await exitCodeOf(healthScript(), (server.address() as AddressInfo).port)
    await new Promise((resolve) => server.close(resolve))
    expect(answered).toBe(code)
  })

  test('takes no answer for ill', async () => expect(await exitCodeOf(healthScript(), 1)).toBe(1))
})

describe('the compose file', () => {
  const [service, ...others] = Object.values(compose.services)
  if (!service) throw new Error('there is no service')

  test('has one service, built from the Dockerfile', () => {
    expect(others).toEqual([])
    expect(join(root, 'docker', service.build.context, service.build.dockerfile)).toBe(join(root, 'docker/Dockerfile'))
  })

  test('lets in this machine alone', () => expect(service.ports).toEqual(['127.0.0.1:8080:8080']))

  test('gives the service nothing it does not need', () => {
    expect(service).toMatchObject({ read_only: true, cap_drop: ['ALL'], security_opt: ['no-new-privileges:true'] })
    expect(service).not.toHaveProperty('privileged')
    expect(service['volumes']).toEqual(['records:/data'])
  })
})

describe('the compose file of two replicas', () => {
  interface Whole { readonly services: Readonly<Record<string, Readonly<Record<string, unknown>> & { readonly environment?: Readonly<Record<string, string>>; readonly depends_on?: object }>> }
  const text = readFileSync(join(root, 'docker/compose.replicas.yaml'), 'utf8')
  const { services } = parse(text, { merge: true }) as Whole
  const replicas = Object.entries(services).filter(([, service]) => 'build' in service)
  const proxied = readFileSync(join(root, 'docker/Caddyfile'), 'utf8')

  test('has two replicas on one database, and the proxy leads to both and looks at an address that they have', () => {
    expect(replicas).toHaveLength(2)
    const [first, second] = replicas.map(([, service]) => service)
    expect(first).toEqual(second)
    expect(/reverse_proxy (.*) \{/.exec(proxied)?.[1]?.split(' ')).toEqual(replicas.map(([name]) => `${name}:8080`))
    expect(/health_uri (\S+)/.exec(proxied)?.[1]).toBe(/PORT\}(\/\w+)`/.exec(healthScript())?.[1])
    const named = Object.values(services).flatMap(({ depends_on: others = [] }) => (Array.isArray(others) ? others as string[] : Object.keys(others)))
    expect(named.filter((name) => !Object.hasOwn(services, name))).toEqual([])
  })

  test('lets this machine in through the proxy alone', () => {
    expect(Object.entries(services).flatMap(([name, { ports }]) => (ports === undefined ? [] : [[name, ports]]))).toEqual([['proxy', ['127.0.0.1:8080:8080']]])
  })

  test('has no password in it, and gives the replicas nothing they do not need', () => {
    expect([...text.matchAll(/PASSWORD: (.*)$/gm)].map(([, value]) => value)).toEqual(['${POSTGRES_PASSWORD:?set a password of letters and digits}'])
    for (const [, service] of replicas) expect(service).toMatchObject({ read_only: true, cap_drop: ['ALL'], security_opt: ['no-new-privileges:true'] })
  })

  test('has settings that the service takes, and lets it drain before it is killed', () => {
    for (const [, { environment = {}, stop_grace_period: grace }] of replicas) {
      const config = readConfig({ ...environment, DATABASE_URL: environment['DATABASE_URL']?.replace(/\$\{.*\}/, 'password') })
      expect(Number.parseInt(String(grace), 10)).toBeGreaterThan(config.drainSeconds + 10)
      expect(Number(/health_interval (\d+)s/.exec(proxied)?.[1])).toBeLessThan(config.drainSeconds)
      expect(config.metricsPort).not.toBe(8080)
    }
  })
})

/** Lines that end in a backslash go on; comments are left out. */
function instructionsOf(text: string): readonly Instruction[] {
  const lines = text.replaceAll(/\\\n\s*/g, '').split('\n').filter((line) => line.trim() !== '' && !line.startsWith('#'))
  return lines.map((line) => ({ name: line.split(' ')[0] ?? '', text: line.slice(line.indexOf(' ') + 1).trim() }))
}

function named(name: string): readonly Instruction[] {
  return instructions.filter((instruction) => instruction.name === name)
}

function only(name: string): string {
  const [first, ...more] = named(name)
  if (!first || more.length > 0) throw new Error(`the Dockerfile should have one ${name}`)
  return first.text
}

/** The script that `node -e` is given. */
function healthScript(): string {
  const command = only('HEALTHCHECK')
  return (JSON.parse(command.slice(command.indexOf('['))) as readonly string[]).at(-1) ?? ''
}

function exitCodeOf(script: string, port: number): Promise<number> {
  return new Promise((resolve) => {
    execFile(process.execPath, ['-e', script], { env: { PORT: String(port) } }, (error) => { resolve(typeof error?.code === 'number' ? error.code : 0) })
  })
}
