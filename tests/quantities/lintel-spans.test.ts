import { cellText } from '../../src/catalog/reference.ts'
import { describe, expect, test } from 'vitest'
import type { Table } from '../../src/catalog/reference.ts'
import { bendingStressOf, deflectionOf, momentOf } from '../../src/quantities/lintel-beam.ts'
import { findAngle } from '../../src/quantities/lintel-section.ts'
import { metres } from '../../src/units/length.ts'
import { amount, inputsOf } from './inputs.ts'

const inputs = inputsOf({})
const parameter = (id: string) => inputs.parameter(id)?.quantity.amount ?? NaN

function tableOf(id: string): Table {
  const given = inputs.table(id)
  if (!given) throw new Error(`the catalog lacks ${id}`)
  return given.table
}

/** How many feet of brick at 40 psf an angle carries as an even load over a span, by stress and by deflection. */
function feetOfBrick(section: string, span: number): number {
  const angle = findAngle(tableOf('steel.angle-sections'), section)
  if (!angle) throw new Error(`no angle ${section}`)
  const foot = { triangle: 0, uniform: amount('40 psf') * metres(amount('1 ft')) * metres(span) }
  const stress = bendingStressOf(momentOf(foot, metres(span)), angle.sectionModulus)
  const sag = deflectionOf(foot, metres(span), { modulus: parameter('steel.elastic-modulus'), momentOfInertia: angle.momentOfInertia })
  return Math.min(parameter('steel.allowable-bending-stress') / stress, metres(span) / parameter('lintel.deflection-divisor') / sag)
}

function heights(table: string, stories: number): readonly number[] {
  return tableOf(table).rows
    .filter((row) => row['storiesAbove'] === stories)
    .map((row) => {
      return feetOfBrick(cellText(row['section']), amount(cellText(row['span'])))
    })
}

// The span table of the code is from memory; if its cells are right, each carries about the same height of brick.
describe('the span table of the code against the strength of the steel', () => {
  test('each angle under one story carries about one story of brick', () => {
    const carried = heights('lintel.angle-spans', 1)
    expect(carried).toHaveLength(5)
    for (const height of carried) {
      expect(height).toBeGreaterThan(8.1)
      expect(height).toBeLessThan(8.75)
    }
  })

  // Worked by hand, in the order of the table
  test.each([
    { stories: 1, carried: [8.7, 8.2, 8.28, 8.19, 8.13] },
    { stories: 2, carried: [23.2, 17.9, 19.6, 20.4, 16.4] },
    { stories: 0, carried: [3.67, 3.46, 4.24, 2.56, 1.76] },
  ])('with $stories stories above', ({ stories, carried }) => {
    const computed = heights('lintel.angle-spans', stories)
    expect(computed).toHaveLength(carried.length)
    computed.forEach((height, index) => expect(Math.abs(height / (carried[index] ?? NaN) - 1)).toBeLessThan(0.005))
  })
})
