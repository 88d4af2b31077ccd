import { spawn, type ChildProcess } from 'node:child_process'
import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as later } from 'node:timers/promises'
import { pathToFileURL } from 'node:url'
import { pipeTo } from './browser-pipe.ts'

type Printed = { readonly ok: true } | { readonly ok: false; readonly mend: string }

const patience = 60_000

/** Prints a page by the browser that is named. The page runs no script and fetches nothing. */
export async function printPdf(page: string, out: string, browser: string | undefined): Promise<Printed> {
  if (browser === undefined || browser === '') return { ok: false, mend: 'A PDF is printed by a Chromium or Chrome that is not part of this package.\nSet CHROMIUM to the path of its executable, CHROMIUM=/usr/bin/chromium for instance; or write --out report.html and print that from any browser.\n' }
  const folder = await mkdtemp(join(tmpdir(), 'wythe-report-'))
  await writeFile(join(folder, 'report.html'), page)
  const child = spawn(browser, argumentsFor(folder), { stdio: ['ignore', 'ignore', 'ignore', 'pipe', 'pipe'] })
  const patienceEnds = new AbortController()
  try {
    await writeFile(out, await Promise.race([printedBy(child, pathToFileURL(join(folder, 'report.html')).href), endOf(child), tooLate(patienceEnds.signal)]))
    return { ok: true }
  } catch (fault) {
    return { ok: false, mend: `${browser} printed nothing: ${fault instanceof Error ? fault.message : String(fault)}\nCHROMIUM must be the path of a Chromium or Chrome of version 131 or later.\n` }
  } finally {
    patienceEnds.abort()
    await ended(child)
    await rm(folder, { recursive: true, force: true, maxRetries: 5 })
  }
}

function argumentsFor(folder: string): readonly string[] {
  // A browser that root starts refuses to run with its sandbox.
  const asRoot = process.getuid?.() === 0 ? ['--no-sandbox'] : []
  return ['--headless', ...asRoot, '--disable-gpu', '--no-first-run', '--disable-background-networking', '--remote-debugging-pipe', `--user-data-dir=${join(folder, 'profile')}`]
}

/** On the sheet that the page names itself, with the page numbers that it brings. */
async function printedBy(child: ChildProcess, address: string): Promise<Buffer> {
  const { ask, event } = pipeTo(child)
  const { targetId } = await ask('Target.createTarget', { url: 'about:blank' })
  const { sessionId } = await ask('Target.attachToTarget', { targetId, flatten: true })
  const session = String(sessionId)
  await ask('Page.enable', {}, session)
  const loaded = event('Page.loadEventFired')
  await ask('Page.navigate', { url: address }, session)
  await loaded
  const { data } = await ask('Page.printToPDF', { preferCSSPageSize: true, printBackground: true }, session)
  return Buffer.from(String(data), 'base64')
}

function endOf(child: ChildProcess): Promise<never> {
  return new Promise((_, reject) => {
    child.on('error', reject)
    child.on('exit', (code) => { reject(new Error(`it ended with ${code ?? 'a signal'}`)) })
  })
}

async function tooLate(signal: AbortSignal): Promise<never> {
  await later(patience, undefined, { signal }).catch(() => undefined)
  throw new Error(`it took longer than ${patience / 1_000} seconds`)
}

async function ended(child: ChildProcess): Promise<void> {
  if (child.pid === undefined || child.exitCode !== null) return
  const gone = new Promise((resolve) => child.once('exit', resolve))
  child.kill('SIGKILL')
  await gone
}
