import type { FactToMeasure } from '../evaluation/document.ts'
import { holdPointTitle } from '../opening/hold-points.ts'
import { html, type Markup } from './markup.ts'
import { table } from './table.ts'
import { counted } from './words.ts'

/** What to look at next, most telling first. */
export function measureNext(facts: readonly FactToMeasure[]): Markup | null {
  if (facts.length === 0) return null
  return html`<section aria-labelledby="next"><h2 id="next">What to measure next</h2>${table(`${counted(facts.length, 'fact')} would settle what is open; the most telling first`, facts, [
    ['Fact', ({ title, help }) => html`${title}<span class="aside">${help}</span>`],
    ['Settles', ({ decides }) => counted(decides.length, 'rule')],
    ['Helps with', ({ contributesTo }) => counted(contributesTo.length, 'rule')],
    ['Seen from', ({ holdPoint }) => holdPointTitle(holdPoint)],
    ['Hidden by', ({ hiddenBy }) => (hiddenBy === null ? 'stays in sight' : holdPointTitle(hiddenBy))],
  ])}</section>`
}
