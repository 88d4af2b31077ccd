import { inBoth } from '../evaluation/words.ts'
import type { UnitSystem } from '../units/dimension.ts'
import { html, joined, said, type Markup, type Part } from './markup.ts'
import type { CutListShown, ReportedBuilding } from './reported-building.ts'
import { table, wideTable } from './table.ts'
import { factTitles } from './words.ts'

type Both = Parameters<typeof inBoth>[0]

const chosenWords: Readonly<Record<string, string>> = { described: 'as described', lightest: 'the lightest that carries the brick', notKnown: 'not known' }

/** Lintel schedule, flashing with its cut list, totals, and what is in no count. */
export function buildingTakeOff({ lintels, flashing, cutLists, totals, gaps }: ReportedBuilding, unitSystem: UnitSystem): Markup {
  const amount = (both: Both | null): string => (both === null ? '–' : inBoth(both, unitSystem))
  return html`<section aria-labelledby="take-off"><h2 id="take-off">Schedules</h2>
${lintels.length > 0 && html`<h3>Lintels</h3><p>Structural: to be confirmed by a licensed professional.</p>${wideTable('Lintel schedule; the length is the least that bears enough at both ends', lintels, [
    ['Mark', ({ mark }) => mark], ['Count', ({ count }) => count], ['Section', ({ section, chosen }) => html`${section ?? '–'}<span class="aside">${chosenWords[chosen] ?? chosen}</span>`],
    ['Length', ({ length }) => amount(length)], ['Bearing each end', ({ bearing }) => amount(bearing)], ['Opening width', ({ width }) => amount(width)], ['Weight each', ({ weight }) => amount(weight)], ['Openings', ({ references }) => names(references)],
  ])}`}
${flashing.length > 0 && html`<h3>Flashing</h3>${table('Pieces of flashing', flashing, [
    ['Place', ({ place }) => place], ['Count', ({ count }) => count], ['Cut length', ({ length }) => amount(length)], ['Girth', ({ girth }) => amount(girth)], ['Openings', ({ references }) => names(references)],
  ], 'counts')}${cutLists.map((one) => cutList(one, amount))}`}
${totals.length > 0 && table('Take-off', totals, [
    ['Quantity', ({ title }) => title], ['Total', (one) => (one.counted.length === 0 && one.notKnown.length > 0 ? 'not known' : amount(one))], ['Openings counted', ({ counted }) => counted.length], ['Not known at', ({ notKnown }) => (notKnown.length === 0 ? '–' : names(notKnown))],
  ])}
${gaps.length > 0 && table('What could not be computed; the totals are short of it', gapsByTitle(gaps), [
    ['Quantity', ({ title }) => title], ['Openings', ({ references }) => names(references)], ['Why', ({ why }) => why],
  ])}</section>`
}

function cutList({ place, girth, plan }: CutListShown, amount: (both: Both | null) => string): Markup {
  const bars = plan.bars.map((bar, index) => ({ ...bar, number: index + 1 }))
  return table(`Cut list: flashing at the ${place}${girth === null ? '' : `, girth ${amount(girth)}`}`, bars, [
    ['Stock', ({ number, stock }) => `${number}. ${amount(stock)}`], ['Pieces, in order', ({ pieces }) => joined(pieces.map(({ reference, length }) => html`${said(reference)}: ${amount(length)}`), '; ')], ['Offcut', ({ offcut }) => amount(offcut)],
  ], 'walk')
}

/** The same gap at many openings in one line. */
function gapsByTitle(gaps: ReportedBuilding['gaps']): readonly { readonly title: string; readonly why: string; readonly references: readonly string[] }[] {
  const lines = new Map<string, { title: string; why: string; references: string[] }>()
  for (const { reference, title, missing, why } of gaps) {
    const told = why ?? (missing.length > 0 ? `needs ${factTitles(missing)}` : 'what it builds on is not known')
    const line = lines.get(`${title}\n${told}`) ?? { title, why: told, references: [] }
    lines.set(`${title}\n${told}`, line)
    line.references.push(reference)
  }
  return [...lines.values()]
}

function names(references: readonly string[]): Part {
  return joined(references.map(said), ', ')
}
