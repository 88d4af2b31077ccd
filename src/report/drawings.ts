import { html, trusted, type Markup, type Part } from './markup.ts'

/** A drawing as a report shows it. */
export interface ReportedDrawing {
  readonly kind: string
  readonly title: string
  readonly description: string
  /** A whole SVG document whose texts are escaped. */
  readonly svg: string
  readonly unknown: readonly string[]
  readonly marks: readonly { readonly number: number; readonly rule: string; readonly outcome: string; readonly text: string }[]
}

/** Each drawing with the words of its marks beside it, so that nothing is told by the picture alone. */
export function drawingSection(drawings: readonly ReportedDrawing[], without: string | null): Part {
  if (drawings.length === 0) return without === null ? null : html`<section aria-labelledby="drawings"><h2 id="drawings">Drawings</h2><p>${without}</p></section>`
  return html`<section aria-labelledby="drawings"><h2 id="drawings">Drawings</h2><p>Not to scale where a fact is not known. What the words say goes before what the picture shows.</p>${drawings.map(figure)}</section>`
}

function figure({ title, description, svg, unknown, marks }: ReportedDrawing): Markup {
  return html`<figure class="drawing"><div class="sheet">${trusted(svg)}</div><figcaption><strong>${title}.</strong> ${description}
${marks.length > 0 && html`<ol class="marks">${marks.map(({ number, rule, text }) => html`<li value="${number}"><a href="#${rule}">${text}</a></li>`)}</ol>`}
${unknown.length > 0 && html`<p class="aside">Not known, so not drawn to measure: ${unknown.join('; ')}.</p>`}</figcaption></figure>`
}
