import type { ComputedQuantity } from '../evaluation/document.ts'
import { inBoth } from '../evaluation/words.ts'
import { confirmed } from '../quantities/lintel-sources.ts'
import type { UnitSystem } from '../units/dimension.ts'
import { html, joined, type Markup, type Part } from './markup.ts'
import { table, wideTable } from './table.ts'
import { counted, evidenceMark, factTitles, linked } from './words.ts'

/** What the crew needs: every figure with its formula, the tables to cut and set out by, and what could not be computed. */
export function quantitySection(quantities: readonly ComputedQuantity[], unitSystem: UnitSystem): Markup {
  const computed = quantities.filter(({ status }) => status === 'computed')
  const open = quantities.filter(({ status }) => status !== 'computed')
  const notes = footnotes(computed)
  return html`<section aria-labelledby="quantities"><h2 id="quantities">Quantities</h2>
<p>Figures with a <strong>P</strong> are to be confirmed by a licensed professional; those with a <strong>~</strong> only order or compare and are not to be built by.</p>
${table(counted(computed.length, 'figure'), computed, [
    ['Quantity', ({ title, needsLicensedProfessional, indicative }) => html`${title}${needsLicensedProfessional && html` <abbr title="to be confirmed by a licensed professional">P</abbr>`}${indicative && html` <abbr title="only orders or compares">~</abbr>`}`],
    ['Value', (quantity) => html`<strong>${amountText(quantity, unitSystem)}</strong>`],
    ['How', (quantity) => how(quantity, notes)],
  ], 'amounts')}
${computed.some(({ tables }) => tables.length > 0) && html`<h3>To cut and set out by</h3>${computed.flatMap(tablesOf)}`}
${open.length > 0 && html`<h3>Not computed</h3><ul class="ruled-out">${open.map(({ title, missing, why }) => html`<li>${title}: ${why ?? (missing.length > 0 ? `needs ${factTitles(missing)}` : 'what it builds on is not known')}</li>`)}</ul>`}
${noteList('Assumptions of the figures', 'A', notes.assumptions)}${noteList('Sources of the figures', 'S', notes.sources)}</section>`
}

/** Assumptions and sources, each once with a number, by the texts that are looked up. */
interface Footnotes {
  readonly assumptions: ReadonlyMap<string, Part>
  readonly sources: ReadonlyMap<string, Part>
}

type Source = ComputedQuantity['sources'][number]

function footnotes(quantities: readonly ComputedQuantity[]): Footnotes {
  const sources = quantities.flatMap((quantity) => quantity.sources)
  return { assumptions: new Map(quantities.flatMap(({ assumptions }) => assumptions).map((text) => [text, text])), sources: new Map(sources.map((source) => [keyOf(source), html`${linked(`${source.title}, ${source.locator}`, source.readIn)}; ${evidenceMark(source.evidence)}`])) }
}

function keyOf({ title, locator, evidence }: Source): string {
  return [title, locator, evidence].join('\n')
}

function noteList(title: string, letter: string, notes: ReadonlyMap<string, Part>): Markup | null {
  if (notes.size === 0) return null
  return html`<h3>${title}</h3><ol class="footnotes">${[...notes.values()].map((note, index) => html`<li id="${letter}${index + 1}"><span>${letter}${index + 1}</span> ${note}</li>`)}</ol>`
}

function how({ formula, notes, assumptions, sources, needsLicensedProfessional }: ComputedQuantity, all: Footnotes): Markup {
  const told = notes.filter((note) => !needsLicensedProfessional || note !== confirmed)
  const numbers = [...references('A', assumptions, all.assumptions), ...references('S', sources.map(keyOf), all.sources)]
  return html`${formula}${told.length > 0 && html`<span class="aside">${told.join(' ')}</span>`} ${joined(numbers, ' ')}`
}

function references(letter: string, keys: readonly string[], all: ReadonlyMap<string, Part>): readonly Markup[] {
  const order = [...all.keys()]
  return [...new Set(keys)].map((key) => html`<a class="reference" href="#${letter}${order.indexOf(key) + 1}">${letter}${order.indexOf(key) + 1}</a>`)
}

function amountText({ value, inchPound, si }: ComputedQuantity, first: UnitSystem): string {
  return inchPound === null || si === null ? (value ?? '') : inBoth({ inchPound, si }, first)
}

function tablesOf({ title, tables }: ComputedQuantity): readonly Markup[] {
  return tables.map(({ title: about, columns, rows }) => wideTable(`${title}: ${about}`, rows, columns.map((column, index) => [column.title, ({ cells }) => cells[index]?.text ?? ''])))
}
