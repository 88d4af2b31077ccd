/**
 * Runs a PostgreSQL server for a test: `start` and `stop` come by standard input, and when that ends, however the test ended,
 * the server is stopped and its folder removed. Arguments: the folder, the user id or nothing, the server and its arguments.
 */
import { spawn, type ChildProcess } from 'node:child_process'
import { once } from 'node:events'
import { rm } from 'node:fs/promises'
import { createInterface } from 'node:readline'

const [folder = '', user = '', program = '', ...given] = process.argv.slice(2)
let server: ChildProcess | undefined
// Whoever started this may be gone without a word, and the server has still to be stopped.
process.stdout.on('error', () => undefined)

for await (const order of createInterface({ input: process.stdin })) {
  if (order === 'start') start()
  if (order === 'stop') await stop()
}
await stop()
await rm(folder, { recursive: true, force: true })

function start(): void {
  const identity = user === '' ? {} : { uid: Number(user), gid: Number(user) }
  server = spawn(program, given, { ...identity, stdio: ['ignore', 'pipe', 'pipe'], env: { ...process.env, LC_MESSAGES: 'C' } })
  server.stderr?.pipe(process.stdout, { end: false })
  server.once('error', ({ message }) => process.stdout.write(`keeper: not started: ${message}\n`))
  server.once('exit', (code, signal) => process.stdout.write(`keeper: ended with ${code ?? signal ?? ''}\n`))
}

/** SIGINT is the server's word for: roll back, disconnect, shut down. */
async function stop(): Promise<void> {
  if (!server?.pid || server.exitCode !== null || server.signalCode !== null) return
  const ended = once(server, 'exit')
  server.kill('SIGINT')
  await ended
}
