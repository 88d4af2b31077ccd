import { execFile } from 'node:child_process'
import { mkdtemp, rm, stat, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { promisify } from 'node:util'

type Printed = { readonly ok: true } | { readonly ok: false; readonly mend: string }

const patience = 60_000

/** Prints a page by the browser that is named. The page runs no script and fetches nothing. */
export async function printPdf(page: string, out: string, browser: string | undefined): Promise<Printed> {
  if (browser === undefined || browser === '') return { ok: false, mend: 'A PDF is printed by a Chromium or Chrome that is not part of this package.\nSet CHROMIUM to the path of its executable, CHROMIUM=/usr/bin/chromium for instance; or write --out report.html and print that from any browser.\n' }
  const folder = await mkdtemp(join(tmpdir(), 'wythe-report-'))
  try {
    await writeFile(join(folder, 'report.html'), page)
    await promisify(execFile)(browser, argumentsFor(folder, resolve(out)), { timeout: patience })
    await stat(out)
    return { ok: true }
  } catch (fault) {
    return { ok: false, mend: `${browser} printed nothing: ${fault instanceof Error ? fault.message : String(fault)}\nCHROMIUM must be the path of a Chromium or Chrome of version 131 or later.\n` }
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}

function argumentsFor(folder: string, out: string): readonly string[] {
  // A browser that root starts refuses to run with its sandbox.
  const asRoot = process.getuid?.() === 0 ? ['--no-sandbox'] : []
  return ['--headless', ...asRoot, '--disable-gpu', `--user-data-dir=${join(folder, 'profile')}`, '--no-pdf-header-footer', `--print-to-pdf=${out}`, pathToFileURL(join(folder, 'report.html')).href]
}
