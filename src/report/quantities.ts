import type { ComputedQuantity } from '../evaluation/document.ts'
import { inBoth } from '../evaluation/words.ts'
import { grouped } from '../record/grouped.ts'
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
  const tables = computed.filter(({ indicative }) => !indicative).flatMap(tablesOf)
  return html`<section aria-labelledby="quantities"><h2 id="quantities">Quantities</h2>
<p>Figures with a <strong>P</strong> are to be confirmed by a licensed professional; those with a <strong>~</strong> only order or compare and are not to be built by; their tables are in the evaluation.</p>
${table(counted(computed.length, 'figure'), computed, [
    ['Quantity', ({ title, needsLicensedProfessional, indicative }) => html`${title}${needsLicensedProfessional && html` <abbr title="to be confirmed by a licensed professional">P</abbr>`}${indicative && html` <abbr title="only orders or compares">~</abbr>`}`],
    ['Value', (quantity) => html`<strong>${amountText(quantity, unitSystem)}</strong>`],
    ['How', (quantity) => how(quantity, notes)],
  ], 'amounts')}
${tables.length > 0 && html`<h3>To cut and set out by</h3>${crewTables('crew narrow', tables.filter(({ columns }) => columns <= mostOfNarrow))}${crewTables('crew broad', tables.filter(({ columns }) => columns > mostOfNarrow))}`}
${open.length > 0 && html`<h3>Not computed</h3><ul class="ruled-out">${open.map(({ title, missing, why }) => html`<li>${title}: ${why ?? (missing.length > 0 ? `needs ${factTitles(missing)}` : 'what it builds on is not known')}</li>`)}</ul>`}
${assumptionList(notes.assumptions)}${sourceList(notes.sources)}</section>`
}

/** Assumptions and sources, each once with a number, by the texts that are looked up. */
interface Footnotes {
  readonly assumptions: ReadonlyMap<string, Part>
  readonly sources: ReadonlyMap<string, Source>
}

type Source = ComputedQuantity['sources'][number]

function footnotes(quantities: readonly ComputedQuantity[]): Footnotes {
  const sources = quantities.flatMap((quantity) => quantity.sources)
  return { assumptions: new Map(quantities.flatMap(({ assumptions }) => assumptions).map((text) => [text, text])), sources: new Map(sources.toSorted(byTitle).map((source) => [keyOf(source), source])) }
}

function keyOf({ title, locator, evidence }: Source): string {
  return [title, locator, evidence].join('\n')
}

/** Stable: sources of one title stay in the order in which the figures name them. */
function byTitle(a: Source, b: Source): number {
  return a.title < b.title ? -1 : a.title > b.title ? 1 : 0
}

function assumptionList(assumptions: Footnotes['assumptions']): Markup | null {
  if (assumptions.size === 0) return null
  return html`<h3>Assumptions of the figures</h3><ol class="footnotes">${[...assumptions.values()].map((note, index) => html`<li>${numbered('A', index)} ${note}</li>`)}</ol>`
}

/** A publication once, with every place in it that a figure names. */
function sourceList(sources: Footnotes['sources']): Markup | null {
  if (sources.size === 0) return null
  const byPublication = grouped([...sources.values()].map((source, index) => ({ source, index })), ({ source }) => source.title)
  return html`<h3>Sources of the figures</h3><ol class="footnotes">${[...byPublication].map(([title, places]) => html`<li>${title}: ${joined(places.map(({ source, index }) => html`${numbered('S', index)} ${linked(source.locator, source.readIn)}; ${evidenceMark(source.evidence)}`), '. ')}</li>`)}</ol>`
}

function numbered(letter: string, index: number): Markup {
  return html`<strong id="${letter}${index + 1}">${letter}${index + 1}</strong>`
}

/** The formula, the steps with the figures in them, and what to know of it. */
function how({ formula, steps, notes, assumptions, sources, needsLicensedProfessional }: ComputedQuantity, all: Footnotes): Markup {
  const told = notes.filter((note) => !needsLicensedProfessional || note !== confirmed)
  const numbers = [...references('A', assumptions, all.assumptions), ...references('S', sources.map(keyOf), all.sources)]
  return html`${formula}${steps.length > 0 && html`<small class="steps">= ${steps.join('; ')}</small>`}${told.length > 0 && html`<span class="aside">${told.join(' ')}</span>`} ${joined(numbers, ' ')}`
}

function references(letter: string, keys: readonly string[], all: ReadonlyMap<string, unknown>): readonly Markup[] {
  const order = [...all.keys()]
  return [...new Set(keys)].map((key) => html`<a class="reference" href="#${letter}${order.indexOf(key) + 1}">${letter}${order.indexOf(key) + 1}</a>`)
}

function amountText({ value, inchPound, si }: ComputedQuantity, first: UnitSystem): string {
  return inchPound === null || si === null ? (value ?? '') : inBoth({ inchPound, si }, first)
}

interface TableShown {
  readonly columns: number
  readonly shown: Markup
}

function crewTables(kind: string, tables: readonly TableShown[]): Part {
  return tables.length > 0 && html`<div class="${kind}">${tables.map(({ shown }) => shown)}</div>`
}

function tablesOf({ title, tables }: ComputedQuantity): readonly TableShown[] {
  return tables.map(({ title: about, columns, rows }) => ({ columns: columns.length, shown: wideTable(`${title}: ${about}`, rows, columns.map((column, index) => [column.title, ({ cells }) => html`<span class="${column.unit === null ? 'word' : 'amount'}">${cells[index]?.text ?? ''}</span>`])) }))
}

/** Tables of so few columns stand three beside each other on paper, others two. */
const mostOfNarrow = 4
