/** Works something out from parts that are told apart by identity, unless that was done for the same parts not long ago. */
export type Recall<T> = (parts: readonly unknown[], workOut: () => T) => T

/** As many kinds of openings as a building has; the bound keeps openings that have nothing in common from filling the memory. */
const usual = 16

/**
 * Remembers the last few things that were worked out, and says which of them was wanted a second time. Where nothing was wanted
 * again for long, only few of them are still remembered: what comes once only is cheaper to forget.
 */
export function recent<T>({ most = usual, again }: { readonly most?: number; readonly again?: (value: T) => void } = {}): Recall<T> {
  const kept: Kept<T>[] = []
  let [oldest, inVain] = [0, 0]
  return (parts, workOut) => {
    const known = among(kept, parts)
    if (known) {
      inVain = 0
      known.wanted += 1
      if (known.wanted === 2) again?.(known.value)
      return known.value
    }
    const value = workOut()
    inVain += 1
    if (inVain <= patience || inVain % patience === 0) {
      kept[oldest] = { parts, value, wanted: 1 }
      oldest = (oldest + 1) % most
    }
    return value
  }
}

/** As often is something worked out anew before it is taken for one of those that come once only. */
const patience = 48

interface Kept<T> {
  readonly parts: readonly unknown[]
  readonly value: T
  wanted: number
}

function among<T>(kept: readonly Kept<T>[], parts: readonly unknown[]): Kept<T> | undefined {
  for (const one of kept) if (areSame(one.parts, parts)) return one
  return undefined
}

function areSame(some: readonly unknown[], others: readonly unknown[]): boolean {
  for (let index = 0; index < others.length; index += 1) if (some[index] !== others[index]) return false
  return some.length === others.length
}
