import { html, type Markup, type Part } from './markup.ts'

/** A column: what stands over it, and what of a row stands in it. The first names the row. */
export type Column<T> = readonly [title: string, of: (one: T) => Part]

/** A table with a caption. Its head is repeated on each page; on a narrow screen each row becomes a block whose cells say their column. */
export function table<T>(caption: Part, rows: readonly T[], columns: readonly Column<T>[], kind = 'plain'): Markup {
  return html`<table class="stacks ${kind}"><caption>${caption}</caption><thead><tr>${columns.map(([title]) => html`<th scope="col">${title}</th>`)}</tr></thead><tbody>${rows.map((row) => html`<tr>${columns.map((column, index) => cell(column, row, index === 0))}</tr>`)}</tbody></table>`
}

/** A table of many narrow columns: on a narrow screen it is moved sideways by itself, and the page stays where it is. */
export function wideTable<T>(caption: string, rows: readonly T[], columns: readonly Column<T>[]): Markup {
  return html`<div class="wide" role="region" aria-label="${caption}" tabindex="0"><table><caption>${caption}</caption><thead><tr>${columns.map(([title]) => html`<th scope="col">${title}</th>`)}</tr></thead><tbody>${rows.map((row) => html`<tr>${columns.map(([, of], index) => (index === 0 ? html`<th scope="row">${of(row)}</th>` : html`<td>${of(row)}</td>`))}</tr>`)}</tbody></table></div>`
}

function cell<T>([title, of]: Column<T>, row: T, first: boolean): Markup {
  return first ? html`<th scope="row">${of(row)}</th>` : html`<td data-column="${title}">${of(row)}</td>`
}

/** Names with their values, in the order given; what is null is left out. */
export function list(entries: readonly (readonly [name: string, value: Part])[], kind = 'pairs'): Markup {
  return html`<dl class="${kind}">${entries.filter(([, value]) => value !== null).map(([name, value]) => html`<div><dt>${name}</dt><dd>${value}</dd></div>`)}</dl>`
}
