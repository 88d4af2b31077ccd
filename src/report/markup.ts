import { xmlCharacters } from '../exports/plain-text.ts'

/** A piece of HTML that is safe to put in: whatever came from people was escaped when it was made. */
export interface Markup {
  readonly markup: string
}

/** What may stand in a template. Nothing is written for null and false; a list is written one after the other. */
export type Part = Markup | string | number | null | false | readonly Part[]

/** HTML with values put in. Texts are escaped wherever they stand, so a value may go between tags or into a quoted attribute, nowhere else. */
export function html(pieces: TemplateStringsArray, ...parts: readonly Part[]): Markup {
  return { markup: pieces.map((piece, index) => piece + written(parts[index] ?? null)).join('') }
}

/** A word of a person: its direction of writing stays within it. */
export function said(text: string): Markup {
  return html`<bdi>${text}</bdi>`
}

/** HTML of our own making, from a layer below that escapes by itself. */
export function trusted(markup: string): Markup {
  return { markup }
}

/** Parts with something between each two. */
export function joined(parts: readonly Part[], between: Part): readonly Part[] {
  return parts.flatMap((part, index) => (index === 0 ? [part] : [between, part]))
}

function written(part: Part): string {
  if (part === null || part === false) return ''
  if (typeof part === 'string') return escaped(part)
  if (typeof part === 'number') return String(part)
  return 'markup' in part ? part.markup : part.map(written).join('')
}

const references: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }

/** Characters that HTML has no way to write are shown as replaced. */
export function escaped(text: string): string {
  return xmlCharacters(text).replaceAll(/[&<>"']/g, (character) => references[character] ?? character)
}
