/** Rounds a length up to one that whole bars of these stock lengths can add up to. */
export type RoundUp = (length: number) => number

const mostSums = 1e6

/** Sums are listed up to `greatest`; where they are too many for a list, a multiple of what all stock lengths have in common is taken. */
export function roundUpTo(stockLengths: readonly number[], greatest: number): RoundUp {
  const unit = stockLengths.reduce(commonDivisor)
  const last = Math.ceil(greatest / unit)
  if (last > mostSums) return (length) => Math.ceil(length / unit) * unit
  const reached = sums(stockLengths.map((length) => length / unit), last)
  return (length) => {
    let sum = Math.max(0, Math.ceil(length / unit))
    while (sum <= last && reached[sum] !== 1) sum += 1
    return sum * unit
  }
}

function sums(lengths: readonly number[], last: number): Uint8Array {
  const reached = new Uint8Array(last + 1)
  reached[0] = 1
  for (let sum = 1; sum <= last; sum += 1) {
    if (lengths.some((length) => length <= sum && reached[sum - length] === 1)) reached[sum] = 1
  }
  return reached
}

function commonDivisor(one: number, other: number): number {
  return other === 0 ? one : commonDivisor(other, one % other)
}
