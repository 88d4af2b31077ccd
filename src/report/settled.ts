import type { Finding } from '../evaluation/document.ts'
import { outcomeWords } from '../evaluation/words.ts'
import { holdPoints } from '../opening/hold-points.ts'
import { endsOf, type Manner } from './finding-card.ts'
import { html, type Markup, type Part } from './markup.ts'
import { mark } from './mark.ts'
import { groupedTable } from './table.ts'
import { counted, factTitles, notesLine, sourceLine, unsigned } from './words.ts'

/** Nobody has to do anything about it any more; it only has to be proved. */
export function isSettled({ outcome }: Pick<Finding, 'outcome'>): boolean {
  return outcome === 'pass' || outcome === 'notApplicable'
}

const rank: Readonly<Record<Finding['force'], number>> = { mandatory: 0, recommended: 1, informative: 2 }

/** The mandatory first. */
export function byForce(a: Pick<Finding, 'force'>, b: Pick<Finding, 'force'>): number {
  return rank[a.force] - rank[b.force]
}

/** What is met and what does not apply, a row each: what was required, what was found, and by which source. */
export function settledSection(findings: readonly Finding[], manner: Manner): Part {
  if (findings.length === 0) return null
  const groups = holdPoints.map(({ id, title }) => ({ id: `settled-${id}`, title, rows: findings.filter(({ holdPoint }) => holdPoint === id).toSorted((a, b) => Number(a.outcome === 'notApplicable') - Number(b.outcome === 'notApplicable') || byForce(a, b)) }))
  return html`<section aria-labelledby="settled"><h2 id="settled">Met, and what does not apply</h2>${groupedTable(countsOf(findings), groups.filter(({ rows }) => rows.length > 0), [
    ['Rule', ({ rule, title, force }) => html`<span id="${rule}">${title}</span> <span class="origin"><code>${rule}</code> ${force}</span>`],
    ['Required', ({ rule, required: { text, values } }) => (isLong(text) ? html`one of ${values.length}, <a href="#all-${rule}">all below</a>` : text)],
    ['Outcome', (finding) => found(finding, manner)],
    ['Source', (finding) => source(finding, manner)],
  ], 'settled')}${findings.filter(({ required }) => isLong(required.text)).map(({ rule, title, required }) => html`<p class="in-full" id="all-${rule}">${title}: ${required.text}.</p>`)}</section>`
}

/** A list of choices without end would make its row as high as a page. */
function isLong(text: string): boolean {
  return text.length > 200
}

function countsOf(findings: readonly Finding[]): Part {
  return (['pass', 'notApplicable'] as const).map((outcome) => html`<span class="outcome">${mark(outcome)} ${outcomeWords[outcome]}: ${counted(findings.filter((finding) => finding.outcome === outcome).length, 'rule')}</span> `)
}

/** The outcome in its word, then what tells so. */
function found(finding: Finding, { unitSystem }: Manner): Markup {
  const { outcome, measured, margin, decidedBy } = finding
  if (outcome === 'notApplicable') return html`${mark(outcome)} ${outcomeWords.notApplicable}: ${factTitles(decidedBy) || 'ruled out by what is known'}`
  return html`${mark(outcome)} ${outcomeWords[outcome]}: ${endsOf(finding, unitSystem, ', ') ?? measured?.text ?? '–'}${margin !== null && `; spare ${unsigned(margin, unitSystem)}`}`
}

function source(finding: Finding, { adoption }: Manner): Markup {
  const notes = notesLine(finding)
  return html`${sourceLine(finding, adoption)}${notes !== '' && html`<span class="aside">${notes}</span>`}`
}
