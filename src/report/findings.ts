import type { Finding } from '../evaluation/document.ts'
import { endOf, outcomeWords } from '../evaluation/words.ts'
import { holdPoints } from '../opening/hold-points.ts'
import { endsOf, missCard, notesOf, type Manner } from './finding-card.ts'
import { html, type Markup, type Part } from './markup.ts'
import { mark } from './mark.ts'
import { table } from './table.ts'
import { counted, factTitles, forceMark, sourceLine, unsigned } from './words.ts'

const kinds = { hold: 'the work stops here until it is released', witness: 'somebody is invited to look', selfCheck: 'the crew looks for itself' } as const

/** Every finding once, under the hold point at which it is to be seen, in the order of the work. */
export function findingsByHoldPoint(findings: readonly Finding[], manner: Manner): Markup {
  return html`<section aria-labelledby="findings"><h2 id="findings">Findings by hold point</h2>${holdPoints.map(({ id, title, kind, hides }) => {
    const here = findings.filter(({ holdPoint }) => holdPoint === id)
    if (here.length === 0) return null
    return html`<section class="hold-point" aria-labelledby="at-${id}"><div class="kept"><h3 id="at-${id}">${title}</h3><p class="about">${kinds[kind]}${hides === null ? null : `. ${hides}`}</p><p class="counts">${countsOf(here)}</p></div>${groupsOf(here, manner)}</section>`
  })}</section>`
}

function countsOf(findings: readonly Finding[]): Part {
  return (['fail', 'notDetermined', 'pass', 'notApplicable'] as const).map((outcome) => {
    const count = findings.filter((finding) => finding.outcome === outcome).length
    return count === 0 ? null : html`<span class="outcome">${mark(outcome)} ${count} ${outcomeWords[outcome].toLowerCase()}</span> `
  })
}

const rank: Readonly<Record<Finding['force'], number>> = { mandatory: 0, recommended: 1, informative: 2 }

function groupsOf(findings: readonly Finding[], manner: Manner): Part {
  const of = (outcome: Finding['outcome']) => findings.filter((finding) => finding.outcome === outcome).toSorted((a, b) => rank[a.force] - rank[b.force])
  const [misses, open, met, ruledOut] = [of('fail'), of('notDetermined'), of('pass'), of('notApplicable')]
  return [misses.map((finding) => missCard(finding, manner)), open.length > 0 && openTable(open, manner), met.length > 0 && metTable(met, manner), ruledOut.length > 0 && ruledOutList(ruledOut, manner)]
}

function openTable(findings: readonly Finding[], manner: Manner): Markup {
  return table(html`${mark('notDetermined')} ${outcomeWords.notDetermined}: ${counted(findings.length, 'rule')}`, findings, [
    ['Requirement', (finding) => requirement(finding, manner)],
    ['Required', ({ required }) => required.text],
    ['What is missing, and what to do', (finding) => html`${finding.nextStep ?? 'Find out what is missing.'}${finding.missing.length > 1 ? html` <span class="aside">Missing: ${factTitles(finding.missing)}.</span>` : null}`],
  ])
}

function metTable(findings: readonly Finding[], manner: Manner): Markup {
  return table(html`${mark('pass')} ${outcomeWords.pass}: ${counted(findings.length, 'rule')}`, findings, [
    ['Requirement', (finding) => requirement(finding, manner)],
    ['Found', (finding) => endsOf(finding, manner.unitSystem) ?? finding.measured?.text ?? '–'],
    ['Required', ({ required }) => required.text],
    ['Spare', ({ margin }) => (margin === null ? '–' : unsigned(margin, manner.unitSystem))],
  ])
}

function requirement(finding: Finding, { adoption }: Manner): Markup {
  const notes = [...notesOf(finding), ...(finding.disagreements.length > 0 ? [`${counted(finding.disagreements.length, 'other source')} ${finding.disagreements.length === 1 ? 'says' : 'say'} otherwise.`] : [])]
  return html`<span id="${finding.rule}">${finding.title}${endOf(finding.outcome === 'pass' ? null : finding.member)}</span> ${forceMark(finding.force)}<span class="origin"><code>${finding.rule}</code> ${sourceLine(finding, adoption)}</span>${notes.length > 0 && html`<span class="aside">${notes.join(' ')}</span>`}`
}

/** What does not apply is said in a short list, with the fact that tells so. */
function ruledOutList(findings: readonly Finding[], { adoption }: Manner): Markup {
  return html`<div class="ruled-out"><h4>${mark('notApplicable')} ${outcomeWords.notApplicable}: ${counted(findings.length, 'rule')}</h4><ul>${findings.map((finding) => html`<li><span id="${finding.rule}">${finding.title}</span> (${factTitles(finding.decidedBy) || 'ruled out by what is known'}) <span class="origin"><code>${finding.rule}</code> ${sourceLine(finding, adoption)}</span></li>`)}</ul></div>`
}
