import { spawn, type ChildProcess } from 'node:child_process'
import { readFile } from 'node:fs/promises'
import { mkdtempSync, rmSync } from 'node:fs'
import { Agent, request } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { freePort } from '../api/free-port.ts'
import { root } from '../read-sources.ts'

/** A service in a process of its own. */
export interface Process {
  readonly url: string
  /** Milliseconds from its start to its first good answer. */
  readonly startedIn: number
  /** Resident memory in MB: now, and the most so far. Linux tells. */
  readonly memory: () => Promise<{ readonly now: number; readonly most: number }>
  readonly end: () => Promise<void>
}

/** Starts the service as built, with a store of its own unless the settings name another. */
export async function startService(settings: Readonly<Record<string, string>> = {}): Promise<Process> {
  const dataDir = mkdtempSync(join(tmpdir(), 'wythe-bench-'))
  const service = await start([join(root, 'dist/bundle/server.js')], '/readyz', { DATA_DIR: dataDir, LOG_LEVEL: 'error', ...settings })
  return { ...service, end: async () => { await service.end(); rmSync(dataDir, { recursive: true }) } }
}

/** A route of Fastify alone that reads the same body and sends an answer that was made beforehand. */
export function startBare(answerFile: string): Promise<Process> {
  return start(['--import', join(root, 'tests/store/typescript-hook.js'), join(root, 'tests/bench/bare.ts'), answerFile], '/', {})
}

async function start(words: readonly string[], path: string, settings: Readonly<Record<string, string>>): Promise<Process> {
  const port = await freePort()
  const begun = performance.now()
  const child = spawn(process.execPath, words, { cwd: root, env: { PATH: process.env['PATH'], PORT: String(port), ...settings }, stdio: ['ignore', 'ignore', 'inherit'] })
  const url = `http://127.0.0.1:${port}`
  await answering(`${url}${path}`, child)
  const startedIn = performance.now() - begun
  return { url, startedIn, memory: () => memoryOf(child), end: () => ended(child) }
}

async function answering(url: string, child: ChildProcess): Promise<void> {
  while (child.exitCode === null) {
    const response = await fetch(url).catch(() => undefined)
    if (response?.ok) return
    await pause(5)
  }
  throw new Error(`the process ended with ${child.exitCode} before it answered`)
}

async function memoryOf({ pid = 0 }: ChildProcess): Promise<{ now: number; most: number }> {
  const status = await readFile(`/proc/${pid}/status`, 'utf8')
  const megabytes = (name: string) => Number(new RegExp(`${name}:\\s+(\\d+) kB`).exec(status)?.[1]) / 1024
  return { now: megabytes('VmRSS'), most: megabytes('VmHWM') }
}

async function ended(child: ChildProcess): Promise<void> {
  const gone = new Promise((resolve) => { child.once('exit', resolve) })
  child.kill('SIGTERM')
  await gone
}

const agent = new Agent({ keepAlive: true })

/** How many posts a second are answered, of these bodies in turn, while so many are under way at once. An answer that is not good voids the measurement. */
export async function rate(url: string, bodies: readonly string[], milliseconds: number, { atOnce = 4, token }: { readonly atOnce?: number; readonly token?: string } = {}): Promise<number> {
  const end = performance.now() + milliseconds
  let [sent, answered] = [0, 0]
  const one = async () => { while (performance.now() < end) { await post(url, bodies[sent++ % bodies.length] ?? '', token); answered += 1 } }
  const start = performance.now()
  await Promise.all(Array.from({ length: atOnce }, one))
  return (answered * 1000) / (performance.now() - start)
}

export function post(url: string, body: string, token?: string): Promise<Buffer> {
  const authorization = token === undefined ? {} : { authorization: `Bearer ${token}` }
  return new Promise((resolve, reject) => {
    const sent = request(url, { method: 'POST', agent, headers: { 'content-type': 'application/json', accept: 'application/json', 'content-length': Buffer.byteLength(body), ...authorization } }, (response) => {
      const parts: Buffer[] = []
      response.on('data', (part: Buffer) => parts.push(part)).on('error', reject).on('end', () => {
        const answer = Buffer.concat(parts)
        if (response.statusCode === 200) resolve(answer)
        else reject(new Error(`${url} answered ${response.statusCode}: ${answer.toString().slice(0, 500)}`))
      })
    })
    sent.on('error', reject).end(body)
  })
}
