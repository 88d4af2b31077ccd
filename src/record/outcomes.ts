import type { Finding } from '../evaluation/document.ts'

export type Outcome = Finding['outcome']

/** A rule, at one end where it is judged at both. */
export interface Place {
  readonly rule: string
  readonly member: 'left' | 'right' | null
}

/** Outcomes by rule and end. */
export interface Outcomes {
  readonly places: readonly (Place & { readonly outcome: Outcome })[]
  /** At a place; null where the rule was not judged at all. */
  readonly at: (place: Place) => Outcome | null
}

export function outcomesOf(findings: readonly Finding[]): Outcomes {
  const places = findings.flatMap(({ rule, outcome, members }) =>
    members.length < 2 ? [{ rule, member: null, outcome }] : members.map((end) => ({ rule, member: end.member, outcome: end.outcome })),
  )
  const byPlace = new Map(places.map((one) => [keyOf(one), one.outcome]))
  const byRule = new Map(findings.map(({ rule, outcome }) => [rule, outcome]))
  // A rule that does not apply, or may not, is judged once and not at each end.
  return { places, at: (place) => byPlace.get(keyOf(place)) ?? byRule.get(place.rule) ?? null }
}

export function keyOf({ rule, member }: Place): string {
  return `${rule} ${member ?? ''}`
}

export interface OutcomeChange extends Place {
  readonly title: string
  /** Null where it was not judged before. */
  readonly before: Outcome | null
  readonly after: Outcome
}

/** What came out otherwise than before; of a first look, what is met and what is not. */
export function outcomeChanges(before: readonly Finding[] | null, after: readonly Finding[]): readonly OutcomeChange[] {
  const [was, is] = [before && outcomesOf(before), outcomesOf(after)]
  const titles = new Map(after.map(({ rule, title }) => [rule, title]))
  return is.places.flatMap(({ outcome, ...place }) => {
    const earlier = was?.at(place) ?? null
    const tells = earlier === null ? outcome === 'pass' || outcome === 'fail' : earlier !== outcome
    return tells ? [{ ...place, title: titles.get(place.rule) ?? place.rule, before: earlier, after: outcome }] : []
  })
}
