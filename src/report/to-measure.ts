import type { FactToMeasure } from '../evaluation/document.ts'
import { holdPointTitle } from '../opening/hold-points.ts'
import { html, type Markup } from './markup.ts'
import { table } from './table.ts'
import { counted } from './words.ts'

/** What to look at next, most telling first. */
export function measureNext(facts: readonly FactToMeasure[]): Markup | null {
  if (facts.length === 0) return null
  return html`<section aria-labelledby="next"><h2 id="next">What to measure next</h2>${table(`${counted(facts.length, 'fact')} would settle what is open; the most telling first`, facts.slice(0, mostTold), [
    ['Fact', ({ title, help }) => html`${title}<span class="aside">${help}</span>`],
    ['Rules settled', ({ decides }) => decides.length],
    ['Rules helped', ({ contributesTo }) => contributesTo.length],
    ['Seen from', ({ holdPoint }) => holdPointTitle(holdPoint)],
    ['Hidden by', ({ hiddenBy }) => (hiddenBy === null ? 'stays in sight' : holdPointTitle(hiddenBy))],
  ])}${facts.length > mostTold && html`<p class="kept">Then: ${facts.slice(mostTold).map(({ title }) => title).join('; ')}.</p>`}</section>`
}

/** As many are told in full. */
const mostTold = 12
