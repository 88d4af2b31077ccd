import fc from 'fast-check'
import { beforeAll, describe, expect, test } from 'vitest'
import type { Catalog } from '../../src/catalog/catalog.ts'
import type { RuleSet } from '../../src/catalog/rule-set.ts'
import type { Finding } from '../../src/evaluation/document.ts'
import { evaluate } from '../../src/evaluation/evaluate.ts'
import type { Opening } from '../../src/opening/opening.ts'
import { realCatalog, resolved } from '../catalog/real-catalog.ts'
import { anyFacts, required, type WrittenFacts } from './any-opening.ts'
import { openingWith } from './subject.ts'

let catalog: Catalog
let places: readonly RuleSet[]

beforeAll(async () => {
  catalog = await realCatalog()
  places = ['us-xa-101-2400000', 'us-xb-5200000'].map((jurisdiction) => resolved(catalog, { jurisdiction, asOf: '2026-03-01' }))
})

const findingsOf = (opening: Opening) => places.flatMap((ruleSet) => evaluate(opening, ruleSet, catalog, null).findings)
const isKnown = (opening: Opening, fact: string) => (opening.facts.get(fact) ?? [undefined]).every((reading) => reading !== undefined)

/** An opening, and the same with one of its facts forgotten. */
const forgetting = anyFacts
  .filter((facts) => Object.keys(facts).length > required.length)
  .chain((facts) => fc.constantFrom(...Object.keys(facts).filter((path) => !required.includes(path))).map((forgotten) => ({ facts, forgotten })))

function without(facts: WrittenFacts, forgotten: string): WrittenFacts {
  return Object.fromEntries(Object.entries(facts).filter(([path]) => path !== forgotten))
}

describe('whatever is known of an opening', () => {
  test('a rule passes only where the fact that it checks is known, at each end to which it applies, and not contradicted', () => {
    let passes = 0
    fc.assert(
      fc.property(anyFacts, (facts) => {
        const opening = openingWith(facts)
        for (const finding of findingsOf(opening).filter(({ outcome, fact }) => outcome === 'pass' && fact !== null)) {
          passes += 1
          const readings = opening.facts.get(finding.fact ?? '') ?? []
          expect(readings.length, finding.rule).toBeGreaterThan(0)
          const asked = readings.filter((_, end) => finding.members[end]?.outcome !== 'notApplicable')
          expect(asked.length, finding.rule).toBeGreaterThan(0)
          expect(asked.every((reading) => reading && !reading.conflictsWith), finding.rule).toBe(true)
        }
      }),
      { numRuns: 40 },
    )
    expect(passes).toBeGreaterThan(300)
  })

  test('forgetting a fact never turns a rule that checks it into a pass', () => {
    let concerned = 0
    fc.assert(
      fc.property(forgetting, ({ facts, forgotten }) => {
        const opening = openingWith(without(facts, forgotten))
        fc.pre(!isKnown(opening, forgotten))
        for (const finding of findingsOf(opening).filter(({ fact }) => fact === forgotten)) {
          concerned += 1
          expect(['notDetermined', 'notApplicable'], finding.rule).toContain(finding.outcome)
        }
      }),
      { numRuns: 100 },
    )
    expect(concerned).toBeGreaterThan(20)
  })

  /** Rules on computed quantities are left out: a quantity may go on with an assumption, which it states. */
  test('knowing less only ever leaves more open: an outcome stays as it is or becomes not determined', () => {
    let opened = 0
    fc.assert(
      fc.property(forgetting, ({ facts, forgotten }) => {
        const [more, less] = [openingWith(facts), openingWith(without(facts, forgotten))]
        fc.pre(saysNothingNew(less, more))
        const before = new Map(findingsOf(more).map((finding) => [keyOf(finding), finding]))
        for (const finding of findingsOf(less).filter(({ quantity }) => quantity === null)) {
          const was = before.get(keyOf(finding))
          if (finding.outcome !== was?.outcome) opened += 1
          expect(['notDetermined', was?.outcome], finding.rule).toContain(finding.outcome)
        }
      }),
      { numRuns: 80 },
    )
    expect(opened).toBeGreaterThan(20)
  })
})

function keyOf({ rule, chain }: Finding): string {
  return `${rule} ${chain[0]?.publication ?? ''} ${chain[0]?.edition ?? ''} ${chain.length}`
}

/** False where forgetting a fact lets another value follow from the rest, or takes a contradiction away. */
function saysNothingNew(less: Opening, more: Opening): boolean {
  return [...less.facts].every(([path, readings]) =>
    readings.every((reading, end) => reading === undefined || JSON.stringify(reading) === JSON.stringify(more.facts.get(path)?.[end])),
  )
}
