import type { Evaluation } from '../evaluation/document.ts'
import { endOf, outcomeWords } from '../evaluation/words.ts'
import { compareHoldPoints, holdPointTitle } from '../opening/hold-points.ts'
import { factTitle } from '../opening/facts.ts'
import { agree, type FactRecord } from '../record/as-built.ts'
import type { NonConformance, NonConformanceState } from '../record/non-conformance.ts'
import type { Observed } from '../record/observed.ts'
import type { OpeningRecord, Recorded } from '../record/opening-record.ts'
import type { SignOffGround } from '../record/sign-off.ts'
import { isCovered, verdictAsGranted, type Grant } from '../record/waivers.ts'
import { html, joined, said, type Markup, type Part } from './markup.ts'
import { verdictMark } from './mark.ts'
import { table } from './table.ts'
import { counted, linked } from './words.ts'

/** What a report tells of the record of an opening, beside what is known of it. */
export interface ReportedRecord {
  readonly record: OpeningRecord
  /** Each with what was known when it was given; null when the opening could not be evaluated then. */
  readonly signOffs: readonly { readonly given: Recorded<'signOff'>; readonly ground: SignOffGround | null }[]
  /** As they stand when the report is made. */
  readonly grants: readonly Grant[]
  readonly misses: readonly NonConformance[]
}

/** The record in short: readings that contradict, sign-offs, waivers, and how every miss stands. What there is none of is said. */
export function recordSection({ record, signOffs, grants, misses }: ReportedRecord, evaluation: Evaluation): Markup {
  return html`<section aria-labelledby="record"><h2 id="record">The record</h2>
<p>${designLine(record)} ${counted(record.facts.length, 'fact')} seen. With the waivers that count: ${verdictMark(verdictAsGranted(evaluation, grants))}.</p>
${contradictions(record.facts)}${signOffTable(signOffs)}${grantTable(grants, evaluation)}${missTable(misses)}</section>`
}

function designLine({ designs }: OpeningRecord): Markup {
  const last = designs.at(-1)
  return last ? html`Drawn ${last.at} by ${said(last.by)}, version <code>${last.version}</code>; where nobody has looked, the findings take it as drawn.` : html`No drawing is on record.`
}

function contradictions(facts: readonly FactRecord[]): Markup {
  const contradicted = facts.filter((one) => one.contradicted)
  if (contradicted.length === 0) return html`<p>No two readings contradict each other.</p>`
  return table('Readings that contradict each other; the latest governs', contradicted, [
    ['Fact', ({ fact, member }) => `${factTitle(fact)}${endOf(member)}`],
    ['Governs', ({ governs }) => reading(governs)],
    ['Says otherwise', ({ governs, earlier }) => joined(earlier.filter((other) => !agree(governs.reading, other.reading)).map(reading), html`<br>`)],
  ], 'walk')
}

function reading({ reading: { text }, at, by, holdPoint }: Observed): Markup {
  return html`<strong>${said(text)}</strong>, ${at} by ${said(by)}, at: ${holdPointTitle(holdPoint)}`
}

function signOffTable(signOffs: ReportedRecord['signOffs']): Markup {
  if (signOffs.length === 0) return html`<p>No hold point is signed off.</p>`
  const inOrder = signOffs.toSorted((a, b) => compareHoldPoints(a.given.held.holdPoint, b.given.held.holdPoint))
  return table('Signed off, in the order of the work', inOrder, [
    ['Hold point', ({ given }) => holdPointTitle(given.held.holdPoint)],
    ['Signed', ({ given: { at, by } }) => html`${at} by ${said(by)}`],
    ['Known at the time', ({ ground }) => knownThen(ground)],
    ['Reason', ({ given: { held } }) => (held.reason ? said(held.reason) : '–')],
  ], 'walk')
}

/** Whether everything mandatory was met, and what was not. */
function knownThen(ground: SignOffGround | null): Part {
  if (ground === null) return 'it could not be evaluated'
  const { ready, notMet, undecided, waived, release } = ground
  const told = [...ids('not met', notMet), ...ids('not determined', undecided), ...ids('waived', waived)]
  return html`${ready ? 'ready' : 'not ready'}${told.length > 0 && html`: ${joined(told, '; ')}`}<span class="aside">by catalog ${release}</span>`
}

function ids(word: string, rules: readonly string[]): readonly Markup[] {
  return rules.length === 0 ? [] : [html`${word}: ${joined(rules.map((rule) => html`<code>${rule}</code>`), ', ')}`]
}

/** Those in force; one counts while its rule is not met or not decided. */
function grantTable(grants: readonly Grant[], { findings }: Evaluation): Part {
  const inForce = grants.filter((grant) => grant.inForce)
  const past = grants.length - inForce.length
  const ranOut = past > 0 && html`<p>${counted(past, 'waiver or modification', 'waivers or modifications')} ran out and ${past === 1 ? 'counts' : 'count'} no more.</p>`
  if (inForce.length === 0) return [html`<p>No waiver or modification is in force.</p>`, ranOut]
  const findingOf = new Map(findings.map((finding) => [finding.rule, finding]))
  return [table('Waivers and modifications in force', inForce, [
    ['Rule', ({ held: { rule } }) => html`${findingOf.get(rule)?.title ?? rule}<span class="origin"><code>${rule}</code></span>`],
    ['Granted', ({ held: { kind, grantedBy, instrument } }) => html`${kind} by ${said(grantedBy)}: ${linked(instrument.number, instrument.href ?? null)}`],
    ['Until', ({ held: { expires } }) => expires ?? 'without an end'],
    ['Conditions', ({ held: { conditions } }) => (conditions ? said(conditions) : '–')],
    ['Counts now', ({ held: { rule } }) => counts(findingOf.get(rule), grants)],
  ], 'walk'), ranOut]
}

function counts(finding: Evaluation['findings'][number] | undefined, grants: readonly Grant[]): string {
  if (!finding) return 'no: no such rule here'
  return `${isCovered(finding, grants) ? 'yes' : 'no'}: ${outcomeWords[finding.outcome].toLowerCase()}`
}

const stateWords: Readonly<Record<NonConformanceState, string>> = { open: 'Open', remedyChosen: 'Open, remedy chosen', saidMended: 'Said to be mended; a reading has to show it', notMended: 'Looked at again, not mended', waived: 'Waived', settled: 'Settled by a reading' }
const stateOrder = Object.keys(stateWords)

function missTable(misses: readonly NonConformance[]): Markup {
  if (misses.length === 0) return html`<p>Nothing was ever missed by what is on record.</p>`
  return table('Every miss there ever was, open ones first', misses.toSorted((a, b) => stateOrder.indexOf(a.state) - stateOrder.indexOf(b.state)), [
    ['Rule', ({ rule, title, member, force }) => html`${title}${endOf(member)}<span class="origin"><code>${rule}</code> ${force}</span>`],
    ['Stands', ({ state, status }) => html`${stateWords[state]}${status === 'reopened' && html`<span class="aside">missed again after it had been met</span>`}`],
    ['Found, required', ({ measured, required }) => html`${measured ?? '–'}<span class="aside">${required ?? '–'}</span>`],
    ['Missed since', ({ since }) => since],
    ['Last changed', ({ changed }) => changed],
    ['Done about it', doneAbout],
  ], 'walk')
}

function doneAbout({ chosen, verification }: NonConformance): Part {
  const remedy = chosen && html`${said(chosen.held.work)}, chosen ${chosen.at} by ${said(chosen.by)}${chosen.held.due ? `, due ${chosen.held.due}` : null}`
  const looked = verification && html`${verification.held.result === 'mended' ? 'said mended' : 'found not mended'} ${verification.at} by ${said(verification.by)}`
  const done = [remedy, looked].filter((one) => one !== null)
  return done.length === 0 ? '–' : joined(done, '; ')
}
