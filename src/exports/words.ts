import { inBoth } from '../evaluation/words.ts'
import { factTitle } from '../opening/facts.ts'
import { holdPointTitle } from '../opening/hold-points.ts'
import type { UnreadEntry } from '../record/entry.ts'
import type { Recorded } from '../record/opening-record.ts'
import { nameOf, type Judged } from './judged.ts'

/** "W-104: Lintel bearing at each end, right end". */
export function titleOf({ at, finding, member }: Judged): string {
  return `${nameOf(at)}: ${finding.title}${member === null ? '' : `, ${member} end`}`
}

/** What was found out, with both figures, as one or two sentences. */
export function outcomeText(judged: Judged): string {
  const { outcome, finding } = judged
  if (outcome === 'notApplicable') return `Does not apply, as told by: ${finding.decidedBy.map(factTitle).join('; ') || 'ruled out by what is known'}.`
  if (outcome === 'notDetermined') return `Not determined (${finding.reason ?? 'missing'}); required ${finding.required.text}. ${finding.nextStep ?? 'Find out what is missing.'}`
  return `${outcome === 'pass' ? 'Met' : 'Not met'}: ${figures(judged)}.`
}

function figures({ outcome, finding, measured, margin, at }: Judged): string {
  const found = measured === null ? '' : `found ${measured.text}, `
  const spare = margin === null ? '' : `; ${outcome === 'pass' ? 'spare' : 'off by'} ${inBoth(margin, at.assessment?.subject.unitSystem)}`
  return `${found}required ${finding.required.text}${spare}`
}

/** What a reader has to know before he relies on it. */
export function marksOf({ outcome, finding }: Judged): readonly string[] {
  if (outcome !== 'pass' && outcome !== 'fail') return []
  return [
    ...(finding.evidence === 'memory' ? ['The limit is from memory and not confirmed in a published text.'] : []),
    ...(finding.withinResolution ? ['It lies closer to the limit than the tape can tell.'] : []),
    ...(finding.differsByUnit ? ['The figure in the other unit system would decide otherwise.'] : []),
    ...(finding.printedConflict === null ? [] : [finding.printedConflict]),
  ]
}

/** "Remedy chosen: longer angle; due 2027-03-01". */
export function remedyText({ held: { work, due } }: Recorded<'remedy'>): string {
  return `Remedy chosen: ${work}${due ? `; due ${due}` : ''}`
}

/** "waiver by Building Department: ordinance 2026-14, adopted 2026-02-01; through 2027-03-01. Conditions: …". */
export function waiverText({ held: { kind, grantedBy, instrument, expires, conditions } }: Recorded<'waiver'>): string {
  const section = instrument.section === undefined ? '' : `, ${instrument.section}`
  const until = expires ? `; through ${expires}` : ''
  return `${kind} by ${grantedBy}: ${instrument.kind} ${instrument.number}${section}, adopted ${instrument.adopted}${until}.${conditions ? ` Conditions: ${conditions}` : ''}`
}

export function signOffText({ held: { holdPoint, reason } }: Recorded<'signOff'>): string {
  return `Signed off: ${holdPointTitle(holdPoint)}.${reason ? ` Although something was open: ${reason}` : ''}`
}

export function verificationText({ held: { rule, member, result } }: Recorded<'verification'>): string {
  return `Looked at after mending: ${rule}${member ? `, ${member} end` : ''} is ${result === 'mended' ? 'mended' : 'not mended'}.`
}

export function observationText({ fact, member, value, lengthUnit }: NonNullable<UnreadEntry['observation']>): string {
  const shown = typeof value === 'boolean' ? (value ? 'yes' : 'no') : typeof value === 'object' ? JSON.stringify(value) : `${value}${lengthUnit && /^[\d\s./-]+$/.test(String(value)) ? ` ${lengthUnit}` : ''}`
  return `${factTitle(fact)}${member ? `, ${member} end` : ''}: ${shown}`
}
