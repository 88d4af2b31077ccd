import { spawn, type ChildProcess } from 'node:child_process'
import { compiled, root } from './compiled.ts'

type Environment = Readonly<Record<string, string>>

export interface Ended {
  readonly code: number | null
  readonly stdout: string
  readonly stderr: string
}

/** Starts a program of the build in a process of its own. */
export function startCompiled(program: string, args: readonly string[] = [], environment: Environment = {}): ChildProcess {
  const { PATH = '' } = process.env
  return spawn(process.execPath, [compiled(program), ...args], { cwd: root, env: { PATH, DATA_DIR: ':memory:', ...environment }, stdio: ['ignore', 'pipe', 'pipe'] })
}

export function ended(child: ChildProcess): Promise<Ended> {
  let stdout = ''
  let stderr = ''
  child.stdout?.on('data', (data: Buffer) => { stdout += data.toString() })
  child.stderr?.on('data', (data: Buffer) => { stderr += data.toString() })
  return new Promise((resolve, reject) => {
    child.on('error', reject)
    child.on('close', (code) => { resolve({ code, stdout, stderr }) })
  })
}

export function runCompiled(program: string, args: readonly string[] = [], environment: Environment = {}): Promise<Ended> {
  return ended(startCompiled(program, args, environment))
}
