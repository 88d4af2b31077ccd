import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { movementExpansion, movementStrain } from '../../src/quantities/movement-strain.ts'
import { amount, evaluate, valueOf } from './inputs.ts'

const inch_nm = 25_400_000

describe('growth of the brick', () => {
  test('is 0.0005 + 0.000004 × 100 = 0.0009', () => {
    // Conspectus, Brick movement joints, 2011; also the total of BIA Technical Notes 18A, 2006
    const result = evaluate(movementStrain, { facts: { 'exposure.temperatureRange': '100 °F', 'exposure.freezesWet': false } })
    expect(valueOf(result)).toBeCloseTo(0.0009, 12)
    expect(result).toMatchObject({ steps: ['0.0005 + 0.000004 /°F × 100 °F = 0.0009'], assumptions: [] })
  })

  test('comes to the total that the note states', () => {
    const file = parse(readFileSync(new URL('../../catalog/parameters/movement.brick-strain.yaml', import.meta.url), 'utf8')) as { readonly inchPound: string }
    expect(valueOf(evaluate(movementStrain, {}))).toBeCloseTo(Number(file.inchPound), 12)
  })

  test.each([
    // BIA Technical Notes 18, 2006, has 7.2 millionths per degree Celsius for 4 per degree Fahrenheit; worked by hand: 0.0005 + 0.0000072 × 50
    { name: 'in degrees Celsius', facts: { 'exposure.temperatureRange': '50 °C', 'exposure.freezesWet': false }, strain: 0.00086 },
    // Technical Notes 18 of 1991, from memory, adds 0.0002 where brick freezes wet
    { name: 'where brick freezes wet', facts: { 'exposure.temperatureRange': '100 °F', 'exposure.freezesWet': true }, strain: 0.0011 },
    { name: 'without warmth', facts: { 'exposure.temperatureRange': '0 °F', 'exposure.freezesWet': false }, strain: 0.0005 },
  ])('$name: $strain', ({ facts, strain }) => expect(valueOf(evaluate(movementStrain, { facts }))).toBeCloseTo(strain, 12))

  test('says what it takes for granted', () => {
    expect(evaluate(movementStrain, {}).assumptions).toEqual([expect.stringMatching(/temperature range/), expect.stringMatching(/freezes while wet/)])
  })
})

describe('growth between two joints', () => {
  test.each([
    // "about 1 inch for every 100 feet", https://abbotbuilding.com/vertical-expansion-joints; 100 ft × 0.0009
    { length: '100 ft', strain: '0.0009', inches: 1.08 },
    // Fundamentals of Building Construction, exercise: 24 ft, 120 °F, 3.6 millionths
    { length: '24 ft', strain: '0.000432', inches: 0.124 },
    // The Construction Specifier, September 2017: moisture over a story of 10 ft
    { length: '10 ft', strain: '0.0005', inches: 0.06 },
  ])('$length × $strain = $inches in', ({ length, strain, inches }) => {
    const result = evaluate(movementExpansion, { facts: { 'wall.movementJointSpacing': length }, quantities: { 'movement.strain': strain } })
    expect(valueOf(result) / inch_nm).toBeCloseTo(inches, 3)
  })

  test('in SI: 10 m × 0.0009 = 9 mm', () => {
    // worked by hand; British texts allow 1 mm in 1 m
    expect(evaluate(movementExpansion, { facts: { 'wall.movementJointSpacing': '10 m' }, quantities: { 'movement.strain': '0.0009' } }).value).toBe(amount('9 mm'))
  })

  test('takes the whole wall where no joints are known, and says so', () => {
    const result = evaluate(movementExpansion, { facts: { 'wall.length': '100 ft' }, quantities: { 'movement.strain': '0.0009' } })
    expect(result).toMatchObject({ value: amount('1.08 in'), assumptions: [expect.stringMatching(/whole length/)] })
  })

  test('names the spacing where nothing of the wall is known', () => {
    expect(evaluate(movementExpansion, { quantities: { 'movement.strain': '0.0009' } }).missing).toEqual(['wall.movementJointSpacing'])
  })
})
