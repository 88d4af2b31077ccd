import type { Outcome } from '../catalog/rule.ts'
import type { Verdict } from '../evaluation/document.ts'
import { outcomeWords, verdictWords } from '../evaluation/words.ts'
import { html, trusted, type Markup } from './markup.ts'

/** Told apart by their outline, so that they are read on any printer and by anybody's eyes: a ring with a check, a filled square with a cross, a diamond with a question mark, a broken ring, a triangle. */
const shapes = {
  pass: '<circle cx="8" cy="8" r="6.75" fill="none" stroke="currentColor" stroke-width="1.5"/><path d="M4.8 8.3l2.3 2.4 4.2-5" fill="none" stroke="currentColor" stroke-width="1.6"/>',
  fail: '<rect x="1" y="1" width="14" height="14" fill="currentColor"/><path d="M4.8 4.8l6.4 6.4M11.2 4.8l-6.4 6.4" stroke="#fff" stroke-width="2"/>',
  notDetermined: '<path d="M8 .9L15.1 8 8 15.1.9 8z" fill="none" stroke="currentColor" stroke-width="1.4"/><path d="M6.1 6.6a1.9 1.9 0 1 1 2.7 1.7c-.5.3-.8.6-.8 1.3M8 10.9v1.1" fill="none" stroke="currentColor" stroke-width="1.3"/>',
  notApplicable: '<circle cx="8" cy="8" r="6.75" fill="none" stroke="currentColor" stroke-width="1.3" stroke-dasharray="2.2 2"/><path d="M5 8h6" stroke="currentColor" stroke-width="1.5"/>',
  attention: '<path d="M8 1.2L15.2 14.6H.8z" fill="none" stroke="currentColor" stroke-width="1.4"/><path d="M8 5.6v4.6M8 11.6v1.3" stroke="currentColor" stroke-width="1.6"/>',
} as const

/** A shape that only stands beside its word. */
export function mark(shape: keyof typeof shapes): Markup {
  return html`<svg class="mark ${shape}" viewBox="0 0 16 16" aria-hidden="true" focusable="false">${trusted(shapes[shape])}</svg>`
}

export function outcomeMark(outcome: Outcome): Markup {
  return html`<span class="outcome ${outcome}">${mark(outcome)} ${outcomeWords[outcome]}</span>`
}

export function verdictMark(verdict: Verdict): Markup {
  return html`<span class="outcome ${verdict}">${mark(verdict === 'incomplete' ? 'notDetermined' : verdict)} ${verdictWords[verdict]}</span>`
}
