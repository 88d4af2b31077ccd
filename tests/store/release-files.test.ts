import { generateKeyPairSync, verify } from 'node:crypto'
import { cp, mkdtemp, readdir, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { basename, join } from 'node:path'
import { beforeEach, describe, expect, test } from 'vitest'
import { digestOf } from '../../src/catalog/digest.ts'
import { digestOfAssessment, evaluate, method } from '../../src/evaluation/evaluate.ts'
import { releaseDifferences } from '../../src/evaluation/release-differences.ts'
import { vectorsOf } from '../../src/evaluation/release-vectors.ts'
import { cutRelease, signRelease } from '../../src/store/cut-release.ts'
import { loadCatalog } from '../../src/store/load-catalog.ts'
import { loadRelease, newestRelease, type LoadedRelease } from '../../src/store/load-release.ts'
import { readIndex, readRelease, releasesIn, sha256Of, strayReleases, type Verified } from '../../src/store/release-files.ts'
import { publicKeysIn, readPublicKeys } from '../../src/store/release-signature.ts'
import { catalogFolder, resolved } from '../catalog/real-catalog.ts'
import { catalogCopy, type CatalogCopy } from './release-folder.ts'

const first = '2026.1.0'
const bearing = 'rules/lintel/bearing-length.yaml'
let copy: CatalogCopy

beforeEach(async () => {
  copy = await catalogCopy()
})

describe('cutting a release', () => {
  test('writes it whole, and locks its bytes', async () => {
    expect(await cut(first)).toEqual([])
    expect(await readdir(join(copy.folder, 'releases'), { recursive: true })).toEqual(expect.arrayContaining(['index.json', first, `${first}/catalog.json`, `${first}/manifest.json`]))
    expect(await readdir(join(copy.folder, 'releases'))).toHaveLength(2)
    const { manifest } = await loaded(first)
    expect(manifest).toMatchObject({ release: first, cutFrom: null, method, note: expect.stringContaining('invented') as string })
    expect(manifest.differences.rulesAdded).toContain('lintel.bearing-length')
  })

  test('takes the note that is given', async () => {
    await cutRelease(copy.folder, first, 'The first one.')
    expect((await loaded(first)).manifest.note).toBe('The first one.')
  })

  test('gives the same bytes for the same catalog', async () => {
    const other = await catalogCopy()
    await cutRelease(copy.folder, first)
    await cutRelease(other.folder, first)
    expect(await other.read('releases/index.json')).toBe(await copy.read('releases/index.json'))
  })

  test('is no part of the catalog that is worked on', async () => {
    const before = await working()
    await cut(first)
    expect((await working()).digest).toBe(before.digest)
  })

  test('keeps the digest that evaluations showed while it was worked on, and every answer', async () => {
    await cut(first)
    const [now, then] = [await working(), (await loaded(first)).catalog]
    expect(then.digest).toBe(now.digest)
    expect(answers(then)).toEqual(answers(now))
    expect(answers(then).length).toBeGreaterThan(1)
  })

  test('keeps the answers of the catalog that the service is delivered with', async () => {
    const real = await mkdtemp(join(tmpdir(), 'releases-'))
    try {
      await cp(catalogFolder, real, { recursive: true, filter: (path) => basename(path) !== 'releases' })
      const now = await workingIn(real)
      expect(await cutRelease(real, now.release)).toMatchObject({ ok: true })
      const then = await loadRelease(real, now.release)
      expect(then.ok && then.value.catalog.digest).toBe(now.digest)
      expect(then.ok && answers(then.value.catalog)).toEqual(answers(now))
    } finally {
      await rm(real, { recursive: true })
    }
  })

  test('is refused for a release that was cut already, and leaves it as it was', async () => {
    await cut(first)
    const before = await copy.read('releases/index.json')
    await copy.edit(bearing, 'Fit a longer lintel.', 'Fit another lintel.')
    expect((await cut(first)).join()).toContain('was cut already')
    expect(await copy.read('releases/index.json')).toBe(before)
    expect((await readRelease(copy.folder, first)).ok).toBe(true)
  })

  test.each(['2026.1', '../../2026.1.0', '2026.01.0'])('is refused under the name %s', async (name) => {
    expect((await cut(name)).join()).toContain('is not a release like')
    expect(await readdir(copy.folder)).not.toContain('releases')
  })

  test('is refused while the catalog calls itself something else', async () => {
    expect((await cut('2026.2.0')).join()).toContain('calls itself 2026.1.0')
    expect(await readdir(copy.folder)).not.toContain('releases')
  })

  test('is refused for a catalog with a defect or a failing example', async () => {
    await copy.edit(bearing, 'head.support.bearing: "3 in"', 'head.support.bearing: "5 in"')
    expect((await cut(first)).join()).toContain('exampleFailed')
  })

  test('is refused for a reference opening that cannot be read', async () => {
    await copy.edit('buildings/mill-lane-3.yaml', 'kind: louver', 'kind: lover')
    expect((await cut(first)).join()).toContain('/mill-lane-3/openings/1/opening/opening/kind')
  })

  test('is refused where a cut broke off, until that is cleared away', async () => {
    await copy.write(`releases/${first}/catalog.json`, '{}')
    expect((await cut(first)).join()).toContain('a cut broke off there')
    expect(await strayReleases(copy.folder)).toEqual([first])
    await rm(join(copy.folder, 'releases', first), { recursive: true })
    expect(await cut(first)).toEqual([])
    expect(await strayReleases(copy.folder)).toEqual([])
  })
})

describe('the next release', () => {
  beforeEach(async () => {
    await cut(first)
  })

  test('may rise in P for words, and says which release it follows', async () => {
    await copy.edit(bearing, 'Fit a longer lintel.', 'Fit another lintel.')
    expect(await cutNext(first, '2026.1.1')).toEqual([])
    const { manifest } = await loaded('2026.1.1')
    expect(manifest).toMatchObject({ cutFrom: first, differences: { rulesChanged: ['lintel.bearing-length'], requirements: [], outcomes: [] } })
    expect((await releasesIn(copy.folder))).toEqual({ ok: true, value: [first, '2026.1.1'] })
  })

  test('has to rise in N when an outcome changed, and lists it', async () => {
    await raiseBearing()
    expect((await cutNext(first, '2026.1.1')).join()).toMatch(/3 outcomes.*at least 2026\.2\.0/)
    expect(await cutNext('2026.1.1', '2026.2.0')).toEqual([])
    const { outcomes } = (await loaded('2026.2.0')).manifest.differences
    expect(outcomes.map(({ jurisdiction, edition, before, after }) => [jurisdiction ?? edition, before, after])).toEqual([['aa-open', 'pass', 'fail'], ['irc-2018', 'pass', 'fail'], ['irc-2021', 'pass', 'fail']])
  })

  test('leaves the one before as it was, with its own answers', async () => {
    const before = answers((await loaded(first)).catalog)
    await raiseBearing()
    await cutNext(first, '2026.2.0')
    expect(answers((await loaded(first)).catalog)).toEqual(before)
    expect(answers((await loaded('2026.2.0')).catalog)).not.toEqual(before)
  })

  test('is not cut from one that was altered', async () => {
    await copy.edit(`releases/${first}/catalog.json`, 'Fit a longer lintel.', 'Fit a shorter lintel.')
    expect((await cutNext(first, '2026.2.0')).join()).toContain('the release before')
  })
})

describe('an altered release', () => {
  beforeEach(async () => {
    await cut(first)
  })

  test.each(['catalog.json', 'manifest.json'])('is refused for any single byte of %s', async (name) => {
    const path = `releases/${first}/${name}`
    const bytes = await readFile(join(copy.folder, path))
    for (const at of [0, 1, Math.floor(bytes.length / 3), Math.floor(bytes.length / 2), bytes.length - 1]) {
      const altered = Buffer.from(bytes)
      altered[at] = (altered[at] ?? 0) ^ 1
      await copy.write(path, altered)
      expect(told(await readRelease(copy.folder, first)), `byte ${at}`).toEqual([`alteredRelease ${path}`])
    }
    await copy.write(path, Buffer.concat([bytes, Buffer.from('\n')]))
    expect(told(await readRelease(copy.folder, first))).toEqual([`alteredRelease ${path}`])
  })

  test('is refused when a file of it is missing', async () => {
    await rm(join(copy.folder, 'releases', first, 'catalog.json'))
    expect(told(await readRelease(copy.folder, first))).toEqual([`unreadableRelease releases/${first}`])
  })

  test('is refused although the index was made to fit, and names the document', async () => {
    await copy.edit(`releases/${first}/catalog.json`, 'Fit a longer lintel.', 'Fit a shorter lintel.')
    await copy.relock(first)
    expect(details(await readRelease(copy.folder, first))).toContain(`${bearing} is not as it was when the release was cut`)
  })

  test('is refused although only the order of keys or the spaces differ', async () => {
    await copy.edit(`releases/${first}/catalog.json`, '{\n', '{\n ')
    await copy.relock(first)
    expect(details(await readRelease(copy.folder, first))).toEqual(['catalog.json is not the one that the manifest names'])
  })

  test('is refused although the index was made to fit an altered manifest', async () => {
    await copy.edit(`releases/${first}/manifest.json`, '"cutFrom": null', '"cutFrom": "2025.1.0"')
    await copy.relock(first)
    expect(details(await readRelease(copy.folder, first))).toEqual(['the manifest is not what its own digest says'])
  })

  test('is refused when the manifest has another shape, or is none', async () => {
    await copy.edit(`releases/${first}/manifest.json`, '"cutFrom": null,', '"cutFrom": null, "extra": 1,')
    await copy.relock(first)
    expect(told(await readRelease(copy.folder, first))).toEqual([`faultyRelease releases/${first}/manifest.json`])
    await copy.write(`releases/${first}/manifest.json`, 'not json')
    await copy.relock(first)
    expect(told(await readRelease(copy.folder, first))).toEqual([`unreadableRelease releases/${first}`])
  })

  test('is refused under the name of another', async () => {
    await cp(join(copy.folder, 'releases', first), join(copy.folder, 'releases/2026.9.0'), { recursive: true })
    await copy.relock('2026.9.0')
    expect(details(await readRelease(copy.folder, '2026.9.0'))).toEqual([`the manifest is that of ${first}`])
  })

  test.each(['2030.1.0', '../..', '__proto__', 'constructor', ''])('is not looked for under a name that was not cut: %s', async (name) => {
    expect((await readRelease(copy.folder, name))).toMatchObject({ ok: false, problems: [{ code: 'unknownRelease' }] })
  })

  test('makes nothing readable of an index that is broken', async () => {
    await copy.write('releases/index.json', '{ "latest": {} }')
    expect(told(await readRelease(copy.folder, first))).toEqual(['unreadableRelease releases/index.json'])
    expect((await cut('2026.2.0')).join()).toContain('releases/index.json')
  })

  test('whose documents the code does not understand is not evaluated by', async () => {
    const manifest = JSON.parse(await copy.read(`releases/${first}/manifest.json`)) as object
    const text = (await copy.read(`releases/${first}/catalog.json`)).replace('"topic":"lintel"', '"topic":"lintels"')
    const documents = JSON.parse(text) as Record<string, unknown>
    const altered = { ...manifest, catalogFile: sha256Of(Buffer.from(text)), files: Object.entries(documents).map(([path, content]) => ({ path, digest: digestOf(content) })) }
    await copy.write(`releases/${first}/catalog.json`, text)
    await copy.write(`releases/${first}/manifest.json`, redigested(altered))
    await copy.relock(first)
    expect((await readRelease(copy.folder, first)).ok).toBe(true)
    expect(told(await loadRelease(copy.folder, first))).toContain(`faultyRelease ${first}: ${bearing}/topic`)
  })
})

describe('a signature', () => {
  const [ours, theirs] = [keyPair(), keyPair()]

  beforeEach(async () => {
    await cut(first)
  })

  test('that is demanded and not there refuses the release', async () => {
    expect(told(await loadRelease(copy.folder, first, publicKeysIn(ours.public)))).toEqual([`unsignedRelease releases/${first}/manifest.sig`])
    expect((await loadRelease(copy.folder, first)).ok).toBe(true)
  })

  test('by a trusted key vouches for the release', async () => {
    expect((await signRelease(copy.folder, first, ours.private)).ok).toBe(true)
    const keys = publicKeysIn(`${theirs.public}\n${ours.public}`)
    expect(await loaded(first, keys)).toMatchObject({ signedBy: keys[1]?.id })
    expect((await loaded(first)).signedBy).toBeNull()
  })

  test('by any other key does not, nor does no key at all', async () => {
    await signRelease(copy.folder, first, theirs.private)
    expect(told(await loadRelease(copy.folder, first, publicKeysIn(ours.public)))).toEqual([`unknownKey releases/${first}/manifest.sig`])
    expect(told(await loadRelease(copy.folder, first, []))).toEqual([`unknownKey releases/${first}/manifest.sig`])
  })

  test('that claims to be of a trusted key has to fit the manifest', async () => {
    await signRelease(copy.folder, first, theirs.private)
    const [claimed] = publicKeysIn(ours.public)
    const text = JSON.parse(await copy.read(`releases/${first}/manifest.sig`)) as Record<string, unknown>
    await copy.write(`releases/${first}/manifest.sig`, JSON.stringify({ ...text, key: claimed?.id }))
    expect(told(await loadRelease(copy.folder, first, publicKeysIn(ours.public)))).toEqual([`alteredRelease releases/${first}/manifest.sig`])
  })

  test('shows an alteration that everything else was made to fit', async () => {
    await signRelease(copy.folder, first, ours.private)
    const altered = (await copy.read(`releases/${first}/manifest.json`)).replace('invented for the tests', 'altered')
    await copy.write(`releases/${first}/manifest.json`, redigested(JSON.parse(altered) as object))
    await copy.relock(first)
    expect((await loadRelease(copy.folder, first)).ok).toBe(true)
    expect(told(await loadRelease(copy.folder, first, publicKeysIn(ours.public)))).toEqual([`alteredRelease releases/${first}/manifest.sig`])
  })

  test.each(['', 'not json', '{}', '{"algorithm":"none","key":"x","signature":""}'])('of another form is none: %s', async (text) => {
    await copy.write(`releases/${first}/manifest.sig`, text)
    expect(told(await loadRelease(copy.folder, first, publicKeysIn(ours.public)))).toEqual([`unsignedRelease releases/${first}/manifest.sig`])
  })

  test('is over the bytes of the manifest, for any tool to check', async () => {
    await signRelease(copy.folder, first, ours.private)
    const { signature } = JSON.parse(await copy.read(`releases/${first}/manifest.sig`)) as { signature: string }
    expect(verify(null, await readFile(join(copy.folder, 'releases', first, 'manifest.json')), ours.public, Buffer.from(signature, 'base64'))).toBe(true)
  })

  test('is not written over, nor put on a release that was altered', async () => {
    await signRelease(copy.folder, first, ours.private)
    expect(await signRelease(copy.folder, first, theirs.private)).toMatchObject({ ok: false, reasons: [expect.stringContaining('is there already')] })
    await rm(join(copy.folder, 'releases', first, 'manifest.sig'))
    await copy.edit(`releases/${first}/catalog.json`, '"4 [in_i]"', '"3 [in_i]"')
    expect(await signRelease(copy.folder, first, ours.private)).toMatchObject({ ok: false })
    expect(await readdir(join(copy.folder, 'releases', first))).not.toContain('manifest.sig')
  })

  test('needs Ed25519', async () => {
    const rsa = generateKeyPairSync('rsa', { modulusLength: 2048, publicKeyEncoding: { type: 'spki', format: 'pem' }, privateKeyEncoding: { type: 'pkcs8', format: 'pem' } })
    await expect(signRelease(copy.folder, first, rsa.privateKey)).rejects.toThrow('Ed25519')
    expect(() => publicKeysIn(rsa.publicKey)).toThrow('Ed25519')
  })

  test('is checked with keys from a file or from a folder, never with a private one', async () => {
    await copy.write('keys/a.pem', ours.public)
    await copy.write('keys/b.pem', theirs.public)
    await copy.write('keys/read-me.txt', 'not a key')
    expect(await readPublicKeys(join(copy.folder, 'keys'))).toHaveLength(2)
    expect((await readPublicKeys(join(copy.folder, 'keys/a.pem'))).map(({ id }) => id)).toEqual(publicKeysIn(ours.public).map(({ id }) => id))
    await copy.write('keys/c.pem', ours.private)
    await expect(readPublicKeys(join(copy.folder, 'keys'))).rejects.toThrow('private key')
    await expect(readPublicKeys(join(copy.folder, 'keys/read-me.txt'))).rejects.toThrow('no public key')
  })
})

describe('the newest release', () => {
  const ours = keyPair()

  test('is none where nothing was cut', async () => {
    expect(await newestRelease(copy.folder)).toEqual({ release: undefined, refused: [] })
  })

  test('is the last good one, with the reasons against later ones', async () => {
    await cut(first)
    await signRelease(copy.folder, first, ours.private)
    await raiseBearing()
    await cutNext(first, '2026.10.0')
    await cutNext('2026.10.0', '2026.11.0')
    expect((await newestRelease(copy.folder)).release?.manifest.release).toBe('2026.11.0')
    await copy.edit('releases/2026.11.0/catalog.json', '"5 1/2 [in_i]"', '"1 [in_i]"')
    expect((await newestRelease(copy.folder)).release?.manifest.release).toBe('2026.10.0')
    const { release, refused } = await newestRelease(copy.folder, publicKeysIn(ours.public))
    expect(release?.manifest.release).toBe(first)
    expect(refused.map(({ code, path }) => `${code} ${path}`)).toEqual(['alteredRelease releases/2026.11.0/catalog.json', 'unsignedRelease releases/2026.10.0/manifest.sig'])
  })

  test('is none where none is trusted', async () => {
    await cut(first)
    expect(await newestRelease(copy.folder, publicKeysIn(ours.public))).toMatchObject({ release: undefined, refused: [{ code: 'unsignedRelease' }] })
  })
})

/** What was cut never changes again: this is what fails when it does. */
describe('the releases of the catalog', async () => {
  const index = await readIndex(catalogFolder)
  const cuts = index.ok ? Object.keys(index.value) : []

  test('are in an index that can be read, and there is no other', async () => {
    expect(index.ok).toBe(true)
    expect(await strayReleases(catalogFolder)).toEqual([])
  })

  test('are byte for byte as they were cut, and can be evaluated by', async () => {
    const problems = await Promise.all(cuts.map((release) => loadRelease(catalogFolder, release)))
    expect(problems.flatMap((one) => (one.ok ? [] : one.problems))).toEqual([])
  })

  test('have the differences that their manifests state, as far as the method is that of today', async () => {
    expect(await staleDifferences(catalogFolder)).toEqual([])
  })

  test('are told apart from the catalog that is worked on: it is the release it calls itself, or calls itself something new', async () => {
    expect(await misnamed(catalogFolder)).toBeNull()
  })
})

describe('the checks of the releases', () => {
  test('find differences that cannot be reproduced', async () => {
    await cut(first)
    await raiseBearing()
    await cutNext(first, '2026.2.0')
    expect(await staleDifferences(copy.folder)).toEqual([])
    const altered = (await copy.read('releases/2026.2.0/manifest.json')).replace('"before": "pass"', '"before": "fail"')
    await copy.write('releases/2026.2.0/manifest.json', redigested(JSON.parse(altered) as object))
    await copy.relock('2026.2.0')
    expect(await staleDifferences(copy.folder)).toEqual(['2026.2.0'])
  })

  test('find a catalog that goes on under the name of a release', async () => {
    await cut(first)
    expect(await misnamed(copy.folder)).toBeNull()
    await copy.edit(bearing, 'Fit a longer lintel.', 'Fit another lintel.')
    expect(await misnamed(copy.folder)).toBe(first)
    await copy.edit('release.yaml', first, '2026.1.1')
    expect(await misnamed(copy.folder)).toBeNull()
  })
})

async function staleDifferences(folder: string): Promise<readonly string[]> {
  const names = await releasesIn(folder)
  const releases = await Promise.all((names.ok ? names.value : []).map((name) => loadRelease(folder, name)))
  const byName = new Map(releases.flatMap((one) => (one.ok ? [[one.value.manifest.release, one.value] as const] : [])))
  return [...byName.values()].filter(({ manifest, catalog }) => {
    const vectors = vectorsOf(catalog)
    if (manifest.method !== method || !vectors.ok) return false
    const previous = manifest.cutFrom === null ? null : (byName.get(manifest.cutFrom)?.catalog ?? null)
    return digestOf(releaseDifferences(previous, catalog, vectors.value)) !== digestOf(manifest.differences)
  }).map(({ manifest }) => manifest.release)
}

/** The release whose name the catalog bears without being it. */
async function misnamed(folder: string): Promise<string | null> {
  const [names, catalog] = [await releasesIn(folder), await loadCatalog(folder)]
  if (!names.ok || !catalog.ok) throw new Error('the catalog cannot be read')
  const { release, digest } = catalog.catalog
  if (!names.value.includes(release)) return null
  const read = await readRelease(folder, release)
  return read.ok && read.value.manifest.catalogDigest === digest ? null : release
}

async function cut(release: string): Promise<readonly string[]> {
  const answer = await cutRelease(copy.folder, release)
  return answer.ok ? [] : answer.reasons
}

async function cutNext(from: string, release: string): Promise<readonly string[]> {
  await copy.edit('release.yaml', from, release)
  return cut(release)
}

/** From four to five and a half inches, in the model code alone. */
async function raiseBearing(): Promise<void> {
  await copy.edit(bearing, 'inchPound: "4 [in_i]", si: "102 mm"', 'inchPound: "5 1/2 [in_i]", si: "140 mm"')
  await copy.edit(bearing, 'name: on the limit, facts', 'name: on the limit, edition: tms-402-2016, facts')
  await copy.edit('jurisdictions/aa-open-01/amendments/ord-1.yaml', 'old: { inchPound: "4 [in_i]" }', 'old: { inchPound: "5 1/2 [in_i]" }')
}

function working() {
  return workingIn(copy.folder)
}

async function workingIn(folder: string) {
  const answer = await loadCatalog(folder)
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems))
  return answer.catalog
}

async function loaded(release: string, trusted: Parameters<typeof loadRelease>[2] = null): Promise<LoadedRelease> {
  const answer = await loadRelease(copy.folder, release, trusted)
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems))
  return answer.value
}

/** The digests of evaluations of every reference opening, at home and by the model code. */
function answers(catalog: LoadedRelease['catalog']): readonly string[] {
  const vectors = vectorsOf(catalog)
  if (!vectors.ok) throw new Error(JSON.stringify(vectors.problems))
  return vectors.value.flatMap(({ opening, home, holdPoint }) =>
    [home, { jurisdiction: null, edition: 'irc-2021', asOf: home.asOf }].map((place) => digestOfAssessment(evaluate(opening, resolved(catalog, place), catalog, holdPoint))),
  )
}

/** An altered manifest with the digest that fits it, as somebody would write it who covers up. */
function redigested(manifest: object): string {
  const body = Object.fromEntries(Object.entries(manifest).filter(([key]) => key !== 'digest'))
  return JSON.stringify({ ...body, digest: digestOf(body) })
}

function told(answer: Verified<unknown>): readonly string[] {
  return answer.ok ? [] : answer.problems.map(({ code, path }) => `${code} ${path}`)
}

function details(answer: Verified<unknown>): readonly string[] {
  return answer.ok ? [] : answer.problems.map(({ detail }) => detail)
}

function keyPair(): { public: string; private: string } {
  const { publicKey, privateKey } = generateKeyPairSync('ed25519')
  return { public: publicKey.export({ type: 'spki', format: 'pem' }).toString(), private: privateKey.export({ type: 'pkcs8', format: 'pem' }).toString() }
}
