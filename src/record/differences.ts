import type { Opening, Reading } from '../opening/opening.ts'
import { agree } from './as-built.ts'

/** A fact that was built otherwise than it was drawn. */
export interface BuiltOtherwise {
  readonly fact: string
  readonly member: 'left' | 'right' | null
  readonly designed: string
  readonly built: string
}

/** Where what was seen is not what was drawn, beyond what the tapes can tell; facts that only one of them knows are no difference. */
export function builtOtherwise(designed: Opening, built: Opening): readonly BuiltOtherwise[] {
  return [...designed.facts].flatMap(([fact, drawn]) => {
    const seen = built.facts.get(fact) ?? []
    return drawn.flatMap((reading, index) => {
      const other = seen[index]
      if (!reading || !other || isDerived(other) || agree(reading, other)) return []
      const member = drawn.length === 2 ? (index === 0 ? ('left' as const) : ('right' as const)) : null
      return [{ fact, member, designed: reading.text, built: other.text }]
    })
  })
}

/** What follows from other facts differs because they do. */
function isDerived({ derivedFrom = [] }: Reading): boolean {
  return derivedFrom.length > 0
}
