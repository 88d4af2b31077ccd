import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { describeOpening } from '../../src/opening/describe.ts'
import { facts } from '../../src/opening/facts.ts'
import { valueOf } from '../../src/opening/opening.ts'
import { described, detailAt, problemsIn, windowWith, withFact } from './openings.ts'

const length = (amount: number) => ({ dimension: 'length', amount })

describe('what is known', () => {
  test('the three required facts are enough', () => {
    expect([...described(windowWith()).facts.keys()]).toEqual(['opening.kind', 'opening.width', 'opening.height'])
  })

  test('absent and null mean not known, for a fact, a part and the document alike', () => {
    const nulls = { reference: null, basis: null, lengthUnit: null, lengthResolution: null, wall: null, head: { support: null, flashing: { present: null, endDamHeight: null, upstand: null } } }
    expect(described(windowWith(nulls))).toEqual(described(windowWith()))
  })

  test('both ends null are not known either', () => {
    const { facts: known } = described(windowWith({ head: { support: { bearing: [null, null] }, flashing: { endDamPresent: [null] } } }))
    expect(known.has('head.support.bearing')).toBe(false)
    expect(known.has('head.flashing.endDamPresent')).toBe(false)
  })

  test('false and 0 are facts', () => {
    const opening = described(windowWith({ wall: { storiesAbove: 0, loadAbove: false, insulationThickness: '0 in' }, head: { flashing: { present: false } } }))
    expect(valueOf(opening, 'wall.storiesAbove')).toEqual({ dimension: 'count', amount: 0 })
    expect(valueOf(opening, 'wall.loadAbove')).toBe(false)
    expect(valueOf(opening, 'wall.insulationThickness')).toEqual(length(0))
    expect(valueOf(opening, 'head.flashing.present')).toBe(false)
  })

  test('a single value means both ends, a list is left and right', () => {
    const ends = (bearing: unknown) => described(withFact('head.support.bearing', bearing)).facts.get('head.support.bearing')?.map((reading) => reading?.text)
    expect(ends('4 in')).toEqual(['4 in', '4 in'])
    expect(ends(['4 in'])).toEqual(['4 in', '4 in'])
    expect(ends(['4 in', '3 1/2 in'])).toEqual(['4 in', '3 1/2 in'])
    expect(ends(['4 in', null])).toEqual(['4 in', undefined])
    expect(ends([null, '4 in'])).toEqual([undefined, '4 in'])
  })

  test('reference, basis and unit system are carried along', () => {
    expect(described(windowWith({ reference: 'W-1', basis: 'asBuilt', lengthUnit: 'mm' }))).toMatchObject({ reference: 'W-1', basis: 'asBuilt', unitSystem: 'si' })
    expect(described(windowWith()).unitSystem).toBe('inchPound')
  })
})

describe('units', () => {
  test('a bare number takes the unit of the document, as text or as number', () => {
    for (const width of [48, '48', 48.0]) {
      expect(valueOf(described({ lengthUnit: 'in', opening: { kind: 'window', width, height: 60 } }), 'opening.width')).toEqual(length(1_219_200_000))
    }
    expect(valueOf(described({ lengthUnit: 'mm', opening: { kind: 'window', width: 1200, height: 1500.5 } }), 'opening.height')).toEqual(length(1_500_500_000))
  })

  test('an object names its own unit, whatever the document says', () => {
    const value = (width: unknown) => valueOf(described({ lengthUnit: 'mm', opening: { kind: 'window', width, height: 1500 } }), 'opening.width')
    expect(value({ value: 48, unit: '[in_i]' })).toEqual(length(1_219_200_000))
    expect(value({ value: '3 7/8', unit: 'ft' })).toEqual(length(1_181_100_000))
    expect(value({ value: 121.92, unit: 'cm' })).toEqual(length(1_219_200_000))
  })

  test('numbers that another program has worked out are read to their last digit', () => {
    const past = (value: number) => described(withFact('head.flashing.extensionPastSupport', { value, unit: 'in' })).facts.get('head.flashing.extensionPastSupport')?.[0]?.value
    expect(past(0.1 + 0.2)).toEqual(length(7_620_000))
    expect(past(3.552713678800501e-15)).toEqual(length(0))
    expect(past(-1e-7)).toEqual(length(-3)) // a ten-millionth of an inch is 2.54 nm
  })

  test('resolution comes from the value, else from the document', () => {
    const resolution = (width: unknown, lengthResolution?: string) =>
      described({ lengthUnit: 'in', lengthResolution, opening: { kind: 'window', width, height: 60 } }).facts.get('opening.width')?.[0]?.resolution
    expect(resolution(48)).toBeUndefined()
    expect(resolution(48, '1/16 in')).toBe(1_587_500)
    expect(resolution(48, '1/16')).toBe(1_587_500)
    expect(resolution({ value: 1219, unit: 'mm', resolution: 1 }, '1/16 in')).toBe(1_000_000)
    expect(resolution({ value: 1219, unit: 'mm', resolution: 1e-7 }, '1/16 in')).toBe(0)
  })

  test('a length without a unit is refused, not guessed', () => {
    expect(problemsIn({ opening: { kind: 'window', width: 48, height: '60' } })).toEqual(['unitMissing /opening/width', 'unitMissing /opening/height'])
    expect(problemsIn(withFact('sill.slope', '15'))).toEqual(['unitMissing /sill/slope'])
    expect(detailAt(withFact('sill.slope', '15'), '/sill/slope')).toContain('15 deg, or as a slope 3:12')
    expect(detailAt(withFact('wall.veneer.weight', '40'), '/wall/veneer/weight')).toContain('40 psf')
  })

  test('with a wrong lengthUnit only that is reported, not every length after it', () => {
    expect(problemsIn({ lengthUnit: 'inch', opening: { kind: 'window', width: 48, height: 60 } })).toEqual(['notAllowed /lengthUnit'])
    expect(problemsIn({ lengthUnit: 'inch', opening: { kind: 'window', width: '4-8', height: 60 }, sill: { slope: '15' } })).toEqual(['notAllowed /lengthUnit', 'ambiguous /opening/width', 'unitMissing /sill/slope'])
  })

  test('a resolution that no tape has is refused', () => {
    expect(problemsIn(windowWith({ lengthResolution: 'about' }))).toEqual(['unreadable /lengthResolution'])
    expect(problemsIn(windowWith({ lengthResolution: '-1 mm' }))).toEqual(['unreadable /lengthResolution'])
    expect(problemsIn(windowWith({ lengthResolution: '1/16' }))).toEqual(['unreadable /lengthResolution'])
  })
})

describe('values that no wall has', () => {
  test.each([
    ['opening.width', '-48 in'], ['opening.width', '0 in'], ['opening.width', '1 in'], ['opening.width', '41 ft'], ['opening.height', '500 m'],
    ['wall.veneer.thickness', '40 in'], ['wall.veneer.weight', '-40 psf'], ['wall.storiesAbove', 61], ['opening.gangedUnits', 0], ['sill.slope', '89 deg'],
    ['ties.areaPerTie', '0 sq ft'], ['ties.areaPerTie', '101 sq ft'], ['exposure.windSpeed', '1150 mph'], ['head.flashing.endDamHeight', '-1 in'],
  ])('%s of %s', (path, wire) => {
    const pointer = `/${path.replaceAll('.', '/')}`
    expect(problemsIn(withFact(path, wire))).toEqual([`notBelievable ${pointer}`])
    expect(detailAt(withFact(path, wire), pointer)).toContain(facts.get(path)?.between?.[0])
  })

  test('a count below nothing is out of range', () => {
    expect(problemsIn(withFact('wall.storiesAbove', -1))).toEqual(['outOfRange /wall/storiesAbove'])
    expect(problemsIn(withFact('head.flashing.splices', -1))).toEqual(['outOfRange /head/flashing/splices'])
  })

  test('a length of more than a kilometre is out of range', () => {
    expect(problemsIn(withFact('opening.width', '10 km'))).toEqual(['outOfRange /opening/width'])
    expect(problemsIn(withFact('opening.width', { value: 1e300, unit: 'mm' }))).toEqual(['unreadable /opening/width'])
    expect(problemsIn(withFact('opening.width', { value: 1e21, unit: 'mm' }))).toEqual(['outOfRange /opening/width'])
  })

  test('inches written into a document in millimeters do not pass for a tiny window', () => {
    const document = { lengthUnit: 'mm', opening: { kind: 'window', width: '48', height: 60 } }
    expect(problemsIn(document)).toEqual(['notBelievable /opening/width', 'notBelievable /opening/height'])
    expect(detailAt(document, '/opening/width')).toBe('"48 mm" is 1.89 in (48 mm), outside 4 in to 40 ft for masonry opening width. A bare number takes the lengthUnit of the document, here mm.')
  })

  test('of a length with its unit the advice does not blame the document', () => {
    expect(detailAt(windowWith({ lengthUnit: 'mm', opening: { width: '1 in' } }), '/opening/width')).toBe('"1 in" is 1 in (25.4 mm), outside 4 in to 40 ft for masonry opening width. Check the number and its unit.')
  })

  test.each([[NaN], [Infinity], [-Infinity], [true], [[]], [{}], ['']])('%o is not a width', (width) => {
    const answer = describeOpening(windowWith({ opening: { width } }))
    expect(answer.ok).toBe(false)
    expect(answer.ok ? [] : answer.problems.every(({ pointer }) => pointer.startsWith('/opening/width'))).toBe(true)
  })
})

describe('all problems at once', () => {
  const wrong = {
    lengthUnit: 'in',
    opening: { kind: 'windw', width: '3-4', height: NaN, gangedUnits: 1.5, pierWidth: ['24', '12,5 mm'] },
    wall: { airSpace: 2000, veneer: { weight: '40 kg', bond: 'runing' } },
    head: { support: { section: 'LLV', bering: 4, bearing: [true, 4] }, flashing: { endDamHeight: ['2', 'two'] } },
    exposure: { windSpeed: '115' },
  }

  test('each with its place, those of shape and those of value', () => {
    expect([...problemsIn(wrong)].toSorted()).toEqual([
      'ambiguous /opening/width',
      'decimalComma /opening/pierWidth/1',
      'notAllowed /opening/kind',
      'notAllowed /wall/veneer/bond',
      'notBelievable /wall/airSpace',
      'unitMissing /exposure/windSpeed',
      'unknownKey /head/support/bering',
      'unreadable /head/flashing/endDamHeight/1',
      'unreadable /head/support/section',
      'unreadable /wall/veneer/weight',
      'wrongType /head/support/bearing/0',
      'wrongType /opening/gangedUnits',
      'wrongType /opening/height',
    ])
  })

  test('a single value for both ends is reported once', () => {
    expect(problemsIn(withFact('head.support.bearing', '4-6'))).toEqual(['ambiguous /head/support/bearing'])
  })

  test('mending them one by one never brings up a new one', () => {
    const mended = structuredClone(wrong) as { opening: Record<string, unknown> }
    const before = problemsIn(wrong)
    mended.opening['kind'] = 'window'
    mended.opening['height'] = 60
    expect(problemsIn(mended)).toEqual(before.filter((problem) => !['notAllowed /opening/kind', 'wrongType /opening/height'].includes(problem)))
  })
})

describe('documents that mean harm', () => {
  test('keys of prototypes are unknown keys, and change nothing', () => {
    const document: unknown = JSON.parse('{"__proto__": {"isAdmin": true}, "constructor": {}, "opening": {"kind": "window", "width": "48 in", "height": "60 in", "__proto__": {"headRise": "6 in"}, "toString": 1}, "head": {"__proto__": null}}')
    expect([...problemsIn(document)].toSorted()).toEqual(['unknownKey /__proto__', 'unknownKey /constructor', 'unknownKey /head/__proto__', 'unknownKey /opening/__proto__', 'unknownKey /opening/toString'])
    expect(Object.hasOwn(Object.prototype, 'isAdmin')).toBe(false)
  })

  test('inherited values are no facts', () => {
    const opening = Object.assign(Object.create({ headRise: '6 in' }) as object, { kind: 'window', width: '48 in', height: '60 in' })
    const answer = describeOpening({ opening })
    expect(answer.ok && answer.value.facts.has('opening.headRise')).toBe(false)
  })

  test('a very deep value is refused', () => {
    const deep = (depth: number) => JSON.parse(`${'{"a":'.repeat(depth)}1${'}'.repeat(depth)}`) as unknown
    expect(problemsIn(windowWith({ opening: { width: deep(5000) } })).length).toBeGreaterThan(0)
    expect(problemsIn(windowWith({ extra: deep(5000) }))).toEqual(['unknownKey /extra'])
  })

  test('very many keys, very long keys and very long lists are refused quickly and briefly', () => {
    const many = Object.fromEntries(Array.from({ length: 200_000 }, (_, index) => [`key${index}`, index]))
    const list = Array.from({ length: 200_000 }, () => [])
    const answer = describeOpening({ ['k'.repeat(1_000_000)]: 1, ...windowWith({ head: { support: { bearing: list }, flashing: many } }), ...many })
    expect(answer.ok ? 0 : answer.problems.length).toBeLessThan(200)
    expect(answer.ok ? 0 : answer.problems.reduce((sum, { detail }) => sum + detail.length, 0)).toBeLessThan(100_000)
  }, 3000)
})

describe('any document at all', () => {
  const finite = (document: unknown) => {
    const answer = describeOpening(document)
    if (!answer.ok) return answer.problems.length > 0 && answer.problems.every(({ pointer, detail }) => /^(\/|$)/.test(pointer) && detail.length > 3)
    return [...answer.value.facts.values()].flat().every((reading) => typeof reading?.value !== 'object' || Number.isFinite(reading.value.amount))
  }

  test('is described with finite amounts, or refused with places and sentences; never an exception', () => {
    const keys = fc.constantFrom('opening', 'head', 'flashing', 'support', 'width', 'bearing', 'lengthUnit', 'value', 'unit', '__proto__', 'x')
    fc.assert(fc.property(fc.oneof(fc.anything(), fc.object({ key: keys, maxDepth: 4 })), finite), { numRuns: 1000 })
  })

  test('whatever stands in place of one fact, only that fact is complained about', () => {
    const wire = fc.oneof(fc.jsonValue({ maxDepth: 2 }), fc.double(), fc.constantFrom('4 in', '4', 4, '40 psf', true, ['2 in', null]))
    fc.assert(
      fc.property(fc.constantFrom(...facts.keys()), wire, (path, value) => {
        const pointer = `/${path.replaceAll('.', '/')}`
        const document = withFact(path, value)
        expect(finite(document)).toBe(true)
        for (const problem of problemsIn(document)) expect(problem.split(' ')[1]).toMatch(new RegExp(`^${pointer}(/|$)`))
      }),
      { numRuns: 2000 },
    )
  })
})
