import { beforeAll, describe, expect, test } from 'vitest'
import type { Amendment } from '../../src/catalog/amendment.ts'
import type { Catalog } from '../../src/catalog/catalog.ts'
import { datesTouched } from '../../src/catalog/dates-touched.ts'
import { conditionDigest } from '../../src/catalog/substitute.ts'
import { evaluate } from '../../src/evaluation/evaluate.ts'
import { impactOf, tallyImpact, type Impact, type ImpactQuestion } from '../../src/evaluation/impact.ts'
import type { TriedOpening } from '../../src/evaluation/opening-change.ts'
import { withAmendments } from '../../src/evaluation/with-amendments.ts'
import { describeOpening } from '../../src/opening/describe.ts'
import { realCatalog, resolved } from '../catalog/real-catalog.ts'
import { corpus } from '../corpus.ts'
import { described, documentOf as exampleDocument } from '../opening/openings.ts'
import { openingWith } from './subject.ts'

const county = 'us-xa-101'
const city = 'us-xa-101-2400000'
let before: Catalog
let openings: readonly TriedOpening[]

beforeAll(async () => {
  before = await realCatalog()
  openings = corpus(before).flatMap(({ name, description }) => {
    const opening = describeOpening(description)
    return opening.ok ? [{ reference: name, opening: opening.value }] : []
  })
})

type Modification = Amendment['modifications'][number]

function ordinance(modifications: readonly unknown[], over: Partial<Amendment> = {}): Amendment {
  return {
    amendment: `${county}/ord-2027-1`, jurisdiction: county, amends: { publication: 'irc', editions: ['2021'] }, instrument: { kind: 'ordinance', number: '2027-1', adopted: '2026-11-02' },
    effectiveFrom: '2027-01-01', effectiveUntil: null, application: 'permitApplicationDate', supersedes: [], modifications: modifications as Modification[],
    examples: [{ name: 'nothing known', rule: 'flashing.head-present', asOf: '2027-01-01', facts: {}, outcome: 'notDetermined' }], ...over,
  }
}

const limit = (rule: string, inches: string, next: object, modification = 'm1') => ({ modification, kind: 'substitution', target: { rule, part: 'limit' }, old: { inchPound: inches }, new: { governing: 'inchPound', locator: '1', ...next } })
const wideWeeps = limit('weep.size', '3/16 [in_i]', { inchPound: '1/4 [in_i]', si: '6.4 mm' })

function after(...amendments: readonly Amendment[]): Catalog {
  const extended = withAmendments(before, amendments)
  if (!extended.ok) throw new Error(JSON.stringify(extended.problems))
  return extended.catalog
}

const question = (over: Partial<ImpactQuestion> = {}): ImpactQuestion => ({ jurisdiction: county, dates: ['2027-01-01'], examples: 5, ...over })

function impact(next: Catalog, asked: ImpactQuestion, tried: readonly TriedOpening[] = openings): Impact {
  const tally = tallyImpact(before, next, asked)
  for (const opening of tried) tally.take(opening)
  return tally.report()
}

describe('the rules that change', () => {
  test('are told with what they ask for before and after, by whom, and on which dates', () => {
    const next = after(ordinance([wideWeeps]))
    const { rules } = impact(next, question({ dates: ['2026-12-31', '2027-01-01', '2028-01-01'] }), [])
    expect(rules).toMatchObject([{
      rule: 'weep.size', change: 'changed', requirementChanged: true, dates: ['2027-01-01', '2028-01-01'],
      before: { required: 'at least 3/16 in (4.8 mm)', force: 'mandatory', by: { action: 'adoption' } },
      after: { required: 'at least 1/4 in (6.4 mm)', force: 'mandatory', by: { layer: county, action: 'substitution', part: 'limit', document: `${county}/ord-2027-1` } },
    }])
  })

  test('may be added, removed, or only be cited from elsewhere', () => {
    const inserted = { ...before.rules.get('weep.size'), rule: `${county}.weep.size`, related: [] }
    const { rules } = impact(after(ordinance([
      { modification: 'm1', kind: 'insertion', new: inserted },
      { modification: 'm2', kind: 'repeal', target: { rule: 'weep.size' }, old: { revision: before.rules.get('weep.size')?.revision }, reason: 'See m1.' },
      { modification: 'm3', kind: 'renumbering', target: { rule: 'weep.spacing' }, old: { locator: 'R703.8.6' }, new: { locator: '7' } },
    ])), question(), [])
    expect(rules.map(({ rule, change, requirementChanged, before: was, after: is }) => [rule, change, requirementChanged, was !== null, is !== null])).toEqual([
      [`${county}.weep.size`, 'added', true, false, true], ['weep.size', 'removed', true, true, false], ['weep.spacing', 'changed', false, true, true],
    ])
  })

  test('on dates that differ among themselves are told apart', () => {
    const later = ordinance([limit('weep.size', '3/16 [in_i]', { inchPound: '3/8 [in_i]', si: '9.5 mm' })], { amendment: `${county}/ord-2028-1`, effectiveFrom: '2028-01-01', supersedes: [`${county}/ord-2027-1`] })
    const both = [ordinance([wideWeeps]), later]
    const { rules } = impact(after(...both), question({ dates: datesTouched(before, both) }), [])
    expect(rules.map(({ dates, after: is }) => [dates, is?.required])).toEqual([[['2027-01-01'], 'at least 1/4 in (6.4 mm)'], [['2028-01-01'], 'at least 3/8 in (9.5 mm)']])
  })

  test('that are repealed where only stricter rules are allowed are listed for review', () => {
    const revision = before.rules.get('weep.size')?.revision
    const next = after(ordinance([{ modification: 'm1', kind: 'repeal', target: { rule: 'weep.size' }, old: { revision }, reason: 'Not needed.' }]))
    expect(impact(next, question(), []).reviewNeeded).toEqual([{ amendment: `${county}/ord-2027-1`, modification: 'm1', rule: 'weep.size', reason: 'Not needed.' }])
    expect(impact(before, question(), [])).toMatchObject({ rules: [], reviewNeeded: [] })
  })
})

describe('over openings', () => {
  test('outcomes and verdicts that change are counted by transition, and the first are shown', () => {
    const weeps = { 'head.support.kind': 'looseSteelAngle', 'head.flashing.present': true, 'head.weeps.kind': 'openHeadJoint' }
    const tried = ['1/8 in', '3/16 in', '3/16 in', '1/2 in'].map((size, index) => ({ reference: `W-${index + 1}`, opening: openingWith({ ...weeps, 'head.weeps.diameter': size }) }))
    const told = impact(after(ordinance([wideWeeps])), question({ examples: 1 }), [...tried, { reference: 'W-5', opening: openingWith(weeps) }])
    expect(told).toMatchObject({
      openings: 5, openingsChanged: 2, verdictsChanged: 2, notSettled: 0,
      outcomes: [{ from: 'pass', to: 'fail', count: 2 }],
      verdicts: [{ from: 'incomplete', to: 'fail', count: 2 }],
      examples: [{ reference: 'W-2', asOf: '2027-01-01', verdict: { before: 'incomplete', after: 'fail' }, findings: [{ rule: 'weep.size', before: { outcome: 'pass', required: 'at least 3/16 in (4.8 mm)' }, after: { outcome: 'fail', required: 'at least 1/4 in (6.4 mm)', margin: { si: '-1.5875 mm' } } }] }],
    })
  })

  test('a change of force alone may change a verdict and no outcome', () => {
    const next = after(ordinance([{ modification: 'm1', kind: 'substitution', target: { rule: 'flashing.end-dam-height', part: 'force' }, old: { force: before.rules.get('flashing.end-dam-height')?.force }, new: { force: 'mandatory', locator: '1' } }]))
    expect(before.rules.get('flashing.end-dam-height')?.force).toBe('recommended')
    const told = impact(next, question())
    expect(told.outcomes).toEqual([])
    expect(told.openingsChanged).toBe(0)
    expect(told.verdictsChanged).toBeGreaterThan(0)
    expect(told.examples[0]).toMatchObject({ findings: [], verdict: { after: expect.not.stringMatching('pass') as string } })
  })

  test('a place, a code and a date for which no rules can be settled are counted', () => {
    const [tried] = openings
    if (!tried) throw new Error('there is no opening')
    const next = after(ordinance([wideWeeps]))
    expect(impact(next, question({ dates: ['2026-12-31', '2027-01-01'] }), [{ ...tried, jurisdiction: 'zz' }])).toMatchObject({ openings: 1, openingsChanged: 0, notSettled: 2 })
    expect(impact(next, question(), [{ ...tried, jurisdiction: 'us-xb-5200000' }])).toMatchObject({ openings: 1, openingsChanged: 0, notSettled: 0 })
  })

  test('the generator gives way after each and returns the same', () => {
    const next = after(ordinance([wideWeeps]))
    const few = openings.slice(0, 30)
    const steps = impactOf(before, next, question(), few)
    const seen: number[] = []
    let step = steps.next()
    for (; !step.done; step = steps.next()) seen.push(step.value)
    expect(seen).toEqual(few.map((_, index) => index + 1))
    expect(step.value).toEqual(impact(next, question(), few))
  })
})

describe('looking only at what may differ comes to the same as evaluating everything twice', () => {
  const weepSize = () => before.rules.get('weep.size')
  const cases: readonly (readonly [string, () => readonly unknown[], readonly string[]])[] = [
    ['a limit', () => [limit('weep.size', '3/16 [in_i]', { inchPound: '1/2 [in_i]', si: '12.7 mm' })], []],
    ['a limit that a judged quantity is computed with', () => [limit('lintel.bearing-length', '4 [in_i]', { inchPound: '36 [in_i]', si: '914 mm' })], ['us-xa-101/ord-2025-31']],
    ['a repeal and an insertion', () => [
      { modification: 'm1', kind: 'repeal', target: { rule: 'weep.size' }, old: { revision: weepSize()?.revision }, reason: 'See m2.' },
      { modification: 'm2', kind: 'insertion', new: { ...weepSize(), rule: `${county}.weep.size`, related: [], force: 'recommended' } },
    ], []],
    ['a condition taken away', () => [{ modification: 'm1', kind: 'substitution', target: { rule: 'tie.wire-size', part: 'condition' }, old: { digest: digest('tie.wire-size') }, new: { appliesWhen: null, locator: '1' } }], []],
    ['a force', () => [{ modification: 'm1', kind: 'substitution', target: { rule: 'flashing.end-dam-height', part: 'force' }, old: { force: 'recommended' }, new: { force: 'mandatory', locator: '1' } }], []],
  ]

  const digest = (id: string) => {
    const rule = before.rules.get(id)
    return rule ? conditionDigest(rule) : null
  }

  /** Some openings of the corpus, and windows of many widths of which nobody measured the bearing. */
  function sample(): readonly TriedOpening[] {
    const baseline = exampleDocument('baseline-window.yaml') as Record<string, Record<string, Record<string, unknown>>>
    const wide = Array.from({ length: 25 }, (_, index): TriedOpening => {
      const support = { ...baseline['head']?.['support'], bearing: null }
      const document = { ...baseline, opening: { ...baseline['opening'], width: 40 + 4 * index }, head: { ...baseline['head'], support } }
      return { reference: `W-${index}`, opening: described(document) }
    })
    const dammed = ['1/4 in', '2 in'].map((height, index): TriedOpening => ({ reference: `D-${index}`, opening: openingWith({ 'head.support.kind': 'looseSteelAngle', 'head.flashing.present': true, 'head.flashing.continuousPastOpening': false, 'head.flashing.endDamHeight': height }) }))
    return [...openings.filter((_, index) => index % 29 === 0), ...wide, ...dammed]
  }

  test.each(cases)('%s', (_, modifications, supersedes) => {
    const next = after(ordinance(modifications(), { supersedes: [...supersedes] }))
    const tried = sample()
    const [was, is] = [before, next].map((catalog) => ({ catalog, ruleSet: resolved(catalog, { jurisdiction: city, asOf: '2027-01-01' }) }))
    if (!was || !is) throw new Error('there are two catalogs')
    let changed = 0
    let verdicts = 0
    const outcomes = new Map<string, number>()
    for (const { opening } of tried) {
      const [old, now] = [was, is].map(({ catalog, ruleSet }) => evaluate(opening, ruleSet, catalog, null))
      const outcomeOf = (findings: typeof old, rule: string) => findings?.findings.find((one) => one.rule === rule)?.outcome ?? 'absent'
      const ids = new Set([old, now].flatMap((one) => one?.findings.map(({ rule }) => rule) ?? []))
      const moved = [...ids].map((rule) => `${outcomeOf(old, rule)} ${outcomeOf(now, rule)}`).filter((move) => new Set(move.split(' ')).size > 1)
      for (const move of moved) outcomes.set(move, (outcomes.get(move) ?? 0) + 1)
      changed += moved.length > 0 ? 1 : 0
      verdicts += old?.summary.verdict === now?.summary.verdict ? 0 : 1
    }
    const told = impact(next, question({ jurisdiction: city }), tried)
    expect(told).toMatchObject({ openings: tried.length, openingsChanged: changed, verdictsChanged: verdicts })
    expect(new Map(told.outcomes.map(({ from, to, count }) => [`${from} ${to}`, count]))).toEqual(outcomes)
    expect(changed + verdicts).toBeGreaterThan(0)
  })

  test('a quantity that is judged does change in these, by the limit of another rule', () => {
    const next = after(ordinance([limit('lintel.bearing-length', '4 [in_i]', { inchPound: '36 [in_i]', si: '914 mm' })], { supersedes: ['us-xa-101/ord-2025-31'] }))
    const { rules, examples } = impact(next, question({ examples: 100 }), sample())
    expect(rules.map(({ rule }) => rule)).toEqual(['lintel.bearing-length'])
    expect([...new Set(examples.flatMap(({ findings }) => findings.map(({ rule }) => rule)))]).toEqual(expect.arrayContaining(['lintel.deflection']))
  })
})

test('a thousand openings take little time', () => {
  const next = after(ordinance([wideWeeps]))
  const thousand = Array.from({ length: 1_000 }, (_, index) => openings[index % openings.length]).filter((one) => one !== undefined)
  const start = performance.now()
  expect(impact(next, question({ jurisdiction: city }), thousand).openings).toBe(1_000)
  const took = performance.now() - start
  process.stdout.write(`impact on one opening: ${(took / 1_000).toFixed(2)} ms\n`)
  expect(took).toBeLessThan(20_000)
})
