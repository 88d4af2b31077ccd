import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { brotliDecompressSync } from 'node:zlib'
import { chromium, type Browser, type LaunchOptions } from 'playwright-core'

/** A headless Chromium: the one of the npm package, with the libraries and the font that a bare machine lacks; elsewhere one that is named or installed. */
export async function openBrowser(): Promise<{ readonly browser: Browser; readonly close: () => Promise<void> }> {
  if (process.platform !== 'linux' || process.arch !== 'x64') return installed()
  const folder = mkdtempSync(join(tmpdir(), 'chromium-'))
  const remove = () => rmSync(folder, { recursive: true, force: true })
  try {
    const { executablePath, env } = unpacked(folder)
    const browser = await launched({ executablePath, env, args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--disable-component-update', '--no-pings'] })
    return { browser, close: () => browser.close().then(remove) }
  } catch (fault) {
    remove()
    throw fault
  }
}

/** A browser now and then dies while it starts, which says nothing of what is to be shown in it; then it is started again. */
async function launched(options: LaunchOptions, again = 2): Promise<Browser> {
  return chromium.launch(options).catch((fault: unknown) => {
    if (again === 0) throw fault
    return launched(options, again - 1)
  })
}

async function installed() {
  const named = process.env['CHROMIUM']
  const browser = await chromium.launch(named === undefined ? { channel: 'chrome' } : { executablePath: named }).catch((fault: unknown) => {
    throw new Error('The package has a Chromium for Linux on x64 only. Install Chrome, or set CHROMIUM to the path of a Chromium.', { cause: fault })
  })
  return { browser, close: () => browser.close() }
}

/** Unpacks to a folder of its own, so that no two runs share one and nothing that lies about in a shared folder is run. */
export function unpacked(folder: string) {
  const packed = join(dirname(createRequire(import.meta.url).resolve('@sparticuz/chromium')), '../../bin')
  const executablePath = join(folder, 'chromium')
  writeFileSync(executablePath, brotliDecompressSync(readFileSync(join(packed, 'chromium.br'))), { mode: 0o700 })
  const into = { al2023: folder, fonts: join(folder, 'fonts'), swiftshader: folder }
  for (const [name, target] of Object.entries(into)) {
    mkdirSync(target, { recursive: true })
    execFileSync('tar', ['-x', '-C', target], { input: brotliDecompressSync(readFileSync(join(packed, `${name}.tar.br`))) })
  }
  const fonts = join(folder, 'fonts.conf')
  writeFileSync(fonts, `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig><dir>${folder}/fonts</dir><cachedir>${folder}/cache</cachedir></fontconfig>`)
  return { executablePath, env: { HOME: folder, TMPDIR: folder, LD_LIBRARY_PATH: join(folder, 'lib'), FONTCONFIG_FILE: fonts } }
}
