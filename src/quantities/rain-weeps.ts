import { metres, nanometresOf } from '../units/length.ts'
import { exactLengthText } from '../units/quantity-text.ts'
import { brick } from './brick-unit.ts'
import { best, onlyWhere } from './choose.ts'
import { defineQuantity, type Computation } from './define.ts'
import { choiceIs, combined, fact, optional, orElse, parameter, result, type Need } from './need.ts'
import { lowerDam } from './rain-pan.ts'
import { hydraulics, thinWater } from './rain-sources.ts'
import { heldAtHole, heldAtSlot, water } from './water.ts'
import { flowThrough, type WeepHole } from './weep-flow.ts'

const kind = fact.choice('head.weeps.kind')

const slot: Need<WeepHole> = combined(
  {
    width: orElse(fact.amount('head.weeps.diameter'), parameter('masonry.joint-thickness'), 'The width of the open joint is not known; the joint of standard coursing is taken.'),
    height: orElse(fact.amount('head.weeps.openHeight'), combined({ brick }, ({ brick }) => brick.height), 'The height of the open joint is not known; a whole brick is taken.'),
  },
  ({ width, height }) => ({ shape: 'slot', width: metres(width), height: metres(height) }),
)

const tube: Need<WeepHole> = combined({ diameter: fact.amount('head.weeps.diameter') }, ({ diameter }) => ({ shape: 'round', diameter: metres(diameter) }))

const otherKind: Need<undefined> = onlyWhere(choiceIs('head.weeps.kind', 'cellVent', 'mesh', 'wick', 'rope', 'none'), combined({}, () => undefined))

/** The weep as a hole; undefined for kinds through which the flow cannot be computed. */
const hole: Need<WeepHole | undefined> = best<WeepHole | undefined>([onlyWhere(choiceIs('head.weeps.kind', 'openHeadJoint'), slot), onlyWhere(choiceIs('head.weeps.kind', 'tube'), tube), otherKind], () => false)

function notComputed(kind: string): Computation {
  if (kind === 'none') return 'notApplicable'
  const why = kind === 'wick' || kind === 'rope' ? 'What a wick or rope passes depends on its measured permeability, which is not published.' : 'No flow is published for inserts in open joints.'
  return { reason: 'methodDoesNotHold', why }
}

const closed: Computation = { reason: 'methodDoesNotHold', why: 'A weep without any opening is closed.' }

function isClosed(hole: WeepHole): boolean {
  return hole.shape === 'slot' ? hole.width <= 0 || hole.height <= 0 : hole.diameter <= 0
}

/** Depth of water that a clean weep holds back by surface tension, in nanometres. */
export const weepBreakthrough = defineQuantity({
  id: 'rain.weep-breakthrough',
  title: 'Water that stands on the head flashing before a clean weep drains',
  part: 'head',
  dimension: 'length',
  formula: 'round: 4 × surface tension / (density × gravity × diameter); slot: 2 × surface tension / (density × gravity × width)',
  indicative: true,
  onlyWhenKnown: true,
  sources: [thinWater],
  needs: { kind, hole, water },
  compute: ({ kind, hole, water }) => {
    if (!hole) return notComputed(kind)
    if (isClosed(hole)) return closed
    return { value: nanometresOf(hole.shape === 'slot' ? heldAtSlot(water, hole.width) : heldAtHole(water, hole.diameter)), notes: ['On a level pan and at clean edges that water does not wet. The narrower the weep, the more stays.'] }
  },
})

/** What the weeps over the head let out, in L/h, from all blocked to all clean. */
export const weepCapacity = defineQuantity({
  id: 'rain.weep-capacity',
  title: 'What the weeps over the head let out',
  part: 'head',
  dimension: 'flow',
  formula: 'open joint: 2/3 × discharge × width × √(2 × gravity) × depth^(3/2); tube: discharge × area × √(2 × gravity × depth over its middle); times the number of weeps',
  indicative: true,
  onlyWhenKnown: true,
  sources: [hydraulics],
  needs: {
    kind,
    hole,
    count: orElse(fact.amount('head.weeps.count'), result('weeps.head-count'), 'The number of weeps is not known; the number computed for this opening is taken.'),
    dam: lowerDam,
    discharge: parameter('weep.discharge-coefficient'),
    open: optional(fact.flag('head.weeps.open')),
    water,
  },
  compute: ({ kind, hole, count, dam, discharge, open, water }) => {
    if (!hole) return notComputed(kind)
    if (isClosed(hole)) return closed
    if (dam <= 0) return { reason: 'methodDoesNotHold', why: 'Without an end dam no water stands on the flashing.' }
    const rows = [dam / 4, dam / 2, dam].map((depth) => {
      const one = flowThrough(hole, metres(depth), discharge, water)
      return [Math.round(depth), one ?? null, one === undefined ? null : one * count, 0] as const
    })
    const full = rows.at(-1)?.[2] ?? null
    if (full === null) return { reason: 'methodDoesNotHold', why: `The tube is larger than the ${exactLengthText(dam)} end dam is high; it never runs full.` }
    return {
      value: { least: 0, greatest: full },
      tables: [{
        title: 'By depth of water on the flashing, up to the lower end dam',
        columns: [{ title: 'Depth', dimension: 'length' }, { title: 'One clean weep', dimension: 'flow' }, { title: 'All weeps clean', dimension: 'flow' }, { title: 'All weeps blocked', dimension: 'flow' }],
        rows,
      }],
      notes: [
        'A clean weep is never what limits; blocked and missing weeps and open ends are. Do not read a margin out of this.',
        ...(open === false ? ['Some weeps here are closed; only what is open counts, down to none.'] : []),
      ],
    }
  },
})
