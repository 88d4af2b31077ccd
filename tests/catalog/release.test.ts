import { beforeAll, describe, expect, test } from 'vitest'
import type { Catalog, CatalogDocument } from '../../src/catalog/catalog.ts'
import { catalogDifferences } from '../../src/catalog/catalog-differences.ts'
import { catalogText, documentsIn, manifestFaults, manifestOf, releaseManifest, releaseName, type ReleaseDifferences } from '../../src/catalog/release.ts'
import { compareReleases, requiredVersion, versionFault } from '../../src/catalog/release-version.ts'
import type { Rule } from '../../src/catalog/rule.ts'
import { readCatalogFiles } from '../../src/store/catalog-files.ts'
import { catalogFolder, realCatalog } from './real-catalog.ts'
import { loadPatched, type Patch } from './small-catalog.ts'

const none: ReleaseDifferences = {
  rulesAdded: [], rulesRemoved: [], rulesChanged: [], requirements: [], outcomes: [], quantities: [],
  counts: { rulesAdded: 0, rulesRemoved: 0, rulesChanged: 0, requirements: 0, outcomes: 0, quantities: 0 },
}

describe('the name of a release', () => {
  test.each(['2026.1.0', '2026.0.0', '2031.12.100'])('may be %s', (name) => expect(releaseName.safeParse(name).success).toBe(true))

  test.each(['2026.01.0', '2026.1', '26.1.0', '2026.1.0-rc1', '../2026.1.0', '2026.1.00', '__proto__', ''])('may not be %s', (name) => expect(releaseName.safeParse(name).success).toBe(false))

  test('is ordered by its numbers', () => {
    expect(['2026.10.0', '2027.0.0', '2026.2.0', '2026.2.10', '2026.2.9'].toSorted(compareReleases)).toEqual(['2026.2.0', '2026.2.9', '2026.2.10', '2026.10.0', '2027.0.0'])
    expect(compareReleases('2026.1.0', '2026.1.0')).toBe(0)
  })
})

describe('the version', () => {
  const counting = (counts: Partial<ReleaseDifferences['counts']>): ReleaseDifferences => ({ ...none, counts: { ...none.counts, ...counts } })

  test.each(['outcomes', 'quantities', 'requirements'] as const)('rises in N when %s changed', (key) => {
    expect(requiredVersion('2026.3.7', counting({ [key]: 1 }))).toBe('2026.4.0')
  })

  test('rises in P for words, sources and evidence', () => {
    expect(requiredVersion('2026.3.7', counting({ rulesChanged: 40 }))).toBe('2026.3.8')
  })

  test('that is too small is refused, with the reason', () => {
    const changed = counting({ outcomes: 3 })
    expect(versionFault('2026.1.1', '2026.1.0', changed)).toContain('3 outcomes')
    expect(versionFault('2026.1.1', '2026.1.0', changed)).toContain('at least 2026.2.0')
    expect(versionFault('2026.1.0', '2026.1.0', none)).toContain('at least 2026.1.1')
    expect(versionFault('2025.9.9', '2026.1.0', none)).toContain('at least 2026.1.1')
  })

  test.each(['2026.2.0', '2026.5.3', '2027.0.0'])('%s is large enough after an outcome changed', (version) => {
    expect(versionFault(version, '2026.1.0', counting({ outcomes: 1 }))).toBeUndefined()
  })

  test('of the first release is free', () => expect(versionFault('2024.0.0', null, counting({ outcomes: 9 }))).toBeUndefined())
})

describe('the text of a release', () => {
  let documents: readonly CatalogDocument[]
  beforeAll(async () => {
    ({ documents } = await readCatalogFiles(catalogFolder))
  })

  test('gives every document of the catalog back, its keys in their order', () => {
    const again = documentsIn(catalogText(documents))
    expect(documents.length).toBeGreaterThan(200)
    expect(JSON.stringify(again)).toBe(JSON.stringify(documents.toSorted((a, b) => (a.path < b.path ? -1 : 1))))
  })

  test('does not depend on the order in which files were read', () => {
    expect(catalogText(documents.toReversed())).toBe(catalogText(documents))
  })

  test('has a line for each document, so that a change shows as one', () => {
    expect(catalogText(documents).trimEnd().split('\n')).toHaveLength(documents.length + 2)
  })
})

describe('the manifest', () => {
  const documents: readonly CatalogDocument[] = [{ path: 'b.yaml', content: { rule: 'x.y', title: 'B' } }, { path: 'a.yaml', content: { release: '2026.1.0' } }]
  const made = (catalog: Catalog) => manifestOf({ release: '2026.1.0', note: null, method: 'm/1', cutFrom: null, documents, catalog, differences: none })

  test('has its shape, and names every document in order', async () => {
    const manifest = made(await small())
    expect(releaseManifest.parse(JSON.parse(JSON.stringify(manifest)))).toEqual(manifest)
    expect(manifest.files.map(({ path }) => path)).toEqual(['a.yaml', 'b.yaml'])
    expect(manifestFaults(manifest, documents)).toEqual([])
  })

  test('counts the evidence of the whole catalog', async () => {
    const catalog = await realCatalog()
    const { primary, secondary, memory } = made(catalog).evidence
    expect(Math.min(primary, secondary, memory)).toBeGreaterThan(0)
    expect(primary + secondary + memory).toBe([...catalog.rules.values()].reduce((sum, { limits }) => sum + limits.length, 0))
  })

  test('finds what was altered, taken out or put in', async () => {
    const manifest = made(await small())
    expect(manifestFaults(manifest, [{ path: 'b.yaml', content: { rule: 'x.y', title: 'C' } }, { path: 'c.yaml', content: {} }])).toEqual([
      'a.yaml is missing', 'b.yaml is not as it was when the release was cut', 'c.yaml is not in the manifest',
    ])
  })

  test.each([{ note: 'another note' }, { cutFrom: '2025.1.0' }, { method: 'm/2' }, { differences: { ...none, rulesAdded: ['x.z'] } }])('finds that it was itself altered: %j', async (change) => {
    expect(manifestFaults({ ...made(await small()), ...change }, documents)).toEqual(['the manifest is not what its own digest says'])
  })
})

describe('what differs between two catalogs', () => {
  const spacing = 'rules/weep/spacing.yaml'
  const town = 'jurisdictions/aa-open-01/amendments/ord-1.yaml'

  test('is nothing between a catalog and itself', async () => {
    expect(await differing({})).toEqual({ rulesAdded: [], rulesRemoved: [], rulesChanged: [], requirements: [] })
  })

  test('is every rule where there was none before, those of amendments too', async () => {
    const catalog = await small()
    const { rulesAdded, requirements } = catalogDifferences(null, catalog)
    expect(rulesAdded).toEqual(['aa-open-01.weep.count', ...catalog.rules.keys()].toSorted())
    expect(requirements).toEqual([])
  })

  test.each<[string, Record<string, unknown>]>([
    ['words', { '/title': 'Spacing', '/statement': 'Other words.', '/revision': 2, '/remedy/beforeCoverUp': 'Other words.' }],
    ['sources', { '/limits/0/locator': 'R703.8.7', '/limits/0/note': 'Read again.' }],
    ['evidence', { '/limits/0/evidence': 'secondary', '/limits/0/readIn': 'https://law.example/text', '/limits/0/lastReviewed': '2027-01-01' }],
    ['examples', { '/examples/-': { name: 'near', edition: 'irc-2018', facts: { 'head.weeps.spacing': '30 in' }, outcome: 'pass' } }],
  ])('is a changed rule but no requirement for %s', async (_, change) => {
    expect(await differing({ set: { [spacing]: change } })).toMatchObject({ rulesChanged: ['weep.spacing'], requirements: [] })
  })

  test.each<[string, Patch['set']]>([
    ['the force', { [spacing]: { '/force': 'recommended' } }],
    ['when it applies', { [spacing]: { '/appliesWhen': { fact: 'head.flashing.present', is: true }, '/examples/0/facts/head.flashing.present': true, '/examples/1/facts/head.flashing.present': true, '/examples/-': { name: 'no flashing', facts: { 'head.flashing.present': false }, outcome: 'notApplicable' } } }],
    ['the comparator', { [spacing]: { '/limits/0/comparator': 'lessThan', '/examples/0': { name: 'on the limit', edition: 'irc-2018', facts: { 'head.weeps.spacing': '33 in' }, outcome: 'fail', margin: '0 mm' }, '/examples/-': { name: 'near', edition: 'irc-2018', facts: { 'head.weeps.spacing': '32 in' }, outcome: 'pass' } } }],
    ['the editions', { [spacing]: { '/limits/0/editions': ['2018'] } }],
  ])('is a requirement where %s changed', async (_, set) => {
    expect((await differing({ ...(set ? { set } : {}) })).requirements).toEqual(['rule weep.spacing'])
  })

  test('is a requirement where a rule is withdrawn, and a removed rule', async () => {
    expect(await differing({ set: { [spacing]: { '/status': 'withdrawn' } } })).toEqual({ rulesAdded: [], rulesRemoved: ['weep.spacing'], rulesChanged: [], requirements: ['rule weep.spacing'] })
  })

  test('is an added rule, mandatory or not, where one comes into force', async () => {
    const [draft, full] = [await small({ set: { 'rules/weep/spacing-recommended.yaml': { '/status': 'draft' } } }), await small()]
    expect(catalogDifferences(draft, full)).toMatchObject({ rulesAdded: ['weep.spacing-recommended'], requirements: ['rule weep.spacing-recommended'] })
  })

  test('is a requirement where local law changed, and with it what it inserts', async () => {
    expect((await differing({ set: { [town]: { '/effectiveFrom': '2021-04-01' } } })).requirements).toEqual(['amendment aa-open-01/ord-1'])
    expect(await differing({ set: { [town]: { '/modifications/1/new/title': 'Count' } } })).toMatchObject({ rulesChanged: ['aa-open-01.weep.count'], requirements: [] })
    expect((await differing({ set: { [town]: { '/modifications/0/new/locator': '9-304(b)' } } })).requirements).toEqual([])
    expect((await differing({ set: { [town]: { '/instrument/href': 'https://law.example/ord-1' } } })).requirements).toEqual([])
    expect((await differing({ set: { 'jurisdictions/aa-open/adoptions.yaml': { '/list/1/effectiveFrom': '2025-08-01', '/list/0/effectiveUntil': '2025-08-01' } } })).requirements).toEqual(['adoptions aa-open'])
    expect((await differing({ set: { 'jurisdictions/aa-open/jurisdiction.yaml': { '/localAmendment': 'permitted' } } })).requirements).toEqual(['jurisdiction aa-open'])
  })

  test('is a requirement where a figure changed, not where its source did', async () => {
    const table = 'tables/lintel.spans.yaml'
    expect((await differing({ set: { [table]: { '/locator': 'Table R703.8.3', '/edition': '2018', '/title': 'Spans' } } })).requirements).toEqual([])
    expect((await differing({ set: { [table]: { '/rows/0/span': { inchPound: '9 [ft_i]', si: '2743 mm' } } } })).requirements).toEqual(['table lintel.spans'])
  })
})

async function small(patch: Patch = {}): Promise<Catalog> {
  const loaded = await loadPatched(patch)
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.problems, null, 1))
  return loaded.catalog
}

async function differing(patch: Patch) {
  return catalogDifferences(await small(), await small(patch))
}

test('a key that nobody has thought of is taken to decide', async () => {
  const catalog = await small()
  const rule = catalog.rules.get('weep.spacing')
  const changed = { ...catalog, rules: new Map([...catalog.rules, ['weep.spacing', { ...rule, unheardOf: 1 } as unknown as Rule]]) }
  expect(catalogDifferences(catalog, changed).requirements).toEqual(['rule weep.spacing'])
})
