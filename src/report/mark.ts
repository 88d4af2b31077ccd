import type { Outcome } from '../catalog/rule.ts'
import type { Verdict } from '../evaluation/document.ts'
import { outcomeWords, verdictWords } from '../evaluation/words.ts'
import { html, type Markup } from './markup.ts'
import { shapes, type Shape } from './shapes.ts'

/** A shape that only stands beside its word. */
export function mark(shape: Shape): Markup {
  const [outline, sign] = shapes[shape]
  return html`<svg class="mark ${shape}" viewBox="0 0 16 16" aria-hidden="true" focusable="false"><path class="outline" d="${outline}"/><path class="sign" d="${sign}"/></svg>`
}

export function outcomeMark(outcome: Outcome): Markup {
  return html`<span class="outcome ${outcome}">${mark(outcome)} ${outcomeWords[outcome]}</span>`
}

export function verdictMark(verdict: Verdict): Markup {
  return html`<span class="outcome ${verdict}">${mark(verdict === 'incomplete' ? 'notDetermined' : verdict)} ${verdictWords[verdict]}</span>`
}
