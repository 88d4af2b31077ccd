import { setTimeout as later } from 'node:timers/promises'
import { ended, startCompiled, type Ended } from '../cli/run-compiled.ts'
import { freePort } from './free-port.ts'

export interface Served {
  readonly address: string
  readonly port: number
  readonly stop: (signal?: 'SIGTERM' | 'SIGKILL') => Promise<Ended>
}

/** The compiled service as a process of its own, ready to be asked. */
export async function served(environment: Readonly<Record<string, string>>): Promise<Served> {
  const port = await freePort()
  const child = startCompiled('bundle/server.js', [], { PORT: String(port), LOG_LEVEL: 'warn', ...environment })
  const end = ended(child)
  const address = `http://127.0.0.1:${port}`
  for (;;) {
    if (await fetch(`${address}/readyz`).then(({ ok }) => ok, () => false)) break
    if (child.exitCode !== null) throw new Error(JSON.stringify(await end))
    await later(50)
  }
  return { address, port, stop: (signal = 'SIGTERM') => { child.kill(signal); return end } }
}
