import { dimensionLine, dimensionRoom, type Measure } from '../dimension-line.ts'
import { dimensionText } from '../length-words.ts'
import { box, outline as closed, part, strokes, textSize, words, type Group, type Point, type Shape } from '../shape.ts'
import { textWidth } from '../text-width.ts'
import { breakLine } from '../elevation/bond.ts'
import type { UnitSystem } from '../../units/dimension.ts'
import type { Stretch } from '../laid-splices.ts'
import { levelsOf, type Blank, type BlankFold } from './blank.ts'

export interface BlankRoom {
  readonly left: number
  readonly width: number
  readonly top: number
  readonly scale: number
  readonly system: UnitSystem
  /** Where two pieces lap, from the left end of the blank. */
  readonly laps: readonly Stretch[]
}

export interface BlankView {
  readonly group: Group
  readonly height: number
  /** Paper from millimeters of the blank. */
  readonly at: (x: number, y: number) => Point
  readonly letters: readonly { readonly letter: string; readonly fold: BlankFold }[]
}

const cutGap = 5

/** A blank with its folds and dimensions; a long one is cut in its middle, so that its ends can be read. */
export function blankView(blank: Blank, room: BlankRoom): BlankView {
  const { scale, left, width, system } = room
  const pad = crowdedBy(blank, system, blank.width * scale)
  const top = room.top + dimensionRoom + 2 + pad
  const isWhole = blank.length * scale <= width
  const half = (width - cutGap) / 2
  const along = (x: number) => (isWhole || x <= blank.length / 2 ? left + x * scale : left + width - (blank.length - x) * scale)
  const at = (x: number, y: number): Point => [along(x), top + (blank.width - y) * scale]
  const bottom = top + blank.width * scale
  const seen = lapsSeen(room.laps, isWhole ? blank.length : half / scale, blank.length)
  const letters = lettered(blank, at, seen)
  const shapes: Shape[] = [
    part('outline', [closed('outline', ...blank.outline.map(([x, y]) => at(x, y)))], { length: String(blank.length), width: String(blank.width) }),
    ...seen.map(({ number, from, to }) => part('lapOnBlank', [box('lap', at(from, 0), at(to, blank.width))], { lap: String(number), from: String(from), to: String(to) })),
    ...(isWhole ? [] : cut(left + half, left + half + cutGap, top, bottom)),
    ...blank.folds.map((fold) => foldLine(fold, at, isWhole ? undefined : [left + half, left + half + cutGap])),
    ...letters.map(({ letter, place: [x, y] }) => words(letter, [x, y + 0.9], { anchor: 'middle', weight: 'bold', size: 2.6 })),
    ...dimensions(blank, { at, system, left, greatest: left + width, top, bottom, pad }),
  ]
  return { group: part('blank', shapes), height: bottom + dimensionRoom + 2 + pad - room.top, at, letters }
}

/** What is seen of the laps on a blank of which only so much is shown from either end. */
function lapsSeen(laps: readonly Stretch[], shown: number, length: number): readonly Stretch[] {
  const windows = shown >= length ? [[0, length]] as const : [[0, shown], [length - shown, length]] as const
  return windows.flatMap(([from, to]) => laps.map((lap) => ({ ...lap, from: Math.max(from, lap.from), to: Math.min(to, lap.to) }))).filter(({ from, to }) => to - from > 1e-6)
}

function cut(from: number, to: number, top: number, bottom: number): readonly Shape[] {
  return [box('mask', [from, top - 1], [to, bottom + 1]), strokes('dimension', breakLine([from, top - 1], [from, bottom + 1]), breakLine([to, top - 1], [to, bottom + 1]))]
}

/** A fold toward the wet side and one away from it have their own lines. */
function foldLine({ name, from, to, direction, angle }: BlankFold, at: BlankView['at'], gap: readonly [number, number] | undefined): Group {
  const [a, b] = [at(...from), at(...to)]
  const pieces = gap && a[0] < gap[0] && b[0] > gap[1] ? [[a, [gap[0], a[1]] as const], [[gap[1], b[1]] as const, b]] : [[a, b]]
  return part('fold', [strokes(direction === 'up' ? 'fold' : 'hidden', ...pieces)], { name, direction, angle: String(angle) })
}

/** From the middle of a letter to what is clear of it. */
const letterRoom = 1.2

/** A letter beside each fold on the blank, where no other letter and no line is near; none where there is no room. Beside the blank stand its measures. */
function lettered({ outline, folds, damFolds, length: long, width }: Blank, at: BlankView['at'], laps: readonly Stretch[]): readonly { readonly letter: string; readonly fold: BlankFold; readonly place: Point }[] {
  const taken: Point[] = []
  const edges = outline.map((from, index) => [at(...from), at(...(outline[(index + 1) % outline.length] ?? from))] as const)
  const lines = [...folds.map(({ from, to }) => [at(...from), at(...to)] as const), ...edges, ...laps.flatMap(({ from, to }) => [from, to].map((x) => [at(x, 0), at(x, width)] as const))]
  return folds.flatMap((fold, index) => {
    const isLong = Math.abs(fold.to[0] - fold.from[0]) > (damFolds[1] - damFolds[0]) / 2
    const [a, b] = [at(...fold.from), at(...fold.to)]
    const length = Math.hypot(b[0] - a[0], b[1] - a[1])
    const shares = isLong ? [6, 11, 16, 21, 26].map((along) => along / length) : [0.5, 0.65, 0.35, 0.8, 0.2]
    const [nx, ny] = [(b[1] - a[1]) / length, (a[0] - b[0]) / length]
    const places = shares.flatMap((share) => [2, -2].map((beside): Point => [a[0] + (b[0] - a[0]) * share + nx * beside, a[1] + (b[1] - a[1]) * share + ny * beside]))
    const [[left, bottom], [right, top]] = [at(0, 0), at(long, width)]
  const inside = ([x, y]: Point) => x > left + letterRoom && x < right - letterRoom && y > top + letterRoom && y < bottom - letterRoom
  const fits = (place: Point) => inside(place) && taken.every(([x, y]) => Math.abs(x - place[0]) > 3 || Math.abs(y - place[1]) > 3.2) && lines.every(([from, to]) => distance(place, from, to) > letterRoom)
    const place = places.find(fits)
    if (!place) return []
    taken.push(place)
    return [{ letter: String.fromCharCode(97 + index), fold, place }]
  })
}

/** Of a point from a stretch. */
function distance([x, y]: Point, [x1, y1]: Point, [x2, y2]: Point): number {
  const size = (x2 - x1) ** 2 + (y2 - y1) ** 2
  const share = size === 0 ? 0 : Math.max(0, Math.min(1, ((x - x1) * (x2 - x1) + (y - y1) * (y2 - y1)) / size))
  return Math.hypot(x - x1 - share * (x2 - x1), y - y1 - share * (y2 - y1))
}

interface Edges extends Pick<BlankView, 'at'> {
  readonly system: UnitSystem
  readonly left: number
  readonly top: number
  readonly bottom: number
  readonly pad: number
  readonly greatest: number
}

/** How far the measures across a narrow blank stand out over and under it. */
function crowdedBy(blank: Blank, system: UnitSystem, height: number): number {
  const levels = levelsOf(blank)
  const needed = levels.slice(1).reduce((sum, level, index) => sum + textWidth(dimensionText(level - (levels[index] ?? 0), system), textSize) + 1.4, 0)
  return Math.max(0, (needed - height - 16) / 2)
}

function dimensions(blank: Blank, { at, system, left, top, bottom, pad, greatest }: Edges): readonly Group[] {
  const [leftFold, rightFold] = blank.damFolds
  const named: readonly (readonly [number, number, string, string])[] = [[0, leftFold, 'leftDam', 'dam '], [leftFold, rightFold, 'pan', 'dam to dam '], [rightFold, blank.length, 'rightDam', 'dam ']]
  const measure = (from: number, to: number, name: string, before: string): Measure => ({ from: at(from, 0)[0], to: at(to, 0)[0], name, text: `${before}${dimensionText(to - from, system)}`, known: true })
  const levels = levelsOf(blank)
  const upright = levels.slice(1).map((level, index): Measure => ({ from: at(0, levels[index] ?? 0)[1], to: at(0, level)[1], name: 'across', text: dimensionText(level - (levels[index] ?? 0), system), known: true }))
  return [
    dimensionLine({ along: 'x', at: top - 3, from: top - 0.8, least: left - 1, greatest, side: 'before', measures: [measure(0, blank.length, 'length', 'length ')] }),
    dimensionLine({ along: 'x', at: bottom + 3, from: bottom + 0.8, least: left - 1, greatest, side: 'after', measures: named.filter(([from, to]) => to > from).map(([from, to, name, before]) => measure(from, to, name, before)) }),
    dimensionLine({ along: 'y', at: left - 4, from: left - 0.8, least: top - 8 - pad, greatest: bottom + 8 + pad, side: 'before', measures: upright }),
    dimensionLine({ along: 'y', at: left - 4 - dimensionRoom, from: left - 4, least: top - 8, greatest: bottom + 8, side: 'before', measures: [{ from: bottom, to: top, name: 'width', text: dimensionText(blank.width, system), known: true }] }),
  ]
}
