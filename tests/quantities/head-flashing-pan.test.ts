import { describe, expect, test } from 'vitest'
import { headCutLength, headPanLength } from '../../src/quantities/head-flashing-pan.ts'
import { amount, evaluate } from './inputs.ts'

const lintel = { 'head.support.kind': 'looseSteelAngle', 'opening.headShape': 'flat', 'head.flashing.continuousPastOpening': false }

/** Past the jamb: common practice, no source. Past the steel: Masonry Construction, installing end dams, which gives no length. */
const limits = {
  'flashing.past-jamb': '8 in',
  'flashing.past-support': { text: '0 in', comparator: 'moreThan' },
  'lintel.bearing-length': '4 in', // IRC R703.8.3, from memory
  'flashing.end-dam-height': '1 in', // BIA Technical Notes 28B (2005)
  'flashing.splice-lap': '6 in', // UFGS 04810, 3.9
} as const

describe('head flashing, dam to dam', () => {
  test.each([
    // each row worked by hand
    { name: '40 in on 4 in bearings: a 48 in lintel, 4 in past each end', width: '40 in', bearing: '4 in', past: undefined, length: '56 in' },
    { name: 'three ganged windows, 100 in', width: '100 in', bearing: '4 in', past: undefined, length: '116 in' },
    { name: '6 in bearings, passed by 2 in', width: '48 in', bearing: '6 in', past: undefined, length: '64 in' },
    { name: '8 in bearings: level with the steel is not past it, so half a brick more', width: '48 in', bearing: '8 in', past: undefined, length: '72 in' },
    { name: 'one long bearing', width: '48 in', bearing: ['4 in', '7 7/8 in'], past: undefined, length: '64 in' },
    { name: 'drawn longer than asked', width: '48 in', bearing: '4 in', past: ['12 in', '8 in'], length: '68 in' },
    { name: 'drawn shorter than asked', width: '48 in', bearing: '4 in', past: '4 in', length: '64 in' },
    { name: 'in millimeters', width: '1200 mm', bearing: '100 mm', past: '250 mm', length: '1700 mm' },
  ])('$name', ({ width, bearing, past, length }) => {
    const facts = { ...lintel, 'opening.width': width, 'head.support.bearing': bearing, 'head.flashing.extensionPastJamb': past }
    expect(evaluate(headPanLength, { facts, limits })).toMatchObject({ status: 'computed', value: amount(length), assumptions: [] })
  })

  test('shows the addition from left to right', () => {
    const facts = { ...lintel, 'opening.width': '40 in', 'head.support.bearing': ['4 in', '9 in'] }
    expect(evaluate(headPanLength, { facts, limits }).steps).toEqual(['8 in + 40 in + 13 in = 61 in'])
  })

  test('goes as far past the steel as an amended rule asks', () => {
    const facts = { ...lintel, 'opening.width': '40 in', 'head.support.bearing': '4 in' }
    expect(evaluate(headPanLength, { facts, limits: { ...limits, 'flashing.past-support': '6 in' } }).text).toBe('60 in')
  })

  test('takes the required bearing where it is not known, and says so for each end', () => {
    const result = evaluate(headPanLength, { facts: { ...lintel, 'opening.width': '40 in' }, limits })
    expect(result.text).toBe('56 in')
    expect(result.assumptions).toEqual([expect.stringMatching(/left bearing/), expect.stringMatching(/right bearing/)])
  })

  test('says that no bearing is reckoned with where the support is not known', () => {
    const facts = { 'opening.headShape': 'flat', 'head.flashing.continuousPastOpening': false, 'opening.width': '40 in' }
    expect(evaluate(headPanLength, { facts, limits })).toMatchObject({ text: '56 in', assumptions: [expect.stringMatching(/What carries the brick is not known/)] })
  })

  test('an arch of masonry has no lintel end to clear', () => {
    const facts = { ...lintel, 'head.support.kind': 'masonryArch', 'opening.headShape': 'jackArch', 'opening.width': '40 in', 'head.support.bearing': '8 in' }
    expect(evaluate(headPanLength, { facts, limits }).text).toBe('56 in')
  })

  test('names what would do where no rule asks and nothing is drawn', () => {
    const facts = { ...lintel, 'head.support.kind': 'masonryArch', 'opening.width': '40 in' }
    expect(evaluate(headPanLength, { facts })).toMatchObject({
      status: 'notDetermined', reason: 'missing', missing: ['rule flashing.past-jamb', 'head.flashing.extensionPastJamb'],
    })
  })

  test('tells the lap of each further piece of stock', () => {
    const facts = { ...lintel, 'opening.width': '40 in' }
    expect(evaluate(headPanLength, { facts, limits }).notes).toContain('Add one lap of 6 in, sealed, for each further piece of stock.')
    expect(evaluate(headPanLength, { facts: { ...facts, 'head.flashing.spliceLap': '8 in' }, limits }).notes).toContain('Add one lap of 8 in, sealed, for each further piece of stock.')
    expect(evaluate(headPanLength, { facts, limits: { 'flashing.past-jamb': '8 in', 'lintel.bearing-length': '4 in' } }).notes).toContain('Add one lap for each further piece of stock.')
  })

  test('a flashing that runs on has no length of its own; one over an arch has to be drawn', () => {
    const facts = { ...lintel, 'opening.width': '40 in' }
    expect(evaluate(headPanLength, { facts: { ...facts, 'head.flashing.continuousPastOpening': true }, limits }).status).toBe('notApplicable')
    expect(evaluate(headPanLength, { facts: { ...facts, 'opening.headShape': 'segmentalArch' }, limits }).reason).toBe('methodDoesNotHold')
  })
})

describe('head flashing, cut length', () => {
  const facts = { ...lintel, 'opening.width': '40 in', 'head.support.bearing': '4 in' }

  test.each([
    { name: 'two 1 in dams on 56 in', dams: undefined, length: '58 in' },
    { name: 'a 2 in dam at the right', dams: ['1 in', '2 in'], length: '59 in' },
    { name: 'no dams yet: they are counted all the same', dams: '0 in', length: '58 in' },
  ])('$name', ({ dams, length }) => {
    const result = evaluate(headCutLength, { facts: { ...facts, 'head.flashing.endDamHeight': dams }, limits }, [headPanLength])
    expect(result).toMatchObject({ status: 'computed', value: amount(length) })
  })

  test('three ganged windows, 100 in: 116 in and two dams', () => {
    const result = evaluate(headCutLength, { facts: { ...facts, 'opening.width': '100 in' }, limits }, [headPanLength])
    expect(result).toMatchObject({ text: '118 in', steps: ['1 in + 116 in + 1 in = 118 in'] })
  })

  test('names the dam height where neither rule nor drawing gives it', () => {
    expect(evaluate(headCutLength, { facts, limits: { 'flashing.past-jamb': '8 in' } }, [headPanLength]).missing).toContain('head.flashing.endDamHeight')
  })

  test('does not apply where the flashing runs on, nor hold over an arch', () => {
    expect(evaluate(headCutLength, { facts: { ...facts, 'head.flashing.continuousPastOpening': true }, limits }, [headPanLength]).status).toBe('notApplicable')
    const overArch = evaluate(headCutLength, { facts: { ...facts, 'opening.headShape': 'otherArch' }, limits }, [headPanLength])
    expect(overArch.reason).toBe('methodDoesNotHold')
    expect(overArch.why).toMatch(/arch/)
  })
})
