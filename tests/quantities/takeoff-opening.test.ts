import { describe, expect, test } from 'vitest'
import { rowlocksInSill } from '../../src/quantities/coursing.ts'
import { headUnits } from '../../src/quantities/head-units.ts'
import { outline } from '../../src/quantities/opening-outline.ts'
import { bricksPerArea } from '../../src/quantities/takeoff-bricks.ts'
import { openingDeduction, returnBricks } from '../../src/quantities/takeoff-opening.ts'
import { backerRod, sealantLength } from '../../src/quantities/takeoff-sealant.ts'
import { amount, evaluate, inputsOf, valueOf } from './inputs.ts'

const window = { 'opening.kind': 'window', 'opening.width': '48 in', 'opening.height': '60 in', 'opening.headShape': 'flat', 'wall.veneer.unit': 'modular', 'wall.veneer.bond': 'running' }

describe('the edge of the opening', () => {
  const edges = (facts: Readonly<Record<string, unknown>>) => {
    const found = outline.find(inputsOf({ facts: { ...window, ...facts } }))
    if (!found.known) throw new Error(found.missing.join())
    return found.value
  }

  test.each([
    { shape: { 'opening.headShape': 'flat' }, jamb: 60, head: 48, area: 48 * 60 },
    // half a circle of 24 in radius on jambs of 36 in
    { shape: { 'opening.headShape': 'semicircularArch' }, jamb: 36, head: 24 * Math.PI, area: 48 * 36 + (24 ** 2 * Math.PI) / 2 },
    // a third of a circle: width 2 R sin 60, rise R (1 - cos 60), with R = 16 sqrt(3) in; arc 2 pi R / 3, area R^2 (pi / 3 - sin 120 / 2)
    { shape: { 'opening.headShape': 'segmentalArch', 'opening.headRise': `${(8 * Math.sqrt(3)).toFixed(9)} in` }, jamb: 60 - 8 * Math.sqrt(3), head: (32 * Math.sqrt(3) * Math.PI) / 3, area: 48 * (60 - 8 * Math.sqrt(3)) + 768 * (Math.PI / 3 - Math.sqrt(3) / 4) },
  ])('$shape', ({ shape, jamb, head, area }) => {
    const found = edges(shape)
    expect((found?.jamb ?? 0) / amount('1 in')).toBeCloseTo(jamb, 6)
    expect((found?.head ?? 0) / amount('1 in')).toBeCloseTo(head, 6)
    expect((found?.area ?? 0) / amount('1 in2')).toBeCloseTo(area, 4)
  })

  test.each([{ 'opening.headShape': 'otherArch' }, { 'opening.headShape': 'segmentalArch', 'opening.headRise': '25 in' }, { 'opening.headShape': 'semicircularArch', 'opening.height': '23 in' }])('none for %j', (facts) => {
    expect(edges(facts)).toBeUndefined()
  })

  test('names the rise of a segmental arch', () => {
    expect(outline.find(inputsOf({ facts: { ...window, 'opening.headShape': 'segmentalArch' } }))).toEqual({ known: false, missing: ['opening.headRise'] })
  })

  test('takes a flat head where none is described, and says so once', () => {
    expect(outline.find(inputsOf({ facts: { ...window, 'opening.headShape': null } }))).toMatchObject({ known: true, assumptions: [expect.stringMatching(/taken as flat/)] })
  })
})

describe('bricks that the opening takes the place of', () => {
  // Worked by hand: 20 ft2 x 6.75 = 135; 19 rowlocks and 19 soldiers of 2 5/8 in over 48 in
  test('and those at its edges', () => {
    const facts = { ...window, 'sill.kind': 'brickRowlock', 'wall.veneer.headCourse': 'soldier', 'opening.frameSetback': '8 in' }
    const result = evaluate(openingDeduction, { facts }, [bricksPerArea, rowlocksInSill, headUnits, returnBricks])
    expect(valueOf(result)).toBe(135)
    expect(result.tables[0]?.rows).toEqual([['Taken off for the opening', 135], ['Rowlocks in the sill', 19], ['Soldiers or rowlocks over the head', 19], ['Returns at the jambs', 23]])
  })

  test('a half brick more is not taken off', () => {
    expect(valueOf(evaluate(openingDeduction, { facts: { ...window, 'opening.height': '60 1/4 in' } }, [bricksPerArea]))).toBe(135)
  })

  test('has no row for what is not there', () => {
    expect(evaluate(openingDeduction, { facts: window }, [bricksPerArea, rowlocksInSill]).tables[0]?.rows).toEqual([['Taken off for the opening', 135]])
  })

  test('names the brick', () => {
    expect(evaluate(openingDeduction, { facts: { ...window, 'wall.veneer.unit': null } }, [bricksPerArea]).missing).toEqual(['wall.veneer.unit'])
  })
})

describe('bricks for deep returns', () => {
  const returns = (setback: string, more = {}) => evaluate(returnBricks, { facts: { ...window, 'opening.frameSetback': setback, ...more } }, [bricksPerArea])

  // "Building Construction", volume 2, 282: the depth beyond 4 in is figured and added. By hand: 2 x 60 in x 4 in = 3.333 ft2, x 6.75 = 22.5
  test('8 in deep', () => expect(valueOf(returns('8 in'))).toBe(23))

  test.each(['4 in', '2 in', '-1 in'])('%s: none, and the step says why', (setback) => {
    expect(returns(setback)).toMatchObject({ status: 'computed', value: 0, steps: [expect.stringContaining('not deeper')] })
  })

  test('a brick that is thicker than 4 in makes the reveal to its own depth', () => {
    expect(valueOf(returns('102.5 mm', { 'wall.veneer.unit': 'britishStandard' }))).toBe(0)
    expect(valueOf(returns('112.5 mm', { 'wall.veneer.unit': 'britishStandard' }))).toBe(2) // 2 x 1.524 x 0.01 x 59.26 = 1.8
  })

  test('asks for the setback, and has none at a corner', () => {
    expect(evaluate(returnBricks, { facts: window }, [bricksPerArea]).missing).toEqual(['opening.frameSetback'])
    expect(returns('8 in', { 'opening.atCorner': true }).status).toBe('notApplicable')
  })
})

describe('sealant around the frame', () => {
  const sealant = (more = {}) => evaluate(sealantLength, { facts: { ...window, ...more } })

  test.each([
    // worked by hand: 2 x 60 + 48, and 48 for the sill of a window
    { facts: {}, length: '216 in' },
    { facts: { 'opening.kind': 'door' }, length: '168 in' },
    { facts: { 'opening.width': '1200 mm', 'opening.height': '1500 mm' }, length: '5400 mm' },
  ])('$length', ({ facts, length }) => expect(sealant(facts)).toMatchObject({ value: amount(length), assumptions: [] }))

  test('along the arch', () => {
    // 2 x 36 + 24 pi + 48 = 195.398 in
    expect(valueOf(sealant({ 'opening.headShape': 'semicircularArch' })) / amount('1 in')).toBeCloseTo(195.398, 3)
  })

  test('not for a recess, and not at a corner', () => {
    expect(sealant({ 'opening.kind': 'recess' }).status).toBe('notApplicable')
    expect(sealant({ 'opening.atCorner': true }).reason).toBe('methodDoesNotHold')
    expect(sealant({ 'opening.headShape': 'otherArch' }).reason).toBe('methodDoesNotHold')
  })

  test('backer rod goes behind it', () => {
    const rod = (more = {}) => evaluate(backerRod, { facts: { ...window, ...more } }, [sealantLength])
    expect(rod({ 'jambs.backerRod': true, 'jambs.sealantWidth': '3/8 in' })).toMatchObject({ value: amount('216 in'), assumptions: [], notes: [expect.stringContaining('3/8 in'), expect.any(String)] })
    expect(rod()).toMatchObject({ value: amount('216 in'), assumptions: [expect.stringMatching(/backer rod/)] })
    expect(rod({ 'jambs.backerRod': false }).status).toBe('notApplicable')
  })
})
