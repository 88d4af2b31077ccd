import type { Assessment } from '../evaluation/document.ts'
import { nextToHide } from '../opening/facts.ts'
import { compareHoldPoints, type HoldPoint } from '../opening/hold-points.ts'

/** A fact that is not known and can still be seen. */
export interface FactToCollect {
  readonly fact: string
  readonly title: string
  /** Where on the way to look: as soon as it is there to be seen, or where the work stands now when that is later. */
  readonly holdPoint: HoldPoint
  readonly hiddenBy: HoldPoint | null
  /** The very next operation hides it. */
  readonly lastChance: boolean
  /** A mandatory rule waits for it. */
  readonly mandatory: boolean
  /** Rules that it settles by itself, and rules that need it and something else. */
  readonly decides: readonly string[]
  readonly contributesTo: readonly string[]
}

/** What to collect at one opening, the last chances first, then what mandatory rules wait for; else as evaluations rank it. */
export function factsToCollect({ findings, nextToMeasure }: Pick<Assessment, 'findings' | 'nextToMeasure'>, reached: HoldPoint | null): readonly FactToCollect[] {
  const mandatory = new Set(findings.flatMap(({ force, outcome, missing }) => (force === 'mandatory' && outcome === 'notDetermined' ? missing : [])))
  const wanted = nextToMeasure.map(({ fact, title, holdPoint: from, hiddenBy, decides, contributesTo }) => {
    const holdPoint = reached !== null && compareHoldPoints(reached, from) > 0 ? reached : from
    return { fact, title, holdPoint, hiddenBy, lastChance: hiddenBy !== null && hiddenBy === nextToHide(holdPoint), mandatory: mandatory.has(fact), decides, contributesTo }
  })
  return wanted.toSorted((a, b) => Number(b.lastChance) - Number(a.lastChance) || Number(b.mandatory) - Number(a.mandatory))
}
