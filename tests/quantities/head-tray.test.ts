import { describe, expect, test } from 'vitest'
import { headTray, withoutLength } from '../../src/quantities/head-tray.ts'
import { inputsOf } from './inputs.ts'

function trayOf(facts: Record<string, unknown>) {
  return headTray.find(inputsOf({ facts }))
}

describe('the tray over the head', () => {
  test.each([
    { name: 'a flat head', facts: { 'opening.headShape': 'flat', 'head.flashing.continuousPastOpening': false }, tray: 'straight' },
    { name: 'a jack arch, which has a level back', facts: { 'opening.headShape': 'jackArch', 'head.flashing.continuousPastOpening': false }, tray: 'straight' },
    { name: 'a segmental arch', facts: { 'opening.headShape': 'segmentalArch', 'head.flashing.continuousPastOpening': false }, tray: 'curved' },
    { name: 'a shelf angle flashing', facts: { 'opening.headShape': 'flat', 'head.flashing.continuousPastOpening': true }, tray: 'runsOn' },
    { name: 'a corner window', facts: { 'opening.headShape': 'flat', 'head.flashing.continuousPastOpening': false, 'opening.atCorner': true }, tray: 'roundCorner' },
  ])('of $name is $tray', ({ facts, tray }) => {
    expect(trayOf(facts)).toMatchObject({ known: true, value: tray, assumptions: [] })
  })

  test('is taken as straight where nothing is told, and says so twice', () => {
    expect(trayOf({})).toMatchObject({ value: 'straight', assumptions: [expect.stringMatching(/runs on/), expect.stringMatching(/flat/)] })
  })
})

test('only a straight tray of its own has a length', () => {
  expect(withoutLength('straight')).toBeUndefined()
  expect(withoutLength('runsOn')).toBe('notApplicable')
  expect(withoutLength('curved')).toMatchObject({ reason: 'methodDoesNotHold' })
  expect(withoutLength('roundCorner')).toMatchObject({ reason: 'methodDoesNotHold' })
})
