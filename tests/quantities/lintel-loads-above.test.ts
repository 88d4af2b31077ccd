import { describe, expect, test } from 'vitest'
import { loadsAbove, loadsAboveIfSaid } from '../../src/quantities/lintel-loads-above.ts'
import { amount, inputsOf } from './inputs.ts'

const find = (facts: Readonly<Record<string, unknown>>) => loadsAbove.find(inputsOf({ facts }))
const hundredPlf = amount('100 [lbf_av]/[ft_i]')

describe('loads on the brick above', () => {
  test.each([
    { facts: { 'wall.loadAbove': false }, value: { even: 0, point: 0 } },
    { facts: { 'wall.loadAbove': false, 'wall.imposedLoad': '0 lbf/ft' }, value: { even: 0, point: 0 } },
    { facts: { 'wall.imposedLoad': '0 lbf/ft', 'wall.pointLoad': '0 lbf' }, value: { even: 0, point: 0 } },
    { facts: { 'wall.loadAbove': true, 'wall.imposedLoad': '100 lbf/ft', 'wall.pointLoad': '0 lbf' }, value: { even: hundredPlf, point: 0 } },
    { facts: { 'wall.imposedLoad': '100 lbf/ft', 'wall.pointLoad': '5 kN' }, value: { even: hundredPlf, point: 5_000 } },
  ])('$facts', ({ facts, value }) => {
    expect(find(facts)).toMatchObject({ known: true, value, assumptions: [] })
  })

  test('of which only one is stated, the other is not counted, and that is said', () => {
    expect(find({ 'wall.loadAbove': true, 'wall.pointLoad': '5 kN' })).toMatchObject({ known: true, value: { even: 0, point: 5_000 }, assumptions: ['No floor or roof load is stated; none is counted beside the point load.'] })
    expect(find({ 'wall.imposedLoad': '100 lbf/ft' })).toMatchObject({ known: true, assumptions: ['No point load is stated; none is counted beside the floor or roof load.'] })
  })

  test.each([
    { facts: { 'wall.loadAbove': true }, reason: 'outsidePrescriptive', why: 'licensed professional' },
    { facts: { 'wall.loadAbove': true, 'wall.pointLoad': '0 lbf' }, reason: 'outsidePrescriptive', why: 'licensed professional' },
    { facts: { 'wall.loadAbove': false, 'wall.imposedLoad': '100 lbf/ft' }, reason: 'methodDoesNotHold', why: 'it is also said that nothing rests there' },
    { facts: { 'wall.loadAbove': false, 'wall.pointLoad': '1 kip' }, reason: 'methodDoesNotHold', why: 'it is also said that nothing rests there' },
    { facts: { 'wall.loadAbove': true, 'wall.imposedLoad': '0 lbf/ft', 'wall.pointLoad': '0 lbf' }, reason: 'methodDoesNotHold', why: 'every load there is stated as 0' },
  ])('$facts: $reason', ({ facts, reason, why }) => {
    expect(find(facts)).toMatchObject({ known: false, missing: [], because: { status: 'notDetermined', reason, why: expect.stringContaining(why) as string } })
    expect(loadsAboveIfSaid.find(inputsOf({ facts })).known).toBe(false)
  })

  test.each([{}, { 'wall.imposedLoad': '0 lbf/ft' }])('nobody said whether there are any: %j', (facts) => {
    expect(find(facts)).toEqual({ known: false, missing: ['wall.loadAbove'] })
    expect(loadsAboveIfSaid.find(inputsOf({ facts }))).toMatchObject({ known: true, value: undefined })
  })
})
