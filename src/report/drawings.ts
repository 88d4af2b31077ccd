import type { Drawing } from '../drawing/index.ts'
import { html, joined, trusted, type Markup, type Part } from './markup.ts'

/** Each drawing with links from its numbers to the findings; a sheet carries its own legend, and its words for whoever does not see it. */
export function drawingSection(drawings: readonly Drawing[], without: string | null): Part {
  if (drawings.length === 0) return without === null ? null : html`<section aria-labelledby="drawings"><h2 id="drawings">Drawings</h2><p>${without}</p></section>`
  return html`<section aria-labelledby="drawings"><h2 id="drawings">Drawings</h2><p class="about">Fitted to the page: on paper go by the figures, not by the scale.</p>${drawings.map(figure)}</section>`
}

function figure({ title, svg, callouts }: Drawing): Markup {
  return html`<figure class="drawing"><div class="sheet">${trusted(svg)}</div><figcaption>${title}.${callouts.length > 0 && html`<span class="callouts"> The findings by number: ${joined(callouts.map(({ number, rule, text }) => html`<a href="#${rule}">${number} ${text.split(':')[0] ?? ''}</a>`), '; ')}.</span>`}</figcaption></figure>`
}
