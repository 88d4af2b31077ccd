import fc from 'fast-check'
import { expect, test } from 'vitest'
import { quantities } from '../../src/quantities/index.ts'
import { anyFacts } from '../evaluation/any-opening.ts'
import { evaluate } from './inputs.ts'

const onRain = quantities.filter(({ id }) => id.startsWith('rain.'))
const limits = { 'flashing.past-jamb': '8 in', 'flashing.end-dam-height': '1 in', 'lintel.bearing-length': '4 in', 'weep.spacing': '33 in' }

/** Several descriptions laid over each other, so that most facts are known. */
const mostFacts = fc.array(anyFacts, { minLength: 4, maxLength: 6 }).map((several): Readonly<Record<string, unknown>> => Object.assign({}, ...several) as Record<string, unknown>)

function amountsIn(value: unknown): readonly number[] {
  if (typeof value === 'number') return [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(amountsIn) : []
}

// A closed weep, a pan without a dam or a storm without rain divides nothing by nothing unless somebody minds it
test('whatever is known of an opening, every amount on rain is finite and none is below 0', () => {
  const computed = new Set<string>()
  fc.assert(
    fc.property(mostFacts, (given) => {
      const facts = { ...given, 'wall.veneer.unit': 'modular' }
      for (const definition of onRain) {
        const { status, value, tables } = evaluate(definition, { facts, limits }, quantities)
        if (status === 'computed') computed.add(definition.id)
        const amounts = amountsIn([value, ...tables.map(({ rows }) => rows)])
        expect(amounts.filter((amount) => !(amount >= 0 && Number.isFinite(amount))), definition.id).toEqual([])
        if (typeof value === 'object' && value !== null && 'least' in value) expect(value.least).toBeLessThanOrEqual(value.greatest)
      }
    }),
    { numRuns: 400, seed: 1 },
  )
  expect(onRain.filter(({ id }) => !computed.has(id))).toEqual([])
}, 60_000)
