import { headDamHeight, headPastJamb, headSpliceLap } from './head-flashing-pan.ts'
import { valueText, defineQuantity, type Computation } from './define.ts'
import { fewestPieces, spliced, type Spliced, type SpliceJob } from './flashing-splices.ts'
import { fact, limit, orElse, parameter, result, type Need } from './need.ts'
import type { QuantityResult, QuantityTable } from './result.ts'
import { flashedSill, sillDamHeight, sillPastJamb } from './sill-pan.ts'
import type { Source } from './source.ts'

const formula = 'pieces = ⌈(cut length − lap) / (stock length − lap)⌉; splices = pieces − 1'
const placement: Source = { title: 'Common practice of the trade', locator: 'splices away from the ends of the opening: common practice, no source', evidence: 'memory' }

/** What has to be cut for a flashing, in nanometers: the lengths of its pieces and of the stock they come out of. Undefined where it is not known. */
export function splicedPieces(result: QuantityResult | undefined): { readonly lengths: readonly number[]; readonly stockLength: number } | undefined {
  if (result?.status !== 'computed') return undefined
  const rows = result.tables[0]?.rows ?? []
  const stockLength = rows[0]?.[4]
  return typeof stockLength === 'number' ? { lengths: rows.map(([, length]) => Number(length)), stockLength } : undefined
}

/** Splices in the head flashing, with the pieces and where the laps lie. */
export const headSplices = defineQuantity({
  id: 'flashing.head-splices',
  title: 'Head flashing, splices',
  part: 'head',
  dimension: 'count',
  formula,
  sources: [placement],
  needs: {
    cutLength: result('flashing.head-cut-length'),
    stockLength: stockOf('head.flashing.stockLength'),
    lap: headSpliceLap,
    leftDam: headDamHeight('left'),
    rightDam: headDamHeight('right'),
    leftPast: headPastJamb('left'),
    width: fact.amount('opening.width'),
  },
  compute: laidOut,
})

/** Splices in the sill flashing, with the pieces and where the laps lie. */
export const sillSplices = defineQuantity({
  id: 'sill.flashing-splices',
  title: 'Sill flashing, splices',
  part: 'sill',
  dimension: 'count',
  formula,
  sources: [placement],
  appliesTo: flashedSill,
  needs: {
    cutLength: result('sill.flashing-cut-length'),
    stockLength: stockOf('sill.flashing.stockLength'),
    lap: limit('flashing.splice-lap'),
    leftDam: sillDamHeight('left'),
    rightDam: sillDamHeight('right'),
    leftPast: sillPastJamb('left'),
    width: fact.amount('opening.width'),
  },
  compute: laidOut,
})

function stockOf(path: string): Need<number> {
  return orElse(fact.amount(path), parameter('flashing.stock-length'), 'The stock length of the flashing is not known; the common one is taken.')
}

type Given = Omit<SpliceJob, 'jambs'> & { readonly leftPast: number; readonly width: number }

function laidOut(given: Given): Computation {
  const { cutLength, stockLength, lap, leftDam, leftPast, width } = given
  const count = fewestPieces(cutLength, stockLength, lap)
  if (count === undefined) return { reason: 'methodDoesNotHold', why: `The stock is ${text(stockLength)} long, not longer than the lap of ${text(lap)}.` }
  if (count === 1) return { value: 0, steps: [`${text(cutLength)} comes out of one length of ${text(stockLength)}`], tables: [piecesTable([{ from: 0, to: cutLength }], stockLength)] }
  const job = { ...given, jambs: [leftDam + leftPast, leftDam + leftPast + width] as const }
  const layout = spliced(job, count)
  if (!layout) return { reason: 'methodDoesNotHold', why: 'A lap would have to lie in an end dam; use longer stock.' }
  return {
    value: count - 1,
    steps: [`⌈(${text(cutLength)} − ${text(lap)}) / (${text(stockLength)} − ${text(lap)})⌉ = ${count} pieces`],
    tables: [piecesTable(layout.pieces, stockLength), lapsTable(layout)],
    notes: ['Seal each lap over its full width. Laps are kept out of the end dams and, as far as the pieces allow, one lap away from the ends of the opening.', ...warning(layout)],
  }
}

function warning({ clear }: Spliced): readonly string[] {
  return clear < 0 ? ['A lap lies over an end of the opening; longer stock or one more piece moves it away.'] : []
}

function piecesTable(pieces: Spliced['pieces'], stockLength: number): QuantityTable {
  return {
    title: 'Pieces of the blank, from its left end',
    columns: [{ title: 'Piece', dimension: 'count' }, { title: 'Length', dimension: 'length' }, { title: 'From', dimension: 'length' }, { title: 'To', dimension: 'length' }, { title: 'Out of stock', dimension: 'length' }],
    rows: pieces.map(({ from, to }, index) => [index + 1, to - from, from, to, stockLength]),
  }
}

function lapsTable({ laps }: Spliced): QuantityTable {
  return {
    title: 'Laps, from the left end of the blank',
    columns: [{ title: 'Lap', dimension: 'count' }, { title: 'From', dimension: 'length' }, { title: 'To', dimension: 'length' }],
    rows: laps.map(({ from, to }, index) => [index + 1, from, to]),
  }
}

function text(length: number): string {
  return valueText(length, 'length')
}
