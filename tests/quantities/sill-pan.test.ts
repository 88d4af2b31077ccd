import { describe, expect, test } from 'vitest'
import { sillFlashingCutLength, sillFlashingLength } from '../../src/quantities/sill-pan.ts'
import { amount, evaluate } from './inputs.ts'

const rowlock = { 'sill.kind': 'brickRowlock', 'wall.veneer.unit': 'modular' }

/** BIA Technical Notes 36 (1982): to the first head joint outside the jamb, then up at least 1 in. */
const limits = { 'sill.flashing-past-jamb': { text: '0 in', comparator: 'moreThan' }, 'sill.end-dam-height': '1 in' } as const

describe('sill flashing, dam to dam', () => {
  test.each([
    // worked by hand
    { name: 'as drawn', width: '48 in', past: ['4 in', '8 in'], length: '60 in' },
    { name: 'in millimeters', width: '1200 mm', past: '100 mm', length: '1400 mm' },
  ])('$name', ({ width, past, length }) => {
    const facts = { ...rowlock, 'opening.width': width, 'sill.flashing.extensionPastJamb': past }
    expect(evaluate(sillFlashingLength, { facts, limits })).toMatchObject({ status: 'computed', value: amount(length), assumptions: [] })
  })

  test('one modular brick reaches the first head joint where no length is given', () => {
    const result = evaluate(sillFlashingLength, { facts: { ...rowlock, 'opening.width': '48 in', 'sill.flashing.extensionPastJamb': ['4 in', null] }, limits })
    expect(result).toMatchObject({ steps: ['4 in + 48 in + 7 5/8 in = 59 5/8 in'], assumptions: [expect.stringMatching(/right jamb/)] })
  })

  test('a drawn end at the jamb does not count as past it', () => {
    expect(evaluate(sillFlashingLength, { facts: { ...rowlock, 'opening.width': '48 in', 'sill.flashing.extensionPastJamb': '0 in' }, limits }).text).toBe('63 1/4 in')
  })

  test('goes by an amended rule that gives a length', () => {
    const facts = { ...rowlock, 'opening.width': '48 in', 'sill.flashing.extensionPastJamb': '4 in' }
    expect(evaluate(sillFlashingLength, { facts, limits: { ...limits, 'sill.flashing-past-jamb': '6 in' } }).text).toBe('60 in')
  })

  test('names the extension where neither it nor the brick is known', () => {
    const result = evaluate(sillFlashingLength, { facts: { 'sill.kind': 'brickRowlock', 'opening.width': '48 in' }, limits })
    expect(result.missing).toContain('sill.flashing.extensionPastJamb')
  })

  test.each(['none', 'doorThreshold'])('does not apply to %s', (kind) => {
    expect(evaluate(sillFlashingLength, { facts: { 'sill.kind': kind, 'opening.width': '36 in' }, limits }).status).toBe('notApplicable')
  })

  test('names the kind of sill where it is not known', () => {
    expect(evaluate(sillFlashingLength, { facts: { 'wall.veneer.unit': 'modular', 'opening.width': '36 in' }, limits }).missing).toEqual(['sill.kind'])
  })
})

describe('sill flashing, cut length', () => {
  const facts = { ...rowlock, 'opening.width': '48 in', 'sill.flashing.extensionPastJamb': '4 in' }

  test.each([
    { name: 'two dams as asked', dams: undefined, length: '58 in' },
    { name: 'one taller dam', dams: ['2 in', '1/2 in'], length: '59 in' },
  ])('$name', ({ dams, length }) => {
    const result = evaluate(sillFlashingCutLength, { facts: { ...facts, 'sill.flashing.endDamHeight': dams }, limits }, [sillFlashingLength])
    expect(result).toMatchObject({ status: 'computed', value: amount(length) })
  })

  test('names the dam where no rule gives its height', () => {
    expect(evaluate(sillFlashingCutLength, { facts }, [sillFlashingLength]).missing).toEqual(['rule sill.end-dam-height', 'sill.flashing.endDamHeight'])
  })

  test('does not apply to a threshold', () => {
    expect(evaluate(sillFlashingCutLength, { facts: { ...facts, 'sill.kind': 'doorThreshold' }, limits }, [sillFlashingLength]).status).toBe('notApplicable')
  })
})
