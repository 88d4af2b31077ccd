import { randomUUID } from 'node:crypto'
import type { Catalog } from '../catalog/catalog.ts'
import type { ComputedQuantity } from '../evaluation/document.ts'
import { computeQuantities } from '../operations/compute-quantities.ts'
import { wrapped } from './evaluation-text.ts'
import type { ExplainOptions } from './explain-rule.ts'
import { failureText, type CommandResult } from './output.ts'

export interface ComputeOptions extends ExplainOptions {
  readonly json?: boolean | undefined
}

/** Computes one quantity from what stands on the command line, "opening.width=6 ft", and shows the arithmetic. Ends with 1 when something is missing. */
export function computeQuantity(quantity: string, given: readonly string[], { json, ...place }: ComputeOptions, catalog: Catalog): CommandResult {
  const answer = computeQuantities.run({ catalog, now: () => new Date(), newId: randomUUID }, { quantities: [quantity], given: given.map(inputOf), ...place })
  if (!answer.ok) return { text: failureText(answer), exitCode: 2 }
  const { quantities, buildsOn, notice } = answer.value
  const text = json ? `${JSON.stringify(answer.value, null, 2)}\n` : `${[...buildsOn, ...quantities].map(quantityText).join('\n\n')}\n\n${wrapped(notice, '')}\n`
  return { text, exitCode: quantities.every(({ status }) => status === 'computed') ? 0 : 1 }
}

/** "opening.width=6 ft"; what stands after the sign is a text unless it reads as JSON: 3, true, ["4 in", "6 in"]. */
function inputOf(argument: string): { from: string; value: unknown } {
  const sign = argument.indexOf('=')
  const [from, written] = sign < 0 ? [argument, ''] : [argument.slice(0, sign), argument.slice(sign + 1)]
  try {
    return { from, value: JSON.parse(written) as unknown }
  } catch {
    return { from, value: written }
  }
}

function quantityText(quantity: ComputedQuantity): string {
  const { id, title, value, inchPound, si, why, missing, formula, steps, notes, assumptions, sources } = quantity
  const both = inchPound === null || si === null || inchPound === si ? value : `${inchPound} (${si})`
  return [
    `${title}: ${both ?? 'not determined'}  [${id}]`,
    ...(why === null ? [] : [wrapped(why, '  ')]),
    ...(missing.length === 0 ? [] : [wrapped(`missing: ${missing.join(', ')}`, '  ')]),
    wrapped(formula, '  '),
    ...steps.map((step) => wrapped(step, '    ')),
    ...assumptions.map((assumption) => wrapped(`assumed: ${assumption}`, '    ')),
    ...notes.map((note) => wrapped(`note: ${note}`, '    ')),
    ...quantity.tables.map(tableText),
    ...sources.map((source) => wrapped(`source: ${source.title}, ${source.locator} [${source.evidence}]`, '    ')),
  ].join('\n')
}

function tableText({ title, columns, rows }: ComputedQuantity['tables'][number]): string {
  const lines = [columns.map((column) => column.title), ...rows.map(({ cells }) => cells.map(({ text }) => text))]
  const widths = columns.map((_, index) => Math.max(...lines.map((line) => line[index]?.length ?? 0)))
  return [`    ${title}`, ...lines.map((line) => `      ${line.map((cell, index) => cell.padEnd(widths[index] ?? 0)).join('  ')}`.trimEnd())].join('\n')
}
