import { beforeAll, describe, expect, test } from 'vitest'
import type { Catalog } from '../../src/catalog/catalog.ts'
import type { RuleSet } from '../../src/catalog/rule-set.ts'
import { digestOfAssessment, evaluate } from '../../src/evaluation/evaluate.ts'
import { judge } from '../../src/evaluation/judge.ts'
import { quantityInputs } from '../../src/evaluation/quantity-inputs.ts'
import { recollectionOf } from '../../src/evaluation/recall.ts'
import { describeOpening } from '../../src/opening/describe.ts'
import type { Opening } from '../../src/opening/opening.ts'
import { computeQuantities } from '../../src/quantities/compute.ts'
import { everydayQuantities, quantities } from '../../src/quantities/index.ts'
import type { Inputs } from '../../src/quantities/inputs.ts'
import { realCatalog, resolved } from '../catalog/real-catalog.ts'
import { corpus } from '../corpus.ts'
import { documentOf } from '../opening/openings.ts'

let catalog: Catalog
let rules: RuleSet
let openings: readonly { readonly name: string; readonly opening: Opening }[]

beforeAll(async () => {
  catalog = await realCatalog()
  rules = resolved(catalog, { jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' })
  openings = corpus(catalog).filter((_, index) => index % 7 === 0).map(({ name, description }) => ({ name, opening: described(description) }))
}, 60_000)

function described(description: unknown): Opening {
  const opening = describeOpening(description)
  if (!opening.ok) throw new Error(opening.problems.map(({ pointer, detail }) => `${pointer} ${detail}`).join('; '))
  return opening.value
}

/** Equal in everything, and the same in nothing, so that nothing is known of it. */
const stranger = (opening: Opening): Opening => ({ ...opening, facts: structuredClone(opening.facts) })
/** The same rules, of which nothing is remembered. */
const forgotten = (): RuleSet => ({ ...rules, rules: [...rules.rules] })

/** Every opening many times over, in an order in which likes and unlikes follow each other; always the same one. */
function* shuffled<T>(list: readonly T[], times: number): Generator<T> {
  let state = 20_260_301
  for (let count = 0; count < times; count += 1) {
    state = (state * 1_103_515_245 + 12_345) % 2 ** 31
    const one = list[state % list.length]
    if (one) yield one
  }
}

describe('an evaluation beside others', () => {
  test('comes to the same as one by itself, at every hold point', () => {
    for (const { name, opening } of shuffled(openings, 120)) {
      for (const point of [null, 'lintelSet', 'handover'] as const) {
        const alone = evaluate(stranger(opening), forgotten(), catalog, point)
        expect(digestOfAssessment(evaluate(opening, rules, catalog, point)), `${name} at ${point ?? 'none'}`).toBe(digestOfAssessment(alone))
      }
    }
  }, 120_000)

  test('of the same opening in the other unit system is in its words', () => {
    for (const { name, opening } of openings.slice(0, 20)) {
      for (const unitSystem of ['si', 'inchPound', 'si'] as const) {
        const one = { ...opening, unitSystem }
        expect(evaluate(one, rules, catalog, null), name).toEqual(evaluate(stranger(one), forgotten(), catalog, null))
      }
    }
  })

  test('takes over what goes by the facts they share, and nothing that goes by one in which they differ', () => {
    const baseline = documentOf('baseline-window.yaml')
    const head = baseline['head'] as { readonly support: object }
    const withBearing = (bearing: string) => described({ ...baseline, head: { ...head, support: { ...head.support, bearing } } })
    const [wide, narrow] = [withBearing('6 in'), withBearing('3 in')]
    const [, , some, others] = [wide, wide, wide, narrow].map((opening) => evaluate(opening, rules, catalog, null))
    const same = some?.findings.filter((finding) => others?.findings.includes(finding)).map(({ rule }) => rule) ?? []
    expect(same).not.toContain('lintel.bearing-length')
    expect(others?.findings.find(({ rule }) => rule === 'lintel.bearing-length')?.measured?.text).toBe('3 in')
    expect(same.length).toBeGreaterThan(100)
  })
})

/** What is asked of it, of what it does not say that it asks. */
function undeclared(definition: (typeof quantities)[number], inputs: Inputs): readonly string[] {
  const asked = new Set<string>()
  const noting = <T>(kind: string, answer: (id: string) => T) => (id: string): T => { asked.add(`${kind}${id}`); return answer(id) }
  definition.evaluate({ fact: noting('', (id) => inputs.fact(id)), limit: noting('rule ', (id) => inputs.limit(id)), parameter: noting('parameter ', (id) => inputs.parameter(id)), table: noting('table ', (id) => inputs.table(id)), quantity: noting('quantity ', (id) => inputs.quantity(id)) })
  return [...asked].filter((from) => !definition.asks.includes(from))
}

describe('what is taken over goes by', () => {
  test('no input that a quantity does not say it asks for', () => {
    for (const { name, opening } of openings.filter((_, index) => index % 3 === 0)) {
      const inputs = quantityInputs(opening, rules, catalog)
      const computed = computeQuantities(quantities, inputs)
      for (const definition of quantities) expect(undeclared(definition, { ...inputs, quantity: (id) => computed.get(id) }), `${definition.id} of ${name}`).toEqual([])
    }
  }, 60_000)

  test('no fact and no quantity beyond those by which a finding is told apart', () => {
    for (const { name, opening } of openings.filter((_, index) => index % 3 === 0)) {
      const computed = computeQuantities(everydayQuantities, quantityInputs(opening, rules, catalog))
      const subject = { opening, quantities: computed, catalog, adopted: true, holdPoint: null }
      for (const [index, resolvedRule] of rules.rules.entries()) {
        const [known, found] = [recollectionOf(rules, catalog).judges[index]?.(subject), judge(resolvedRule, subject)]
        expect(known?.finding, `${resolvedRule.rule.rule} of ${name}`).toEqual(found)
        expect(known).toMatchObject({ outcome: found.outcome, force: found.force, evidence: found.evidence })
      }
    }
  }, 60_000)
})
