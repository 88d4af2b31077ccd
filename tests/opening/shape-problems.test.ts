import { describe, expect, test } from 'vitest'
import { z } from 'zod'
import { shapeProblems } from '../../src/opening/shape-problems.ts'
import { describeOpening } from '../../src/opening/describe.ts'
import { detailAt, problemsIn, windowWith, withFact } from './openings.ts'

describe('unknown keys', () => {
  test.each([
    ['widht', 'width'], ['Width', 'width'], ['headshape', 'headShape'], ['head_shape', 'headShape'], ['sillabovegrade', 'sillAboveGrade'], ['ganged_units', 'gangedUnits'],
  ])('%s: did you mean %s?', (key, meant) => {
    expect(problemsIn(windowWith({ opening: { [key]: 1 } }))).toEqual([`unknownKey /opening/${key}`])
    expect(detailAt(windowWith({ opening: { [key]: 1 } }), `/opening/${key}`)).toBe(`"${key}" is not known here. Did you mean "${meant}"?`)
  })

  test('a key that is near to none is answered with those that are known', () => {
    expect(detailAt(withFact('head.lintels', {}), '/head/lintels')).toBe('"lintels" is not known here. Known: support, flashing, weeps.')
  })

  test('inside the ends of a fact, and inside a length', () => {
    expect(detailAt(withFact('head.support.bearing', ['4 in', { value: 4, unti: 'in' }]), '/head/support/bearing/1/unti')).toContain('Did you mean "unit"?')
    expect(detailAt(withFact('opening.width', { value: 4, unit: 'in', tolerance: 1 }), '/opening/width/tolerance')).toContain('Known: value, unit, resolution.')
  })

  test('slashes and tildes in a key are escaped in the pointer', () => {
    expect(problemsIn(windowWith({ 'a/b~c': 1 }))).toEqual(['unknownKey /a~1b~0c'])
  })

  test('of very many the first are named and the rest are counted', () => {
    const answer = describeOpening(windowWith(Object.fromEntries(Array.from({ length: 60 }, (_, index) => [`zz${index}`, 1]))))
    const problems = answer.ok ? [] : answer.problems
    expect(problems.length).toBe(51)
    expect(problems.at(-1)).toEqual({ code: 'unknownKey', pointer: '', detail: 'has 10 more keys that are not known here' })
  })
})

describe('missing and wrong values', () => {
  test.each([
    [undefined, 'missingKey '],
    [null, 'missingKey '],
    ['x', 'wrongType '],
    [[], 'wrongType '],
    [{}, 'missingKey /opening'],
    [{ opening: null }, 'missingKey /opening'],
    [{ opening: 5 }, 'wrongType /opening'],
  ])('%j', (document, problem) => expect(problemsIn(document)).toEqual([problem]))

  test('required facts that are null are missing', () => {
    expect(problemsIn({ opening: { kind: null, width: null } })).toEqual(['missingKey /opening/kind', 'missingKey /opening/width', 'missingKey /opening/height'])
  })

  const aLength = 'must be a length such as "3 7/8 in", "4 ft 6 in" or "98 mm"'

  test.each([
    ['opening.width', NaN, '', 'wrongType', aLength],
    ['opening.width', true, '', 'wrongType', aLength],
    ['opening.width', ['48 in'], '', 'wrongType', aLength],
    ['opening.pierWidth', true, '', 'wrongType', `${aLength} or a list`],
    ['opening.pierWidth', ['24 in', false], '/1', 'wrongType', aLength],
    ['opening.pierWidth', ['1 in', '2 in', '3 in'], '', 'outOfRange', 'must have at most 2 members'],
    ['opening.pierWidth', [], '', 'outOfRange', 'must have at least 1 member'],
    ['opening.pierWidth', { value: 4, unit: 'inch' }, '/unit', 'notAllowed', 'must be one of "[in_i]", "[ft_i]", "in", "ft", "mm", "cm", "m"'],
    ['opening.width', { value: 4 }, '/unit', 'missingKey', 'is required'],
    ['opening.width', { value: NaN, unit: 'in' }, '/value', 'wrongType', 'must be a number or a string'],
    ['opening.width', { value: 4, unit: 'in', resolution: 0 }, '/resolution', 'outOfRange', 'must be more than 0'],
    ['opening.width', '4'.repeat(61), '', 'outOfRange', 'must have at most 60 characters'],
    ['opening.gangedUnits', 1.5, '', 'wrongType', 'must be a whole number'],
    ['opening.gangedUnits', '2', '', 'wrongType', 'must be a number'],
    ['opening.atCorner', 'yes', '', 'wrongType', 'must be true or false'],
    ['head.flashing.endDamPresent', 'yes', '', 'wrongType', 'must be true or false or a list'],
    ['wall.veneer.weight', 40, '', 'wrongType', 'must be a text with an amount and its unit, such as "15 deg", "3:12", "40 psf" or "115 mph"'],
    ['head.support.section', 5, '', 'wrongType', 'must be a text with legs and thickness, such as "L5x3-1/2x5/16"'],
    ['wall.veneer.bond', 'runing', '', 'notAllowed', 'must be one of "running", "thirdRunning", "flemish", "english", "stack"'],
  ] as const)('%s of %j', (path, wire, at, code, detail) => {
    const pointer = `/${path.replaceAll('.', '/')}${at}`
    expect(problemsIn(withFact(path, wire))).toEqual([`${code} ${pointer}`])
    expect(detailAt(withFact(path, wire), pointer)).toBe(detail)
  })
})

test('a schema of another document is answered in the same words', () => {
  const schema = z.strictObject({ name: z.string(), list: z.array(z.strictObject({ id: z.string() })), either: z.union([z.literal('a'), z.strictObject({ b: z.int().max(5) })]) })
  const parsed = schema.safeParse({ list: [{ id: 'x' }, { ido: 'y' }], either: { b: 9 } }, { reportInput: true })
  expect(parsed.success ? [] : shapeProblems(schema, parsed.error)).toEqual([
    { code: 'missingKey', pointer: '/name', detail: 'is required' },
    { code: 'missingKey', pointer: '/list/1/id', detail: 'is required' },
    { code: 'unknownKey', pointer: '/list/1/ido', detail: '"ido" is not known here. Did you mean "id"?' },
    { code: 'outOfRange', pointer: '/either/b', detail: 'must be at most 5' },
  ])
})
