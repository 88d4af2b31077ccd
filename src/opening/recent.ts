/** Works something out from parts that are told apart by identity, unless that was done for the same parts not long ago. */
export type Recall<T> = (parts: readonly unknown[], workOut: () => T) => T

/** As many kinds of openings as a building has; the bound keeps openings that have nothing in common from filling the memory. */
const usual = 16

/**
 * Remembers the last few things that were wanted a second time while they were still recent, and says so of each. What comes once
 * only leaves nothing but its parts for a while: to remember it as well would cost more than it gives.
 */
export function recent<T>({ most = usual, again }: { readonly most?: number; readonly again?: (value: T) => void } = {}): Recall<T> {
  const kept: Kept<T>[] = []
  const once: Once[] = []
  let [oldest, oldestOnce] = [0, 0]
  return (parts, workOut) => {
    const known = among(kept, parts)
    if (known) return known.value
    const value = workOut()
    if (among(once, parts)) {
      again?.(value)
      kept[oldest] = { parts, value }
      oldest = (oldest + 1) % most
    } else {
      once[oldestOnce] = { parts }
      oldestOnce = (oldestOnce + 1) % most
    }
    return value
  }
}

interface Once {
  readonly parts: readonly unknown[]
}

interface Kept<T> extends Once {
  readonly value: T
}

function among<O extends Once>(some: readonly O[], parts: readonly unknown[]): O | undefined {
  for (const one of some) if (areSame(one.parts, parts)) return one
  return undefined
}

function areSame(some: readonly unknown[], others: readonly unknown[]): boolean {
  for (let index = 0; index < others.length; index += 1) if (some[index] !== others[index]) return false
  return some.length === others.length
}
