import { z } from 'zod'
import type { CuttingPlan } from '../quantities/cutting-stock.ts'
import { lengthView, viewOfLength } from './lengths.ts'

const bar = z
  .strictObject({
    stock: lengthView,
    pieces: z.array(z.strictObject({ reference: z.string(), length: lengthView }).meta({ id: 'CutPiece' })),
    offcut: lengthView,
  })
  .meta({ id: 'CutBar' })

export const cutListView = z
  .strictObject({
    bars: z.array(bar),
    stock: lengthView,
    pieces: lengthView,
    sawCuts: lengthView,
    trim: lengthView,
    offcuts: lengthView,
    bound: lengthView,
    optimal: z.boolean().meta({ description: 'True where it is proven that nothing less will do.' }),
  })
  .meta({ id: 'CutList', description: '`stock` is all that is bought; no way of cutting buys less than `bound`.' })

export function viewOfPlan({ bars, stock, pieces, sawCuts, trim, offcuts, bound, optimal }: CuttingPlan): z.infer<typeof cutListView> {
  return {
    bars: bars.map((one) => ({ stock: viewOfLength(one.stock), pieces: one.pieces.map(({ reference, length }) => ({ reference, length: viewOfLength(length) })), offcut: viewOfLength(one.offcut) })),
    stock: viewOfLength(stock), pieces: viewOfLength(pieces), sawCuts: viewOfLength(sawCuts), trim: viewOfLength(trim), offcuts: viewOfLength(offcuts), bound: viewOfLength(bound), optimal,
  }
}
