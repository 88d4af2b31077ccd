import type { Assessment, Finding, Summary } from '../evaluation/document.ts'
import { summarise } from '../evaluation/summary.ts'
import type { Recorded } from './opening-record.ts'

/** What the building official granted for one rule. */
export interface Grant extends Recorded<'waiver'> {
  readonly inForce: boolean
}

/** What was granted, as it stands on a date. */
export function grantsOn(waivers: readonly Recorded<'waiver'>[], on: string): readonly Grant[] {
  return waivers.map((waiver) => ({ ...waiver, inForce: isInForce(waiver.held.expires ?? null, on) }))
}

/** The grant that covers a rule: one in force before one that has run out, the latest of equals. */
export function grantFor(rule: string, grants: readonly Grant[]): Grant | undefined {
  const ofRule = grants.filter(({ held }) => held.rule === rule)
  return ofRule.findLast(({ inForce }) => inForce) ?? ofRule.at(-1)
}

/** A finding is covered when its rule is not met, or not decided, and a grant for it is in force. */
export function isCovered({ rule, outcome }: Pick<Finding, 'rule' | 'outcome'>, grants: readonly Grant[]): boolean {
  return (outcome === 'fail' || outcome === 'notDetermined') && grantFor(rule, grants)?.inForce === true
}

/** The verdict when what is granted is left out of account. The findings themselves stay as they are. */
export function verdictAsGranted({ findings, inPart }: Pick<Assessment, 'findings' | 'inPart'>, grants: readonly Grant[]): Summary['verdict'] {
  return summarise(findings.filter((finding) => !isCovered(finding, grants)), inPart).verdict
}

/** Through its last day. */
function isInForce(expires: string | null, on: string): boolean {
  return expires === null || on.slice(0, 10) <= expires
}
