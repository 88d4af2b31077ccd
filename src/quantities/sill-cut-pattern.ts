import { added } from './added.ts'
import { taken } from './choose.ts'
import { cutPatternFormula, cutPatternSources, patternOf } from './cut-pattern-result.ts'
import { defineQuantity } from './define.ts'
import { hemOf, sillLegs } from './flashing-legs.ts'
import { limit, orElse, result } from './need.ts'
import { flashedSill, sillDamHeight } from './sill-pan.ts'

/** Width of stock for the sill flashing, from its top edge behind the sill units to its front edge, in nanometers. */
export const sillFlashingGirth = defineQuantity({
  id: 'sill.flashing-girth',
  title: 'Sill flashing, girth',
  part: 'sill',
  dimension: 'length',
  formula: 'upstand behind the sill + depth of the sill over the brick + projection',
  appliesTo: flashedSill,
  needs: sillLegs,
  compute: ({ upstand, depth, projection }) => ({ ...added(upstand, depth, projection), notes: ['A hem and the slant of a drip turned down are not counted.'] }),
})

/** The flat sheet from which the sill flashing is folded, as length by width; its outline and folds are in the tables. */
export const sillCutPattern = defineQuantity({
  id: 'sill.flashing-cut-pattern',
  title: 'Sill flashing, flat blank',
  part: 'sill',
  dimension: null,
  formula: cutPatternFormula,
  sources: cutPatternSources,
  appliesTo: flashedSill,
  needs: {
    length: result('sill.flashing-length'),
    leftDam: sillDamHeight('left'),
    rightDam: sillDamHeight('right'),
    ...sillLegs,
    dripAngle: orElse(limit('flashing.drip-angle'), taken(0), 'How far the front edge is turned down is not known; it is taken as flat.'),
    hem: hemOf('sill.flashing.material'),
  },
  compute: (pan) => {
    const pattern = patternOf({ ...pan, fall: 0 })
    return typeof pattern === 'object' && 'value' in pattern ? { ...pattern, notes: [...(pattern.notes ?? []), 'The flashing is taken to lie level under the sill units.'] } : pattern
  },
})
