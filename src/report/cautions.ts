import type { Finding } from '../evaluation/document.ts'
import { html, joined, type Markup } from './markup.ts'

/** Cautions of a report, each once, by the number under which remedies name it. */
export type Cautions = ReadonlyMap<string, number>

export function cautionsOf(findings: readonly Pick<Finding, 'cautions'>[]): Cautions {
  return new Map([...new Set(findings.flatMap(({ cautions }) => cautions))].map((text, index) => [text, index + 1]))
}

/** Stands before the remedies that name them. */
export function cautionList(cautions: Cautions): Markup | null {
  if (cautions.size === 0) return null
  return html`<section class="cautions" aria-labelledby="cautions"><h2 id="cautions">Cautions for mending</h2><p>The work itself can kill. Each remedy names the cautions that go with it; they are reminders, not a plan.</p><ol>${[...cautions].map(([text, number]) => html`<li id="caution-${number}">${text}</li>`)}</ol></section>`
}

/** "Cautions 1, 3 and 4", each leading to its words. */
export function cautionReferences(texts: readonly string[], cautions: Cautions): Markup | null {
  const numbers = texts.flatMap((text) => cautions.get(text) ?? [])
  if (numbers.length === 0) return null
  return html`<p class="mind"><strong>Before this work</strong> read ${numbers.length === 1 ? 'caution' : 'cautions'} ${joined(numbers.map((number) => html`<a href="#caution-${number}">${number}</a>`), ', ')}.</p>`
}
