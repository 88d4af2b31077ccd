import { greatest, taken } from './choose.ts'
import { cutPatternFormula, cutPatternSources, patternOf } from './cut-pattern-result.ts'
import { defineQuantity } from './define.ts'
import { headLegs, hemOf } from './flashing-legs.ts'
import { headDamHeight } from './head-flashing-pan.ts'
import { fact, limit, orElse, result } from './need.ts'

/** The flat sheet from which the head flashing is folded, as length by width; its outline and folds are in the tables. */
export const headCutPattern = defineQuantity({
  id: 'flashing.head-cut-pattern',
  title: 'Head flashing, flat blank',
  part: 'head',
  dimension: null,
  formula: cutPatternFormula,
  sources: cutPatternSources,
  needs: {
    length: result('flashing.head-pan-length'),
    leftDam: headDamHeight('left'),
    rightDam: headDamHeight('right'),
    ...headLegs,
    dripAngle: greatest(limit('flashing.drip-angle'), fact.amount('head.flashing.dripAngle')),
    fall: orElse(fact.amount('head.flashing.slope'), taken(0), 'The slope of the pan is not known; its bed is taken as level.'),
    hem: hemOf('head.flashing.material'),
  },
  compute: patternOf,
})
