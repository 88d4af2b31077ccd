import { foundOnce, type Need } from './need.ts'
import { isBand, type Band } from './result.ts'

/** The least and the greatest of some amounts. */
export function bandAcross(amounts: readonly number[]): Band {
  return { least: Math.min(...amounts), greatest: Math.max(...amounts) }
}

/** The band that another quantity computed, with whatever it was missing; a single amount is a band of no width. */
export function bandOf(id: string): Need<Band> {
  return foundOnce({
    asks: [`quantity ${id}`],
    find: (inputs) => {
      const computed = inputs.quantity(id)
      if (!computed) return { known: false, missing: [`quantity ${id}`] }
      const band = typeof computed.value === 'number' ? { least: computed.value, greatest: computed.value } : computed.value
      if (computed.status !== 'computed' || !isBand(band)) return { known: false, missing: computed.missing, because: computed }
      return { known: true, value: band, used: [{ from: `quantity ${id}`, text: computed.text }], sources: [], assumptions: [] }
    },
  })
}
