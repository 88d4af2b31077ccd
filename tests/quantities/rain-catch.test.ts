import { describe, expect, test } from 'vitest'
import { headCatch, panInflow, stormCatch } from '../../src/quantities/rain-catch.ts'
import { rainOnWall } from '../../src/quantities/rain-on-wall.ts'
import { sillFilm, sillRunoff } from '../../src/quantities/rain-sill.ts'
import type { QuantityDefinition } from '../../src/quantities/define.ts'
import { amount, evaluate, valueOf } from './inputs.ts'

const wall = { 'wall.heightAboveHead': '2.4 m' }
const quantities = { 'flashing.head-pan-length': '1950 mm' }
const rain = { 'rain.on-wall': '10 mm/h' }

/** Litres an hour in milliliters a minute, and nanometers in millimeters. */
const mLmin = (flow: unknown) => Number(flow) / 0.06
const mm = (length: unknown) => Number(length) / 1e6

describe('the wall above the head', () => {
  // 1.95 m × 2.4 m, worked by hand
  test('in millimeters', () => expect(valueOf(evaluate(headCatch, { facts: wall, quantities }))).toBeCloseTo(4.68e6, 3))

  test('in inches: 56 in × 4 ft', () => {
    expect(evaluate(headCatch, { facts: { 'wall.heightAboveHead': '4 ft' }, quantities: { 'flashing.head-pan-length': '56 in' } }).text).toBe('18.67 ft2')
  })

  test('names the height where it is not known', () => expect(evaluate(headCatch, { quantities }).missing).toEqual(['wall.heightAboveHead']))
})

describe('water onto the head flashing', () => {
  const inflow = (on = rain['rain.on-wall']) => evaluate(panInflow, { quantities: { 'rain.on-wall': on, 'rain.head-catch': '4.68 m2' } })

  // 10 L/m²h × 4.68 m² × 0.1, 1 and 10 percent, worked by hand
  test('at a tenth, one and ten percent', () => {
    const rows = inflow().tables[0]?.rows ?? []
    expect(rows.map((row) => mLmin(row[2]))).toEqual([expect.closeTo(0.78, 2), expect.closeTo(7.8, 2), expect.closeTo(78, 2)])
    expect(inflow().value).toEqual({ least: expect.closeTo(0.0468, 6) as number, greatest: expect.closeTo(4.68, 6) as number })
  })

  test('goes from the least rain through the best brickwork to the most through the worst', () => {
    const facts = {
      'opening.sillAboveGrade': '4 m', 'opening.height': '2 m', 'exposure.terrain': 'suburban', 'exposure.wallFace': 'twoStoryEaves', 'exposure.obstructionDistance': '30 m',
      'exposure.rainIntensity': '4 mm/h', 'exposure.windSpeedInRain': '5 m/s', 'exposure.windAngle': '30 deg',
    }
    const band = evaluate(panInflow, { facts, quantities: { 'rain.head-catch': '4.68 m2' } }, [rainOnWall]).value
    // 0.35753 × 4.68 × 0.001 and 1.21244 × 4.68 × 0.1, worked by hand
    expect(band).toEqual({ least: expect.closeTo(0.0016732, 6) as number, greatest: expect.closeTo(0.56742, 4) as number })
  })

  test('is not known while the rain on the wall is not', () => {
    const result = evaluate(panInflow, { quantities: { 'rain.head-catch': '4.68 m2' } }, [rainOnWall])
    expect(result).toMatchObject({ status: 'notDetermined', reason: 'missing' })
    expect(result.missing).toContain('exposure.rainIntensity')
  })
})

describe('the storm rule for walls', () => {
  const caught = (facts = {}) => evaluate(stormCatch, { facts, quantities: { 'rain.head-catch': '4.68 m2' } })

  // Chapter 67 of the British handbook: half of the vertical area at 75 mm/h; 4.68 × 37.5 worked by hand
  test('at 75 and at 150 mm/h', () => expect(caught().value).toEqual({ least: expect.closeTo(175.5, 1) as number, greatest: expect.closeTo(351, 1) as number }))

  test('shows the storm described beside them', () => {
    expect(caught({ 'exposure.rainIntensity': '10 mm/h' }).tables[0]?.rows[2]).toEqual(['The storm described', 10, expect.closeTo(23.4, 6)])
    expect(caught().tables[0]?.rows).toHaveLength(2)
  })
})

describe('water onto the sill', () => {
  const opening = { 'opening.height': '1.5 m', 'opening.width': '1.2 m' }
  const on = (definition: QuantityDefinition, facts = {}) => evaluate(definition, { facts: { ...opening, ...facts }, quantities: rain })

  // 10 L/m²h × 1.5 m and × 1.2 m, worked by hand
  test('15 L/h over each meter', () => {
    expect(on(sillRunoff).tables[0]?.rows[1]?.slice(2)).toEqual([expect.closeTo(15, 6), expect.closeTo(18, 6)])
    expect(on(sillRunoff).value).toEqual({ least: expect.closeTo(18, 6) as number, greatest: expect.closeTo(18, 6) as number })
  })

  // Film of Nusselt at 20 °C; worked with a calculator
  test.each([['15 deg', 0.1703], ['3.43363 deg', 0.2774]])('runs over a sill of %s', (slope, thickness) => {
    const { tables, value } = on(sillFilm, { 'sill.slope': slope })
    expect(mm(tables[0]?.rows[0]?.[2])).toBeCloseTo(0.1086, 3)
    expect(mm(tables[0]?.rows[1]?.[2])).toBeCloseTo(thickness, 3)
    expect(value).toEqual({ least: tables[0]?.rows[1]?.[2], greatest: tables[0]?.rows[1]?.[3] })
  })

  test('stands on a sill that does not fall', () => {
    expect(on(sillFilm, { 'sill.slope': '0 deg' }).reason).toBe('methodDoesNotHold')
    expect(on(sillFilm, { 'sill.slope': '-2 deg' }).reason).toBe('methodDoesNotHold')
  })

  test('names the slope where it is not known', () => expect(on(sillFilm).missing).toEqual(['sill.slope']))
})

// Building Science Digest 148, the worked case of Toronto prints the same rain as 1.2 in and as 0.75 gal/ft2
test('the units of rain agree with those of the digest', () => expect(Math.abs(amount('0.75 gal/ft2') / (1.2 * 25.4) - 1)).toBeLessThan(0.01))

// ASTM E331, 6.2.4: 5.0 gal/ft2h is 3.4 L/m2min; 3.4 gal/ft2h of ASTM C1601 converted by hand
test.each([['5.0 gal/ft2h', 203.73], ['3.4 gal/ft2h', 138.54]])('a spray of %s', (spray, rate) => {
  expect(amount(spray)).toBeCloseTo(rate, 1)
})
