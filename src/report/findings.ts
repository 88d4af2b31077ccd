import type { Finding } from '../evaluation/document.ts'
import { endOf, outcomeWords } from '../evaluation/words.ts'
import { holdPoints } from '../opening/hold-points.ts'
import { missCard, type Manner } from './finding-card.ts'
import { html, type Markup, type Part } from './markup.ts'
import { mark } from './mark.ts'
import { byForce, isSettled, settledSection } from './settled.ts'
import { table } from './table.ts'
import { counted, factTitles, forceMark, notesLine, sourceLine } from './words.ts'

const kinds = { hold: 'the work stops here until it is released', witness: 'somebody is invited to look', selfCheck: 'the crew looks for itself' } as const

/** Every finding once, by the hold point at which it is to be seen, in the order of the work: first what needs somebody, then what is settled. */
export function findingsByHoldPoint(findings: readonly Finding[], manner: Manner): Part {
  return [openSection(findings.filter((finding) => !isSettled(finding)), manner), settledSection(findings.filter(isSettled), manner)]
}

function openSection(findings: readonly Finding[], manner: Manner): Part {
  if (findings.length === 0) return null
  return html`<section aria-labelledby="findings"><h2 id="findings">Not met or not determined, by hold point</h2>${holdPoints.map(({ id, title, kind, hides }) => {
    const here = findings.filter(({ holdPoint }) => holdPoint === id)
    if (here.length === 0) return null
    return html`<section class="hold-point" aria-labelledby="at-${id}"><div class="kept"><h3 id="at-${id}">${title}</h3><p class="about">${kinds[kind]}${hides === null ? null : `. ${hides}`}</p></div>${groupsOf(here, manner)}</section>`
  })}</section>`
}

function groupsOf(findings: readonly Finding[], manner: Manner): Part {
  const of = (outcome: Finding['outcome']) => findings.filter((finding) => finding.outcome === outcome).toSorted(byForce)
  const [misses, open] = [of('fail'), of('notDetermined')]
  return [misses.map((finding) => missCard(finding, manner)), open.length > 0 && openTable(open, manner)]
}

function openTable(findings: readonly Finding[], manner: Manner): Markup {
  return table(html`${mark('notDetermined')} ${outcomeWords.notDetermined}: ${counted(findings.length, 'rule')}`, findings, [
    ['Requirement', (finding) => requirement(finding, manner)],
    ['Required', ({ required }) => required.text],
    ['What is missing, and what to do', (finding) => html`${finding.nextStep ?? 'Find out what is missing.'}${finding.missing.length > 1 ? html` <span class="aside">Missing: ${factTitles(finding.missing)}.</span>` : null}`],
  ], 'undecided')
}

function requirement(finding: Finding, { adoption }: Manner): Markup {
  const notes = notesLine(finding)
  return html`<span id="${finding.rule}">${finding.title}${endOf(finding.member)}</span> ${forceMark(finding.force)}<span class="origin"><code>${finding.rule}</code> ${sourceLine(finding, adoption)}</span>${notes !== '' && html`<span class="aside">${notes}</span>`}`
}
