import { describe, expect, test } from 'vitest'
import { millimetres } from '../../src/units/length.ts'
import { corpus } from '../corpus.ts'
import { documentOf } from '../opening/openings.ts'
import { catalog, shown } from './drawn.ts'
import { allIn, boundsOf, linesIn, partIn, partsIn, type Element } from './read-svg.ts'
import { wallOf } from './wall-of.ts'

const inch = 25.4

interface Document {
  readonly opening: object
  readonly wall: object
  readonly base: { readonly weeps: object }
}

const baseline = documentOf('baseline-window.yaml') as unknown as Document
const withWall = (wall: object) => ({ ...baseline, wall: { ...baseline.wall, ...wall } })
const withBase = (base: object, opening: object = {}) => ({ ...baseline, opening: { ...baseline.opening, ...opening }, base: { ...baseline.base, ...base } })
const textsIn = (element: Element) => allIn(element).filter(({ name }) => name === 'text').map(({ text }) => text)

describe('a movement joint at a jamb', () => {
  test('runs up along it, as wide as it is, over the opening and under its sill, with its width and what is known of the sealant', () => {
    const { svg, drawing } = shown('elevation', withWall({ movementJointAtJamb: [false, true], movementJointWidth: 1 }))
    const { at } = wallOf(svg, 48 * inch)
    const joints = partsIn(svg, { part: 'movementJoint' })
    expect(joints.map(({ attributes }) => attributes['data-member'])).toEqual(['right'])
    const stretches = joints.flatMap(linesIn).map((line) => boundsOf(line.map(at)))
    expect(stretches).toHaveLength(2)
    for (const { left, right } of stretches) expect([left, right].map((x) => Math.round(x / inch * 100) / 100)).toEqual([47.5, 48.5])
    const [above, below] = stretches
    expect(above?.top).toBeCloseTo(60 * inch, 0)
    expect(below?.top).toBeCloseTo(-36 * inch, 0)
    expect(below?.bottom).toBeCloseTo(-3.625 * inch, 0) // a rowlock stands 3 5/8 in high
    const dimension = partIn(svg, { part: 'dimension', measure: 'wall.movementJointWidth:right' })
    expect(textsIn(dimension)).toEqual(['movement joint 1"'])
    expect(drawing.description).toMatch(/The sealant at the jambs is class 50\. The next movement joint is up to 20'-0" away\./)
  })

  test('is dashed where nobody measured it, and says the width that it needs', () => {
    const { svg, full, drawing } = shown('elevation', withWall({ movementJointAtJamb: true, movementJointWidth: null }))
    const joints = partsIn(svg, { part: 'movementJoint' })
    expect(joints.map(({ attributes }) => [attributes['data-member'], attributes['data-known']])).toEqual([['left', 'false'], ['right', 'false']])
    for (const path of joints.flatMap(allIn).filter(({ name }) => name === 'path')) expect(path.attributes['stroke-dasharray']).toBeDefined()
    const needed = Number(full.quantities.get('movement.joint-width-needed')?.value) / 25.4e6
    expect(textsIn(partIn(svg, { part: 'dimension', measure: 'wall.movementJointWidth:left' }))).toEqual(['movement joint ?, needs ≈ 7/16"'])
    expect(Math.abs(needed - 7 / 16)).toBeLessThan(1 / 32)
    expect(drawing.unknown).toContain('wall.movementJointWidth')
  })

  test('is not drawn where there is none; that the wall has others is said', () => {
    const { svg, drawing } = shown('elevation', baseline)
    expect(partsIn(svg, { part: 'movementJoint' })).toEqual([])
    expect(drawing.description).toContain(`Vertical movement joints are 20'-0" apart in this wall; where they stand is not described, so none is drawn.`)
  })
})

describe('weeps at the base', () => {
  const { svg, drawing } = shown('elevation', baseline)
  const { at } = wallOf(svg, 48 * inch)

  test('stand in head joints, no farther apart than described and as near to that as the joints let them, 8 in above grade', () => {
    const weeps = partsIn(partIn(svg, { part: 'baseWeeps' }), { part: 'weep' }).map((weep) => boundsOf((linesIn(weep)[0] ?? []).map(at)))
    const middles = weeps.map(({ left, right }) => (left + right) / 2)
    expect(middles.length).toBeGreaterThan(3)
    middles.slice(1).forEach((x, index) => expect(x - (middles[index] ?? NaN)).toBeCloseTo(24 * inch, 0)) // three stretchers of 8 in
    for (const { top, bottom } of weeps) {
      expect(top).toBeCloseTo((-36 + 8) * inch, 0)
      expect(bottom - top).toBeCloseTo(2.25 * inch, 0)
    }
    const joints = partsIn(svg, { part: 'course' }).filter((course) => Math.abs((linesIn(course)[0]?.map(at)[0]?.[1] ?? NaN) - (-36 + 8) * inch) < 2.625 * inch / 2).flatMap((course) => linesIn(course).slice(1).map((line) => line.map(at)[0]?.[0] ?? NaN))
    for (const x of middles) expect(Math.min(...joints.map((joint) => Math.abs(joint - x)))).toBeLessThan(0.1)
    expect(drawing.description).toContain(`Weeps at the base are drawn in head joints no more than 2'-0" apart; where the first one stands is not described.`)
  })

  test('stand on the edge of the base flashing', () => {
    const [line = []] = linesIn(partIn(svg, { part: 'baseFlashing' }))
    for (const point of line) expect(at(point)[1]).toBeCloseTo((-36 + 8) * inch, 0)
  })

  test('are left out in a door that goes down to grade', () => {
    const door = shown('elevation', { ...withBase({}, { kind: 'door', height: 84, sillAboveGrade: 0 }), sill: { kind: 'doorThreshold' } })
    const places = partsIn(partIn(door.svg, { part: 'baseWeeps' }), { part: 'weep' }).map(({ attributes }) => Number(attributes['data-x']))
    expect([places.some((x) => x < 0), places.some((x) => x > 48 * inch)]).toEqual([true, true])
    expect(places.filter((x) => x > 0 && x < 48 * inch)).toEqual([])
  })

  test.each([
    ['that are too high up to be reached', withBase({}, { sillAboveGrade: 120 }), 'The elevation does not reach the base of the wall; its weeps are drawn in the section.'],
    ['that are not there', withBase({ weeps: { kind: 'none' } }), 'No weeps are described at the base.'],
    ['that are buried', withBase({ weepsAboveGrade: -2 }), 'The weeps at the base lie below grade and are not to be seen.'],
  ])('%s are said and not drawn', (_, document, words) => {
    const without = shown('elevation', document)
    expect(partsIn(without.svg, { part: 'baseWeeps' })).toEqual([])
    expect(without.drawing.description).toContain(words)
  })

  test('are a dashed line where nobody says how far apart they stand', () => {
    const unknown = shown('elevation', withBase({ weeps: { ...baseline.base.weeps, spacing: null } }))
    const row = partIn(unknown.svg, { part: 'baseWeeps', known: 'false' })
    expect(allIn(row).filter(({ name }) => name === 'path').every(({ attributes }) => attributes['stroke-dasharray'] !== undefined)).toBe(true)
    expect(unknown.drawing.unknown).toContain('base.weeps.spacing')
  })
})

test('whatever is built, joints run along jambs, and weeps at the base are in the brick and no farther apart than described', () => {
  let [joints, rows] = [0, 0]
  for (const { name, description } of corpus(catalog)) {
    const { svg, opening } = shown('elevation', description)
    const amount = (path: string) => { const value = opening.facts.get(path)?.[0]?.value; return typeof value === 'object' ? millimetres(value.amount) : NaN }
    const width = amount('opening.width')
    if (Number.isNaN(width)) continue
    const { at } = wallOf(svg, width)
    for (const joint of partsIn(svg, { part: 'movementJoint' })) {
      const jamb = joint.attributes['data-member'] === 'left' ? 0 : width
      const { left, right } = boundsOf(linesIn(joint).flat().map(at))
      expect([name, Math.abs((left + right) / 2 - jamb) < 0.5]).toEqual([name, true])
      joints += 1
    }
    const face = boundsOf(linesIn(partIn(svg, { part: 'wallFace' })).flat().map(at))
    for (const row of partsIn(svg, { part: 'baseWeeps', known: 'true' })) {
      const places = partsIn(row, { part: 'weep' }).map((weep) => boundsOf(linesIn(weep).flat().map(at))).map(({ left, right }) => (left + right) / 2)
      const isSplit = places.some((x) => x < 0) && !places.some((x) => x > 0 && x < width)
      const gaps = places.slice(1).map((x, index) => (isSplit && x > width && (places[index] ?? 0) < 0 ? 0 : x - (places[index] ?? 0)))
      expect([name, places.every((x) => x > face.left && x < face.right), gaps.every((gap) => gap <= amount('base.weeps.spacing') + 0.5)]).toEqual([name, true, true])
      rows += 1
    }
  }
  expect([joints > 10, rows > 100]).toEqual([true, true])
}, 300_000)

test('a row of ties that lies close under the top says why', () => {
  const { svg, full } = shown('weepsAndTies', baseline)
  const levels = [...new Set((full.onRequest('ties.field-grid')?.tables[0]?.rows ?? []).map((row) => Number(row[1]) / 25.4e6))].toSorted((a, b) => a - b)
  const [below = NaN, last = NaN] = levels.slice(-2)
  expect([last - below, 240 - below]).toEqual([5.25, 16.875])
  expect(textsIn(svg).join(' ')).toContain(`The top row lies 5 1/4" over the one below it: without it 1'-4 7/8" of brick over that row would hang on it, more than half of the 1'-11 5/8" between rows.`)
  expect(textsIn(shown('weepsAndTies', withWall({ veneerHeight: 234 })).svg).join(' ')).not.toContain('The top row lies')
})
