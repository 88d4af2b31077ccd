import type { Drawing } from '../drawing/index.ts'
import type { Evaluation } from '../evaluation/document.ts'
import { endOf, verdictMeanings, verdictWords } from '../evaluation/words.ts'
import { holdPointTitle } from '../opening/hold-points.ts'
import { cautionList, cautionsOf } from './cautions.ts'
import { htmlDocument, type Paper } from './document.ts'
import { drawingSection } from './drawings.ts'
import type { Manner } from './finding-card.ts'
import { findingsByHoldPoint } from './findings.ts'
import { html, said, type Markup, type Part } from './markup.ts'
import { verdictMark } from './mark.ts'
import { quantitySection } from './quantities.ts'
import { recordSection, type ReportedRecord } from './recorded.ts'
import { reproduction, type Origin } from './reproduce.ts'
import { list, table } from './table.ts'
import { measureNext } from './to-measure.ts'
import { counted, forceMark, linked } from './words.ts'

/** What the report on one opening is made of. */
export interface ReportedOpening {
  readonly evaluation: Evaluation
  readonly drawings: readonly Drawing[]
  /** Why there are no drawings, where there are none. */
  readonly withoutDrawings: string | null
  readonly origin: Origin
  /** What is on record of it, where it is one that is recorded. */
  readonly record?: ReportedRecord
  readonly paper?: Paper | null
}

/** The report on one opening, as a page to print and to read. The same evaluation gives the same report. */
export function openingPage({ evaluation, drawings, withoutDrawings, origin, record, paper = null }: ReportedOpening): string {
  const { subject, findings, quantities, nextToMeasure, catalog, method, digest, notice } = evaluation
  const name = subject.reference ?? 'Opening'
  const manner: Manner = { unitSystem: subject.unitSystem, adoption: evaluation.adoption, cautions: cautionsOf(findings) }
  return htmlDocument({ title: `${name}: report on an opening, ${evaluation.asOf}`, paper }, html`<header><p class="kind">Report on an opening in anchored brick veneer</p><h1>${said(name)}</h1>${placeOf(evaluation)}</header>
<main>
${verdictSection(evaluation)}
<p class="notice"><strong>Notice.</strong> ${notice}</p>
${missList(evaluation)}
${record ? recordSection(record, evaluation) : null}
${cautionList(manner.cautions)}
${measureNext(nextToMeasure)}
${drawingSection(drawings, withoutDrawings)}
${findingsByHoldPoint(findings, manner)}
${quantitySection(quantities, subject.unitSystem)}
${repealedSection(evaluation)}
${reproduction(origin, { catalog, method, digest })}
</main>`)
}

function placeOf({ jurisdiction, resolvedAt, asOf, editions, adoption, holdPoint, subject, evaluatedAt, catalog }: Evaluation): Markup {
  const place = jurisdiction === null ? 'the published texts alone' : resolvedAt === jurisdiction ? jurisdiction : `${jurisdiction}, resolved at ${resolvedAt ?? ''}`
  const code = editions.length === 0 ? 'none adopted' : `${editions.join(' with ')}${adoption === null ? '' : ` by ${adoption}`}`
  const basis = subject.basis === null ? null : subject.basis === 'asBuilt' ? 'as built' : 'as designed'
  return list([['Place', place], ['As of', asOf], ['Code', code], ['Catalog', catalog.release], ['Work stands at', holdPoint && holdPointTitle(holdPoint)], ['Described', basis], ['Evaluated at', evaluatedAt]])
}

function verdictSection({ summary, inPart }: Evaluation): Markup {
  const { verdict, pass, fail, notDetermined, notApplicable, mandatoryFailures, mandatoryNotDetermined, fromMemory } = summary
  const of = (all: number, mandatory: number) => (all === 0 ? '0' : `${all}, ${mandatory} of them mandatory`)
  return html`<section class="verdict ${verdict}" aria-labelledby="verdict"><h2 id="verdict">Verdict: ${verdictMark(verdict)}</h2><p>${verdictMeanings[verdict]}</p>
${list([['Not met', of(fail, mandatoryFailures)], ['Not determined', of(notDetermined, mandatoryNotDetermined)], ['Met', String(pass)], ['Does not apply', String(notApplicable)]], 'figures')}
${fromMemory > 0 && html`<p>${counted(fromMemory, 'decided finding')} ${fromMemory === 1 ? 'rests' : 'rest'} on a limit that is <span class="evidence memory">from memory</span>, not confirmed in a text. Confirm it against the adopted text before relying on it.</p>`}
${inPart && html`<p>Only some requirements of this code are in the catalog; what is not here was not checked, so no verdict is better than “${verdictWords.incomplete}”.</p>`}</section>`
}

/** What is not met, in one table that leads to the findings. */
function missList({ findings }: Evaluation): Part {
  const misses = findings.filter(({ outcome }) => outcome === 'fail').toSorted((a, b) => Number(b.force === 'mandatory') - Number(a.force === 'mandatory'))
  if (misses.length === 0) return null
  return html`<section aria-labelledby="misses"><h2 id="misses">Not met</h2>${table('What is not met, mandatory first; each with its remedy under its hold point below', misses, [
    ['Requirement', ({ rule, title, member, force }) => html`<a href="#${rule}">${title}</a>${endOf(member)} ${forceMark(force)}`],
    ['Found', ({ measured }) => measured?.text ?? '–'],
    ['Required', ({ required }) => required.text],
    ['At hold point', ({ holdPoint }) => holdPointTitle(holdPoint)],
  ])}</section>`
}

function repealedSection({ repealed }: Evaluation): Part {
  if (repealed.length === 0) return null
  return html`<section aria-labelledby="repealed"><h2 id="repealed">Repealed here</h2><ul>${repealed.map(({ rule, title, reason, document, instrument }) => html`<li>${title} (<code>${rule}</code>) by ${linked(document ?? 'an amendment', instrument?.href ?? null)}: ${reason}</li>`)}</ul></section>`
}
