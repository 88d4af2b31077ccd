import { describe, expect, test } from 'vitest'
import { millimetres } from '../../src/units/length.ts'
import type { FullEvaluation } from '../../src/evaluation/evaluate.ts'
import { corpus } from '../corpus.ts'
import { documentOf } from '../opening/openings.ts'
import { catalog, shown } from './drawn.ts'
import { allIn, boundsOf, linesIn, partIn, partsIn, type Box, type Element } from './read-svg.ts'
import { wallOf } from './wall-of.ts'

const inch = 25.4

interface Document {
  readonly opening: object
  readonly head: { readonly flashing: object }
  readonly sill: { readonly flashing: object }
}

const baseline = documentOf('baseline-window.yaml') as unknown as Document

/** A window of 20 ft, whose flashings do not come out of one length of 10 ft; nothing is said of how many splices they have. */
function wide(head: object = {}, sill: object = {}): unknown {
  return { ...baseline, opening: { ...baseline.opening, width: 240 }, head: { ...baseline.head, flashing: { ...baseline.head.flashing, splices: null, ...head } }, sill: { ...baseline.sill, flashing: { ...baseline.sill.flashing, ...sill } } }
}

const lapsOf = (full: FullEvaluation, quantity: string) => (full.quantities.get(quantity)?.tables[1]?.rows ?? []).map(([, from, to]) => [millimetres(Number(from)), millimetres(Number(to))] as const)
const splicesIn = (svg: Element, place: 'head' | 'sill') => partsIn(svg, { part: `${place}Splices` }).flatMap((splices) => partsIn(splices, { part: 'splice' }))
const textsIn = (element: Element) => allIn(element).filter(({ name }) => name === 'text').map(({ text }) => text)

describe('the elevation of a wide window', () => {
  const { svg, full, drawing } = shown('elevation', wide({}, { extensionPastJamb: [8, 12] }))
  const wall = wallOf(svg, 240 * inch)

  // The dam is 2 1/4 in high, and the flashing runs 10 in past the jamb at the head, 8 in at the sill
  test.each([['head', 'flashing.head-splices', 12.25], ['sill', 'sill.flashing-splices', 10.25]] as const)('has the splices of its %s flashing where they are laid out', (place, quantity, jamb) => {
    const laid = lapsOf(full, quantity)
    const drawn = splicesIn(svg, place).map((splice) => (linesIn(splice)[0] ?? []).map((point) => wall.at(point)[0]))
    expect(laid.length).toBeGreaterThan(1)
    expect(drawn).toHaveLength(laid.length)
    drawn.forEach(([from, to], index) => {
      expect(from).toBeCloseTo((laid[index]?.[0] ?? NaN) - jamb * inch, 0)
      expect(to).toBeCloseTo((laid[index]?.[1] ?? NaN) - jamb * inch, 0)
    })
  })

  test('measures each lap over its place', () => {
    const measured = (name: string) => partIn(svg, { part: 'dimension', measure: name })
    splicesIn(svg, 'head').forEach((splice, index) => {
      const dimension = measured(`headSplice:${index + 1}`)
      const [line] = linesIn(dimension)
      const { left, right } = boundsOf(linesIn(splice)[0] ?? [])
      expect([line?.[0]?.[0], line?.[1]?.[0]]).toEqual([left, right])
      expect(textsIn(dimension)).toEqual(['lap 6"'])
      expect(dimension.attributes['data-known']).toBe('true')
    })
    expect(textsIn(measured('sillSplice:1'))).toEqual(['sill lap 6"'])
    expect(drawing.description).not.toMatch(/[Ss]plices/)
  })
})

describe('splices of which nobody says where they lie', () => {
  const { svg, drawing } = shown('elevation', wide({ splices: 3, spliceLap: null }))
  const wall = wallOf(svg, 240 * inch)

  test('are dashed, as many as are described, evenly along the flashing, and said', () => {
    const splices = splicesIn(svg, 'head')
    const middles = splices.map((splice) => { const { left, right } = boundsOf((linesIn(splice)[0] ?? []).map(wall.at)); return (left + right) / 2 })
    expect(middles).toHaveLength(3)
    middles.forEach((middle, index) => expect(middle).toBeCloseTo((-10 + (260 * (index + 1)) / 4) * inch, 0))
    for (const splice of splices) expect(allIn(splice).filter(({ name }) => name === 'path').every(({ attributes }) => attributes['stroke-dasharray'] !== undefined)).toBe(true)
    expect(textsIn(partIn(svg, { part: 'dimension', measure: 'headSplice:1' }))).toEqual(['lap ?, place ?'])
    expect(drawing.unknown).toContain('head.flashing.spliceLap')
    expect(drawing.description).toMatch(/Where the splices of the head flashing lie is not known.*The head flashing is described with 3 splices; as it is laid out it has 2 splices\./)
  })

  test('are not drawn where the flashing is described in one piece', () => {
    const one = shown('elevation', wide({ splices: 0, spliceLap: null }))
    expect(splicesIn(one.svg, 'head')).toEqual([])
    expect(one.drawing.description).toContain('The head flashing is described in one piece; as it is laid out it has 2 splices.')
  })

  test('that have no room for their measures are measured once', () => {
    const many = shown('elevation', wide({}, { stockLength: '1 ft' }))
    const laid = lapsOf(many.full, 'sill.flashing-splices')
    expect(splicesIn(many.svg, 'sill')).toHaveLength(laid.length)
    const dimensions = allIn(many.svg).filter(({ attributes }) => attributes['data-measure']?.startsWith('sillSplice:'))
    expect(dimensions.map(textsIn)).toEqual([[`sill lap 6", typical of ${laid.length}`]])
  })
})

describe('the blanks of a wide window', () => {
  const { svg, full } = shown('flashingPattern', wide())
  const [head, sill] = partsIn(svg, { part: 'splices' })

  test.each([['head', head, 'flashing.head-splices'], ['sill', sill, 'sill.flashing-splices']] as const)('of the %s flashing have their pieces and laps to scale, each with its measure', (_, strip, quantity) => {
    const pieces = full.quantities.get(quantity)?.tables[0]?.rows ?? []
    const length = millimetres(Number(pieces.at(-1)?.[3]))
    const drawn = partsIn(strip ?? svg, { part: 'piece' }).map((piece) => boundsOf(linesIn(piece).flat()))
    const [left, right] = [drawn[0]?.left ?? NaN, drawn.at(-1)?.right ?? NaN]
    const ratio = length / (right - left)
    expect(drawn).toHaveLength(pieces.length)
    drawn.forEach((piece, index) => expect((piece.right - piece.left) * ratio).toBeCloseTo(millimetres(Number(pieces[index]?.[1])), 0))
    const laps = partsIn(strip ?? svg, { part: 'lap' }).map((lap) => boundsOf(linesIn(lap).flat()))
    expect(laps).toHaveLength(pieces.length - 1)
    laps.forEach((lap, index) => expect([(lap.left - left) * ratio, (lap.right - left) * ratio].map(Math.round)).toEqual(lapsOf(full, quantity)[index]?.map(Math.round)))
    expect(textsIn(strip ?? svg).filter((text) => text === 'lap 6"')).toHaveLength(laps.length)
    expect(textsIn(strip ?? svg).filter((text) => text.startsWith('piece '))).toHaveLength(pieces.length)
    expect(Math.abs(ratio - 64)).toBeLessThan(0.01)
    expect(textsIn(svg)).toContain(`Splices, 3/16" = 1'-0" (1:64)`)
  })

  test('list the places of the laps in words', () => {
    expect(textsIn(svg).join(' ')).toContain(`Laps from the left end: 9'-6" to 10'-0", 19'-0" to 19'-6".`)
  })

  test('have no lap where they come in one piece', () => {
    const one = shown('flashingPattern', baseline)
    expect([...partsIn(one.svg, { part: 'lap' }), ...partsIn(one.svg, { part: 'lapOnBlank' }), ...partsIn(one.svg, { part: 'splices' })]).toEqual([])
  })
})

/** The head flashing as drawn, in millimeters from its left end; undefined where it is not as long as the layout has it. */
function panAsLaidOut({ left, right }: Box, full: FullEvaluation): number | undefined {
  const value = full.quantities.get('flashing.head-pan-length')?.value
  return typeof value === 'number' && Math.abs(right - left - millimetres(value)) < 1 ? left : undefined
}

const placeInLayout = (splice: Element) => Number(splice.attributes['data-splice']) - 1

test('whatever is built, laps lie on their flashing, and where the layout has them', () => {
  let [placed, compared] = [0, 0]
  for (const { name, description } of [...corpus(catalog), { name: 'wide', description: wide() }, { name: 'unlike ends', description: wide({ extensionPastJamb: [12, 18], endDamHeight: [2, 3] }) }]) {
    const { svg, full, opening } = shown('elevation', description)
    const drawn = splicesIn(svg, 'head').filter(({ attributes }) => attributes['data-known'] === 'true')
    const width = opening.facts.get('opening.width')?.[0]?.value
    if (drawn.length === 0 || typeof width !== 'object') continue
    const { at } = wallOf(svg, millimetres(width.amount))
    const pan = boundsOf((linesIn(partIn(partIn(svg, { part: 'headFlashing' }), { part: 'pan' }))[0] ?? []).map(at))
    const lines = drawn.map((splice) => boundsOf((linesIn(splice)[0] ?? []).map(at)))
    expect([name, lines.filter(({ left, right }) => left < pan.left - 1 || right > pan.right + 1)]).toEqual([name, []])
    placed += lines.length
    const [start, dam] = [panAsLaidOut(pan, full), leftDam(full)]
    if (start === undefined || dam === undefined) continue
    const laid = lapsOf(full, 'flashing.head-splices')
    expect([name, drawn.map((splice, index) => Math.abs((lines[index]?.left ?? NaN) - start - (laid[placeInLayout(splice)]?.[0] ?? NaN) + dam) < 1)]).toEqual([name, drawn.map(() => true)])
    compared += lines.length
  }
  expect([placed > 10, compared > 10]).toEqual([true, true])
}, 300_000)

/** As the blank is folded; undefined where it has no dam there. */
function leftDam(full: FullEvaluation): number | undefined {
  const fold = full.quantities.get('flashing.head-cut-pattern')?.tables[1]?.rows.find(([title]) => title === 'Left end dam')?.[1]
  return typeof fold === 'number' ? millimetres(fold) : undefined
}
