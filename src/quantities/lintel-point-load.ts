import { metres, nanometresOf } from '../units/length.ts'
import { exactLengthText, inchText, quantityText } from '../units/quantity-text.ts'
import { taken, whether } from './choose.ts'
import { defineQuantity } from './define.ts'
import { loadsAbove } from './lintel-loads-above.ts'
import { bearing, onLintel } from './lintel-needs.ts'
import { confirmed, lintelTextbook, veneerCarriesItself, veneerCarriesItselfNote } from './lintel-sources.ts'
import { combined, fact, orElse, parameter, result, type Need } from './need.ts'
import type { PartLoad } from './simple-span.ts'

/** A point load where it has spread down to the lintel: the whole of it in newtons, and places in nm from the left support. */
interface Spread {
  readonly load: number
  readonly plate: number
  readonly height: number
  readonly angle: number
  readonly length: number
  readonly onSpan: PartLoad
}

interface Place {
  readonly span: number
  readonly clear: number
  readonly left: number
  readonly right: number
  readonly fromJamb: number
}

const placed = {
  span: result('lintel.effective-span'),
  clear: fact.amount('opening.width'),
  ...bearing,
  fromJamb: fact.amount('wall.pointLoadFromJamb'),
}

const spread: Need<Spread> = combined(
  {
    ...placed,
    loads: loadsAbove,
    height: fact.amount('wall.pointLoadHeight'),
    plate: orElse(fact.amount('wall.pointLoadPlate'), taken(0), 'The plate under the point load is not known; a knife edge is taken.'),
    angle: parameter('lintel.concentrated-load-dispersion-angle'),
  },
  ({ loads, height, plate, angle, ...place }) => {
    const length = plate + (2 * height) / Math.tan((angle * Math.PI) / 180)
    return { load: loads.point, plate, height, angle, length, onSpan: overlapping(loads.point, length, place) }
  },
)

/** The point load as it reaches the lintel; undefined where there is none. */
export const pointLoadOnLintel: Need<Spread | undefined> = whether(combined({ loads: loadsAbove }, ({ loads }) => loads.point > 0), spread, taken(undefined))

export const lintelPointLoad = defineQuantity({
  id: 'lintel.point-load',
  title: 'Point load that reaches the lintel',
  part: 'head',
  dimension: 'force',
  structural: true,
  onlyWhenKnown: true,
  formula: 'spread = plate + 2 × height / tan(angle); load / spread × the part of the spread over the effective span',
  sources: [
    lintelTextbook('p. 235, example 4.27', 235),
    { title: 'Masonry Construction, concentrated loads on lintels', locator: 'question and answer', evidence: 'primary', readIn: 'http://www.masonryconstruction.com/how-to/concentrated-loads-on-lintels_o' },
    veneerCarriesItself,
  ],
  appliesTo: onLintel,
  needs: { spread: pointLoadOnLintel },
  compute: ({ spread }) => spread === undefined ? 'notApplicable' : {
    value: spread.onSpan.total,
    steps: stepsOf(spread),
    notes: [
      spread.onSpan.total === 0 ? 'The load spreads beside the opening: nothing of it comes on the lintel. Check the brick at the jamb for it.' : 'What does not come on the lintel goes into the brick beside the opening; check that too.',
      'The spread ends at a movement joint, a corner or another opening; the drawing has to show that it is free of them.',
      veneerCarriesItselfNote,
      confirmed,
    ],
  },
})

function stepsOf({ load, plate, height, angle, length, onSpan }: Spread): readonly string[] {
  const [whole, part] = [load, onSpan.total].map((amount) => quantityText({ dimension: 'force', amount }, 'inchPound'))
  const over = inchText(nanometresOf(onSpan.to - onSpan.from))
  return [
    `spread ${exactLengthText(plate)} + 2 × ${exactLengthText(height)} / tan(${angle} deg) = ${inchText(Math.round(length))}`,
    length === 0 ? `${part} of ${whole} stands on the span` : `${whole} / ${inchText(Math.round(length))} × ${over} of the span = ${part}`,
  ]
}

/** The supports stand in the middle of the bearings; where the clear opening is taken as the span, at the jambs. */
function overlapping(load: number, length: number, { span, clear, left, right, fromJamb }: Place): PartLoad {
  const support = left + right === 0 ? 0 : ((span - clear) * left) / (left + right)
  const [from, to] = [-length / 2, length / 2].map((end) => Math.min(span, Math.max(0, support + fromJamb + end))) as [number, number]
  const isOver = support + fromJamb + length / 2 >= 0 && support + fromJamb - length / 2 <= span
  const share = length === 0 ? Number(isOver) : (to - from) / length
  return { shape: 'part', total: load * share, from: metres(from), to: metres(to) }
}
