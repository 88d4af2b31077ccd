import { metres } from '../units/length.ts'
import { exactLengthText, quantityText } from '../units/quantity-text.ts'
import { onlyWhere } from './choose.ts'
import { defineQuantity } from './define.ts'
import { arches } from './lintel-arching.ts'
import { onLintel, veneerWeight } from './lintel-needs.ts'
import { confirmed } from './lintel-sources.ts'
import { combined, fact, limit, optional, parameter, result, resultText } from './need.ts'
import type { QuantityTable } from './result.ts'

const hasReinforcedJoints = combined({ joints: fact.amount('head.support.jointReinforcementCourses') }, ({ joints }) => joints > 0)

interface Shored {
  readonly all: number
  readonly own: number | undefined
  readonly weight: number
  readonly above: number
  readonly span: number
}

/** Until when the lintel is shored, and what the shores hold: green brick does not arch. */
export const lintelTemporarySupport = defineQuantity({
  id: 'lintel.temporary-support',
  title: 'Shoring of the lintel while the brick is laid',
  part: 'head',
  dimension: null,
  structural: true,
  formula: 'where the brick is counted on to arch, until the mortar has set; load to hold = veneer weight × height of green brick × effective span',
  sources: [
    { title: 'Masonry Construction, when steel lintels must be shored', locator: 'question and answer', evidence: 'primary', readIn: 'http://www.masonryconstruction.com/how-to/when-must-steel-lintels-be-shored_o' },
    { title: 'Masonry and Concrete (McGraw-Hill)', locator: 'p. 260', evidence: 'primary', readIn: 'https://digilib.universitaspertamina.ac.id/ebook/Masonry%20and%20Concrete' },
  ],
  appliesTo: onLintel,
  needs: {
    arching: resultText('lintel.arching'),
    all: result('lintel.load-without-arching'),
    own: optional(result('lintel.self-weight')),
    weight: veneerWeight,
    above: fact.amount('wall.heightAboveHead'),
    span: result('lintel.effective-span'),
    least: parameter('lintel.shoring-days-least'),
    greatest: parameter('lintel.shoring-days-greatest'),
    byCode: optional(onlyWhere(hasReinforcedJoints, limit('lintel.wide-opening-shoring'))),
  },
  compute: ({ arching, least, greatest, byCode, ...shored }) => ({
    value: arching === arches ? 'shore until the mortar has set' : 'no shoring is counted on; the lintel carries all the brick from the first day',
    steps: [
      ...(arching === arches ? [`usually specified: ${least} to ${greatest} days, more under heavy load and in cold weather`] : []),
      ...(byCode === undefined ? [] : [`by the reinforced brick option of the code for wide openings: ${byCode} days`]),
      `green brick to hold: ${quantityText({ dimension: 'arealLoad', amount: shored.weight }, 'inchPound')} × its height × ${exactLengthText(shored.span)}`,
    ],
    tables: [tableOf(shored)],
    notes: [
      arching === arches ? 'The specification comes first: who designed the lintel says how long it stays shored.' : 'Some engineers have such lintels shored too, to keep the sag down.',
      'Set the shores before the first course, on something that carries them, and wedge them tight. Brick over an opening can drop when a shore is knocked out or taken away early. A licensed engineer designs the shoring of more than a few courses.',
      confirmed,
    ],
  }),
})

function tableOf({ all, own, weight, above, span }: Shored): QuantityTable {
  return {
    title: 'What the shores hold while nothing has set',
    columns: [{ title: 'Load', dimension: null }, { title: 'Height of brick', dimension: 'length' }, { title: 'Over the span', dimension: 'force' }, { title: 'Along the lintel', dimension: 'lineLoad' }],
    rows: [
      ['all the brick above', above, all, weight * metres(above)],
      ...(own === undefined ? [] : [['the lintel itself', null, own, own / metres(span)]]),
    ],
  }
}
