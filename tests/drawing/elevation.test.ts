import { describe, expect, test } from 'vitest'
import { documentOf, windowWith } from '../opening/openings.ts'
import { shown, shownFile } from './drawn.ts'
import { allIn, boundsOf, linesIn, partIn, partsIn, type Element, type Point } from './read-svg.ts'
import { wallOf } from './wall-of.ts'

const inch = 25.4

const first = (element: Element): Point => linesIn(element)[0]?.[0] ?? [NaN, NaN]

describe('a shop window whose right end dam is missing', () => {
  const { svg, full, drawing } = shownFile('elevation', 'missed-end-dam.yaml')
  const wall = wallOf(svg, 72 * inch)

  test('is drawn at the scale that the sheet tells', () => {
    expect(wall.ratio).toBeCloseTo(24, 2)
    expect(allIn(partIn(svg, { part: 'scale' })).map(({ text }) => text).join(' ')).toContain(`1/2" = 1'-0" (1:24)`)
  })

  test('is as high as it is described', () => {
    const { top, bottom } = boundsOf(linesIn(partIn(svg, { part: 'opening' }))[0] ?? [])
    expect((bottom - top) * wall.ratio).toBeCloseTo(66 * inch, 0)
  })

  test('has its left dam, 2 in high, a foot beside the jamb, and none at the right', () => {
    const left = partIn(svg, { part: 'endDam', member: 'left' })
    const [foot, top] = (linesIn(left)[0] ?? []).map(wall.at)
    expect(foot?.[0]).toBeCloseTo(-12 * inch, 0)
    expect(foot?.[1]).toBeCloseTo(66 * inch, 0)
    expect((top?.[1] ?? 0) - (foot?.[1] ?? 0)).toBeCloseTo(2 * inch, 0)
    expect(partIn(svg, { part: 'endDam', member: 'right' }).attributes).toMatchObject({ 'data-present': 'false', 'data-height': '0' })
    expect(allIn(partIn(svg, { part: 'endDam', member: 'right' })).map(({ text }) => text)).toContain('no dam')
  })

  test('has a flashing from one end to the other', () => {
    const pan = (linesIn(partIn(partIn(svg, { part: 'headFlashing' }), { part: 'pan' }))[0] ?? []).map(wall.at)
    expect(pan.map(([x]) => Math.round(x))).toEqual([-12, 72 + 12].map((inches) => Math.round(inches * inch)))
  })

  test.each([['left', -8, 0], ['right', 72, 80]])('bears 8 in at its %s end', (member, from, to) => {
    const { left, right } = boundsOf((linesIn(partIn(svg, { part: 'bearing', member }))[0] ?? []).map(wall.at))
    expect([left, right].map(Math.round)).toEqual([from, to].map((inches) => Math.round(inches * inch)))
  })

  test('has its weeps where the computed layout puts them', () => {
    const rows = full.quantities.get('weeps.head-positions')?.tables[0]?.rows ?? []
    const drawn = partsIn(partIn(svg, { part: 'headWeeps' }), { part: 'weep' }).map((weep) => { const { left, right } = boundsOf((linesIn(weep)[0] ?? []).map(wall.at)); return (left + right) / 2 })
    expect(rows.length).toBeGreaterThan(2)
    expect(drawn).toHaveLength(rows.length)
    drawn.forEach((x, index) => expect(x).toBeCloseTo(Number(rows[index]?.[3]) / 1e6, 0))
  })

  // BIA Technical Notes 10: three courses of modular brick with their joints are 8 in high; two stretchers with their joints are 16 in long
  test('is laid in modular courses in running bond', () => {
    const courses = partsIn(svg, { part: 'course' })
    const levels = courses.map((course) => wall.at(first(course))[1])
    expect(courses.length).toBeGreaterThan(20)
    levels.slice(3).forEach((level, index) => expect(level - (levels[index] ?? 0)).toBeCloseTo(8 * inch, 0))
    const joints = courses.slice(4, 6).map((course) => linesIn(course).slice(1).map((line) => wall.at(line[0] ?? [0, 0])[0]))
    const [lower = [], upper = []] = joints
    expect((lower[2] ?? 0) - (lower[0] ?? 0)).toBeCloseTo(16 * inch, 0)
    expect(Math.abs(((upper[0] ?? 0) - (lower[0] ?? 0)) / inch % 8)).toBeCloseTo(4, 1)
  })

  test('has weeps in the head joints of the course that they stand in', () => {
    const weep = partsIn(partIn(svg, { part: 'headWeeps' }), { part: 'weep' }).map((one) => Number(one.attributes['data-x']))
    const course = partsIn(svg, { part: 'course' }).find((one) => Math.abs(wall.at(first(one))[1] - 66 * inch) < 1)
    const joints = linesIn(course ?? svg).slice(1).map((line) => wall.at(line[0] ?? [0, 0])[0])
    for (const x of weep) expect(Math.min(...joints.map((joint) => Math.abs(joint - x)))).toBeLessThan(0.1)
  })

  test('is numbered at the dam that fails, with its words in the legend', () => {
    const failing = drawing.callouts.filter(({ outcome }) => outcome === 'fail')
    expect(failing.map(({ rule }) => rule)).toContain('flashing.end-dam-present')
    const number = failing.find(({ rule }) => rule === 'flashing.end-dam-present')?.number ?? 0
    const mark = partIn(svg, { part: 'mark', number: String(number) })
    const leader = linesIn(mark)[0]?.at(-1)
    expect(wall.at(leader ?? [0, 0])[0]).toBeCloseTo((72 + 12) * inch, 0)
    expect(allIn(partIn(svg, { part: 'legendRow', number: String(number) })).map(({ text }) => text).join(' ')).toMatch(/Fails.*right end/)
  })
})

test('a fully described window has ties where the layout puts them, dashed behind the brick', () => {
  const { svg, full } = shownFile('elevation', 'baseline-window.yaml')
  const wall = wallOf(svg, 48 * inch)
  const rows = full.onRequest('ties.field-grid')?.tables[0]?.rows ?? []
  const [ends] = full.onRequest('wall.around-opening')?.tables[0]?.rows ?? []
  const expected = rows.map((row) => [(Number(row[0]) + Number(ends?.[0])) / 1e6, (Number(row[1]) + Number(ends?.[2])) / 1e6] as const)
  const ties = partsIn(svg, { part: 'tie' }).flatMap(allIn).filter(({ name }) => name === 'circle')
  expect(ties.length).toBeGreaterThan(8)
  for (const { attributes } of ties) {
    const [x, y] = wall.at([Number(attributes['cx']), Number(attributes['cy'])])
    expect(Math.min(...expected.map(([ex, ey]) => Math.hypot(ex - x, ey - y)))).toBeLessThan(0.2)
    expect(attributes['stroke-dasharray']).toBeDefined()
  }
})

describe('what is not known', () => {
  test('a bearing that nobody measured is dashed, bears a question mark and is listed', () => {
    const { svg, drawing } = shownFile('elevation', 'half-seen-head.yaml')
    const right = partIn(svg, { part: 'bearing', member: 'right' })
    expect(right.attributes['data-known']).toBe('false')
    expect(allIn(right).find(({ name }) => name === 'path')?.attributes['stroke-dasharray']).toBeDefined()
    expect(allIn(right).map(({ text }) => text)).toContain('?')
    expect(allIn(partIn(svg, { part: 'bearing', member: 'left' })).find(({ name }) => name === 'path')?.attributes['stroke-dasharray']).toBeUndefined()
    expect(drawing.unknown).toContain('head.support.bearing')
    expect(drawing.description).toContain('Bearing on the masonry')
  })

  test('of an opening of which only kind and size are known, all but its outline is dashed', () => {
    const { svg, drawing } = shown('elevation', windowWith())
    const unknown = allIn(svg).filter(({ attributes }) => attributes['data-known'] === 'false')
    expect(unknown.length).toBeGreaterThan(3)
    for (const element of unknown) {
      const paths = element.children.filter(({ name, attributes }) => name === 'path' && attributes['fill'] === 'none' && attributes['stroke-width'] !== '0.15' && attributes['stroke-width'] !== '0.5')
      expect(paths.every(({ attributes }) => attributes['stroke-dasharray'] !== undefined)).toBe(true)
    }
    expect(partsIn(svg, { part: 'bond' })).toEqual([])
    expect(drawing.unknown).toEqual(expect.arrayContaining(['wall.veneer.unit', 'head.support.kind', 'head.flashing.present', 'sill.kind']))
  })
})

// A part of a circle: a chord of 44 in that rises 6 in has a radius of 44²/(8·6) + 6/2 = 43.33 in
test('a segmental arch is a part of the circle that its width and rise give', () => {
  const { svg } = shownFile('elevation', 'arch.yaml')
  const wall = wallOf(svg, 44 * inch)
  const arc = (linesIn(partIn(svg, { part: 'opening' }))[0] ?? []).map(wall.at).slice(1, -1)
  const center = [22 * inch, 84 * inch - 43.3333 * inch] as const
  for (const [x, y] of arc) expect(Math.hypot(x - center[0], y - center[1]) / inch).toBeCloseTo(43.333, 1)
  expect(Math.max(...arc.map(([, y]) => y)) / inch).toBeCloseTo(84, 1)
})

test('soldiers over the head are as many as are computed for the whole support, and on end', () => {
  const { svg } = shownFile('elevation', 'soldier-course-shelf-angle.yaml')
  const wall = wallOf(svg, 120 * inch)
  const course = partIn(svg, { part: 'headCourse' })
  const { top, bottom } = boundsOf(linesIn(course)[0] ?? [])
  expect(course.attributes['data-laid']).toBe('soldier')
  expect((bottom - top) * wall.ratio / inch).toBeCloseTo(11.625, 1) // a utility brick is 11 5/8 in long (BIA Technical Notes 10B)
})

test('a metric document is measured in millimeters at a metric scale', () => {
  const { svg } = shownFile('elevation', 'metric-precast-sill.yaml')
  const texts = allIn(svg).map(({ text }) => text)
  expect(texts).toEqual(expect.arrayContaining(['1200', 'bearing 150', 'flashing 250']))
  expect(texts.join(' ')).toMatch(/Scale 1:20 .*Millimeters\./)
  expect(wallOf(svg, 1200).ratio).toBeCloseTo(20, 2)
})

test('other bonds are laid as they are named', () => {
  const document = documentOf('missed-end-dam.yaml') as { wall: { veneer: object } }
  const jointsIn = (bond: string) => {
    const { svg } = shown('elevation', { ...document, wall: { ...document.wall, veneer: { ...document.wall.veneer, bond } } })
    const wall = wallOf(svg, 72 * inch)
    return partsIn(svg, { part: 'course' }).slice(4, 6).map((course) => linesIn(course).slice(1).map((line) => wall.at(line[0] ?? [0, 0])[0] / inch).toSorted((a, b) => a - b))
  }
  const [stack, above] = jointsIn('stack')
  expect(above?.[1]).toBeCloseTo(stack?.[1] ?? 0, 1)
  const [one = [], other = []] = jointsIn('english')
  expect(new Set([one, other].map((joints) => Math.round((joints[2] ?? 0) - (joints[1] ?? 0))))).toEqual(new Set([8, 4]))
  const gaps = (jointsIn('flemish')[0] ?? []).slice(1).map((x, index, all) => Math.round(x - (all[index - 1] ?? NaN))).slice(1)
  expect(new Set(gaps)).toEqual(new Set([8, 4]))
})
