import { describe, expect, test } from 'vitest'
import { dimensionText } from '../../src/drawing/length-words.ts'
import { scaleFor } from '../../src/drawing/scale.ts'
import { spread } from '../../src/drawing/spread.ts'
import { fitted, textWidth, wrapped } from '../../src/drawing/text-width.ts'
import { shown, shownFile } from './drawn.ts'
import { windowWith } from '../opening/openings.ts'
import { allIn, boundsOf, linesIn, partIn, partsIn } from './read-svg.ts'

const inch = 25.4

describe('the blanks of a fully described window', () => {
  const { svg, full } = shownFile('flashingPattern', 'baseline-window.yaml')
  const table = full.quantities.get('flashing.head-cut-pattern')?.tables
  const [head] = partsIn(svg, { part: 'outline' })

  test('have the computed outline, with the middle of a long one cut out', () => {
    const points = (table?.[0]?.rows ?? []).map((row) => [Number(row[1]) / 1e6, Number(row[2]) / 1e6] as const)
    const drawn = head ? (linesIn(head)[0] ?? []) : []
    const { left, right, bottom } = boundsOf(drawn)
    const length = Math.max(...points.map(([x]) => x))
    expect(drawn).toHaveLength(points.length)
    points.forEach(([x, y], index) => {
      const [dx = 0, dy = 0] = drawn[index] ?? []
      expect((bottom - dy) * 4).toBeCloseTo(y, 1)
      expect(x < length / 2 ? (dx - left) * 4 : length - (right - dx) * 4).toBeCloseTo(x, 1)
    })
  })

  test('have every computed fold, up and down told apart by their lines', () => {
    const folds = partsIn(svg, { part: 'fold' }).slice(0, table?.[1]?.rows.length)
    expect(folds.map(({ attributes }) => [attributes['data-name'], attributes['data-direction'], Number(attributes['data-angle'])])).toEqual(table?.[1]?.rows.map((row) => [row[0], row[5], row[6]]))
    const dashes = (direction: string) => new Set(folds.filter(({ attributes }) => attributes['data-direction'] === direction).map((fold) => allIn(fold).find(({ name }) => name === 'path')?.attributes['stroke-dasharray']))
    expect([dashes('up').size, dashes('down').size]).toEqual([1, 1])
    expect(dashes('up')).not.toEqual(dashes('down'))
  })

  test('are measured along and across', () => {
    const texts = allIn(svg).map(({ text }) => text)
    expect(texts).toEqual(expect.arrayContaining([`length 6'-0 1/2"`, `dam to dam 5'-8"`, 'dam 2 1/4"', '8"']))
  })
})

test('where there is no blank the sheet says why', () => {
  const { svg, drawing } = shown('flashingPattern', windowWith())
  expect(allIn(svg).map(({ text }) => text).join(' ')).toMatch(/No blank: .*(missing|not)/)
  expect(drawing.unknown.length).toBeGreaterThan(0)
})

describe('the layout of a fully described window', () => {
  const { svg, full } = shownFile('weepsAndTies', 'baseline-window.yaml')

  test.each([['headWeeps', 'weeps.head-positions'], ['sillWeeps', 'weeps.sill-positions']])('%s stand where they are computed', (part, quantity) => {
    const rows = full.quantities.get(quantity)?.tables[0]?.rows ?? []
    const weeps = partsIn(partIn(svg, { part }), { part: 'weep' })
    const places = weeps.map((weep) => linesIn(weep)[0]?.[0]?.[0] ?? NaN)
    expect(weeps).toHaveLength(rows.length)
    const ratio = ((Number(rows.at(-1)?.[2]) - Number(rows[0]?.[2])) / 1e6) / ((places.at(-1) ?? 0) - (places[0] ?? 0))
    expect(Math.abs(ratio - Math.round(ratio))).toBeLessThan(0.01)
    places.forEach((x, index) => expect((x - (places[0] ?? 0)) * ratio).toBeCloseTo((Number(rows[index]?.[2]) - Number(rows[0]?.[2])) / 1e6, 0))
  })

  test('every tie of the layout is drawn once', () => {
    const rows = full.onRequest('ties.field-grid')?.tables[0]?.rows ?? []
    expect(rows.length).toBeGreaterThan(50)
    expect(new Set(partsIn(svg, { part: 'tie' }).map(({ attributes }) => `${attributes['data-x'] ?? ''} ${attributes['data-y'] ?? ''}`)).size).toBe(rows.length)
    expect(allIn(svg).map(({ text }) => text).join(' ')).toContain(`${rows.length} ties.`)
  })
})

describe('lengths as drawings have them', () => {
  test.each([
    [4.5 * 12 * inch, 'inchPound', `4'-6"`], [72.5 * inch, 'inchPound', `6'-0 1/2"`], [3.625 * inch, 'inchPound', '3 5/8"'], [12 * inch, 'inchPound', `1'-0"`], [0, 'inchPound', '0"'],
    [372.332473, 'inchPound', `≈ 1'-2 11/16"`], [100, 'inchPound', '≈ 3 15/16"'], [1219.2, 'si', '1219.2'], [372.332473, 'si', '≈ 372.3'], [1200, 'si', '1200'],
  ] as const)('%d mm in %s', (millimeters, system, text) => expect(dimensionText(millimeters, system)).toBe(text))
})

describe('scales', () => {
  // The scales of an architect's rule: 1/4 in to the foot is 1:48, 3/4 in is 1:16
  test('are the largest usual ones that fit', () => {
    expect(scaleFor('inchPound', [[2400, 150]])).toEqual({ ratio: 16, text: `3/4" = 1'-0" (1:16)` })
    expect(scaleFor('inchPound', [[2401, 150]]).ratio).toBe(24)
    expect(scaleFor('inchPound', [[7000, 150]])).toEqual({ ratio: 48, text: `1/4" = 1'-0" (1:48)` })
    expect(scaleFor('si', [[3000, 150], [10, 1]])).toEqual({ ratio: 20, text: '1:20' })
    expect(scaleFor('si', [[120_000, 100]]).ratio).toBe(2000)
  })
})

describe('texts that would lie on each other', () => {
  test('are moved apart as little as need be, within their bounds', () => {
    expect(spread([{ middle: 10, size: 4 }, { middle: 30, size: 4 }], 0, 40, 1)).toEqual([10, 30])
    expect(spread([{ middle: 10, size: 4 }, { middle: 10, size: 4 }], 0, 40, 1)).toEqual([10, 15])
    expect(spread([{ middle: 39, size: 4 }, { middle: 39, size: 4 }], 0, 40, 1)).toEqual([33, 38])
    expect(spread([{ middle: 0, size: 4 }], 0, 40, 1)).toEqual([2])
  })

  test('are cut off or wrapped where they do not fit, and say so', () => {
    expect(fitted('short', 100, 3)).toBe('short')
    expect(fitted('a text that is far too long', 20, 3)).toMatch(/…$/)
    expect(textWidth(fitted('a text that is far too long', 20, 3), 3)).toBeLessThanOrEqual(20)
    const lines = wrapped('one two three four five six seven', 20, 3, 2)
    expect(lines).toHaveLength(2)
    expect(lines.every((line) => textWidth(line, 3) <= 20)).toBe(true)
    expect(lines[1]).toMatch(/…$/)
  })
})
