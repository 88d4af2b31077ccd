import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fewestPieces, spliced, type SpliceJob } from '../../src/quantities/flashing-splices.ts'
import { headCutLength, headPanLength } from '../../src/quantities/head-flashing-pan.ts'
import { sillFlashingCutLength, sillFlashingLength } from '../../src/quantities/sill-pan.ts'
import { headSplices, sillSplices } from '../../src/quantities/splice-layout.ts'
import { amount, evaluate } from './inputs.ts'

describe('fewest pieces', () => {
  test.each([
    // worked by hand: n lengths less n − 1 laps
    { length: 120, count: 1 }, { length: 121, count: 2 }, { length: 234, count: 2 }, { length: 235, count: 3 }, { length: 348, count: 3 }, { length: 349, count: 4 },
  ])('$length from 120 with laps of 6: $count', ({ length, count }) => expect(fewestPieces(length, 120, 6)).toBe(count))

  test('none where the lap is as long as the stock', () => expect(fewestPieces(200, 6, 6)).toBeUndefined())
})

const anyJob = fc.record({
  width: fc.integer({ min: 20, max: 600 }), past: fc.tuple(fc.integer({ min: 4, max: 24 }), fc.integer({ min: 4, max: 24 })), dams: fc.tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 4 })),
  stockLength: fc.integer({ min: 60, max: 240 }), lap: fc.integer({ min: 2, max: 12 }),
}).map(({ width, past, dams, ...stock }): SpliceJob => ({
  ...stock, leftDam: dams[0], rightDam: dams[1], cutLength: dams[0] + past[0] + width + past[1] + dams[1], jambs: [dams[0] + past[0], dams[0] + past[0] + width],
}))

describe('where the laps lie', () => {
  test('the pieces make the blank, none longer than the stock, no lap in a dam', () => {
    fc.assert(fc.property(anyJob, (job) => {
      const count = fewestPieces(job.cutLength, job.stockLength, job.lap) ?? 0
      fc.pre(count > 1)
      const layout = spliced(job, count)
      fc.pre(layout !== undefined)
      expect(layout.pieces).toHaveLength(count)
      expect([layout.pieces[0]?.from, layout.pieces.at(-1)?.to]).toEqual([0, job.cutLength])
      for (const [index, { from, to }] of layout.pieces.entries()) {
        expect(to - from).toBeGreaterThan(0)
        expect(to - from).toBeLessThanOrEqual(job.stockLength)
        if (index > 0) expect((layout.pieces[index - 1]?.to ?? 0) - from).toBe(job.lap)
      }
      for (const { from, to } of layout.laps) expect(from >= job.leftDam && to <= job.cutLength - job.rightDam).toBe(true)
    }))
  })

  test('one lap is as far from the ends of the opening as any other place would be, or a lap away', () => {
    // every place that the stock allows, tried one by one
    fc.assert(fc.property(anyJob.filter(({ cutLength, stockLength, lap }) => fewestPieces(cutLength, stockLength, lap) === 2), (job) => {
      const clear = (from: number) => Math.min(from - job.leftDam, job.cutLength - job.rightDam - from - job.lap, ...job.jambs.map((jamb) => Math.max(from - jamb, jamb - from - job.lap)))
      const places = Array.from({ length: job.cutLength }, (_, from) => from).filter((from) => from + job.lap <= job.stockLength && job.cutLength - from <= job.stockLength)
      const best = Math.max(...places.map(clear))
      fc.pre(best >= 0)
      expect(spliced(job, 2)?.clear).toBeGreaterThanOrEqual(Math.min(job.lap, best))
    }))
  })
})

const limits = {
  'flashing.splice-lap': '6 in', // UFGS 04810, 3.9
  'flashing.past-jamb': '8 in', // common practice, no source
  'flashing.end-dam-height': '1 in', // BIA Technical Notes 28B (2005)
  'sill.end-dam-height': '1 in', // BIA Technical Notes 36 (1982)
} as const
const opening = { 'opening.headShape': 'flat', 'head.support.kind': 'masonryArch', 'head.flashing.continuousPastOpening': false }

describe('splices in the head flashing', () => {
  const over = (width: string, facts: object = {}) => evaluate(headSplices, { facts: { ...opening, 'opening.width': width, 'head.flashing.stockLength': '10 ft', ...facts }, limits }, [headPanLength, headCutLength])

  test('none where one length reaches', () => {
    // worked by hand: 102 + 16 + 2 = 120 in
    expect(over('102 in')).toMatchObject({ status: 'computed', value: 0, steps: ['120 in comes out of one length of 120 in'], tables: [{ rows: [[1, amount('120 in'), 0, amount('120 in'), amount('120 in')]] }] })
  })

  test('two pieces over 12 ft, the first a full length', () => {
    // worked by hand: 144 + 18 = 162 in; ⌈156 / 114⌉ = 2; the second piece is 162 − 114 = 48 in
    const result = over('12 ft')
    expect(result).toMatchObject({ value: 1, assumptions: [], steps: ['⌈(162 in − 6 in) / (120 in − 6 in)⌉ = 2 pieces'] })
    expect(result.tables.map(({ rows }) => rows)).toEqual([
      [[1, amount('120 in'), 0, amount('120 in'), amount('120 in')], [2, amount('48 in'), amount('114 in'), amount('162 in'), amount('120 in')]],
      [[1, amount('114 in'), amount('120 in')]],
    ])
  })

  test('a lap that would come to the end of the opening is drawn back', () => {
    // worked by hand: right jamb at 9 + 108 = 117 in; a lap from 114 to 120 in lies on it, so it ends one lap short of it, 105 to 111 in
    const result = over('108 in')
    expect(result.tables[1]?.rows).toEqual([[1, amount('105 in'), amount('111 in')]])
    expect(result.notes).toHaveLength(1)
  })

  test('stock so short that a lap lies on the end of the opening: said', () => {
    // worked by hand: 2 × 14 − 6 = 22 in is the whole blank, so the lap from 8 to 14 in cannot be moved off the jambs at 9 and 13 in
    const result = over('4 in', { 'head.flashing.stockLength': '14 in' })
    expect(result).toMatchObject({ value: 1, notes: [expect.any(String), expect.stringMatching(/over an end of the opening/)] })
  })

  test('in millimeters', () => {
    // worked by hand: 3000 + 2 × 200 + 2 × 25 = 3450 mm; ⌈3300 / 2850⌉ = 2; 3450 − 2850 = 600 mm
    const facts = { ...opening, 'opening.width': '3000 mm', 'head.flashing.extensionPastJamb': '200 mm', 'head.flashing.endDamHeight': '25 mm', 'head.flashing.stockLength': '3000 mm', 'head.flashing.spliceLap': '150 mm' }
    const result = evaluate(headSplices, { facts, limits: {} }, [headPanLength, headCutLength])
    expect(result).toMatchObject({ value: 1, tables: [{ rows: [[1, amount('3000 mm'), 0, amount('3000 mm'), amount('3000 mm')], [2, amount('600 mm'), amount('2850 mm'), amount('3450 mm'), amount('3000 mm')]] }, {}] })
  })

  test('takes the common stock length where none is told, and says so', () => {
    expect(over('12 ft', { 'head.flashing.stockLength': undefined })).toMatchObject({ value: 1, assumptions: [expect.stringMatching(/stock length/)] })
  })

  test('does not hold where the lap eats the stock; does not apply where the flashing runs on', () => {
    expect(over('12 ft', { 'head.flashing.stockLength': '12 in', 'head.flashing.spliceLap': '12 in' }).reason).toBe('methodDoesNotHold')
    expect(over('12 ft', { 'head.flashing.continuousPastOpening': true }).status).toBe('notApplicable')
  })

  test('names the lap where no rule and no drawing gives one', () => {
    const result = evaluate(headSplices, { facts: { ...opening, 'opening.width': '12 ft' }, limits: { ...limits, 'flashing.splice-lap': undefined } }, [headPanLength, headCutLength])
    expect(result.missing).toEqual(['rule flashing.splice-lap', 'head.flashing.spliceLap'])
  })
})

describe('splices in the sill flashing', () => {
  const under = (facts: object) => evaluate(sillSplices, { facts: { 'sill.kind': 'brickRowlock', 'sill.flashing.extensionPastJamb': '4 in', 'sill.flashing.stockLength': '10 ft', ...facts }, limits }, [sillFlashingLength, sillFlashingCutLength])

  test('as at the head', () => {
    // worked by hand: 120 + 8 + 2 = 130 in; the right jamb at 125 in, so the full first length is clear by 5 in and the lap goes back to 113 in
    expect(under({ 'opening.width': '10 ft' })).toMatchObject({ value: 1, tables: [{}, { rows: [[1, amount('113 in'), amount('119 in')]] }] })
  })

  test('does not apply to a threshold', () => expect(under({ 'opening.width': '10 ft', 'sill.kind': 'doorThreshold' }).status).toBe('notApplicable'))
})
