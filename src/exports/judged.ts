import type { Finding } from '../evaluation/document.ts'
import { fingerprintOf, type Miss } from '../record/finding-history.ts'
import { concerns } from '../record/non-conformance.ts'
import type { Observed } from '../record/observed.ts'
import type { Recorded } from '../record/opening-record.ts'
import { grantsOn } from '../record/waivers.ts'
import type { ExportedBuilding, ExportedOpening, ExportScope } from './exported-building.ts'
import { instant } from './plain-text.ts'
import { stableId } from './stable-id.ts'

/** A rule as it was judged at one place: the whole opening, or one end of it. */
export interface Judged extends Pick<Finding, 'outcome' | 'measured' | 'margin'> {
  readonly at: ExportedOpening
  readonly finding: Finding
  readonly member: 'left' | 'right' | null
  /** The same however often it is looked at. */
  readonly fingerprint: string
  readonly id: string
  /** How the miss came to stand as it does; undefined where there never was one. */
  readonly miss: Miss | undefined
  /** What the building official granted for this rule here, and is in force. */
  readonly waivers: readonly Recorded<'waiver'>[]
}

/** Everything that was judged and goes out, opening by opening and rule by rule. */
export function judgedIn(building: ExportedBuilding): readonly Judged[] {
  return building.openings.flatMap((at) => (at.assessment?.findings ?? []).flatMap((finding) => placesOf(finding).map((place) => judgedAt(building, at, finding, place)))).filter(({ outcome }) => goesOut(outcome, building.scope))
}

type Place = Pick<Judged, 'member' | 'outcome' | 'measured' | 'margin'>

/** A rule that is judged at both ends stands once for each. */
export function placesOf({ members, outcome, measured, margin }: Finding): readonly Place[] {
  return members.length < 2 ? [{ member: null, outcome, measured, margin }] : members
}

function judgedAt({ project, at: now }: ExportedBuilding, at: ExportedOpening, finding: Finding, place: Place): Judged {
  const { rule } = finding
  const fingerprint = fingerprintOf(at.opening, { rule, member: place.member })
  const waivers = grantsOn(at.record.waivers, now).filter(({ held, inForce }) => held.rule === rule && inForce)
  return { ...place, at, finding, fingerprint, id: stableId(project.id, fingerprint), miss: at.misses.find((one) => one.fingerprint === fingerprint), waivers }
}

const outcomesOut: Readonly<Record<ExportScope, readonly Finding['outcome'][]>> = { misses: ['fail'], open: ['fail', 'notDetermined'], all: ['fail', 'notDetermined', 'pass', 'notApplicable'] }

function goesOut(outcome: Finding['outcome'], scope: ExportScope): boolean {
  return outcomesOut[scope].includes(outcome)
}

/** The readings that it rests on: those that govern the fact, or the facts from which it was worked out. */
export function readingsBehind({ at, finding, member }: Judged): readonly Observed[] {
  const paths = [...(finding.fact === null ? [] : [finding.fact]), ...finding.derivedFrom]
  return at.record.facts.filter((one) => paths.includes(one.fact) && (one.member === null || member === null || one.member === member)).map(({ governs }) => governs)
}

/** Who looked after mending, and at this end. */
export function looksAfterMending({ at, finding, member }: Judged): readonly Recorded<'verification'>[] {
  return at.record.verifications.filter(({ held }) => concerns(held, { rule: finding.rule, member }))
}

/** What was chosen to be done about it, at this end. */
export function remediesFor({ at, finding, member }: Judged): readonly Recorded<'remedy'>[] {
  return at.record.remedies.filter(({ held }) => concerns(held, { rule: finding.rule, member }))
}

/** When something on record was said, in UTC. */
export function timeOf({ entries }: ExportedOpening, { entry, at }: { readonly entry: string; readonly at: string }): string {
  return instant(at, entries.find(({ id }) => id === entry)?.receivedAt ?? '')
}

/** What the opening is called on the drawings, or else in the record. */
export function nameOf({ assessment, opening }: ExportedOpening): string {
  return assessment?.subject.reference ?? opening
}
