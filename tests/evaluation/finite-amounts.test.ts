import fc from 'fast-check'
import { expect, test } from 'vitest'
import { resolveRules } from '../../src/catalog/resolve.ts'
import { quantityInputs } from '../../src/evaluation/quantity-inputs.ts'
import { computeQuantities } from '../../src/quantities/compute.ts'
import { quantities } from '../../src/quantities/index.ts'
import { realCatalog } from '../catalog/real-catalog.ts'
import { anyFacts } from './any-opening.ts'
import { openingWith } from './subject.ts'

const catalog = await realCatalog()
const rules = resolveRules(catalog, { jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' })

/** Several descriptions laid over each other, so that many facts are known, or one with few. */
const someFacts = fc.array(anyFacts, { minLength: 1, maxLength: 5 }).map((several): Readonly<Record<string, unknown>> => Object.assign({}, ...several) as Record<string, unknown>)

test('whatever is known of an opening, no quantity is infinite or no number, and none says so', () => {
  if (!rules.ok) throw new Error('no rules')
  fc.assert(
    fc.property(someFacts, (facts) => {
      for (const [id, { value, text, tables, steps, notes }] of computeQuantities(quantities, quantityInputs(openingWith(facts), rules.value, catalog))) {
        const amounts = amountsIn([value, tables.map(({ rows }) => rows)])
        expect([id, amounts.filter((amount) => !Number.isFinite(amount))]).toEqual([id, []])
        expect([text, ...steps, ...notes].join('\n')).not.toMatch(/NaN|Infinity|undefined/)
      }
    }),
    { numRuns: 200 },
  )
}, 60_000)

function amountsIn(value: unknown): readonly number[] {
  if (typeof value === 'number') return [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(amountsIn) : []
}
