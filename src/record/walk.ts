import { compareHoldPoints, holdPointTitle, type HoldPoint } from '../opening/hold-points.ts'
import type { FactToCollect } from './facts-to-collect.ts'
import { grouped } from './grouped.ts'
import type { OpeningReport } from './opening-report.ts'

export interface WalkOpening {
  readonly opening: string
  readonly reference: string | null
  readonly lastChances: number
  readonly facts: readonly FactToCollect[]
}

/** What to look at on one walk through the building, by opening; those with the most last chances first. */
export interface Walk {
  readonly holdPoint: HoldPoint
  readonly title: string
  readonly lastChances: number
  readonly openings: readonly WalkOpening[]
}

/** Everything that is not known and can still be seen, in the order of the work. */
export function walksThrough(reports: readonly OpeningReport[], only: HoldPoint | null): readonly Walk[] {
  const wanted = reports.flatMap(({ opening, reference, toCollect }) => toCollect.map((fact) => ({ opening, reference, fact })))
  const walks = grouped(wanted.filter(({ fact }) => only === null || fact.holdPoint === only), ({ fact }) => fact.holdPoint)
  return [...walks].toSorted(([a], [b]) => compareHoldPoints(a, b)).map(([holdPoint, some]) => {
    const openings = [...grouped(some, ({ opening }) => opening).values()].flatMap(openingOf)
    return {
      holdPoint,
      title: holdPointTitle(holdPoint),
      lastChances: openings.reduce((sum, { lastChances }) => sum + lastChances, 0),
      openings: openings.toSorted((a, b) => b.lastChances - a.lastChances),
    }
  })
}

function openingOf(some: readonly { readonly opening: string; readonly reference: string | null; readonly fact: FactToCollect }[]): readonly WalkOpening[] {
  const facts = some.map(({ fact }) => fact)
  return some.slice(0, 1).map(({ opening, reference }) => ({ opening, reference, lastChances: facts.filter(({ lastChance }) => lastChance).length, facts }))
}
