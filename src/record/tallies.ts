import type { Outcome } from '../catalog/rule.ts'
import type { Finding } from '../evaluation/document.ts'
import { compareHoldPoints, type HoldPoint } from '../opening/hold-points.ts'
import { grouped } from './grouped.ts'

export type Outcomes = Readonly<Record<Outcome, number>>

/** Outcomes of the rules of one part to be seen at one hold point. */
export interface Tally {
  readonly part: Finding['part']
  readonly holdPoint: HoldPoint
  readonly outcomes: Outcomes
}

/** Findings counted by part and hold point, in the order of the work. */
export function talliesOf(findings: readonly Finding[]): readonly Tally[] {
  const groups = grouped(findings, ({ part, holdPoint }) => `${part} ${holdPoint}`)
  const tallies = [...groups.values()].flatMap(([first, ...rest]) => (first ? [{ part: first.part, holdPoint: first.holdPoint, outcomes: outcomesOf([first, ...rest]) }] : []))
  return tallies.toSorted((a, b) => compareHoldPoints(a.holdPoint, b.holdPoint))
}

/** Tallies added up under a key, in the order in which the keys come first. */
export function addedBy<K extends 'part' | 'holdPoint'>(tallies: readonly Tally[], key: K): ReadonlyMap<Tally[K], Outcomes> {
  return new Map([...grouped(tallies, (tally) => tally[key])].map(([value, some]) => [value, some.map(({ outcomes }) => outcomes).reduce(sum)]))
}

function outcomesOf(findings: readonly Finding[]): Outcomes {
  const count = (wanted: Outcome) => findings.filter(({ outcome }) => outcome === wanted).length
  return { pass: count('pass'), fail: count('fail'), notDetermined: count('notDetermined'), notApplicable: count('notApplicable') }
}

function sum(a: Outcomes, b: Outcomes): Outcomes {
  return { pass: a.pass + b.pass, fail: a.fail + b.fail, notDetermined: a.notDetermined + b.notDetermined, notApplicable: a.notApplicable + b.notApplicable }
}
