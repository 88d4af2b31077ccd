import { brick } from './brick-unit.ts'
import { best, onlyWhere, taken } from './choose.ts'
import { headJointHeight, sillJointHeight } from './joint-pitch.ts'
import { combined, fact, orElse, type Need } from './need.ts'
import { weepKind } from './weep-spacing.ts'

/** Square nanometers are in no unit table; areas are in square millimeters. */
const squareMillimetre = 1e-12

export function jointArea(width: number, height: number): number {
  return width * height * squareMillimetre
}

export function roundArea(diameter: number): number {
  return ((Math.PI * diameter ** 2) / 4) * squareMillimetre
}

export const mortarJoint: Need<number> = combined({ brick }, ({ brick }) => brick.joint)

/** Clear area of one weep as it is described; undefined where no source gives the kind a clear opening. */
export function weepArea(place: 'head' | 'sill'): Need<number | undefined> {
  const kind = weepKind(place)
  const is = (...kinds: readonly string[]) => combined({ kind }, ({ kind }) => kinds.includes(kind))
  const diameter = fact.amount(`${place}.weeps.diameter`)
  const width = orElse(diameter, mortarJoint, 'The width of the open joints is not known; that of the mortar joint is taken.')
  return best<number | undefined>([
    onlyWhere(is('openHeadJoint'), combined({ width, height: openHeight(place) }, ({ width, height }) => (height === undefined ? undefined : jointArea(width, height)))),
    onlyWhere(is('tube'), combined({ diameter }, ({ diameter }) => roundArea(diameter))),
    onlyWhere(is('cellVent', 'mesh', 'wick', 'rope'), taken(undefined)),
  ], () => false)
}

function openHeight(place: 'head' | 'sill'): Need<number | undefined> {
  const whole = place === 'head' ? headJointHeight : sillJointHeight
  return orElse<number | undefined>(fact.amount(`${place}.weeps.openHeight`), whole, 'The height of the open joints is not known; the whole joint is taken.')
}
