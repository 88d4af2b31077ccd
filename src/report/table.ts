import { html, type Markup, type Part } from './markup.ts'

/** A column: what stands over it, and what of a row stands in it. The first names the row. */
export type Column<T> = readonly [title: string, of: (one: T) => Part]

/** A table with a caption. Its head is repeated on each page; on a narrow screen each row becomes a block whose cells say their column. */
export function table<T>(caption: Part, rows: readonly T[], columns: readonly Column<T>[], kind = 'plain'): Markup {
  return tableOf(caption, html`<tbody>${rowsOf(rows, columns)}</tbody>`, columns, kind)
}

/** Rows that belong together, under what they have in common. */
export interface RowGroup<T> {
  readonly id: string
  readonly title: string
  readonly rows: readonly T[]
}

/** The same with a line over each group of rows. */
export function groupedTable<T>(caption: Part, groups: readonly RowGroup<T>[], columns: readonly Column<T>[], kind: string): Markup {
  return tableOf(caption, groups.map(({ id, title, rows }) => html`<tbody><tr class="group"><th scope="rowgroup" colspan="${columns.length}" id="${id}">${title}</th></tr>${rowsOf(rows, columns)}</tbody>`), columns, kind)
}

function tableOf<T>(caption: Part, bodies: Part, columns: readonly Column<T>[], kind: string): Markup {
  return html`<table class="stacks ${kind}"><caption>${caption}</caption><thead><tr>${columns.map(([title]) => html`<th scope="col">${title}</th>`)}</tr></thead>${bodies}</table>`
}

function rowsOf<T>(rows: readonly T[], columns: readonly Column<T>[]): Part {
  return rows.map((row) => html`<tr>${columns.map((column, index) => cell(column, row, index === 0))}</tr>`)
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
