import { z } from 'zod'
import { lengthWire } from '../opening/fact.ts'
import type { Problem } from '../opening/problem.ts'
import { cutStock, type Cut } from '../quantities/cutting-stock.ts'
import type { LengthUnit } from '../units/length-text.ts'
import { cutListView, viewOfPlan } from './cut-list-view.ts'
import { lengthView, readLengthInput, viewOfLength } from './lengths.ts'
import { defineOperation, failure } from './operation.ts'

const text = z.string()

const piece = z.strictObject({ reference: text.min(1).max(200), length: lengthWire, count: z.int().min(1).max(10_000) }).meta({ id: 'CutPieceInput' })

const tooLong = z.strictObject({ reference: text, length: lengthView, longest: lengthView }).meta({ id: 'PieceTooLong', description: 'No bar holds it: splice it from shorter pieces first.' })

const input = z
  .strictObject({
    pieces: z.array(piece).min(1).max(1_000),
    stockLengths: z.array(lengthWire).min(1).max(10).meta({ description: 'Lengths in which the stock is sold; of each there is any number.' }),
    kerf: lengthWire.nullish().meta({ description: 'What one saw cut takes away.' }),
    trim: lengthWire.nullish().meta({ description: 'What is cut off every bar before it is used.' }),
    lengthUnit: z.enum(['in', 'mm']).nullish().meta({ description: 'The unit of every length that is given without one.' }),
  })
  .meta({ id: 'CutListRequest' })

const cutListAnswer = z.strictObject({ plan: cutListView.nullable(), tooLong: z.array(tooLong) }).meta({ id: 'CutListAnswer' })

export const planCuts = defineOperation({
  name: 'planCuts',
  cost: { units: 20 },
  summary: 'Plan how pieces are cut from stock',
  description: 'The cutting list that buys the least stock. Where that is not proven the bound says how far from it the list can be at most.',
  input,
  output: cutListAnswer,
  answer: (_, { pieces, stockLengths, kerf, trim, lengthUnit }) => {
    const reader = new LengthReader(lengthUnit ?? undefined)
    const order = {
      pieces: pieces.map(({ reference, length, count }, index) => ({ reference, count, length: reader.positive(length, ['pieces', index, 'length']) })),
      stockLengths: stockLengths.map((length, index) => reader.positive(length, ['stockLengths', index])),
      kerf: reader.any(kerf, ['kerf']),
      trim: reader.any(trim, ['trim']),
    }
    const problems = [...reader.problems, ...tooMany(pieces.reduce((sum, { count }) => sum + count, 0))]
    return problems.length > 0 ? failure('invalidInput', problems) : { ok: true, value: answerOf(cutStock(order)) }
  },
})

/** So many that the list could not be read by anybody, nor worked out in a moment. */
const mostPieces = 20_000

function tooMany(count: number): readonly Problem[] {
  return count > mostPieces ? [{ code: 'outOfRange', pointer: '/pieces', detail: `They are ${count} pieces; at most ${mostPieces} are planned at once.` }] : []
}

function answerOf(cut: Cut): z.infer<typeof cutListAnswer> {
  if (cut.possible) return { plan: viewOfPlan(cut.plan), tooLong: [] }
  return { plan: null, tooLong: cut.tooLong.map(({ reference, length, longest }) => ({ reference, length: viewOfLength(length), longest: viewOfLength(longest) })) }
}

/** Reads lengths and gathers what is wrong with them. */
class LengthReader {
  readonly problems: Problem[] = []
  readonly #unit: LengthUnit | undefined

  constructor(unit: LengthUnit | undefined) {
    this.#unit = unit
  }

  any(wire: unknown, path: readonly (string | number)[]): number {
    if (wire === null || wire === undefined) return 0
    const read = readLengthInput(wire, path, this.#unit)
    if (!read.ok) this.problems.push(...read.problems)
    return read.ok ? read.value : 0
  }

  positive(wire: unknown, path: readonly (string | number)[]): number {
    const before = this.problems.length
    const length = this.any(wire, path)
    if (length <= 0 && this.problems.length === before) this.problems.push({ code: 'outOfRange', pointer: `/${path.join('/')}`, detail: 'must be more than 0' })
    return length
  }
}
