import { describe, expect, test } from 'vitest'
import { headPitches, sillPitches } from '../../src/quantities/joint-pitch.ts'
import { amount, inputsOf } from './inputs.ts'

const modular = { 'wall.veneer.unit': 'modular', 'wall.veneer.bond': 'running', 'wall.veneer.headCourse': 'stretcher' }

describe('head joints in the first course over the head', () => {
  test.each([
    // specified size of BIA Technical Notes 10B + 3/8 in, worked by hand
    { name: 'modular stretchers', facts: modular, pitches: ['8 in'] },
    { name: 'standard stretchers', facts: { ...modular, 'wall.veneer.unit': 'standard' }, pitches: ['8 3/8 in'] },
    { name: 'utility in third running bond', facts: { ...modular, 'wall.veneer.unit': 'utility', 'wall.veneer.bond': 'thirdRunning' }, pitches: ['12 in'] },
    { name: 'Flemish bond, stretcher and header in turn', facts: { ...modular, 'wall.veneer.bond': 'flemish' }, pitches: ['8 in', '4 in'] },
    { name: 'soldiers', facts: { ...modular, 'wall.veneer.headCourse': 'soldier' }, pitches: ['2 5/8 in'] },
    { name: 'rowlocks', facts: { ...modular, 'wall.veneer.headCourse': 'rowlock' }, pitches: ['2 5/8 in'] },
    { name: 'stone', facts: { ...modular, 'wall.veneer.headCourse': 'stone' }, pitches: [] },
    { name: 'an arch ring', facts: { ...modular, 'wall.veneer.headCourse': 'archRing' }, pitches: [] },
  ])('$name', ({ facts, pitches }) => {
    expect(headPitches.find(inputsOf({ facts }))).toMatchObject({ known: true, value: pitches.map(amount), assumptions: [] })
  })

  test('takes a course of stretchers where it is not described, and says so', () => {
    const found = headPitches.find(inputsOf({ facts: { 'wall.veneer.unit': 'modular' } }))
    expect(found).toMatchObject({ value: [amount('8 in')], assumptions: [expect.stringMatching(/course over the head/), expect.stringMatching(/bond/)] })
  })
})

describe('head joints of the sill', () => {
  test.each([
    { name: 'rowlock', facts: { 'sill.kind': 'brickRowlock' }, pitches: ['2 5/8 in'] },
    { name: 'headers laid flat', facts: { 'sill.kind': 'brickHeader' }, pitches: ['4 in'] },
    { name: 'headers of a measured thickness', facts: { 'sill.kind': 'brickHeader', 'wall.veneer.thickness': '3 1/2 in' }, pitches: ['3 7/8 in'] },
    { name: 'a stone slab', facts: { 'sill.kind': 'stone' }, pitches: [] },
  ])('$name', ({ facts, pitches }) => {
    expect(sillPitches.find(inputsOf({ facts: { 'wall.veneer.unit': 'modular', ...facts } }))).toMatchObject({ value: pitches.map(amount) })
  })

  test('needs the brick and the kind of sill', () => {
    expect(sillPitches.find(inputsOf({}))).toEqual({ known: false, missing: ['wall.veneer.unit', 'sill.kind'] })
  })
})
