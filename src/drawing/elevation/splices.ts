import type { FlashingPlace } from '../blank-places.ts'
import type { Measure } from '../dimension-line.ts'
import { nothing, type Drawn, type Frame } from '../drawn.ts'
import { dimensionText } from '../length-words.ts'
import { part, strokes, textSize, type Shape } from '../shape.ts'
import { textWidth } from '../text-width.ts'
import type { SplicePlaces } from './splice-places.ts'

/** Of the upper sheet over the lower one, on paper. */
const over = 1.1
const textGap = 1.4

export interface SplicedFlashing {
  readonly place: FlashingPlace
  readonly places: SplicePlaces
  /** Where the flashing lies, and how far its upstand runs up behind the brick. */
  readonly level: number
  readonly upstand: number
}

/** Where two pieces of a flashing lap: the upper sheet over the lower one, and both edges up the backing. */
export function splices({ at }: Frame, { place, places, level, upstand }: SplicedFlashing): Drawn {
  const { laps, known, notes } = places
  if (laps.length === 0) return { ...nothing, notes }
  const drawn = laps.map(({ from, to }, index): Shape => {
    const [[x1, y], [x2]] = [at(from, level), at(to, level)]
    const top = at(from, level + upstand)[1]
    const edges = upstand > 0 ? [strokes(known ? 'hidden' : 'unknown', [[x1, y], [x1, top]], [[x2, y], [x2, top]])] : []
    return part('splice', [strokes(known ? 'sheetMetal' : 'unknown', [[x1, y - over], [x2, y - over]]), ...edges], { splice: String(index + 1), from: String(from), to: String(to), known: String(known) })
  })
  const middle = laps[Math.floor(laps.length / 2)]
  return {
    shapes: [part(`${place}Splices`, drawn)],
    anchors: middle ? [[`${place}Splice`, at((middle.from + middle.to) / 2, level + upstand / 2)]] : [],
    notes,
  }
}

/** The laps as measures; where there is no room for all, the first stands for them. */
export function spliceMeasures({ at, system }: Frame, place: FlashingPlace, { laps, length, known }: SplicePlaces, room: number): readonly Measure[] {
  const lap = `${place === 'sill' ? 'sill lap' : 'lap'} ${length === undefined ? '?' : dimensionText(length, system)}`
  const text = known ? lap : `${lap}, place ?`
  const isRoom = laps.length * (textWidth(text, textSize) + textGap) <= room
  const isTold = isRoom || laps.length === 1
  return (isTold ? laps : laps.slice(0, 1)).map(({ from, to }, index) => ({
    from: at(from, 0)[0], to: at(to, 0)[0], text: isTold ? text : `${text}, typical of ${laps.length}`, name: `${place}Splice:${index + 1}`, known: known && length !== undefined,
  }))
}
