/** Works something out from parts that are told apart by identity, unless that was done for the same parts not long ago. */
export type Recall<T> = (parts: readonly unknown[], workOut: () => T) => T

/** As many kinds of openings as a building has; the bound keeps openings that have nothing in common from filling the memory. */
const usual = 16

/** Remembers the last few things that were worked out, and says which of them was wanted a second time. */
export function recent<T>({ most = usual, again }: { readonly most?: number; readonly again?: (value: T) => void } = {}): Recall<T> {
  const kept: { readonly parts: readonly unknown[]; readonly value: T; wanted: number }[] = []
  let oldest = 0
  return (parts, workOut) => {
    const known = kept.find((one) => areSame(one.parts, parts))
    if (known) {
      known.wanted += 1
      if (known.wanted === 2) again?.(known.value)
      return known.value
    }
    const value = workOut()
    kept[oldest] = { parts, value, wanted: 1 }
    oldest = (oldest + 1) % most
    return value
  }
}

function areSame(some: readonly unknown[], others: readonly unknown[]): boolean {
  for (let index = 0; index < others.length; index += 1) if (some[index] !== others[index]) return false
  return some.length === others.length
}
