import type { Building } from './building-schema.ts'
import type { SheetTable } from './csv-text.ts'
import { listed, tableOf } from './sheet-columns.ts'

/** Flashing to cut: one row for each size, and one for each length of stock with what comes out of it. */
export const flashingTables = {
  flashing: ({ flashing }) =>
    tableOf(flashing, [
      ['Place', ({ place }) => place], ['Count', ({ count }) => count],
      ['Cut length (inch-pound)', ({ length }) => length.inchPound], ['Cut length (SI)', ({ length }) => length.si],
      ['Girth (inch-pound)', ({ girth }) => girth?.inchPound ?? null], ['Girth (SI)', ({ girth }) => girth?.si ?? null],
      ['Openings', ({ references }) => listed(references)],
    ]),
  flashingCuts: ({ cutLists }) =>
    tableOf(cutLists.flatMap(({ place, girth, plan }) => plan.bars.map((bar, index) => ({ place, girth, number: index + 1, ...bar }))), [
      ['Place', ({ place }) => place], ['Girth (inch-pound)', ({ girth }) => girth?.inchPound ?? null], ['Girth (SI)', ({ girth }) => girth?.si ?? null],
      ['Stock number', ({ number }) => number], ['Stock length (inch-pound)', ({ stock }) => stock.inchPound], ['Stock length (SI)', ({ stock }) => stock.si],
      ['Pieces (inch-pound)', ({ pieces }) => listed(pieces.map(({ reference, length }) => `${reference}: ${length.inchPound}`))],
      ['Pieces (SI)', ({ pieces }) => listed(pieces.map(({ reference, length }) => `${reference}: ${length.si}`))],
      ['Offcut (inch-pound)', ({ offcut }) => offcut.inchPound], ['Offcut (SI)', ({ offcut }) => offcut.si],
    ]),
} as const satisfies Record<string, (view: Building) => SheetTable>
