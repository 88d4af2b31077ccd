import { createHash } from 'node:crypto'
import canonicalize from 'canonicalize'
import fc from 'fast-check'
import { beforeAll, describe, expect, test } from 'vitest'
import type { Catalog } from '../../src/catalog/catalog.ts'
import { assessment as assessmentSchema, type Assessment } from '../../src/evaluation/document.ts'
import { digestOfAssessment, evaluate } from '../../src/evaluation/evaluate.ts'
import type { HoldPoint } from '../../src/opening/hold-points.ts'
import { realCatalog, resolved } from '../catalog/real-catalog.ts'
import { described } from '../opening/openings.ts'
import { anyFacts } from './any-opening.ts'
import { documentOf, openingWith } from './subject.ts'

const city = 'us-xa-101-2400000'
let catalog: Catalog

beforeAll(async () => {
  catalog = await realCatalog()
})

function evaluated(facts: Readonly<Record<string, unknown>>, around: { jurisdiction?: string; asOf?: string; holdPoint?: HoldPoint } = {}): Assessment {
  const { jurisdiction = city, asOf = '2026-03-01', holdPoint = null } = around
  return evaluate(openingWith(facts), resolved(catalog, { jurisdiction, asOf }), catalog, holdPoint)
}

const steel = { 'head.support.kind': 'looseSteelAngle' }
/** Eight feet under stretchers of 8 in, with the flashing 8 in past each jamb: 112 in from dam to dam. */
const wide = {
  ...steel, 'opening.width': '96 in', 'opening.headShape': 'flat', 'wall.veneer.unit': 'modular', 'wall.veneer.bond': 'running', 'wall.veneer.headCourse': 'stretcher',
  'head.support.bearing': '6 in', 'head.flashing.extensionPastJamb': '8 in', 'head.flashing.continuousPastOpening': false, 'head.weeps.kind': 'openHeadJoint',
}

describe('an amendment', () => {
  const weepsByCode = (jurisdiction: string, asOf: string) => evaluated(wide, { jurisdiction, asOf }).quantities.find(({ id }) => id === 'weeps.head-count-code')

  test('of a spacing changes how many weeps are computed, on the day and in the place', () => {
    // At most 33 in: every fourth joint, at 8, 40, 72 and 104 in. At most 24 in: every third, at 8, 32, 56, 80 and 104 in.
    expect(weepsByCode('us-xa-101', '2022-03-01')).toMatchObject({ status: 'computed', amount: 4 })
    expect(weepsByCode(city, '2022-02-28')).toMatchObject({ status: 'computed', amount: 4 })
    expect(weepsByCode(city, '2022-03-01')).toMatchObject({ status: 'computed', amount: 5 })
  })

  test('is the source that the computed quantity cites', () => {
    expect(weepsByCode(city, '2026-03-01')?.sources.map(({ locator }) => locator)).toContain('14-212(b)')
  })

  test('is told in the finding, and a repealed rule in the list of those', () => {
    const { findings, repealed } = evaluated({ ...wide, 'head.weeps.spacing': '32 in' })
    expect(findings.find(({ rule }) => rule === 'weep.spacing')).toMatchObject({
      outcome: 'fail', margin: { inchPound: '-8 in', si: '-203.2 mm' }, required: { text: 'at most 24 in (610 mm)' }, evidence: 'primary',
      chain: [{ layer: 'modelCode', edition: '2021' }, { layer: 'us-xa', action: 'adoption' }, { layer: city, action: 'substitution', old: 'at most 33 in (838 mm)', new: 'at most 24 in (610 mm)' }],
    })
    expect(repealed).toMatchObject([{ rule: 'air-space.corrugated-tie-maximum', document: 'us-xa/rule-210-45', modification: 'm1', instrument: { number: '210-45' }, chain: [{}, {}, { action: 'repeal' }] }])
  })
})

describe('a place or date without a code', () => {
  test('leaves every mandatory rule open for that reason, and judges the recommendations', () => {
    const { findings, summary } = evaluated({ ...wide, 'head.weeps.spacing': '32 in' }, { asOf: '2013-12-31' })
    const mandatory = findings.filter(({ force }) => force === 'mandatory')
    expect(mandatory.length).toBeGreaterThan(30)
    expect(new Set(mandatory.map(({ outcome, reason }) => `${outcome} ${reason}`))).toEqual(new Set(['notDetermined notAdopted']))
    expect(summary.verdict).toBe('incomplete')
    expect(findings.find(({ rule }) => rule === 'weep.spacing-open-head-joint')).toMatchObject({ outcome: 'fail', chain: [{ layer: 'practice' }] })
  })
})

describe('the hold point', () => {
  test('turns what is missing into what is covered, and never changes what was read', () => {
    const facts = { ...wide, 'head.weeps.spacing': '32 in' }
    const [open, late] = [evaluated(facts), evaluated(facts, { holdPoint: 'inService' })]
    const decided = ({ findings }: Assessment) => findings.filter(({ outcome }) => outcome === 'pass' || outcome === 'fail')
    expect(decided(late)).toEqual(decided(open))
    expect(open.findings.filter(({ reason }) => reason === 'covered')).toEqual([])
    expect(late.findings.filter(({ reason }) => reason === 'covered').length).toBeGreaterThan(20)
    const stillVisible = new Set(late.nextToMeasure.map(({ fact }) => fact))
    expect(stillVisible.has('head.weeps.diameter')).toBe(true)
    expect(stillVisible.has('head.flashing.upstand')).toBe(false)
  })
})

describe('the digest', () => {
  const facts = { ...wide, 'head.weeps.spacing': '32 in', 'head.flashing.endDamHeight': ['2 in', null] }

  test('is the SHA-256 of the canonical JSON, as anyone can compute it', () => {
    const assessment = evaluated(facts)
    const onTheWire: unknown = JSON.parse(JSON.stringify(assessment))
    const again = createHash('sha256').update(canonicalize(onTheWire) ?? '', 'utf8').digest('hex')
    expect(digestOfAssessment(assessment)).toBe(`sha256:${again}`)
  })

  test('does not depend on the order in which facts are given', () => {
    const ruleSet = resolved(catalog, { jurisdiction: city, asOf: '2026-03-01' })
    const digestOf = (document: unknown) => digestOfAssessment(evaluate(described(document), ruleSet, catalog, null))
    const document = documentOf(facts)
    expect(digestOf(reversed(document))).toBe(digestOf(document))
    expect(Object.keys(reversed(document) as object)).not.toEqual(Object.keys(document))
  })

  test('is another for another fact, place, date or hold point', () => {
    const digests = [
      evaluated(facts), evaluated({ ...facts, 'head.weeps.spacing': '32 1/64 in' }), evaluated({ ...facts, 'head.flashing.endDamHeight': [null, '2 in'] }), evaluated({ ...facts, reference: 'W-2' }),
      evaluated(facts, { jurisdiction: 'us-xa-101' }), evaluated(facts, { asOf: '2026-03-02' }), evaluated(facts, { holdPoint: 'handover' }),
    ].map(digestOfAssessment)
    expect(new Set(digests).size).toBe(digests.length)
  })

  test('is the same for the same question asked again', () => {
    expect(digestOfAssessment(evaluated(facts))).toBe(digestOfAssessment(evaluated(facts)))
  })

  function reversed(value: unknown): unknown {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) return value
    return Object.fromEntries(Object.entries(value).toReversed().map(([key, inner]) => [key, reversed(inner)]))
  }
})

test('whatever is known of an opening, the answer has the shape that is promised, and the counts agree', () => {
  const ruleSet = resolved(catalog, { jurisdiction: city, asOf: '2026-03-01' })
  fc.assert(
    fc.property(anyFacts, (facts) => {
      const assessment = evaluate(openingWith(facts), ruleSet, catalog, null)
      expect(assessmentSchema.parse(assessment)).toEqual(assessment)
      const { pass, fail, notDetermined, notApplicable } = assessment.summary
      expect(pass + fail + notDetermined + notApplicable).toBe(ruleSet.rules.length)
    }),
    { numRuns: 30 },
  )
})

test('what is asked for next is all that the rules named with it lack, those that settle the most mandatory rules first', () => {
  const before = evaluated(wide)
  const [first] = before.nextToMeasure
  expect(first?.decides.length).toBeGreaterThan(0)
  for (const rule of first?.decides ?? []) expect(before.findings.find((one) => one.rule === rule)?.missing).toEqual([first?.fact])
  const mandatory = (facts: readonly string[]) => before.findings.filter(({ rule, force }) => force === 'mandatory' && facts.includes(rule)).length
  const settled = before.nextToMeasure.map(({ decides }) => mandatory(decides))
  expect(settled).toEqual(settled.toSorted((a, b) => b - a))
})
