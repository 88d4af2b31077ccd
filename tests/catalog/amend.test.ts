import fc from 'fast-check'
import { beforeAll, describe, expect, test } from 'vitest'
import { amendment as amendmentSchema, type Amendment } from '../../src/catalog/amendment.ts'
import { assembleCatalog } from '../../src/catalog/assemble.ts'
import type { Catalog, CatalogDocument } from '../../src/catalog/catalog.ts'
import { digestOfText } from '../../src/catalog/digest.ts'
import { resolveRules } from '../../src/catalog/resolve.ts'
import type { ResolvedRule, RuleSet } from '../../src/catalog/rule-set.ts'
import { readCatalogFiles } from '../../src/store/catalog-files.ts'
import { catalogFolder, realCatalog, resolved, ruleIn } from './real-catalog.ts'

const county = 'us-xa-101'
const city = 'us-xa-101-2400000'
let catalog: Catalog
let documents: readonly CatalogDocument[]

beforeAll(async () => {
  catalog = await realCatalog()
  documents = (await readCatalogFiles(catalogFolder)).documents
})

const at = (jurisdiction: string, asOf: string, edition?: string) => resolved(catalog, { jurisdiction, asOf, edition })
const ordinance = { kind: 'ordinance', number: '2021-17', section: '9-304', adopted: '2021-03-08', href: 'https://law.example/us-xa-101/ord-2021-17' }

describe('a substitution', () => {
  test('of a limit and another of the statement of one rule are both kept, and the chain tells both', () => {
    const rule = ruleIn(at(city, '2021-04-07'), 'lintel.bearing-length')
    expect(rule).toMatchObject({
      comparator: 'notLessThan',
      limit: { governing: 'inchPound', inchPound: '6 [in_i]', si: '152 mm', locator: '9-304(a)', publication: 'irc', evidence: 'primary' },
      rule: { revision: 1, statement: 'Each end of a lintel over an opening in anchored veneer bears on solid or grouted masonry for at least the stated length.' },
    })
    const step = { layer: county, action: 'substitution', publication: null, edition: null, readIn: null, document: 'us-xa-101/ord-2021-17', instrument: ordinance, effectiveFrom: '2021-04-07' }
    expect(rule.chain).toEqual([
      { layer: 'modelCode', action: 'published', publication: 'irc', edition: '2018', locator: 'R703.8.3', readIn: null, document: null, modification: null, part: null, instrument: null, effectiveFrom: null, old: null, new: 'at least 4 in (102 mm)' },
      { layer: 'us-xa', action: 'adoption', publication: 'irc', edition: '2018', locator: null, readIn: null, document: 'us-xa/irc-2018', modification: null, part: null, effectiveFrom: '2020-01-01', old: null, new: null,
        instrument: { kind: 'administrativeRule', number: '210-30', section: '01', adopted: '2019-09-16', href: 'https://law.example/us-xa/rule-210-30' } },
      { ...step, modification: 'm1', part: 'limit', locator: '9-304(a)', old: 'at least 4 in (102 mm)', new: 'at least 6 in (152 mm)' },
      { ...step, modification: 'm2', part: 'statement', locator: '9-304(b)', old: catalog.rules.get('lintel.bearing-length')?.statement, new: rule.rule.statement },
    ])
  })

  test('binds from the day on, in the layer and in all within it, and nowhere else', () => {
    const inches = (place: string, asOf: string) => ruleIn(at(place, asOf), 'lintel.bearing-length').limit
    expect(inches(county, '2021-04-06')).toMatchObject({ inchPound: '4 [in_i]' })
    expect(inches(county, '2021-04-07')).toMatchObject({ inchPound: '6 [in_i]' })
    expect(inches(city, '2021-04-07')).toMatchObject({ inchPound: '6 [in_i]' })
    expect(inches('us-xa', '2021-04-07')).toMatchObject({ inchPound: '4 [in_i]' })
    expect(inches('us-xa-102', '2021-04-07')).toMatchObject({ inchPound: '4 [in_i]' })
  })
})

test('an insertion adds a rule in its own layer, with itself as its source', () => {
  const rule = ruleIn(at(city, '2022-03-01'), `${city}.weep.count-per-head`)
  expect(rule).toMatchObject({ comparator: 'notLessThan', limit: { inchPound: '2', publication: `${city}-code`, locator: '14-212(c)' } })
  expect(rule.chain).toMatchObject([{ layer: city, action: 'insertion', document: `${city}/ord-2022-05`, modification: 'm2', locator: '14-212(c)', old: null, new: 'at least 2' }])
  for (const set of [at(city, '2022-02-28'), at(county, '2022-03-01')]) expect(set.rules.map((one) => one.rule.rule)).not.toContain(rule.rule.rule)
})

test('a repeal takes the rule out and tells where it came from, who repealed it and why', () => {
  const set = at(city, '2020-03-01')
  expect(set.rules.map(({ rule }) => rule.rule)).not.toContain('air-space.corrugated-tie-maximum')
  expect(set.repealed).toMatchObject([{
    rule: { rule: 'air-space.corrugated-tie-maximum' },
    reason: 'Corrugated ties are not allowed in this state at all, see m2.',
    chain: [{ action: 'published', edition: '2018' }, { action: 'adoption', document: 'us-xa/irc-2018' }, { layer: 'us-xa', action: 'repeal', document: 'us-xa/rule-210-31', modification: 'm1', effectiveFrom: '2020-03-01' }],
  }])
  expect(ruleIn(at(city, '2020-02-29'), 'air-space.corrugated-tie-maximum').limit).toMatchObject({ inchPound: '1 1/2 [in_i]' })
})

test('a renumbering changes where a rule stands and nothing else', () => {
  const [before, after] = ['2020-02-29', '2020-03-01'].map((asOf) => ruleIn(at('us-xa', asOf), 'weep.size'))
  expect(after?.limit).toEqual({ ...before?.limit, locator: '210-31-07(c)' })
  expect(after?.rule).toEqual(before?.rule)
  expect(after?.chain).toMatchObject([...(before?.chain ?? []), { action: 'renumbering', modification: 'm3', old: 'R703.8.6', new: '210-31-07(c)', locator: '210-31-07(c)' }])
})

describe('an amendment of one edition', () => {
  test('is not inherited by the next', () => {
    expect(ruleIn(at(county, '2025-06-30'), 'lintel.bearing-length').limit).toMatchObject({ inchPound: '6 [in_i]' })
    expect(ruleIn(at(county, '2025-07-01'), 'lintel.bearing-length').limit).toMatchObject({ inchPound: '4 [in_i]', locator: 'R703.8.3' })
    expect(ruleIn(at(county, '2026-01-01'), 'lintel.bearing-length').limit).toMatchObject({ inchPound: '6 [in_i]' })
    expect(ruleIn(at('us-xa', '2025-07-01'), 'weep.size').limit.locator).toBe('R703.8.6')
  })

  test('goes with the edition that is asked for, not with the date alone', () => {
    expect(ruleIn(at(county, '2022-01-01', 'irc-2021'), 'lintel.bearing-length').limit).toMatchObject({ inchPound: '4 [in_i]' })
    expect(ruleIn(at(county, '2025-12-31', 'irc-2018'), 'lintel.bearing-length').limit).toMatchObject({ inchPound: '6 [in_i]' })
  })
})

describe('amendments of one layer', () => {
  const [first, second] = [ofWeeps('ord-1', '2021-01-01', '24 [in_i]', '610 mm'), ofWeeps('ord-2', '2022-01-01', '16 [in_i]', '406 mm')]
  const spacingOn = (asOf: string, ...amendments: readonly Amendment[]) =>
    ruleIn(resolved({ ...catalog, amendments }, { jurisdiction: county, asOf }), 'weep.spacing').limit

  test('end on the day that is written, which is not included', () => {
    const ended = { ...first, effectiveUntil: '2021-06-01' }
    expect(spacingOn('2021-05-31', ended)).toMatchObject({ inchPound: '24 [in_i]' })
    expect(spacingOn('2021-06-01', ended)).toMatchObject({ inchPound: '33 [in_i]' })
  })

  test('are told in the chain by date, whatever order they are held in', () => {
    const renumbered: Amendment = { ...second, modifications: [{ modification: 'm1', kind: 'renumbering', target: { rule: 'weep.size' }, old: { locator: 'R703.8.6' }, new: { locator: '10' } }] }
    const reworded: Amendment = { ...first, modifications: [{ modification: 'm1', kind: 'substitution', target: { rule: 'weep.size', part: 'statement' }, old: { digest: digestOfText(catalog.rules.get('weep.size')?.statement ?? '') }, new: { text: 'Each weep is wide enough.', locator: '9' } }] }
    for (const amendments of [[reworded, renumbered], [renumbered, reworded]]) {
      const { chain } = ruleIn(resolved({ ...catalog, amendments }, { jurisdiction: county, asOf: '2022-01-01' }), 'weep.size')
      expect(chain.slice(2).map(({ document, action }) => `${document} ${action}`)).toEqual([`${county}/ord-1 substitution`, `${county}/ord-2 renumbering`])
    }
  })

  test('give way to the one that supersedes them, from the day on which that one is in force', () => {
    const superseding = { ...second, supersedes: [first.amendment] }
    expect(spacingOn('2021-12-31', first, superseding)).toMatchObject({ inchPound: '24 [in_i]' })
    expect(spacingOn('2022-01-01', first, superseding)).toMatchObject({ inchPound: '16 [in_i]' })
    expect(spacingOn('2022-01-01', superseding, first)).toMatchObject({ inchPound: '16 [in_i]' })
  })

  test('that compete in a catalog nobody has checked are a fault, and neither wins', () => {
    expect(resolveRules({ ...catalog, amendments: [first, second] }, { jurisdiction: county, asOf: '2022-01-01' })).toMatchObject({
      ok: false, problems: [{ code: 'catalogFault', detail: expect.stringContaining(`${county}/ord-2#m1 and ${county}/ord-1#m1 both change weep.spacing`) as string }],
    })
  })

  test('are bound by the strictest word of any outer layer, though the nearest permits all', () => {
    const looser = { ...ofWeeps('ord-3', '2021-01-01', '36 [in_i]', '914 mm'), jurisdiction: city }
    expect(resolveRules({ ...catalog, amendments: [looser] }, { jurisdiction: city, asOf: '2022-01-01' })).toMatchObject({ ok: false, problems: [{ detail: expect.stringContaining('allows only stricter rules') as string }] })
    const state = { ...looser, jurisdiction: 'us-xa' }
    expect(ruleIn(resolved({ ...catalog, amendments: [state] }, { jurisdiction: city, asOf: '2022-01-01' }), 'weep.spacing').limit).toMatchObject({ inchPound: '36 [in_i]' })
  })

  function ofWeeps(id: string, effectiveFrom: string, inchPound: string, si: string): Amendment {
    return {
      amendment: `${county}/${id}`, jurisdiction: county, amends: { publication: 'irc', editions: ['2018'] }, instrument: { kind: 'ordinance', number: id, adopted: '2020-06-01' },
      effectiveFrom, effectiveUntil: null, application: 'permitApplicationDate', supersedes: [], examples: [],
      modifications: [{ modification: 'm1', kind: 'substitution', target: { rule: 'weep.spacing', part: 'limit' }, old: { inchPound: '33 [in_i]' }, new: { governing: 'inchPound', inchPound, si, locator: '9' } }],
    }
  }
})

describe('the order of things', () => {
  const places = ['2019-06-01', '2021-05-01', '2024-01-01', '2025-07-01', '2026-03-01'].flatMap((asOf) => ['us-xa', city].map((jurisdiction) => ({ jurisdiction, asOf })))
  const answers = (changed: readonly CatalogDocument[]) => {
    const { catalog: assembled, problems } = assembleCatalog(changed)
    return { digest: assembled.digest, problems, sets: places.map((place) => resolved(assembled, place)) }
  }

  test('of the files does not matter, not even for the digest', () => {
    const expected = answers(documents)
    expect(expected.sets.at(-1)?.rules.length).toBeGreaterThan(50)
    fc.assert(
      fc.property(shuffled(documents.map((_, index) => index)), (order) => {
        expect(answers(order.flatMap((index) => documents[index] ?? []))).toEqual(expected)
      }),
      { numRuns: 25 },
    )
  })

  test('of the modifications in an amendment, and the names of the files, do not matter for what applies', () => {
    const amendments = documents.filter(({ path }) => path.includes('/amendments/'))
    const others = documents.filter(({ path }) => !path.includes('/amendments/'))
    const expected = answers(documents).sets.map(applying)
    const inAnyOrder = fc.tuple(...amendments.map(({ content }) => shuffled((content as Amendment).modifications).map((modifications) => ({ ...(content as Amendment), modifications }))))
    fc.assert(
      fc.property(inAnyOrder, shuffled(amendments.map(({ path }) => path)), (contents, paths) => {
        const changed = contents.map((content, index) => ({ path: paths[index] ?? '', content }))
        expect(answers([...others, ...changed]).sets.map(applying)).toEqual(expected)
      }),
      { numRuns: 25 },
    )
  })

  function shuffled<T>(items: readonly T[]): fc.Arbitrary<T[]> {
    return fc.shuffledSubarray([...items], { minLength: items.length, maxLength: items.length })
  }

  /** A chain tells the modifications of one amendment in the order in which they are written. */
  function applying({ rules, repealed }: RuleSet) {
    const unordered = ({ chain, ...rest }: Pick<ResolvedRule, 'chain'>) => ({ ...rest, chain: chain.toSorted((a, b) => `${a.document} ${a.modification}`.localeCompare(`${b.document} ${b.modification}`)) })
    return { rules: rules.map(unordered), repealed: repealed.map(unordered) }
  }
})

describe('every amendment of the catalog', () => {
  test('shows by example what holds on the day before it and on its first day', () => {
    for (const { amendment, effectiveFrom, examples } of catalog.amendments) {
      const dates = examples.map(({ asOf }) => asOf)
      const before = new Date(Date.parse(effectiveFrom) - 86_400_000).toISOString().slice(0, 10)
      expect(dates, amendment).toEqual(expect.arrayContaining([before, effectiveFrom]))
    }
  })

  test('is of an invented place that says so and has an invented instrument, or of a real one and has a real one', () => {
    const invented = (id: string) => catalog.jurisdictions.get(id)?.note?.startsWith('Invented for demonstration') ?? false
    const acts = [...catalog.amendments.map(({ jurisdiction, instrument }) => ({ jurisdiction, instrument })), ...[...catalog.adoptions].flatMap(([jurisdiction, list]) => list.map(({ instrument }) => ({ jurisdiction, instrument })))]
    expect(acts.filter(({ jurisdiction, instrument }) => invented(jurisdiction) !== (instrument.href?.startsWith('https://law.example/') ?? false))).toEqual([])
    expect([...catalog.jurisdictions.keys()].filter((id) => id.startsWith('us-x') !== invented(id))).toEqual([])
  })

  test('of a place that is not invented says how well its text is known, and where it was read', () => {
    const real = catalog.amendments.filter(({ jurisdiction }) => !jurisdiction.startsWith('us-x'))
    expect(real.filter(({ evidence, readIn, lastReviewed }) => evidence === undefined || lastReviewed === undefined || (evidence !== 'memory' && readIn === undefined)).map(({ amendment }) => amendment)).toEqual([])
  })

  test('shows all four kinds between them, and both parts that are changed most', () => {
    const kinds = catalog.amendments.flatMap(({ modifications }) => modifications.map((one) => (one.kind === 'substitution' ? `substitution of the ${one.target.part}` : one.kind)))
    expect([...new Set(kinds)]).toEqual(expect.arrayContaining(['substitution of the limit', 'substitution of the statement', 'insertion', 'repeal', 'renumbering']))
  })
})

test('a fifth kind of change is refused until it is designed', () => {
  const [amendment] = catalog.amendments
  const suspended = { ...amendment, modifications: [{ modification: 'm1', kind: 'suspension', target: { rule: 'weep.size' }, old: { revision: 1 }, reason: 'For a year.' }] }
  expect(amendmentSchema.safeParse(amendment).success).toBe(true)
  expect(amendmentSchema.safeParse(suspended).success).toBe(false)
})
