import { brick } from './brick-unit.ts'
import { best, onlyWhere, taken } from './choose.ts'
import { headJointHeight, sillJointHeight } from './joint-pitch.ts'
import { combined, fact, orElse, type Need } from './need.ts'
import { circleArea, rectangleArea } from './plane-area.ts'
import { weepKind } from './weep-spacing.ts'

export const mortarJoint: Need<number> = combined({ brick }, ({ brick }) => brick.joint)

const described = {
  head: { diameter: fact.amount('head.weeps.diameter'), openHeight: fact.amount('head.weeps.openHeight') },
  sill: { diameter: fact.amount('sill.weeps.diameter'), openHeight: fact.amount('sill.weeps.openHeight') },
}

/** Clear area of one weep as it is described; undefined where no source gives the kind a clear opening. */
export function weepArea(place: 'head' | 'sill'): Need<number | undefined> {
  const kind = weepKind(place)
  const is = (...kinds: readonly string[]) => combined({ kind }, ({ kind }) => kinds.includes(kind))
  const { diameter } = described[place]
  const width = orElse(diameter, mortarJoint, 'The width of the open joints is not known; that of the mortar joint is taken.')
  return best<number | undefined>([
    onlyWhere(is('openHeadJoint'), combined({ width, height: openHeight(place) }, ({ width, height }) => (height === undefined ? undefined : rectangleArea(width, height)))),
    onlyWhere(is('tube'), combined({ diameter }, ({ diameter }) => circleArea(diameter))),
    onlyWhere(is('cellVent', 'mesh', 'wick', 'rope'), taken(undefined)),
  ], () => false)
}

function openHeight(place: 'head' | 'sill'): Need<number | undefined> {
  const whole = place === 'head' ? headJointHeight : sillJointHeight
  return orElse<number | undefined>(described[place].openHeight, whole, 'The height of the open joints is not known; the whole joint is taken.')
}
