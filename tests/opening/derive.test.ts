import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { derive } from '../../src/opening/derive.ts'
import type { Readings } from '../../src/opening/opening.ts'
import { described, windowWith } from './openings.ts'

const flashing = (more: object, support: object = {}) => described(windowWith({ head: { flashing: more, support } })).facts
const ties = (more: object) => described(windowWith({ ties: more })).facts
const values = (readings: Readings | undefined) => readings?.map((reading) => (typeof reading?.value === 'object' ? reading.value.amount : reading?.value))
const conflicts = (readings: Readings | undefined) => readings?.map((reading) => reading?.conflictsWith?.join())

describe('end dams', () => {
  test.each([
    { height: '2 in', present: [true, true] },
    { height: ['2 in', '0 in'], present: [true, false] },
    { height: [null, '1/64 in'], present: [undefined, true] },
    { height: 'not given', present: undefined },
  ])('height $height', ({ height, present }) => {
    expect(values(flashing(height === 'not given' ? {} : { endDamHeight: height }).get('head.flashing.endDamPresent'))).toEqual(present)
  })

  test('at the sill as at the head', () => {
    const { facts } = described(windowWith({ sill: { flashing: { endDamHeight: ['0 in', '1 in'] } } }))
    expect(facts.get('sill.flashing.endDamPresent')).toMatchObject([{ value: false, derivedFrom: ['sill.flashing.endDamHeight'] }, { value: true }])
  })

  test('what was given stays, and is marked where the height says otherwise', () => {
    const present = flashing({ endDamPresent: [true, true], endDamHeight: ['2 in', '0 in'] }).get('head.flashing.endDamPresent')
    expect(values(present)).toEqual([true, true])
    expect(conflicts(present)).toEqual([undefined, 'head.flashing.endDamHeight'])
  })

  test('a given end and a derived end stand side by side', () => {
    const present = flashing({ endDamPresent: [true, null], endDamHeight: [null, '0 in'] }).get('head.flashing.endDamPresent')
    expect(present).toMatchObject([{ value: true, text: 'true' }, { value: false, derivedFrom: ['head.flashing.endDamHeight'] }])
  })
})

describe('flashing past the lintel end', () => {
  const past = (more: object, bearing: unknown) => flashing(more, { bearing }).get('head.flashing.extensionPastSupport')

  test.each([
    { jamb: '8 in', bearing: '4 in', nm: [101_600_000, 101_600_000], text: ['4 in', '4 in'] },
    { jamb: ['8 in', '6 in'], bearing: ['4 1/4 in', '8 in'], nm: [95_250_000, -50_800_000], text: ['3 3/4 in', '-2 in'] },
    { jamb: '200 mm', bearing: '4 in', nm: [98_400_000, 98_400_000], text: ['98.4 mm', '98.4 mm'] },
    { jamb: ['8 in', null], bearing: '4 in', nm: [101_600_000, undefined], text: ['4 in', undefined] },
  ])('$jamb past the jamb on $bearing', ({ jamb, bearing, nm, text }) => {
    const readings = past({ extensionPastJamb: jamb }, bearing)
    expect(values(readings)).toEqual(nm)
    expect(readings?.map((reading) => reading?.text)).toEqual(text)
  })

  test('is not known when either length is not', () => {
    expect(past({ extensionPastJamb: '8 in' }, null)).toBeUndefined()
    expect(past({}, '4 in')).toBeUndefined()
  })

  test('carries what both tapes could not tell', () => {
    const inMillimetres = (value: number) => ({ value, unit: 'mm', resolution: 1 })
    expect(past({ extensionPastJamb: inMillimetres(200) }, inMillimetres(100))?.[0]?.resolution).toBe(2_000_000)
    expect(past({ extensionPastJamb: '200 mm' }, '100 mm')?.[0]).not.toHaveProperty('resolution')
  })

  test('a given one is marked when it differs by more than the tapes can tell', () => {
    const marked = (given: string, lengthResolution?: string) =>
      conflicts(described(windowWith({ lengthResolution, head: { support: { bearing: '4 in' }, flashing: { extensionPastJamb: '8 in', extensionPastSupport: given } } })).facts.get('head.flashing.extensionPastSupport'))
    const from = 'head.flashing.extensionPastJamb,head.support.bearing'
    expect(marked('4 in')).toEqual([undefined, undefined])
    expect(marked('3 15/16 in')).toEqual([from, from])
    expect(marked('3 13/16 in', '1/16 in')).toEqual([undefined, undefined]) // three tapes, a sixteenth each
    expect(marked('3 3/4 in', '1/16 in')).toEqual([from, from])
  })
})

describe('wall area per tie', () => {
  test('16 in by 24 in is 2 2/3 sq ft', () => {
    const [area] = ties({ horizontalSpacing: '16 in', verticalSpacing: '24 in' }).get('ties.areaPerTie') ?? []
    // 1 ft2 = 9.290304E-02 m2, NIST SP 811 (2008), appendix B.8
    expect(values([area])?.[0]).toBeCloseTo((8 / 3) * 92_903.04, 6)
    expect(area).toMatchObject({ text: '2.667 ft2', derivedFrom: ['ties.horizontalSpacing', 'ties.verticalSpacing'] })
  })

  test.each([
    ['2.67 sq ft', false], ['2.7 sq ft', false], ['2 2/3 sq ft', false], ['0.25 m2', false], ['0.248 m2', false], ['0.2477 m²', false],
    ['2.66 sq ft', true], ['3.5 sq ft', true], ['2 1/2 sq ft', true], ['0.26 m2', true],
  ])('given as %s for 16 in by 24 in: contradiction %s', (areaPerTie, contradicts) => {
    const readings = ties({ horizontalSpacing: '16 in', verticalSpacing: '24 in', areaPerTie }).get('ties.areaPerTie')
    expect(readings?.[0]?.text).toBe(areaPerTie)
    expect(readings?.[0]?.conflictsWith !== undefined).toBe(contradicts)
  })
})

describe('front edge', () => {
  test.each([['1/4 in', 'pastFace'], ['0 in', 'flushWithFace'], ['-1/64 in', 'shortOfFace']])('drip %s past the face: %s', (projection, edge) => {
    expect(values(flashing({ projection }).get('head.flashing.frontEdge'))).toEqual([edge])
  })

  test('a given edge is marked when the drip says otherwise', () => {
    expect(flashing({ projection: '-1/4 in', frontEdge: 'pastFace' }).get('head.flashing.frontEdge')).toMatchObject([{ value: 'pastFace', conflictsWith: ['head.flashing.projection'] }])
  })
})

describe('splices', () => {
  const splices = (more: object) => flashing(more).get('head.flashing.splices')

  test('a lap tells of a splice, how many stays open', () => {
    expect(splices({ spliceLap: '6 in' })).toMatchObject([{ value: { amount: 1 }, derivedFrom: ['head.flashing.spliceLap'] }])
    expect(splices({ spliceLap: '6 in', splices: 3 })).toEqual([{ value: { dimension: 'count', amount: 3 }, text: '3' }])
    expect(splices({ splices: 0 })).toEqual([{ value: { dimension: 'count', amount: 0 }, text: '0' }])
  })

  test('a lap in a flashing of one piece is a contradiction', () => {
    expect(splices({ spliceLap: '6 in', splices: 0 })).toMatchObject([{ value: { amount: 0 }, conflictsWith: ['head.flashing.spliceLap'] }])
  })
})

test('no given value is ever replaced, and what was derived once stays', () => {
  const lengths = fc.integer({ min: 0, max: 96 }).map((eighths) => `${Math.floor(eighths / 8)} ${eighths % 8}/8 in`)
  const end = fc.option(lengths)
  const document = fc.record({
    endDamHeight: fc.tuple(end, end), endDamPresent: fc.tuple(fc.option(fc.boolean()), fc.option(fc.boolean())), extensionPastJamb: fc.tuple(end, end), extensionPastSupport: fc.tuple(end, end),
  })
  fc.assert(
    fc.property(document, fc.tuple(end, end), (given, bearing) => {
      const known = flashing(given, { bearing })
      for (const [key, ends] of Object.entries(given)) {
        ends.forEach((wire, index) => {
          if (wire !== null) expect(known.get(`head.flashing.${key}`)?.[index]?.text).toBe(String(wire))
        })
      }
      expect(derive(known)).toEqual(known)
    }),
  )
})
