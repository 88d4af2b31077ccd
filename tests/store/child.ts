import { spawn, type ChildProcess } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'
import { createInterface } from 'node:readline'

/** A node process that runs a TypeScript file of these tests. */
export interface Child {
  readonly process: ChildProcess
  /** What it printed so far, in whole lines. */
  readonly lines: readonly string[]
  /** Waits for a line, of all or of those after the first so many; fails when the process ends without it. */
  line(holds: (line: string) => boolean, from?: number): Promise<string>
  /** Waits for its end; fails when it was not a good one. */
  succeeded(): Promise<void>
  /** kill -9; when this answers, it is gone and all that it printed has been read. */
  kill(): Promise<void>
}

export function startChild(file: string, ...given: readonly string[]): Child {
  const typescript = 'typescript' in process.features && process.features.typescript ? [] : ['--import', join(import.meta.dirname, 'typescript-hook.js')]
  const child = spawn(process.execPath, [...typescript, join(import.meta.dirname, file), ...given], { stdio: ['pipe', 'pipe', 'pipe'], detached: true })
  const lines: string[] = []
  let complaint = ''
  child.stderr.setEncoding('utf8').on('data', (text: string) => { complaint += text })
  createInterface({ input: child.stdout }).on('line', (line) => { lines.push(line); child.emit('line') })
  const closed = once(child, 'close')
  const failure = (): Error => new Error(`${file} ended with ${child.exitCode ?? child.signalCode ?? 'nothing'}:\n${lines.slice(-20).join('\n')}\n${complaint}`)
  return {
    process: child,
    lines,
    async line(holds, from = 0) {
      for (;;) {
        const found = lines.slice(from).find(holds)
        if (found !== undefined) return found
        if (child.exitCode !== null || child.signalCode !== null) throw failure()
        await Promise.race([once(child, 'line'), closed])
      }
    },
    async succeeded() {
      await closed
      if (child.exitCode !== 0) throw failure()
    },
    async kill() {
      child.kill('SIGKILL')
      await closed
    },
  }
}
