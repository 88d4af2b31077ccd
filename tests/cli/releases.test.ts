import { generateKeyPairSync } from 'node:crypto'
import { readdir } from 'node:fs/promises'
import { join } from 'node:path'
import { beforeEach, describe, expect, test } from 'vitest'
import type { ReleaseDifferences } from '../../src/catalog/release.ts'
import { runCommand, usage } from '../../src/cli/commands.ts'
import { catalogCopy, type CatalogCopy } from '../store/release-folder.ts'

const first = '2026.1.0'
let copy: CatalogCopy

beforeEach(async () => {
  copy = await catalogCopy()
})

const run = (...args: string[]) => runCommand([...args, '--catalog', copy.folder])

describe('a release, from the command line', () => {
  test('is cut, signed and checked', async () => {
    const key = await keyPair()
    const cut = await run('cut-release', first, '--note', 'The first one.')
    expect(cut).toMatchObject({ exitCode: 0 })
    expect(cut.text).toMatch(/^Release 2026\.1\.0, the first, sha256:[0-9a-f]{64}\nLimits: 0 primary, 0 secondary, \d+ memory\nRules: \d+ added, 0 removed, 0 changed\n/)
    expect(JSON.parse(await copy.read(`releases/${first}/manifest.json`))).toMatchObject({ note: 'The first one.' })
    expect(await run('verify-release', first, '--public-key', key.public)).toMatchObject({ exitCode: 1, text: expect.stringContaining('unsignedRelease') as string })
    expect(await run('sign-release', first, '--private-key', key.private)).toMatchObject({ exitCode: 0 })
    const verified = await run('verify-release', first, '--public-key', key.public)
    expect(verified).toMatchObject({ exitCode: 0 })
    expect(verified.text).toMatch(/^2026\.1\.0 is as it was cut, sha256:[0-9a-f]{64}, signed by sha256:[0-9a-f]{64}\n$/)
  })

  test('that cannot be cut ends with 1 and leaves nothing behind', async () => {
    expect(await run('cut-release', '2026.2.0')).toMatchObject({ exitCode: 1, text: expect.stringContaining('Nothing was cut.') as string })
    expect(await readdir(copy.folder)).not.toContain('releases')
  })

  test('that was altered ends the check of all with 1, and the sound ones are told', async () => {
    await run('cut-release', first)
    await next(first, '2026.1.1')
    await run('cut-release', '2026.1.1')
    expect(await run('verify-release', '--all')).toMatchObject({ exitCode: 0 })
    expect(await run('verify-release')).toEqual(await run('verify-release', '--all'))
    await copy.edit(`releases/${first}/catalog.json`, 'Fit a longer lintel.', 'Fit a shorter lintel.')
    const checked = await run('verify-release', '--all')
    expect(checked.exitCode).toBe(1)
    expect(checked.text).toMatch(/^2026\.1\.1 is as it was cut, .*\nreleases\/2026\.1\.0\/catalog\.json\n {2}alteredRelease: /)
  })

  test('that nobody cut is found', async () => {
    await run('cut-release', first)
    await copy.write('releases/2026.3.0/catalog.json', '{}')
    expect(await run('verify-release')).toMatchObject({ exitCode: 1, text: expect.stringContaining('releases/2026.3.0: not in the index') as string })
    expect(await run('verify-release', '2026.3.0')).toMatchObject({ exitCode: 1, text: expect.stringContaining('unknownRelease') as string })
  })

  test('is none at first', async () => {
    expect(await run('verify-release')).toEqual({ exitCode: 0, text: 'No release was cut yet.\n' })
  })
})

describe('the differences', () => {
  beforeEach(async () => {
    await run('cut-release', first)
  })

  test('from the catalog as it stands tell the least number of the next release', async () => {
    expect((await run('release-differences', first)).text).toContain('at least 2026.1.1.')
    await copy.edit('jurisdictions/aa-open-01/amendments/ord-1.yaml', 'effectiveUntil: null', 'effectiveUntil: 2024-01-01')
    const told = await run('release-differences', first)
    expect(told.exitCode).toBe(0)
    expect(told.text).toContain('Requirements: 1 that are not as before\n  amendment aa-open-01/ord-1\n')
    expect(told.text).toContain('  mill-lane-3/1 W-1, lintel.bearing-length: fail > pass\n    aa-open-01 (irc)\n')
    expect(told.text).toContain('  mill-lane-3/2, aa-open-01.weep.count: notDetermined > not there\n')
    expect(told.text).toContain('at least 2026.2.0.')
  })

  test('between two releases are those of the manifest', async () => {
    await next(first, '2026.1.1')
    await run('cut-release', '2026.1.1')
    const told = await run('release-differences', first, '2026.1.1', '--json')
    const { differences } = JSON.parse(await copy.read('releases/2026.1.1/manifest.json')) as { differences: ReleaseDifferences }
    expect(JSON.parse(told.text)).toEqual(differences)
    expect(differences.rulesChanged).toEqual(['lintel.bearing-length'])
  })

  test('of a release that is not there end with 1', async () => {
    expect(await run('release-differences', '2030.1.0')).toMatchObject({ exitCode: 1, text: expect.stringContaining('unknownRelease') as string })
    expect(await run('release-differences', first, '2030.1.0')).toMatchObject({ exitCode: 1, text: expect.stringContaining('2030.1.0 cannot be compared') as string })
  })

  test('of a catalog with a defect end with 1', async () => {
    await copy.edit('rules/weep/spacing.yaml', 'topic: weep', 'topic: weeps')
    expect(await run('release-differences', first)).toMatchObject({ exitCode: 1, text: expect.stringContaining('rules/weep/spacing.yaml/topic') as string })
  })
})

describe('a command', () => {
  test.each([[], ['cut'], ['cut-release'], ['sign-release', first], ['release-differences'], ['verify-release', first, '--all'], ['evaluate'], ['explain']])('called wrongly tells how: %j', async (...args) => {
    expect(await run(...args)).toEqual({ text: usage, exitCode: 2 })
  })

  test.each([['verify-release', '--unheard-of'], ['sign-release', first, '--private-key', '/no/such/key.pem'], ['verify-release', '--public-key', '/no/such/key.pem']])('with what cannot be used says so first: %j', async (...args) => {
    const { text, exitCode } = await run(...args)
    expect(exitCode).toBe(2)
    expect(text.endsWith(usage)).toBe(true)
    expect(text.length).toBeGreaterThan(usage.length)
  })

  test('that was there before still works', async () => {
    expect(await run('check-catalog')).toMatchObject({ exitCode: 0, text: expect.stringContaining('Release 2026.1.0') as string })
    expect(await run('explain', 'weep.spacing', '--edition', 'irc-2018')).toMatchObject({ exitCode: 0, text: expect.stringContaining('weep.spacing: Weep spacing') as string })
  })
})

async function next(from: string, release: string): Promise<void> {
  await copy.edit('rules/lintel/bearing-length.yaml', 'Fit a longer lintel.', 'Fit another lintel.')
  await copy.edit('release.yaml', from, release)
}

async function keyPair(): Promise<{ readonly public: string; readonly private: string }> {
  const { publicKey, privateKey } = generateKeyPairSync('ed25519')
  await copy.write('keys/public.pem', publicKey.export({ type: 'spki', format: 'pem' }))
  await copy.write('keys/private.pem', privateKey.export({ type: 'pkcs8', format: 'pem' }))
  return { public: join(copy.folder, 'keys/public.pem'), private: join(copy.folder, 'keys/private.pem') }
}
