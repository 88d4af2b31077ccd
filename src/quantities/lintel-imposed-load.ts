import { metres } from '../units/length.ts'
import { exactLengthText, quantityText } from '../units/quantity-text.ts'
import { taken, whether } from './choose.ts'
import { defineQuantity } from './define.ts'
import { arches } from './lintel-arching.ts'
import { loadsAbove } from './lintel-loads-above.ts'
import { onLintel } from './lintel-needs.ts'
import { confirmed, lintelTextbook, veneerCarriesItself, veneerCarriesItselfNote } from './lintel-sources.ts'
import { combined, result, resultText, type Need } from './need.ts'

const span = result('lintel.effective-span')
const arching = resultText('lintel.arching')
const isThere = combined({ loads: loadsAbove }, ({ loads }) => loads.even > 0)

/** Newtons of floor or roof on the span. Brick that arches carries it past the opening; that it comes on high enough is a condition of arching. */
export const imposedOnLintel: Need<number> = whether(
  isThere,
  combined({ loads: loadsAbove, span, arching }, ({ loads, span, arching }) => (arching === arches ? 0 : loads.even * metres(span))),
  taken(0),
)

export const lintelImposedLoad = defineQuantity({
  id: 'lintel.imposed-load',
  title: 'Floor or roof load on the lintel',
  part: 'head',
  dimension: 'force',
  structural: true,
  onlyWhenKnown: true,
  formula: 'arching: none; else load per length × effective span',
  sources: [lintelTextbook('p. 222, floor and roof loads; worked on p. 231', 222), veneerCarriesItself],
  appliesTo: onLintel,
  needs: { loads: loadsAbove, onLintel: imposedOnLintel, arching, span },
  compute: ({ loads, onLintel, arching, span }) => {
    if (loads.even === 0) return 'notApplicable'
    const perLength = quantityText({ dimension: 'lineLoad', amount: loads.even }, 'inchPound')
    const total = quantityText({ dimension: 'force', amount: onLintel }, 'inchPound')
    return {
      value: onLintel,
      steps: [arching === arches ? `${perLength} comes on above the arch of brick, which carries it past the opening` : `no arching: ${perLength} × ${exactLengthText(span)} = ${total}`],
      notes: [...(arching === arches ? ['The brick beside the opening carries what the arch leads past it; check that too.'] : []), veneerCarriesItselfNote, confirmed],
    }
  },
})
