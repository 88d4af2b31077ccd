import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import type { Amendment } from '../../src/catalog/amendment.ts'
import { assembleCatalog, pathOfAmendment } from '../../src/catalog/assemble.ts'
import type { Catalog, CatalogDocument, CatalogProblem } from '../../src/catalog/catalog.ts'
import { checkCatalog } from '../../src/catalog/checks/check-catalog.ts'
import { resolveRules } from '../../src/catalog/resolve.ts'
import { conditionDigest } from '../../src/catalog/substitute.ts'
import { checkExamples } from '../../src/evaluation/check-examples.ts'
import { checkQuantities } from '../../src/evaluation/check-quantities.ts'
import { validateAmendment } from '../../src/evaluation/validate-amendment.ts'
import { withAmendments } from '../../src/evaluation/with-amendments.ts'
import { readCatalogFiles } from '../../src/store/catalog-files.ts'
import { catalogFolder, realCatalog, resolved, ruleIn } from '../catalog/real-catalog.ts'
import { patchedDocuments, type Patch } from '../catalog/small-catalog.ts'

const county = 'us-xa-101'
const city = 'us-xa-101-2400000'
const isAmendment = ({ path }: CatalogDocument) => path.includes('/amendments/')
let catalog: Catalog
let documents: readonly CatalogDocument[]

beforeAll(async () => {
  catalog = await realCatalog()
  documents = (await readCatalogFiles(catalogFolder)).documents
})

const bearing = 'lintel.bearing-length'

/** An ordinance of the county on weeps, which nobody there has touched so far. */
function ordinance(over: Partial<Amendment> = {}): Amendment {
  return {
    amendment: `${county}/ord-2027-1`, jurisdiction: county, amends: { publication: 'irc', editions: ['2021'] }, instrument: { kind: 'ordinance', number: '2027-1', adopted: '2026-11-02' },
    effectiveFrom: '2027-01-01', effectiveUntil: null, application: 'permitApplicationDate', supersedes: [],
    modifications: [substitution('weep.size', { inchPound: '3/16 [in_i]' }, { governing: 'inchPound', inchPound: '1/4 [in_i]', si: '6.4 mm', locator: '1' })],
    examples: [{ name: 'a small weep', rule: 'weep.size', asOf: '2027-01-01', facts: { 'head.support.kind': 'looseSteelAngle', 'head.weeps.kind': 'openHeadJoint', 'head.weeps.diameter': '3/16 in' }, outcome: 'fail' }],
    ...over,
  }
}

function substitution(rule: string, old: object, next: object, modification = 'm1'): Amendment['modifications'][number] {
  return { modification, kind: 'substitution', target: { rule, part: 'limit' }, old, new: next } as Amendment['modifications'][number]
}

const validated = (...amendments: readonly unknown[]) => validateAmendment(catalog, amendments.map((content, index) => ({ path: `draft-${index + 1}`, content })))
const placesOf = (problems: readonly CatalogProblem[]) => problems.map(({ code, path, pointer }) => `${code} at ${path}#${pointer}`).toSorted()

describe('a new amendment', () => {
  test('that nothing stands in the way of has no problems', () => {
    expect(validated(ordinance())).toEqual({ amendments: [ordinance()], problems: [], affected: [], reviewNeeded: [] })
  })

  test('is told all that is wrong with it at once, with pointers', () => {
    const wrong = { ...ordinance(), tittle: 'Weeps', effectiveFrom: '2027-13-01', modifications: [{ kind: 'delete' }, { modification: 'm2', kind: 'repeal', target: { rule: 'weep.size' }, old: { revision: 'one' }, reason: 'No.' }, 7] }
    expect(placesOf(validated(wrong).problems)).toEqual([
      'shape at draft-1#/effectiveFrom', 'shape at draft-1#/modifications/0/kind', 'shape at draft-1#/modifications/1/old/revision', 'shape at draft-1#/modifications/2', 'shape at draft-1#/tittle',
    ])
  })

  test('is told what it cannot do, where several things are wrong', () => {
    const { problems, affected } = validated(ordinance({
      amends: { publication: 'irc', editions: ['2021', '1066'] },
      modifications: [
        substitution('weep.size', { inchPound: '1/8 [in_i]' }, { governing: 'inchPound', inchPound: '1/4 [in_i]', si: '60 mm', locator: '1' }),
        substitution('weep.sise', { inchPound: '1/8 [in_i]' }, { governing: 'inchPound', inchPound: '1/4 [in_i]', si: '6.4 mm', locator: '1' }),
        substitution('weep.spacing', { inchPound: '33 [in_i]' }, { governing: 'inchPound', inchPound: '34 [in_i]', si: '864 mm', locator: '1' }, 'm2'),
      ],
    }))
    expect(affected).toEqual([])
    expect(placesOf(problems)).toEqual([
      'duplicate at draft-1#/modifications/1/modification', 'lessStringent at draft-1#/modifications/2', 'pairMismatch at draft-1#/modifications/0/new', 'staleAmendment at draft-1#/modifications/0',
      'unknownPublication at draft-1#/amends/editions', 'unknownTarget at draft-1#/modifications/1',
    ])
  })

  test('has its examples run', () => {
    const [example] = ordinance().examples
    if (!example) throw new Error('the ordinance has no example')
    expect(placesOf(validated(ordinance({ examples: [{ ...example, outcome: 'pass' }] })).problems)).toEqual(['exampleFailed at draft-1#/examples/0'])
  })

  test('may not take the id of one that is there, nor two new ones the same', () => {
    const [first] = catalog.amendments
    expect(placesOf(validated(first).problems)).toEqual(['duplicate at draft-1#/amendment'])
    expect(placesOf(validated(ordinance(), ordinance()).problems)).toEqual(['duplicate at draft-2#/amendment'])
  })

  test.each([[null], [7], ['text'], [[]], [{}], [{ rule: 'weep.size' }]])('%j is refused as one that is none', (content) => {
    const { amendments, problems } = validateAmendment(catalog, [{ path: 'draft', content }])
    expect(amendments).toEqual([])
    expect(new Set(problems.map(({ code }) => code))).toEqual(new Set(['shape']))
  })

  test('that repeals where only stricter rules are allowed may do so, and is flagged for somebody to read', () => {
    const repeal = ordinance({
      modifications: [{ modification: 'm1', kind: 'repeal', target: { rule: 'weep.size' }, old: { revision: catalog.rules.get('weep.size')?.revision ?? 0 }, reason: 'See section 4.' }],
      examples: [{ name: 'gone', rule: 'weep.size', asOf: '2027-01-01', facts: {}, outcome: 'repealed' }],
    })
    const flagged = [{ amendment: `${county}/ord-2027-1`, modification: 'm1', rule: 'weep.size', reason: 'See section 4.' }]
    expect(validated(repeal)).toMatchObject({ problems: [], affected: [], reviewNeeded: flagged })
    expect(validated({ ...repeal, amendment: 'us-xa/rule-9', jurisdiction: 'us-xa' })).toMatchObject({ problems: [], reviewNeeded: [] })
  })
})

describe('an amendment in force', () => {
  const raised = (inches: number) => ({ governing: 'inchPound', inchPound: `${inches} [in_i]`, si: `${Math.round(inches * 25.4)} mm`, locator: '1' })
  const example = (asOf: string) => ({ name: 'three inches', rule: bearing, asOf, facts: { 'wall.veneer.kind': 'anchoredBrick', 'head.support.kind': 'looseSteelAngle', 'head.support.bearing': '3 in' }, outcome: 'fail' as const })
  const state = (over: Partial<Amendment> = {}) => ordinance({
    amendment: 'us-xa/rule-2027-1', jurisdiction: 'us-xa', modifications: [substitution(bearing, { inchPound: '4 [in_i]' }, raised(5))], examples: [example('2027-01-01')], ...over,
  })

  test('that builds on what an outer layer changes is told to go stale', () => {
    const { problems, affected } = validated(state())
    expect(problems).toEqual([])
    expect(affected).toMatchObject([{ code: 'staleAmendment', path: 'us-xa-101/ord-2025-31', pointer: '/modifications/0', detail: expect.stringContaining('at least 5 in (127 mm)') as string }])
  })

  test('that goes stale can be superseded together with the change', () => {
    const renewed = ordinance({ supersedes: ['us-xa-101/ord-2025-31'], modifications: [substitution(bearing, { inchPound: '5 [in_i]' }, raised(6))], examples: [example('2027-01-01')] })
    expect(validated(state(), renewed)).toMatchObject({ problems: [], affected: [] })
    expect(placesOf(validated(renewed).problems)).toEqual(['staleAmendment at draft-1#/modifications/0'])
  })

  test('that a new one competes with is named on both sides, whichever comes first', () => {
    for (const effectiveFrom of ['2027-01-01', '2025-09-01']) {
      const { problems, affected } = validated(ordinance({ effectiveFrom, modifications: [substitution(bearing, { inchPound: '4 [in_i]' }, raised(8))], examples: [example(effectiveFrom)] }))
      expect(placesOf(problems)).toEqual(['competingModifications at draft-1#/modifications/0'])
      expect(problems[0]?.detail).toContain('us-xa-101/ord-2025-31#m1')
      expect(placesOf(affected)).toEqual(effectiveFrom < '2026' ? ['competingModifications at us-xa-101/ord-2025-31#/modifications/0'] : [])
    }
  })

  test('is not concerned where the new one is of another edition, place or rule', () => {
    expect(validated(state({ amends: { publication: 'irc', editions: ['2024'] }, examples: [{ ...example('2027-01-01'), edition: 'irc-2024' }] }))).toMatchObject({ problems: [], affected: [] })
    expect(validated(state({ amendment: 'us-xb/rule-1', jurisdiction: 'us-xb', examples: [{ ...example('2027-01-01'), edition: 'irc-2021' }] }))).toMatchObject({ problems: [], affected: [] })
  })

  test('whose example would come out otherwise is told, from the day on which it would', () => {
    const rule = catalog.rules.get(bearing)
    if (!rule) throw new Error('the rule that is changed here has gone')
    const onShelfAngles = (effectiveFrom: string) => state({
      effectiveFrom,
      modifications: [{ modification: 'm1', kind: 'substitution', target: { rule: bearing, part: 'condition' }, old: { digest: conditionDigest(rule) }, new: { appliesWhen: { fact: 'head.support.kind', is: 'shelfAngle' }, locator: '1' } }],
      examples: [{ ...example(effectiveFrom), outcome: 'notApplicable' }],
    })
    expect(placesOf(validated(onShelfAngles('2026-01-01')).affected)).toEqual(['exampleFailed at us-xa-101/ord-2025-31#/examples/1', 'exampleFailed at us-xa-101/ord-2025-31#/examples/2'])
    expect(validated(onShelfAngles('2027-01-01'))).toMatchObject({ problems: [], affected: [] })
  })

  test('no longer speaks by its examples for days on which it is superseded', () => {
    const renewed = ordinance({
      supersedes: ['us-xa-101/ord-2025-31'], effectiveFrom: '2026-01-01', modifications: [substitution(bearing, { inchPound: '4 [in_i]' }, raised(8))], examples: [example('2026-01-01')],
    })
    expect(validated(renewed)).toMatchObject({ problems: [], affected: [] })
  })
})

describe('with amendments', () => {
  test('a catalog is the same as one loaded from files among which they stand', () => {
    const added = ordinance()
    const extended = withAmendments(catalog, [added])
    if (!extended.ok) throw new Error(JSON.stringify(extended.problems))
    const loaded = assembleCatalog([...documents, { path: pathOfAmendment(added), content: added }])
    expect(loaded.problems).toEqual([])
    expect(extended.catalog).toEqual(loaded.catalog)
    expect(extended.catalog.digest).not.toBe(catalog.digest)
    expect(ruleIn(resolved(extended.catalog, { jurisdiction: city, asOf: '2027-01-01' }), 'weep.size').limit).toMatchObject({ inchPound: '1/4 [in_i]' })
  })

  test('a catalog is the same whichever of its amendments comes in last', () => {
    const full = assembleCatalog(documents).catalog
    for (const last of full.amendments) {
      const base = assembleCatalog(documents.filter(({ path }) => path !== pathOfAmendment(last))).catalog
      const extended = withAmendments(base, [last])
      expect(extended, last.amendment).toMatchObject({ ok: true })
      if (extended.ok) expect(extended.catalog.digest, last.amendment).toBe(full.digest)
      if (extended.ok) expect(extended.catalog.amendments, last.amendment).toEqual(full.amendments)
    }
  })

  test('the catalog that was given stays as it is', () => {
    const before = { digest: catalog.digest, amendments: catalog.amendments.length, documents: catalog.documents.size }
    withAmendments(catalog, [ordinance()])
    expect({ digest: catalog.digest, amendments: catalog.amendments.length, documents: catalog.documents.size }).toEqual(before)
  })

  test('that cannot stand there is no catalog, but all that stands in the way', () => {
    const extended = withAmendments(catalog, [ordinance(), ordinance({ amendment: `${county}/ord-2027-2` })])
    expect(extended).toMatchObject({ ok: false, problems: [{ code: 'competingModifications', path: pathOfAmendment({ amendment: `${county}/ord-2027-2` }) }] })
  })

  test('taken in one after the other it is the same as at once, and as taken out again and back', () => {
    const second = ordinance({ amendment: `${county}/ord-2028-1`, effectiveFrom: '2028-01-01', supersedes: [`${county}/ord-2027-1`] })
    const at = (from: Catalog, ...added: readonly Amendment[]) => {
      const extended = withAmendments(from, added)
      if (!extended.ok) throw new Error(JSON.stringify(extended.problems))
      return extended.catalog
    }
    const example = { ...second.examples[0], asOf: '2028-01-01' } as Amendment['examples'][number]
    const later = { ...second, examples: [example] }
    expect(at(at(catalog, ordinance()), later)).toEqual(at(catalog, later, ordinance()))
    expect(resolveRules(at(catalog, ordinance(), later), { jurisdiction: county, asOf: '2028-06-01' })).toMatchObject({ ok: true })
  })
})

describe('the short road and the long one', () => {
  interface Mistake extends Patch {
    readonly mistake: string
  }
  const folder = join(import.meta.dirname, '../fixtures/broken-catalogs')
  const mistakes = readdirSync(folder).toSorted().map((file) => ({ file, ...(parse(readFileSync(join(folder, file), 'utf8')) as Mistake) }))
  const ofAmendments = mistakes.filter(({ set = {}, put = {}, unset, move, text }) => unset === undefined && move === undefined && text === undefined && [...Object.keys(set), ...Object.keys(put)].every((path) => path.includes('/amendments/')))

  test('many mistakes are of amendments alone', () => expect(ofAmendments.length).toBeGreaterThan(40))

  test.each(ofAmendments)('come to the same for $file', async (mistake) => {
    const changed = await patchedDocuments(mistake)
    const long = assembleCatalog(changed)
    const defects = [...checkCatalog(long), ...checkQuantities(long.filed)]
    const expected = defects.length > 0 ? defects : checkExamples(long.filed, long.catalog)
    const base = assembleCatalog(changed.filter((one) => !isAmendment(one))).catalog
    const { problems, affected } = validateAmendment(base, changed.filter(isAmendment))
    expect(affected).toEqual([])
    expect(placesOf(problems)).toEqual(placesOf(expected))
    expect(problems.map(({ detail }) => detail).toSorted()).toEqual(expected.map(({ detail }) => detail).toSorted())
  })
})

test('one amendment against the whole catalog takes less than twenty milliseconds', () => {
  const content: unknown = documents.filter(isAmendment).find(({ path }) => path.includes(`${city}/amendments/ord-2025`))?.content
  const without = { ...catalog, amendments: catalog.amendments.filter(({ amendment }) => amendment !== (content as Amendment).amendment) }
  const times = Array.from({ length: 20 }, () => {
    const start = performance.now()
    expect(validateAmendment(without, [{ path: 'draft', content }]).problems).toEqual([])
    return performance.now() - start
  })
  process.stdout.write(`one amendment: ${Math.min(...times).toFixed(1)} ms at best, ${Math.max(...times).toFixed(1)} ms at worst`)
  expect(Math.min(...times)).toBeLessThan(20)
})
