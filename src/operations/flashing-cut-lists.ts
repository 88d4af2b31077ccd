import { z } from 'zod'
import { cutStock } from '../quantities/cutting-stock.ts'
import type { ScheduledOpening } from '../quantities/schedule-pieces.ts'
import { stockToCut } from '../quantities/stock-to-cut.ts'
import { cutListView, viewOfPlan } from './cut-list-view.ts'
import { lengthView, viewOfLength } from './lengths.ts'

export const flashingPlace = z.enum(['head', 'sill']).meta({ id: 'FlashingPlace' })

export const flashingCutLists = z
  .strictObject({
    place: flashingPlace,
    girth: lengthView.nullable().meta({ description: 'Width of the stock; null where it is not known.' }),
    stockLength: lengthView,
    plan: cutListView,
  })
  .meta({ id: 'FlashingCutList' })

/** How the flashing of a schedule is cut from its stock, for each width by itself. */
export function cutListsOf(openings: readonly ScheduledOpening[]): z.infer<typeof flashingCutLists>[] {
  return stockToCut(openings).flatMap(({ place, girth, stockLength, pieces }) => {
    const cut = cutStock({ pieces, stockLengths: [stockLength] })
    if (!cut.possible) throw new Error(`a spliced piece of ${place} flashing is longer than its stock`)
    return [{ place, girth: girth === null ? null : viewOfLength(girth), stockLength: viewOfLength(stockLength), plan: viewOfPlan(cut.plan) }]
  })
}
