import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import type { ComputedQuantity, Evaluation } from '../../src/evaluation/document.ts'
import { computeQuantities } from '../../src/operations/compute-quantities.ts'
import { evaluateOpening } from '../../src/operations/evaluate-opening.ts'
import { quantities } from '../../src/quantities/index.ts'
import { readQuantity } from '../../src/units/quantity.ts'
import { dependencies } from './client.ts'

const deps = await dependencies()
const folder = join(import.meta.dirname, '../fixtures/openings')
const openings = readdirSync(folder).map((file) => [file, parse(readFileSync(join(folder, file), 'utf8')) as Record<string, unknown>] as const)
const place = { jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' }

function computed(request: Readonly<Record<string, unknown>>): readonly ComputedQuantity[] {
  const answer = computeQuantities.run(deps, request)
  if (!answer.ok) throw new Error(answer.problems.map(({ pointer, detail }) => `${pointer} ${detail}`).join('\n'))
  return answer.value.quantities
}

describe('a quantity by itself is the one that stands in an evaluation', () => {
  test.each(openings)('%s', (_, opening) => {
    const answer = evaluateOpening.run(deps, { ...place, opening })
    const whole = (answer as { value: Evaluation }).value.quantities
    const alone = whole.map(({ id }) => computed({ ...place, opening, quantities: [id] })[0])
    expect(whole.length).toBeGreaterThan(5)
    expect(alone).toEqual(whole)
  })
})

/** Amount of a text in base units, to compare with. */
function amountOf(text: string): number {
  return readQuantity(text)?.amount ?? NaN
}

describe('sized without a wall', () => {
  const window = [
    { from: 'head.support.kind', value: 'looseSteelAngle' }, { from: 'opening.width', value: '8 ft' }, { from: 'head.support.bearing', value: '8 in' },
    { from: 'wall.loadAbove', value: false }, { from: 'wall.veneer.weight', value: '40 psf' },
  ]

  // Design of Reinforced Masonry Structures (McGraw-Hill), p. 231: 8 ft clear and 8 in bearings, effective span 8.67 ft
  test('the effective span of a published example', () => {
    expect((computed({ quantities: ['lintel.effective-span'], given: window })[0]?.amount ?? NaN) / amountOf('8.67 ft')).toBeCloseTo(1, 3)
  })

  // The same book, p. 213 with p. 231, on clear span: what is given goes before what would be computed
  test('a given quantity is used as it is, and says so', () => {
    const [load] = computed({ quantities: ['lintel.brick-load'], given: [...window, { from: 'quantity lintel.effective-span', value: '8 ft' }, { from: 'quantity lintel.arching', value: 'arches' }, { from: 'wall.heightAboveHead', value: '10 ft' }] })
    expect((load?.amount ?? NaN) / amountOf('640 lbf')).toBeCloseTo(1, 9) // 40 psf × (8 ft)² / 4
    expect(load?.inputs).toContainEqual({ name: 'span', from: 'quantity lintel.effective-span', text: '8 ft' })
  })

  test('a limit and a figure of the caller go before those of the place and of the catalog', () => {
    const lintel = (given: readonly object[]) => computed({ quantities: ['lintel.length'], ...place, given: [...window, ...given] })[0]
    expect(lintel([])?.inchPound).toBe('108 in') // the invented county asks for 6 in
    expect(lintel([{ from: 'rule lintel.bearing-length', value: '4 in' }])).toMatchObject({ inchPound: '104 in', sources: [{ title: 'Given in the request', locator: 'rule lintel.bearing-length' }] })
    const limit = (given: readonly object[]) => computed({ quantities: ['lintel.deflection-limit'], given: [...window, ...given] })[0]?.amount ?? NaN
    expect(limit([{ from: 'parameter lintel.deflection-divisor', value: '360' }, { from: 'parameter lintel.deflection-cap', value: '1 in' }]) / amountOf('0.288889 in')).toBeCloseTo(1, 5)
  })

  test('every quantity names what it is missing when nothing at all is given, does not apply, or says that it goes by assumed figures alone', () => {
    for (const { id } of quantities) {
      const [quantity] = computed({ quantities: [id] })
      if (quantity?.status === 'computed') expect([id, quantity.inputs.every(({ from }) => from.startsWith('parameter ')), quantity.assumptions.length > 0]).toEqual([id, true, true])
      else expect([id, (quantity?.missing.length ?? 0) > 0 || quantity?.why !== null]).toEqual([id, true])
    }
  })

  test('the same question has the same digest, another has another', () => {
    const digestOf = (value: string) => (computeQuantities.run(deps, { quantities: ['lintel.effective-span'], given: [{ from: 'opening.width', value }] }) as { value: { digest: string } }).value.digest
    expect(digestOf('8 ft')).toBe(digestOf('8 ft'))
    expect(digestOf('8 ft')).not.toBe(digestOf('9 ft'))
  })
})
