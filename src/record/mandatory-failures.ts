import type { Finding } from '../evaluation/document.ts'
import { isHidden } from '../opening/facts.ts'
import type { Observed } from './observed.ts'
import type { Basis, OpeningRecord } from './opening-record.ts'
import { grantFor, type Grant } from './waivers.ts'

/** A mandatory rule that is not met, at one end where there are two. */
export interface MandatoryFailure extends Pick<Finding, 'rule' | 'title' | 'part' | 'holdPoint' | 'measured' | 'required' | 'margin' | 'remedy' | 'cautions' | 'evidence' | 'chain' | 'withinResolution'> {
  readonly member: 'left' | 'right' | null
  /** The official has granted a waiver or a modification that is in force. */
  readonly waived: boolean
  /** Whether the work has hidden the place, so that the remedy after cover-up is the one to take; null where a computed quantity is judged. */
  readonly covered: boolean | null
  /** The reading that says so; null where it is taken from the drawing or worked out. */
  readonly seen: Pick<Observed, 'entry' | 'at' | 'by'> | null
}

export function mandatoryFailures(findings: readonly Finding[], record: OpeningRecord, { basis, grants }: { readonly basis: Basis; readonly grants: readonly Grant[] }): readonly MandatoryFailure[] {
  const failing = findings.filter(({ force, outcome }) => force === 'mandatory' && outcome === 'fail')
  return failing.flatMap((finding) => {
    const { rule, title, part, holdPoint, required, remedy, cautions, evidence, chain, withinResolution } = finding
    return endsOf(finding).map(({ member, measured, margin }) => ({
      rule, title, part, holdPoint, member, measured, required, margin, remedy, cautions, evidence, chain, withinResolution,
      waived: grantFor(rule, grants)?.inForce === true,
      covered: finding.fact === null ? null : isHidden(finding.fact, record.holdPoint),
      seen: basis === 'asDesigned' ? null : readingBehind(finding, member, record),
    }))
  })
}

/** Each end that fails by itself, so that nobody mends one of two. */
function endsOf({ members, member, measured, margin }: Finding): readonly Pick<MandatoryFailure, 'member' | 'measured' | 'margin'>[] {
  const ends = members.filter(({ outcome }) => outcome === 'fail')
  return members.length === 2 && ends.length > 0 ? ends : [{ member, measured, margin }]
}

function readingBehind({ fact }: Finding, member: MandatoryFailure['member'], { facts: seen }: OpeningRecord): MandatoryFailure['seen'] {
  const governs = seen.find((one) => one.fact === fact && (one.member === null || one.member === member))?.governs
  return governs ? { entry: governs.entry, at: governs.at, by: governs.by } : null
}
