import { describe, expect, test } from 'vitest'
import { bricksNet, bricksOrder, bricksPerArea } from '../../src/quantities/takeoff-bricks.ts'
import { mortarNet, mortarOrder, mortarPerThousand } from '../../src/quantities/takeoff-mortar.ts'
import { amount, evaluate, valueOf } from './inputs.ts'

/** Common brick 2 1/4 x 8 x 3 3/4 in, as the books have it. */
const common = (joint: string) => ({ 'wall.veneer.unitHeight': '2 1/4 in', 'wall.veneer.unitLength': '8 in', 'wall.veneer.thickness': '3 3/4 in', 'wall.veneer.jointThickness': joint })
const cubicFeet = (liters: number) => liters / amount('1 [cft_i]')
const perThousand = (facts: Readonly<Record<string, string>>) => evaluate(mortarPerThousand, { facts })

describe('mortar for a thousand bricks', () => {
  // NAVEDTRA 14045: 11.7 ft3 with 1/2 in joints in a 4 in wall
  test('the training course for builders', () => {
    expect(cubicFeet(valueOf(perThousand(common('1/2 in'))))).toBeCloseTo(11.7, 1)
  })

  // Brick Field Guide, The Journal of Light Construction, less its 20 percent of waste: 4.48 ft3 for 698 and 12.60 for 549 bricks; it is 7 percent off the geometry
  test.each([['1/4 in', 4.48, 698], ['3/4 in', 12.6, 549]])('the field guide with joints of %s', (joint, mortar, bricks) => {
    const net = (mortar / 1.2 / bricks) * 1000
    expect(Math.abs(cubicFeet(valueOf(perThousand(common(joint)))) / net - 1)).toBeLessThan(0.07)
  })

  // Ziegelwerk Priller, wall 115 mm: 26 L for 49 NF and 29 L for 63 DF, from practice, above the joints themselves and within its 50 percent
  test.each([['germanNormal', 26, 49], ['germanThin', 29, 63]])('the brick maker: %s', (unit, liters, bricks) => {
    const book = (liters / bricks) * 1000
    const result = perThousand({ 'wall.veneer.unit': unit })
    expect(valueOf(result)).toBeLessThan(book)
    expect(valueOf(result)).toBeGreaterThan(book / 1.5)
    expect(result.tables[0]?.rows.map((row) => row[3])).toEqual([valueOf(result), book])
  })

  // Worked by hand: 115 mm x (250 x 83.333 - 240 x 71) mm2 = 436 233 mm3 for one
  test('NF by geometry', () => expect(valueOf(perThousand({ 'wall.veneer.unit': 'germanNormal' }))).toBeCloseTo(436.233, 2))

  test('shows the books that disagree, and which has waste in it', () => {
    const result = perThousand(common('3/8 in'))
    const rows = result.tables[0]?.rows.map(([by, , waste, volume]) => [by, waste, Number(cubicFeet(Number(volume)).toFixed(1))])
    // worked by hand from the tables: 6.56 / 0.680, 14, 5.5 / 0.675; the joints themselves 3.75 x (8.375 x 2.625 - 18) / 1.728
    expect(rows).toEqual([
      ['The volume of the joints', 'not included', 8.6],
      ['Brick, ties and mortar for 100 square feet of wall', 'included', 9.6],
      ['Mortar for a thousand common brick', 'not stated', 14],
      ['Modular brick and mortar for 100 square feet of wall', 'not stated', 8.1],
    ])
    expect(result.notes.at(-1)).toMatch(/^Books for this joint give 8.148 ft3 \(230.7 L\) to 14 ft3 \(396.4 L\)/)
    expect(result.sources.map(({ title }) => title)).toEqual(expect.arrayContaining(['bia-tn-10', 'brick-field-guide', 'brick-mortar-consumption']))
  })

  test('says where no book has the joint or the brick', () => {
    const result = perThousand({ 'wall.veneer.unit': 'britishStandard' })
    expect(result.tables[0]?.rows).toHaveLength(1)
    expect(result.notes.at(-1)).toBe('No book in the catalog gives mortar for this brick and joint.')
  })

  test('does without a book that the catalog lacks, and needs the thickness', () => {
    const without = evaluate(mortarPerThousand, { facts: common('3/8 in'), tables: { 'masonry.mortar': null } })
    expect(without.tables[0]?.rows).toHaveLength(3)
    const facts = { 'wall.veneer.unitHeight': '2 1/4 in', 'wall.veneer.unitLength': '8 in' }
    expect(evaluate(mortarPerThousand, { facts })).toMatchObject({ status: 'notDetermined', missing: ['wall.veneer.unit'] })
  })
})

describe('mortar for a wall', () => {
  const given = { facts: common('1/2 in'), quantities: { 'takeoff.net-area': '112 ft2' } }
  const buildsOn = [bricksPerArea, bricksNet, bricksOrder, mortarPerThousand]

  // NAVEDTRA 14045, wall of 8 ft by 14 ft: 8.9 ft3 for the bricks ordered, and with 20 percent of waste 10.7
  test('to order, as in the training course', () => {
    const result = evaluate(mortarOrder, given, buildsOn)
    expect(Math.abs(cubicFeet(valueOf(result)) / 10.7 - 1)).toBeLessThan(0.01)
    expect(Math.abs(cubicFeet(valueOf(result)) / 1.2 / 8.9 - 1)).toBeLessThan(0.01)
    expect(result.steps[0]).toMatch(/^759 bricks/)
  })

  // Worked by hand: 690 bricks with 11.66 ft3 for a thousand; the training course's own figure comes to 690 x 11.7 / 1000
  test('in the wall, beside what the books give', () => {
    const result = evaluate(mortarNet, given, buildsOn)
    expect(cubicFeet(valueOf(result))).toBeCloseTo(8.05, 2)
    const builders = result.tables[0]?.rows.find(([by]) => by === 'Mortar for a thousand brick of a 4 in wall')
    expect(cubicFeet(Number(builders?.[3]))).toBeCloseTo(0.69 * 11.7, 6)
    expect(builders?.[2]).toBe('not included')
  })

  test('waits for the area', () => {
    expect(evaluate(mortarNet, { facts: common('1/2 in') }, buildsOn)).toMatchObject({ status: 'notDetermined', missing: ['quantity takeoff.net-area'] })
  })
})
