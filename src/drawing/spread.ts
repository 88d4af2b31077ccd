export interface Wanted {
  /** Where the middle would best lie. */
  readonly middle: number
  readonly size: number
}

/** Middles that overlap nowhere and lie between the bounds, each as near as it can be to where it is wanted; in the order given. */
export function spread(wanted: readonly Wanted[], least: number, greatest: number, gap: number): readonly number[] {
  const order = wanted.map((one, index) => ({ ...one, index })).toSorted((a, b) => a.middle - b.middle || a.index - b.index)
  const placed = order.map(({ middle }) => middle)
  const apart = (index: number) => ((order[index - 1]?.size ?? 0) + (order[index]?.size ?? 0)) / 2 + gap
  order.forEach(({ size }, index) => {
    const before = placed[index - 1]
    placed[index] = Math.max(placed[index] ?? 0, before === undefined ? least + size / 2 : before + apart(index))
  })
  for (let index = order.length - 1; index >= 0; index -= 1) {
    const after = placed[index + 1]
    const most = after === undefined ? greatest - (order[index]?.size ?? 0) / 2 : after - apart(index + 1)
    placed[index] = Math.min(placed[index] ?? 0, most)
  }
  const inOrder = new Map(order.map(({ index }, place) => [index, placed[place] ?? 0]))
  return wanted.map((_, index) => inOrder.get(index) ?? 0)
}
