import type { Building } from './building-schema.ts'
import type { SheetTable } from './csv-text.ts'
import { inBoth, listed, tableOf } from './sheet-columns.ts'

type Piece = Building['flashing'][number]
type Plan = Building['cutLists'][number]
type Bar = Plan['plan']['bars'][number] & Pick<Plan, 'place' | 'girth'> & { readonly number: number }

/** Flashing to cut: one row for each size, and one for each length of stock with what comes out of it. */
export const flashingTables = {
  flashing: ({ flashing }) =>
    tableOf(flashing, [
      ['Place', ({ place }) => place], ['Count', ({ count }) => count],
      ...inBoth<Piece>('Cut length', ({ length }) => length), ...inBoth<Piece>('Girth', ({ girth }) => girth),
      ['Openings', ({ references }) => listed(references)],
    ]),
  flashingCuts: ({ cutLists }) =>
    tableOf(cutLists.flatMap(barsOf), [
      ['Place', ({ place }) => place], ...inBoth<Bar>('Girth', ({ girth }) => girth),
      ['Stock number', ({ number }) => number], ...inBoth<Bar>('Stock length', ({ stock }) => stock),
      ...inBoth<Bar>('Pieces', ({ pieces }) => ({ inchPound: listed(pieces.map(({ reference, length }) => `${reference}: ${length.inchPound}`)), si: listed(pieces.map(({ reference, length }) => `${reference}: ${length.si}`)) })),
      ...inBoth<Bar>('Offcut', ({ offcut }) => offcut),
    ]),
} as const satisfies Record<string, (view: Building) => SheetTable>

function barsOf({ place, girth, plan }: Plan): readonly Bar[] {
  return plan.bars.map((bar, index) => ({ ...bar, place, girth, number: index + 1 }))
}
