import type { Finding } from '../evaluation/document.ts'
import { endOf } from '../evaluation/words.ts'
import type { UnitSystem } from '../units/dimension.ts'
import { cautionReferences, type Cautions } from './cautions.ts'
import { html, joined, type Markup, type Part } from './markup.ts'
import { outcomeMark } from './mark.ts'
import { list } from './table.ts'
import { evidenceMark, forceMark, notesOf, sourceLine, unsigned } from './words.ts'

/** How a report speaks: the unit system that leads, the adoption that its head names, and the numbers of its cautions. */
export interface Manner {
  readonly unitSystem: UnitSystem
  readonly adoption: string | null
  readonly cautions: Cautions
}

/** A rule that is not met, with all that is needed to put it right. */
export function missCard(finding: Finding, { unitSystem, adoption, cautions }: Manner): Markup {
  const { rule, title, statement, force, member, measured, required, margin, remedy } = finding
  return html`<article class="finding miss" id="${rule}"><h4>${outcomeMark('fail')}: ${title}${endOf(member)} ${forceMark(force)}</h4>
<p>${statement}</p>
${list([['Found', measured?.text ?? null], ['Required', required.text], ['Off by', margin && unsigned(margin, unitSystem)], ['Each end', endsOf(finding, unitSystem)]], 'figures')}
${noteList(finding)}
${remedy && list([['Before cover-up', remedy.beforeCoverUp], ['After cover-up', remedy.afterCoverUp]], 'remedies')}
${cautionReferences(finding.cautions, cautions)}
<p class="origin"><code>${rule}</code> ${sourceLine(finding, adoption)}; last reviewed ${finding.lastReviewed}</p>
${disagreementList(finding)}</article>`
}

/** What was found at each end, where there are two. */
export function endsOf({ members }: Finding, unitSystem: UnitSystem, between: Part = html`<br>`): Part {
  if (members.length < 2) return null
  return joined(members.map(({ member, outcome, measured, margin }) => html`${member}: ${measured?.text ?? 'not known'}${outcome === 'fail' && margin !== null ? `, off by ${unsigned(margin, unitSystem)}` : outcome === 'fail' ? ', not met' : ''}`), between)
}

function noteList(finding: Finding): Markup | null {
  const notes = notesOf(finding)
  return notes.length === 0 ? null : html`<ul class="notes">${notes.map((note) => html`<li>${note}</li>`)}</ul>`
}

function disagreementList({ disagreements }: Finding): Markup | null {
  if (disagreements.length === 0) return null
  return html`<div class="otherwise"><p>Other sources say otherwise:</p><ul>${disagreements.map(({ source, states, evidence, note }) => html`<li>${source}: ${states} (${evidenceMark(evidence)})${note === null ? null : `. ${note}`}</li>`)}</ul></div>`
}
