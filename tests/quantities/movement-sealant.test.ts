import { describe, expect, test } from 'vitest'
import { movementSealantDepth, movementSealantWidth } from '../../src/quantities/movement-sealant.ts'
import { movementStrain } from '../../src/quantities/movement-strain.ts'
import { sealantMovement } from '../../src/quantities/sealant-class.ts'
import { amount, evaluate, inputsOf, valueOf } from './inputs.ts'

const inch_nm = 25_400_000
/** Architectural detailing, northernarchitecture.us: joints no narrower than 1/4 in, sealant 1/4 to 1/2 in deep. */
const limits = { 'joint.sealant-width': '1/4 in', 'joint.sealant-depth-minimum': '1/4 in', 'joint.sealant-depth-maximum': '1/2 in' } as const

describe('width of the sealant joint', () => {
  test('is 1/2 in (13 mm) for 24 ft, 120 °F and a sealant of 25 percent', () => {
    // Fundamentals of Building Construction, exercise, read at https://www.transtutors.com/questions/a-long-brick-wall-has-a-vertical-expansion-joint-every-125-38-m-of-length-assuming-a-6806025.htm:
    // no moisture and no tolerance, 3.6 millionths per degree; moves 0.124 in
    const result = evaluate(movementSealantWidth, {
      facts: { 'opening.width': '24 ft', 'jambs.sealantClass': 'class25', 'exposure.temperatureRange': '120 °F', 'exposure.freezesWet': false },
      parameters: { 'movement.brick-thermal-coefficient': '0.0000036 /[degF]', 'movement.brick-moisture-expansion': '0', 'movement.joint-tolerance': '0 [in_i]' },
      limits,
    }, [movementStrain])
    expect(valueOf(result) / inch_nm).toBeCloseTo(0.5, 2)
    expect(valueOf(result) / 1e6).toBeCloseTo(13, 0)
    expect(result.steps[0]).toBe('288 in × 0.000432 = 0.124 in')
  })

  test('moves 0.187 in by heat and 0.06 in by moisture over 24 ft, and takes 1/8 in of tolerance', () => {
    // Architectural detailing, worked joint at northernarchitecture.us/architectural-detailing-2/info-wtk.html; its sealant is not legible, and 25 percent is worked by hand: 4 × 0.2466 + 0.125
    const result = evaluate(movementSealantWidth, {
      facts: { 'opening.width': '24 ft', 'jambs.sealantClass': 'class25', 'exposure.temperatureRange': '180 °F', 'exposure.freezesWet': false },
      parameters: { 'movement.brick-thermal-coefficient': '0.0000036 /[degF]', 'movement.brick-moisture-expansion': '0.0002083333' },
      limits,
    }, [movementStrain])
    expect(result.steps[0]).toMatch(/= 0\.247 in$/)
    expect(valueOf(result) / inch_nm).toBeCloseTo(1.111, 3)
  })

  test('by the formula of an assignment of Cornell University: 20 ft, 95 °F, moisture 0.0002, 50 percent, 1/8 in', () => {
    // ARCH 262, 2002, without the movement of its structure; worked by hand: 2 × (0.08208 + 0.048) + 0.125
    const result = evaluate(movementSealantWidth, {
      facts: { 'opening.width': '20 ft', 'jambs.sealantClass': 'class50', 'exposure.temperatureRange': '95 °F', 'exposure.freezesWet': false },
      parameters: { 'movement.brick-thermal-coefficient': '0.0000036 /[degF]', 'movement.brick-moisture-expansion': '0.0002' },
      limits,
    }, [movementStrain])
    expect(valueOf(result) / inch_nm).toBeCloseTo(0.38516, 4)
  })

  test('in SI: 2 m × 0.0009 / 0.25 + 1/8 in', () => {
    // worked by hand: 1.8 / 0.25 + 3.175 mm
    const result = evaluate(movementSealantWidth, { facts: { 'opening.width': '2 m', 'jambs.sealantClass': 'class25' }, quantities: { 'movement.strain': '0.0009' }, limits })
    expect(result.value).toBe(amount('10.375 mm'))
  })

  test('is never less than the least width', () => {
    const result = evaluate(movementSealantWidth, { facts: { 'opening.width': '12 in', 'jambs.sealantClass': 'class50' }, quantities: { 'movement.strain': '0.0009' }, limits })
    expect(result.value).toBe(amount('1/4 in'))
  })

  test('names the class of the sealant where it is missing', () => {
    expect(evaluate(movementSealantWidth, { facts: { 'opening.width': '4 ft' }, quantities: { 'movement.strain': '0.0009' }, limits }).missing).toEqual(['jambs.sealantClass'])
  })
})

describe('movement of a sealant', () => {
  // ASTM C920, from memory: plus and minus the class; 100/50 opens by all and closes by half
  test.each([['class12_5', 0.125], ['class25', 0.25], ['class35', 0.35], ['class50', 0.5], ['class100_50', 0.5]])('%s: %f', (name, moves) => {
    const found = sealantMovement.find(inputsOf({ facts: { 'jambs.sealantClass': name } }))
    expect(found.known && found.value).toBeCloseTo(moves, 12)
  })

  test('a table without the class is a fault', () => {
    const short = { table: 'movement.sealant-classes', title: 'Short', publication: 'astm-c920', edition: '2018', locator: 'none', evidence: 'memory', lastReviewed: '2026-11-26', columns: {}, rows: [{ class: 'class25' }] } as const
    const inputs = inputsOf({ facts: { 'jambs.sealantClass': 'class50' }, tables: { 'movement.sealant-classes': { ...short, rows: [...short.rows] } } })
    expect(() => sealantMovement.find(inputs)).toThrow(/no movement for class50/)
  })
})

describe('depth of the sealant', () => {
  const depth = (width: string) => evaluate(movementSealantDepth, { facts: { 'jambs.sealantWidth': width }, limits }).value

  // Architectural detailing, northernarchitecture.us/architectural-detailing-2/j-jze.html: 6 mm for 6, 9 for 19 and 13 for 32
  test.each([['1/4 in', '1/4 in'], ['3/4 in', '3/8 in'], ['1 1/4 in', '1/2 in'], ['18 mm', '9 mm']])('of a joint of %s: %s', (width, expected) => expect(depth(width)).toBe(amount(expected)))

  test('goes by the width needed where the joint is not measured, and says so', () => {
    const result = evaluate(movementSealantDepth, { quantities: { 'movement.sealant-width': '3/4 in' }, limits })
    expect(result).toMatchObject({ value: amount('3/8 in'), assumptions: [expect.stringMatching(/not measured/)] })
  })

  test('there is none without a joint', () => {
    expect(evaluate(movementSealantDepth, { facts: { 'jambs.sealantWidth': '0 in' }, limits }).reason).toBe('methodDoesNotHold')
  })

  test('names the width where neither is known', () => {
    expect(evaluate(movementSealantDepth, { limits }).missing).toEqual(['jambs.sealantWidth'])
  })
})
