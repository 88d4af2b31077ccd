import { beforeAll, describe, expect, test } from 'vitest'
import type { Catalog } from '../../src/catalog/catalog.ts'
import { pathTo, resolveRules, type Place } from '../../src/catalog/resolve.ts'
import { realCatalog, resolved, ruleIn } from './real-catalog.ts'
import { loadPatched } from './small-catalog.ts'

const city = 'us-xa-101-2400000'
let catalog: Catalog
let small: Catalog

beforeAll(async () => {
  catalog = await realCatalog()
  const loaded = await loadPatched({})
  if (!loaded.ok) throw new Error('the small catalog does not load')
  small = loaded.catalog
})

describe('the path of layers', () => {
  test('goes from the outermost layer to the place', () => {
    expect(pathTo(catalog, city)).toEqual(['us', 'us-xa', 'us-xa-101', city])
  })

  test('goes by "within", which may leave a level out', () => {
    expect(pathTo(catalog, 'us-xb-5200000')).toEqual(['us', 'us-xb', 'us-xb-5200000'])
  })

  test.each([
    ['a city nobody knows in a county that is known', 'us-xa-101-9999999', 'us-xa-101'],
    ['a county nobody knows in a state that is known', 'us-xa-999', 'us-xa'],
    ['a city in a county nobody knows', 'us-xa-999-1', 'us-xa'],
    ['a state nobody knows', 'us-zz', 'us'],
  ])('%s is resolved at the nearest layer, and the answer says so', (_, jurisdiction, at) => {
    const set = resolved(catalog, { jurisdiction, asOf: '2026-03-01' })
    expect(set).toMatchObject({ jurisdiction, resolvedAt: at })
    expect(set.rules).toEqual(resolved(catalog, { jurisdiction: at, asOf: '2026-03-01' }).rules)
  })

  test('a place of which no layer is known is refused', () => {
    expect(resolveRules(catalog, { jurisdiction: 'zz-101', asOf: '2026-03-01' })).toMatchObject({
      ok: false, problems: [{ code: 'unknownJurisdiction', pointer: '/jurisdiction', detail: expect.stringContaining('"zz-101"') as string }],
    })
  })

  test.each(['a', 'b', 'c', 'a-1'])('a circle of layers has no path, from %s too', (place) => {
    const within: Readonly<Record<string, string>> = { a: 'b', b: 'a', c: 'a' }
    const layer = { name: 'A place', level: 'state', localAmendment: 'permitted' } as const
    const jurisdictions = new Map(Object.entries(within).map(([jurisdiction, outer]) => [jurisdiction, { ...layer, jurisdiction, within: outer }]))
    expect(pathTo({ ...catalog, jurisdictions }, place)).toBeUndefined()
  })
})

describe('the adopted edition', () => {
  test.each([
    ['2013-12-31', null, []],
    ['2014-01-01', 'us-xa/irc-2012', ['irc-2012']],
    ['2019-12-31', 'us-xa/irc-2012', ['irc-2012']],
    ['2020-01-01', 'us-xa/irc-2018', ['irc-2018']],
    ['2025-06-30', 'us-xa/irc-2018', ['irc-2018']],
    ['2025-07-01', 'us-xa/irc-2021', ['irc-2021']],
    ['2099-01-01', 'us-xa/irc-2021', ['irc-2021']],
  ])('on %s it is %s: a beginning is included, an end is not', (asOf, adoption, editions) => {
    expect(resolved(catalog, { jurisdiction: city, asOf })).toMatchObject({ adoption, editions, adopted: adoption !== null })
  })

  test('brings the standard that the code refers to, and the limits of both', () => {
    const set = resolved(catalog, { jurisdiction: 'us-xb-5200000', asOf: '2026-03-01' })
    expect(set).toMatchObject({ resolvedAt: 'us-xb-5200000', adoption: 'us-xb/ibc-2021', editions: ['ibc-2021', 'tms-402-2016'] })
    expect(ruleIn(set, 'weep.spacing')).toMatchObject({
      comparator: 'lessThan', limit: { publication: 'tms-402', locator: '12.1.6.2' },
      chain: [{ layer: 'standard', publication: 'tms-402', edition: '2016' }, { layer: 'us-xb', action: 'adoption', document: 'us-xb/ibc-2021', publication: 'ibc', edition: '2021' }],
    })
    expect(ruleIn(set, 'weep.present').chain[0]).toMatchObject({ layer: 'modelCode', publication: 'ibc', edition: '2021' })
  })

  test('has no mandatory rules but its own and those of the standards it brings', () => {
    const set = resolved(catalog, { jurisdiction: 'us-xb', asOf: '2026-03-01' })
    const cited = set.rules.filter(({ rule }) => rule.force === 'mandatory').map(({ limit }) => limit.publication)
    expect([...new Set(cited)].toSorted()).toEqual(['ibc', 'tms-402'])
  })

  test('is that of the innermost layer that has adopted any', () => {
    const own = { adoption: 'us-xa-101/irc-2024', publication: 'irc', edition: '2024', effectiveFrom: '2026-01-01', effectiveUntil: null, instrument: { kind: 'ordinance', number: '1', adopted: '2025-10-01' } } as const
    const changed = { ...catalog, adoptions: new Map([...catalog.adoptions, ['us-xa-101', [own]]]) }
    expect(resolved(changed, { jurisdiction: city, asOf: '2026-03-01' }).adoption).toBe('us-xa-101/irc-2024')
    expect(resolved(changed, { jurisdiction: 'us-xa', asOf: '2026-03-01' }).adoption).toBe('us-xa/irc-2021')
    expect(resolved(changed, { jurisdiction: city, asOf: '2025-12-31' }).adoption).toBe('us-xa/irc-2021')
  })

  test('is taken as asked for, whatever is adopted', () => {
    const set = resolved(catalog, { jurisdiction: 'us-xa', asOf: '2026-03-01', edition: 'irc-2012' })
    expect(set).toMatchObject({ adoption: null, editions: ['irc-2012'], adopted: true })
    expect(ruleIn(set, 'lintel.bearing-length').limit.locator).toBe('R703.7.3')
  })

  test('may be asked for without a place: the published texts alone, with no adoption and no amendment', () => {
    const set = resolved(catalog, { jurisdiction: null, asOf: '2026-03-01', edition: 'irc-2021' })
    expect(set).toMatchObject({ jurisdiction: null, resolvedAt: null, adoption: null, repealed: [] })
    expect(set.rules.every(({ chain }) => chain.length === 1 && chain[0]?.action === 'published')).toBe(true)
  })

  test('is refused when it is not one of a code', () => {
    for (const edition of ['irc-1066', 'bia-tn-28b-2005']) {
      expect(resolveRules(catalog, { jurisdiction: 'us-xa', asOf: '2026-03-01', edition })).toMatchObject({ ok: false, problems: [{ code: 'unknownEdition', pointer: '/edition' }] })
    }
  })
})

describe('with nothing adopted', () => {
  test.each<readonly [string, Place]>([
    ['before the first adoption', { jurisdiction: city, asOf: '2013-12-31' }],
    ['in a country that adopts nothing', { jurisdiction: 'us', asOf: '2026-03-01' }],
    ['for a code that is not the adopted one', { jurisdiction: 'us-xa', asOf: '2026-03-01', publication: 'ibc' }],
    ['for the published texts without an edition', { jurisdiction: null, asOf: '2026-03-01' }],
  ])('no amendment applies %s, and the mandatory rules are still named', (_, place) => {
    const set = resolved(catalog, place)
    expect(set).toMatchObject({ adopted: false, adoption: null, editions: [], repealed: [] })
    expect(ruleIn(set, 'weep.spacing').chain).toHaveLength(1)
  })
})

describe('with several codes adopted', () => {
  const both = () => {
    const ibc = { adoption: 'us-xa/ibc-2021', publication: 'ibc', edition: '2021', effectiveFrom: '2025-07-01', effectiveUntil: null, instrument: { kind: 'act', number: '9', adopted: '2025-01-01' } } as const
    return { ...catalog, adoptions: new Map([...catalog.adoptions, ['us-xa', [...(catalog.adoptions.get('us-xa') ?? []), ibc]]]) }
  }

  test('which one governs must be said, and the answer names them', () => {
    expect(resolveRules(both(), { jurisdiction: 'us-xa', asOf: '2025-07-01' })).toMatchObject({
      ok: false, problems: [{ code: 'severalCodesAdopted', pointer: '/publication', detail: 'us-xa has adopted us-xa/irc-2021 and us-xa/ibc-2021. Say which code governs this building: "publication": "irc" or "ibc".' }],
    })
  })

  test('the one that is meant applies', () => {
    expect(resolved(both(), { jurisdiction: 'us-xa', asOf: '2025-07-01', publication: 'ibc' }).editions).toEqual(['ibc-2021', 'tms-402-2016'])
    expect(resolved(both(), { jurisdiction: 'us-xa', asOf: '2025-07-01', publication: 'irc' }).editions).toEqual(['irc-2021'])
  })

  test('nothing needs saying on a day on which only one is in force', () => {
    expect(resolved(both(), { jurisdiction: 'us-xa', asOf: '2025-06-30' }).editions).toEqual(['irc-2018'])
  })
})

describe('recommendations', () => {
  const on = (asOf: string) => resolved(small, { jurisdiction: 'aa-open', asOf }).rules.find(({ rule }) => rule.rule === 'weep.spacing-recommended')

  test.each([
    ['2005-12-01', '2005', '24 [in_i]'],
    ['2010-05-31', '2005', '24 [in_i]'],
    ['2010-06-01', '2010', '24 [in_i]'],
    ['2024-04-30', '2010', '24 [in_i]'],
    ['2024-05-01', '2024', '16 [in_i]'],
  ])('on %s come from the newest note issued by then, that of %s', (asOf, edition, inchPound) => {
    expect(on(asOf)).toMatchObject({ limit: { inchPound }, chain: [{ layer: 'practice', publication: 'note', edition }] })
  })

  test('are not there before the first note is issued', () => {
    expect(on('2005-11-30')).toBeUndefined()
  })

  test('do not depend on what is adopted', () => {
    const recommendedAt = (place: Place) => resolved(catalog, place).rules.filter(({ rule }) => rule.force === 'recommended')
    const published = recommendedAt({ jurisdiction: null, asOf: '2026-03-01', edition: 'irc-2012' })
    expect(published.length).toBeGreaterThan(10)
    expect(recommendedAt({ jurisdiction: 'us-xb', asOf: '2026-03-01' })).toEqual(published)
  })
})

test('rules come sorted by id, whatever order they are held in', () => {
  const place = { jurisdiction: 'aa-open', asOf: '2026-03-01' }
  const reversed = { ...small, rules: new Map([...small.rules].toReversed()) }
  expect(resolved(reversed, place)).toEqual(resolved(small, place))
  expect(resolved(reversed, place).rules.map(({ rule }) => rule.rule)).toEqual(['flashing.head-present', 'lintel.bearing-length', 'weep.kind', 'weep.spacing', 'weep.spacing-recommended'])
})

test.each(['draft', 'withdrawn'] as const)('a rule that is %s does not come at all', (status) => {
  const rules = new Map([...small.rules].map(([id, rule]) => [id, id === 'weep.spacing' ? { ...rule, status } : rule]))
  expect(resolved({ ...small, rules }, { jurisdiction: 'aa-open', asOf: '2026-03-01' }).rules.map(({ rule }) => rule.rule)).not.toContain('weep.spacing')
})
