import { describe, expect, test } from 'vitest'
import { facts } from '../../src/opening/facts.ts'
import { settleFact } from '../../src/opening/read-fact.ts'
import { settleValue, type Defaults } from '../../src/opening/settle.ts'

function settled(path: string, wire: unknown, defaults: Defaults = {}) {
  const definition = facts.get(path)
  if (!definition) throw new Error(`no fact ${path}`)
  return settleValue(definition, wire, path.split('.'), defaults)
}

const detail = (path: string, wire: unknown, defaults?: Defaults) => {
  const answer = settled(path, wire, defaults)
  return answer.ok ? 'no problem' : answer.problems[0]?.detail
}

describe('a value keeps the words it was given in', () => {
  test.each([
    ['opening.width', `4'-0"`, {}, { value: { dimension: 'length', amount: 1_219_200_000 }, text: `4'-0"` }],
    ['opening.width', ' 48 ', { lengthUnit: 'in' }, { value: { dimension: 'length', amount: 1_219_200_000 }, text: '48 in' }],
    ['opening.width', 48, { lengthUnit: 'in' }, { value: { dimension: 'length', amount: 1_219_200_000 }, text: '48 in' }],
    ['opening.width', `4'-0`, { lengthUnit: 'mm' }, { value: { dimension: 'length', amount: 1_219_200_000 }, text: `4'-0` }],
    ['opening.width', { value: 1200.5, unit: 'mm' }, { resolution: 7 }, { value: { dimension: 'length', amount: 1_200_500_000 }, text: '1200.5 mm', resolution: 7 }],
    ['opening.width', { value: 4, unit: 'ft', resolution: 0.01 }, { resolution: 7 }, { value: { dimension: 'length', amount: 1_219_200_000 }, text: '4 ft', resolution: 3_048_000 }],
    ['head.support.section', '(2) L6x3.5x5/16', {}, { value: '2L6x3-1/2x5/16', text: '(2) L6x3.5x5/16' }],
    ['wall.veneer.bond', 'running', {}, { value: 'running', text: 'running' }],
    ['wall.loadAbove', false, {}, { value: false, text: 'false' }],
    ['wall.storiesAbove', 2, {}, { value: { dimension: 'count', amount: 2 }, text: '2' }],
    ['sill.slope', '-2 deg', {}, { value: { dimension: 'angle', amount: -2 }, text: '-2 deg' }],
  ] as const)('%s of %j', (path, wire, defaults, reading) => expect(settled(path, wire, defaults)).toEqual({ ok: true, value: reading }))
})

describe('what an inspector reads when a value is refused', () => {
  test.each([
    ['opening.width', '48', `"48" has no unit. Write the unit, or set "lengthUnit" to "in" or "mm" for the whole document`],
    ['opening.width', 'NTS', `"NTS" is not a length. Write it like 3 7/8 in, 3-7/8", 4'-6 1/2" or 98 mm (units: in, ft, mm, cm, m)`],
    ['opening.width', { value: 'four', unit: 'ft' }, `"four ft" is not a length. Write it like 3 7/8 in, 3-7/8", 4'-6 1/2" or 98 mm (units: in, ft, mm, cm, m)`],
    ['opening.width', '1,016 mm', '"1,016 mm" has a comma in the number. Write a decimal point, 12.5 mm, and thousands without a mark, 1016 mm'],
    ['ties.horizontalSpacing', '16/24 in', `"16/24 in" can be read in more than one way: feet and inches, a range or two spacings. Write one length: 3'-4", 3 3/4 in or 16 in`],
    ['sill.slope', 'steep', '"steep" cannot be read here. Write it like 15 deg, or as a slope 3:12'],
    ['sill.slope', '1 in', '"1 in" cannot be read here. Write it like 15 deg, or as a slope 3:12'],
    ['exposure.windPressure', '18', '"18" has no unit. Write it like 40 psf or 1.9 kPa'],
    ['ties.areaPerTie', '16 in x 24 in', '"16 in x 24 in" cannot be read here. Write it like 2.67 sq ft or 0.25 m2'],
    ['head.support.section', 'W8x10', '"W8x10" is not an angle section. Write the legs and the thickness: L5x3-1/2x5/16'],
    ['wall.storiesAbove', 99, '"99" is 99, outside 0 to 60 for stories of brick above.'],
  ] as const)('%s of %j', (path, wire, words) => expect(detail(path, wire)).toBe(words))
})

describe('ends', () => {
  const ends = (wire: unknown) => {
    const definition = facts.get('head.support.bearing')
    if (!definition) throw new Error('no such fact')
    return settleFact(definition, wire, ['head', 'support', 'bearing'], {}).map((one) => (one?.ok === false ? one.problems[0]?.pointer : one?.value.text))
  }

  test('a wrong end is pointed at, a wrong single value as a whole', () => {
    expect(ends(['4 in', 'x'])).toEqual(['4 in', '/head/support/bearing/1'])
    expect(ends('x')).toEqual(['/head/support/bearing', '/head/support/bearing'])
    expect(ends([null, '4 in'])).toEqual([undefined, '4 in'])
  })
})
