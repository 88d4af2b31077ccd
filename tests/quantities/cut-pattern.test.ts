import { describe, expect, test } from 'vitest'
import { headCutPattern } from '../../src/quantities/head-cut-pattern.ts'
import { headCutLength, headPanLength } from '../../src/quantities/head-flashing-pan.ts'
import { headFlashingGirth } from '../../src/quantities/head-flashing-girth.ts'
import { sillCutPattern, sillFlashingGirth } from '../../src/quantities/sill-cut-pattern.ts'
import { sillFlashingLength } from '../../src/quantities/sill-pan.ts'
import { amount, evaluate, valueOf, type Given } from './inputs.ts'

const limits = {
  'flashing.past-jamb': '8 in', // common practice, no source
  'flashing.upstand': '8 in', 'flashing.end-dam-height': '1 in', // BIA Technical Notes 28B (2005)
  'flashing.drip-projection': '1/4 in', 'flashing.drip-angle': '45 deg', // BIA Technical Notes 21B (2002)
  'sill.end-dam-height': '1 in', 'sill.projection': '1 in', // BIA Technical Notes 36 (1982)
} as const

const head: Given = {
  limits,
  facts: {
    'opening.width': '40 in', 'opening.headShape': 'flat', 'head.support.kind': 'masonryArch', 'head.flashing.continuousPastOpening': false,
    'wall.airSpace': '1 in', 'wall.veneer.thickness': '3 5/8 in', 'wall.insulationThickness': '0 in', 'head.flashing.slope': '0 deg', 'head.flashing.material': 'selfAdheredMembrane',
  },
}

describe('blank of the head flashing', () => {
  test('is as long as the cut length, and as wide as the legs with the drip on its slant', () => {
    // worked by hand: 56 in dam to dam + 2 × 1 in; 8 in + 4 5/8 in + 1/4 in / cos 45° = 12.9786 in
    const result = evaluate(headCutPattern, head, [headPanLength])
    expect(result).toMatchObject({ status: 'computed', value: '58 in × 12.9786 in (329.655 mm)', assumptions: [] })
    expect(result.steps).toEqual([
      'Length: 1 in + 56 in + 1 in = 58 in',
      'Width: upstand 8 in + bed 4 5/8 in + drip 1/4 in / cos(45°) = 12.9786 in (329.655 mm)',
      'Corners hold water up to 1 in',
    ])
    expect(valueOf(evaluate(headCutLength, head, [headPanLength]))).toBe(amount('58 in'))
    expect(valueOf(evaluate(headFlashingGirth, head))).toBe(amount('12 7/8 in'))
  })

  test('gives its outline and its folds to be laid out', () => {
    const [outline, folds] = evaluate(headCutPattern, head, [headPanLength]).tables
    expect(outline?.rows).toHaveLength(8)
    expect(outline?.rows[7]).toEqual([8, amount('58 in'), expect.any(Number)])
    expect(folds?.rows.map(([name, , , , , direction, angle]) => [name, direction, angle])).toEqual([
      ['Drip, at the face', 'down', 45], ['Upstand', 'up', 90],
      ['Left end dam', 'up', 90], ['Left ear, along the back of the dam', 'down', 90], ['Left ear, diagonal', 'up', 180],
      ['Right end dam', 'up', 90], ['Right ear, along the back of the dam', 'down', 90], ['Right ear, diagonal', 'up', 180],
    ])
  })

  test('in millimeters, with a flat front edge', () => {
    // worked by hand: 25 + 1400 + 25 mm; 210 + 50 + 90 + 10 mm
    const facts = {
      ...head.facts, 'opening.width': '1000 mm', 'head.flashing.extensionPastJamb': '200 mm', 'wall.airSpace': '50 mm', 'wall.veneer.thickness': '90 mm', 'wall.insulationThickness': '0 mm',
      'head.flashing.upstand': '210 mm', 'head.flashing.projection': '10 mm', 'head.flashing.endDamHeight': '25 mm', 'head.flashing.dripAngle': '0 deg',
    }
    expect(evaluate(headCutPattern, { facts, limits: {} }, [headPanLength]).value).toBe('1450 mm × 360 mm')
  })

  test('counts a hem on sheet metal only, and says so where the material is not known', () => {
    const of = (material: string | undefined) => evaluate(headCutPattern, { ...head, facts: { ...head.facts, 'head.flashing.material': material } }, [headPanLength])
    // 12.9786 in + 1/2 in, common practice, no source
    expect(of('stainlessSteel').value).toBe('58 in × 13.4786 in (342.355 mm)')
    expect(of('copperComposite').value).toBe(of('selfAdheredMembrane').value)
    expect(of(undefined)).toMatchObject({ value: of('epdm').value, assumptions: [expect.stringMatching(/hem/)] })
  })

  test('warns of an upstand lower than the dam', () => {
    const result = evaluate(headCutPattern, { facts: { ...head.facts, 'head.flashing.endDamHeight': '9 in' }, limits }, [headPanLength])
    expect(result.notes.at(-1)).toMatch(/lower than the end dam; water runs over the corner at 8 in, not at 9 in/)
  })

  test('a drip turned straight down does not stand out', () => {
    const result = evaluate(headCutPattern, { facts: { ...head.facts, 'head.flashing.dripAngle': '90 deg' }, limits }, [headPanLength])
    expect(result).toMatchObject({ status: 'notDetermined', reason: 'methodDoesNotHold' })
  })

  test('names what is missing; gives why over an arch; does not apply where the flashing runs on', () => {
    const over = (facts: object) => evaluate(headCutPattern, { facts: { ...head.facts, ...facts }, limits }, [headPanLength])
    expect(over({ 'wall.veneer.thickness': undefined }).missing).toEqual(['wall.veneer.thickness'])
    expect(over({ 'opening.headShape': 'segmentalArch' }).reason).toBe('methodDoesNotHold')
    expect(over({ 'head.flashing.continuousPastOpening': true }).status).toBe('notApplicable')
  })
})

const sill: Given = {
  limits,
  facts: {
    'sill.kind': 'brickRowlock', 'opening.width': '40 in', 'sill.flashing.extensionPastJamb': '4 in', 'sill.depth': '7 1/4 in', 'sill.projection': '1 1/4 in',
    'sill.flashing.upstand': '2 in', 'sill.flashing.projection': '1/4 in', 'sill.flashing.material': 'selfAdheredMembrane',
  },
}

describe('girth of the sill flashing', () => {
  test.each([
    // worked by hand: upstand + (depth of the sill − its own projection) + projection of the flashing
    { name: 'as drawn', facts: {}, girth: '8 1/4 in', said: [] },
    { name: 'in millimeters', facts: { 'sill.depth': '190 mm', 'sill.projection': '30 mm', 'sill.flashing.upstand': '50 mm', 'sill.flashing.projection': '10 mm' }, girth: '220 mm', said: [] },
    { name: 'sill projection not known: the least of the rule, 1 in', facts: { 'sill.projection': undefined }, girth: '8 1/2 in', said: [/stands out past the face/] },
    { name: 'a front edge that is not told', facts: { 'sill.flashing.projection': undefined }, girth: '8 1/4 in', said: [/that of a head flashing/] },
    {
      name: 'depth not known: from the backing, 1 in + 3 5/8 in',
      facts: { 'sill.depth': undefined, 'wall.airSpace': '1 in', 'wall.veneer.thickness': '3 5/8 in', 'wall.insulationThickness': '0 in' }, girth: '6 7/8 in', said: [/start at the backing/],
    },
  ])('$name', ({ facts, girth, said }) => {
    const result = evaluate(sillFlashingGirth, { ...sill, facts: { ...sill.facts, ...facts } })
    expect(result).toMatchObject({ status: 'computed', value: amount(girth), assumptions: said.map((one) => expect.stringMatching(one) as unknown) })
  })

  test('names the upstand, for which no rule gives a height', () => {
    expect(evaluate(sillFlashingGirth, { ...sill, facts: { ...sill.facts, 'sill.flashing.upstand': undefined } }).missing).toEqual(['sill.flashing.upstand'])
  })

  test('does not apply to a threshold', () => {
    expect(evaluate(sillFlashingGirth, { ...sill, facts: { ...sill.facts, 'sill.kind': 'doorThreshold' } }).status).toBe('notApplicable')
  })
})

describe('blank of the sill flashing', () => {
  test('lies level, with its front edge turned down as at the head', () => {
    // worked by hand: 48 in dam to dam + 2 × 1 in; 2 in + 6 in + 1/4 in / cos 45° = 8.3536 in
    const result = evaluate(sillCutPattern, sill, [sillFlashingLength])
    expect(result).toMatchObject({ status: 'computed', value: '50 in × 8.3536 in (212.18 mm)', assumptions: [] })
    expect(result.notes).toContain('The flashing is taken to lie level under the sill units.')
    expect(result.tables.map(({ rows }) => rows.length)).toEqual([8, 8])
  })

  test('without an upstand it has no ears, and says that the corners hold nothing', () => {
    const result = evaluate(sillCutPattern, { ...sill, facts: { ...sill.facts, 'sill.flashing.upstand': '0 in' } }, [sillFlashingLength])
    expect(result.tables[1]?.rows.map(([name]) => name)).toEqual(['Drip, at the face', 'Left end dam', 'Right end dam'])
    expect(result.notes).toEqual(expect.arrayContaining([expect.stringMatching(/runs over the corner at 0 in/)]))
  })

  test('takes the front edge as flat where no rule turns it down, and says so', () => {
    const result = evaluate(sillCutPattern, { ...sill, limits: { 'sill.end-dam-height': '1 in' } }, [sillFlashingLength])
    expect(result).toMatchObject({ value: '50 in × 8 1/4 in', assumptions: [expect.stringMatching(/flat/)] })
  })

  test('does not apply without a sill', () => {
    expect(evaluate(sillCutPattern, { ...sill, facts: { ...sill.facts, 'sill.kind': 'none' } }, [sillFlashingLength]).status).toBe('notApplicable')
  })
})
