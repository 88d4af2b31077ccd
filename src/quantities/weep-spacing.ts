import { best, onlyWhere, taken } from './choose.ts'
import { choiceIs, combined, fact, foundOnce, limit, orElse, type Need } from './need.ts'

/** How far apart weeps may stand: the amount as the rule states it, and the longest distance that keeps it. */
export interface Spacing {
  readonly amount: number
  readonly longest: number
}

const openWeeps: readonly string[] = ['openHeadJoint', 'cellVent', 'mesh']
const slowWeeps: readonly string[] = ['tube', 'wick', 'rope']

/** What the adopted code or standard allows at the head, whatever the weeps are. */
export const codeSpacing = allowedBy('weep.spacing')

/** At the head, for open joints and for tubes and wicks, whichever are there. */
export const openJointSpacing = strictest(codeSpacing, allowedBy('weep.spacing-open-head-joint'))
export const slowWeepSpacing = strictest(codeSpacing, allowedBy('weep.spacing-wick-or-tube'))

/** The strictest of the code and what is recommended for the kind of weep. */
export const headSpacing = strictest(
  codeSpacing,
  forKinds('head', openWeeps, 'weep.spacing-open-head-joint'),
  forKinds('head', slowWeeps, 'weep.spacing-wick-or-tube'),
)

/** What is recommended at the sill for the kind of weep; the code's spacing is about supports. */
export const sillSpacing = strictest(
  forKinds('sill', openWeeps, 'weep.sill-spacing-open-head-joint'),
  forKinds('sill', ['tube'], 'weep.sill-spacing-tube'),
  forKinds('sill', ['wick', 'rope'], 'weep.sill-spacing-wick'),
)

function strictest(...rules: readonly Need<Spacing>[]): Need<Spacing> {
  return best(rules, (spacing, other) => spacing.longest < other.longest)
}

/** What the weeps are; open head joints where nobody has told of any. */
export function weepKind(place: 'head' | 'sill'): Need<string> {
  const path = `${place}.weeps.kind`
  const given = onlyWhere(choiceIs(path, ...openWeeps, ...slowWeeps), fact.choice(path))
  return orElse(given, taken('openHeadJoint'), `No kind of weep is given at the ${place}; open head joints are taken.`)
}

function forKinds(place: 'head' | 'sill', kinds: readonly string[], rule: string): Need<Spacing> {
  return onlyWhere(combined({ kind: weepKind(place) }, ({ kind }) => kinds.includes(kind)), allowedBy(rule))
}

/** "Less than 33 in" is kept by a nanometre less, the unit in which lengths are whole numbers. */
function allowedBy(rule: string): Need<Spacing> {
  const inForce = limit(rule)
  return foundOnce({
    asks: inForce.asks,
    find: (inputs) => {
      const found = inForce.find(inputs)
      if (!found.known) return found
      const longest = inputs.limit(rule)?.comparator === 'lessThan' ? found.value - 1 : found.value
      return { ...found, value: { amount: found.value, longest } }
    },
  })
}
