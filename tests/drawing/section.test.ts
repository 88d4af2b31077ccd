import { describe, expect, test } from 'vitest'
import { documentOf, windowWith } from '../opening/openings.ts'
import { shown, shownFile } from './drawn.ts'
import { allIn, boundsOf, linesIn, partIn, partsIn, type Element } from './read-svg.ts'

const inch = 25.4
const detail = (svg: Element, name: string) => partIn(svg, { part: 'detail', detail: name })
const size = (element: Element | undefined) => boundsOf(element ? linesIn(element).flat() : [])

describe('the section of a fully described window', () => {
  const { svg } = shownFile('section', 'baseline-window.yaml')
  const ratio = 8
  const head = detail(svg, 'head')
  const brick = size(partsIn(head, { part: 'brick' })[1])

  test('shows head, sill and base at the scale that the sheet tells', () => {
    expect(partsIn(svg, { part: 'detail' }).map(({ attributes }) => attributes['data-detail'])).toEqual(['head', 'sill', 'base'])
    expect(allIn(partIn(svg, { part: 'scale' })).map(({ text }) => text).join(' ')).toContain(`1 1/2" = 1'-0" (1:${ratio})`)
    expect((brick.right - brick.left) * ratio).toBeCloseTo(3.625 * inch, 1)
    expect((brick.bottom - brick.top) * ratio).toBeCloseTo(2.25 * inch, 1)
  })

  test('has an air space of 2 in from the back of the brick to the sheathing', () => {
    const sheathing = size(partsIn(head, { part: 'field', material: 'sheathing' })[0])
    expect((sheathing.left - brick.right) * ratio).toBeCloseTo(2 * inch, 1)
  })

  test('has an angle of 5 in by 3 1/2 in, its longer leg standing', () => {
    const angle = size(partIn(head, { part: 'support' }))
    expect((angle.bottom - angle.top) * ratio).toBeCloseTo(5 * inch, 1)
    expect((angle.right - angle.left) * ratio).toBeCloseTo(3.5 * inch, 1)
  })

  test('has a flashing that stands out 3/8 in and runs up 8 in from its bed', () => {
    const path = linesIn(partIn(head, { part: 'headFlashing' })).at(-1) ?? []
    const { left } = boundsOf(path)
    const bed = path[1]?.[1] ?? 0
    const top = Math.min(...path.map(([, y]) => y))
    expect((brick.left - left) * ratio).toBeCloseTo(0.375 * inch, 1)
    expect(Math.abs((bed - top) * ratio - 8 * inch)).toBeLessThan(4) // drawn half a pen over the steel
  })

  test('laps the barrier over the flashing by 6 in, in front of it', () => {
    const flap = partIn(head, { part: 'barrierFlap' })
    expect(flap.attributes).toMatchObject({ 'data-order': 'overFlashing', 'data-lap': '152.4' })
    const barrier = size(flap)
    const flashing = linesIn(partIn(head, { part: 'headFlashing' })).at(-1) ?? []
    const top = Math.min(...flashing.map(([, y]) => y))
    expect((barrier.bottom - top) * ratio).toBeCloseTo(6 * inch, 0)
    expect(barrier.left).toBeLessThan(Math.max(...flashing.map(([x]) => x)))
  })

  test('has a sill that falls 15 degrees over 6 in', () => {
    const [unit = []] = linesIn(partIn(detail(svg, 'sill'), { part: 'sill' }))
    const [front, back] = unit
    const [run, rise] = [((back?.[0] ?? 0) - (front?.[0] ?? 0)) * ratio, ((front?.[1] ?? 0) - (back?.[1] ?? 0)) * ratio]
    expect(run).toBeCloseTo(6 * inch, 0)
    expect((Math.atan2(rise, run) * 180) / Math.PI).toBeCloseTo(15, 1)
  })

  test('has grade 8 in below the base flashing', () => {
    const base = detail(svg, 'base')
    const grade = linesIn(partIn(base, { part: 'grade' }))[0]?.[0]?.[1] ?? 0
    const flashing = size(partIn(base, { part: 'baseFlashing' })).bottom
    expect((grade - flashing) * ratio).toBeCloseTo(8 * inch, 0)
  })
})

test('a barrier that runs behind the flashing is drawn behind it and said', () => {
  const document = documentOf('baseline-window.yaml') as { barrier: object }
  const { svg } = shown('section', { ...document, barrier: { ...document.barrier, headFlap: 'behindFlashing' } })
  expect(partsIn(svg, { part: 'barrierFlap' })).toEqual([])
  expect(allIn(svg).map(({ text }) => text)).toContain('barrier runs behind the flashing')
})

test('a missing end dam is told for each end', () => {
  const { svg } = shownFile('section', 'missed-end-dam.yaml')
  expect(allIn(svg).map(({ text }) => text)).toContain('end dams beyond: left 2", right none')
})

test('what is not known is dashed, labeled so and listed; details of which nothing is known are left out', () => {
  const { svg, drawing } = shown('section', windowWith())
  expect(partIn(svg, { part: 'support' }).attributes['data-known']).toBe('false')
  expect(allIn(partIn(svg, { part: 'support' })).filter(({ name }) => name === 'path').every(({ attributes }) => attributes['stroke-dasharray'] !== undefined)).toBe(true)
  expect(allIn(svg).map(({ text }) => text)).toEqual(expect.arrayContaining(['support: not known', 'air space: not known', 'water-resistive barrier: not known']))
  expect(partsIn(svg, { part: 'detail' })).toHaveLength(1)
  expect(drawing.unknown).toEqual(expect.arrayContaining(['wall.airSpace', 'head.support.kind', 'barrier.kind']))
  expect(drawing.description).toContain('The sill is not described and not drawn.')
})
