import { brickOf, type BrickSizes, type End, type Known } from '../known.ts'

/** The wall around an opening, in millimeters from its lower left corner: x to the right, y up. */
export interface WallExtent {
  readonly width: number
  readonly height: number
  readonly brick: BrickSizes | undefined
  readonly headShape: string
  /** Where an arch starts; the height of the opening under a flat head. */
  readonly springing: number
  /** What is drawn of the wall. */
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly top: number
  /** Where the brick really ends, and not only the drawing. */
  readonly ended: { readonly left: boolean; readonly right: boolean; readonly top: boolean }
  /** Finished grade, where it is drawn. */
  readonly grade: number | undefined
}

const plainMargin = 200 // of a wall whose brick is not known
const nearGrade = 1600 // a sill that is higher is drawn cut off below

export function wallExtent(known: Known): WallExtent | undefined {
  const [width, height] = [known.length('opening.width'), known.length('opening.height')]
  if (width === undefined || height === undefined) return undefined
  const brick = brickOf(known)
  const headShape = known.choice('opening.headShape') ?? 'flat'
  const [left, right] = [sideOf(known, 'left', brick), sideOf(known, 'right', brick)]
  const above = aboveHead(known, brick, headShape)
  return {
    width, height, brick, headShape,
    springing: height - Math.min(height, riseOf(known, headShape, width) ?? 0),
    left: -left.reach, right: width + right.reach, top: height + above.reach, ...footOf(known, brick),
    ended: { left: left.ended, right: right.ended, top: above.ended },
  }
}

function footOf(known: Known, brick: BrickSizes | undefined): Pick<WallExtent, 'bottom' | 'grade'> {
  const above = known.length('opening.sillAboveGrade')
  if (above !== undefined && above >= 0 && above <= nearGrade) return { bottom: -above - Math.max(60, above / 12), grade: -above }
  return { bottom: -5 * (brick?.course ?? plainMargin / 3), grade: undefined }
}

/** Rise of an arch in the opening; undefined where it is not known, nothing under a flat head. */
export function riseOf(known: Known, shape: string, width: number): number | undefined {
  if (shape === 'semicircularArch') return width / 2
  if (shape === 'segmentalArch' || shape === 'otherArch') return known.length('opening.headRise')
  return 0
}

/** How far brick is drawn past the opening, and whether it ends there. */
interface Reach {
  readonly reach: number
  readonly ended: boolean
}

function sideOf(known: Known, end: End, brick: BrickSizes | undefined): Reach {
  const margin = brick ? 1.5 * (brick.length + brick.joint) : plainMargin
  const parts = ['head.support.bearing', 'head.flashing.extensionPastJamb', 'sill.flashing.extensionPastJamb'].map((path) => known.glimpse(path, end) ?? 0)
  const wanted = Math.max(0, ...parts) + margin
  const pier = known.glimpse('opening.pierWidth', end)
  const ended = pier !== undefined && pier < wanted
  return { reach: ended ? pier : wanted, ended }
}

function aboveHead(known: Known, brick: BrickSizes | undefined, headShape: string): Reach {
  const course = brick?.course ?? plainMargin / 3
  const ring = headShape === 'flat' ? 0 : (brick?.length ?? 0)
  const wanted = Math.max(ring + (known.glimpse('head.flashing.upstand') ?? 2 * course) + course, (brick?.length ?? 0) + 3 * course, 5 * course)
  const given = known.glimpse('wall.heightAboveHead')
  const ended = given !== undefined && given < wanted
  return { reach: ended ? given : wanted, ended }
}
