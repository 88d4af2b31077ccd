import { nothing, type Drawn, type Frame } from '../drawn.ts'
import { numberIn, type Row } from '../known.ts'
import { box, part, strokes, type Shape } from '../shape.ts'

const unknownHeight = 50
const leastWidth = 0.5

export interface WeepPlace {
  readonly place: 'head' | 'sill'
  /** Where they stand. */
  readonly level: number
  readonly jointWidth: number
  readonly jointHeight: number | undefined
}

/** Weeps where the layout puts them: in head joints, or in the bed joint under a slab. */
export function weeps({ at, known, scale }: Frame, { place, level, jointWidth, jointHeight }: WeepPlace): Drawn {
  const rows = known.rows(`weeps.${place}-positions`)
  const kind = known.choice(`${place}.weeps.kind`)
  if (!rows) return { ...nothing, notes: whyNot(known.result(`weeps.${place}-positions`)?.why, place) }
  const places = rows.flatMap((row) => weepAt(row))
  const height = known.length(`${place}.weeps.openHeight`) ?? jointHeight ?? unknownHeight
  const width = Math.max(leastWidth, jointWidth * scale)
  const isWanting = kind === 'none' || known.flag(`${place}.flashing.present`) === false
  const drawn = places.map(({ x, number }): Shape => {
    const [px, py] = at(x, level)
    const corners = [[px - width / 2, py], [px + width / 2, py - Math.max(1, height * scale)]] as const
    return part('weep', [box(isWanting ? 'wanted' : 'weep', ...corners)], { weep: String(number), x: String(x) })
  })
  const middle = places[Math.floor(places.length / 2)]
  return {
    shapes: [part(`${place}Weeps`, drawn, { kind: kind ?? 'unknown' })],
    anchors: middle ? [[`${place}Weeps`, at(middle.x, level + height)]] : [],
    notes: isWanting ? [`No ${kind === 'none' ? 'weeps are' : 'flashing is'} described at the ${place}; the weeps drawn dashed are where they belong.`] : [],
  }
}

function whyNot(why: string | null | undefined, place: string): readonly string[] {
  return why ? [`Weeps at the ${place} are not laid out: ${why}`] : []
}

function weepAt(row: Row): readonly { readonly x: number; readonly number: number }[] {
  const [number, x] = [numberIn(row, 0), numberIn(row, 3)]
  return number === undefined || x === undefined ? [] : [{ number, x }]
}

/** A short upright stroke where a weep belongs, for a layout. */
export function weepTick([x, y]: readonly [number, number]): Shape {
  return strokes('cut', [[x, y - 2], [x, y + 2]])
}
