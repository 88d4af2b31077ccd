import { metres } from '../units/length.ts'
import { quantityText } from '../units/quantity-text.ts'
import { defineQuantity, type QuantityDefinition } from './define.ts'
import { endsOf, type BeamLoad } from './lintel-beam.ts'
import { carried } from './lintel-load.ts'
import { onLintel } from './lintel-needs.ts'
import { beamFormulas, confirmed } from './lintel-sources.ts'
import { combined, result, type Need } from './need.ts'

interface Loaded {
  readonly load: BeamLoad
  readonly ends: readonly [left: number, right: number]
}

const loaded: Need<Loaded> = combined({ load: carried, span: result('lintel.effective-span') }, ({ load, span }) => ({ load, ends: endsOf(load, metres(span)) }))
const formula = 'half the triangle and half the even load; of a point load, its spread on the span × distance of its middle from the other support / effective span'

export const lintelReactionLeft = reactionAt('lintel.reaction-left', 'left')
export const lintelReactionRight = reactionAt('lintel.reaction-right', 'right')

/** Greatest shear, at the more heavily loaded end. */
export const lintelShear = defineQuantity({
  id: 'lintel.shear',
  title: 'Greatest shear in the lintel',
  part: 'head',
  dimension: 'force',
  structural: true,
  formula: 'the greater of the loads on the two bearings',
  appliesTo: onLintel,
  needs: { left: result('lintel.reaction-left'), right: result('lintel.reaction-right') },
  compute: ({ left, right }) => ({
    value: Math.max(left, right),
    steps: [`left ${forceText(left)}, right ${forceText(right)}`],
    notes: ['Taken at the support, not a depth away from it.', confirmed],
  }),
})

function reactionAt(id: string, end: 'left' | 'right'): QuantityDefinition {
  return defineQuantity({
    id,
    title: `Load on the ${end} bearing`,
    part: 'head',
    dimension: 'force',
    structural: true,
    formula,
    sources: [beamFormulas],
    appliesTo: onLintel,
    needs: { loaded },
    compute: ({ loaded }) => {
      const reaction = loaded.ends[end === 'left' ? 0 : 1]
      return { value: reaction, steps: [stepOf(loaded, reaction)], notes: [confirmed] }
    },
  })
}

function stepOf({ load: { triangle, uniform, part } }: Loaded, end: number): string {
  const even = `${forceText(triangle + uniform)} / 2`
  return part ? `${even} + ${forceText(end - (triangle + uniform) / 2)} of the point load = ${forceText(end)}` : `${even} = ${forceText(end)}`
}

function forceText(newtons: number): string {
  return quantityText({ dimension: 'force', amount: newtons }, 'inchPound')
}
