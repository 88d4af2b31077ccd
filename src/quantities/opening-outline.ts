import { areaOf, millimetres } from '../units/length.ts'
import { shownOnce, taken, whether } from './choose.ts'
import { combined, fact, orElse, type Need } from './need.ts'

/** Openings that stand on a threshold instead of a sill. */
export const doorKinds: readonly string[] = ['door', 'slidingDoor', 'garageDoor']

/** The edge of the opening in the brick: lengths in nanometres, the area in mm². */
export interface Outline {
  readonly jamb: number
  readonly head: number
  readonly sill: number
  readonly area: number
}

const shape = orElse(fact.choice('opening.headShape'), taken('flat'), 'The shape of the head is not known; it is taken as flat.')
const shapeIs = (...shapes: readonly string[]) => combined({ shape }, ({ shape }) => shapes.includes(shape))
const halfWidth = combined({ width: fact.amount('opening.width') }, ({ width }) => width / 2)
const rise = whether(shapeIs('semicircularArch'), halfWidth, whether(shapeIs('segmentalArch'), fact.amount('opening.headRise'), taken(0)))

/** Undefined where the head has no shape that can be reckoned with. */
export const outline: Need<Outline | undefined> = shownOnce(
  combined({ width: fact.amount('opening.width'), height: fact.amount('opening.height'), shape, rise }, ({ width, height, shape, rise }) => {
    if (shape === 'otherArch' || rise < 0 || rise > height || rise > width / 2) return undefined
    const jamb = height - rise
    const arc = arcOver(width, rise)
    return { jamb, sill: width, head: arc.length, area: areaOf(width, jamb) + arc.area }
  }),
)

export const noOutline = { reason: 'methodDoesNotHold', why: 'The head is neither flat nor a part of a circle up to a half; measure the opening on its drawing.' } as const

/** A part of a circle over a width: its length in nanometres, and the area under it in mm². */
function arcOver(width: number, rise: number): { readonly length: number; readonly area: number } {
  if (rise === 0) return { length: width, area: 0 }
  const radius = (width ** 2 / 4 + rise ** 2) / (2 * rise)
  const angle = 4 * Math.atan((2 * rise) / width)
  return { length: Math.round(radius * angle), area: (millimetres(radius) ** 2 / 2) * (angle - Math.sin(angle)) }
}
