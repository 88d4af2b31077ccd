import { digestOf } from '../catalog/digest.ts'
import type { Finding } from '../evaluation/document.ts'
import { keyOf, outcomesOf, type Outcome, type Place } from './outcomes.ts'

/** How a miss stands now, seen over all earlier looks. */
export type MissStatus = 'new' | 'unchanged' | 'reopened' | 'open' | 'settled'

/** A miss by rule and end, with how it came to stand as it does. */
export interface Miss extends Place {
  /** The same for the same rule at the same end of the same opening, however often it is looked at. */
  readonly fingerprint: string
  readonly status: MissStatus
  /** Of the first look at which it was missed, and of the last at which its outcome changed. */
  readonly since: string
  readonly changed: string
}

/** One look at an opening: its findings and when. */
export interface Look {
  readonly at: string
  readonly findings: readonly Finding[]
}

/** Every miss there ever was, as it stands after the last look. */
export function missesOver(opening: string, looks: readonly Look[]): readonly Miss[] {
  const seen = looks.map(({ at, findings }) => ({ at, outcomes: outcomesOf(findings) }))
  const missed = new Map(seen.flatMap(({ outcomes }) => outcomes.places.filter(({ outcome }) => outcome === 'fail').map(({ rule, member }) => [keyOf({ rule, member }), { rule, member }] as const)))
  return [...missed.values()].map((place) => missOf(opening, place, seen.map(({ at, outcomes }) => ({ at, outcome: outcomes.at(place) }))))
}

export function fingerprintOf(opening: string, { rule, member }: Place): string {
  return digestOf({ opening, rule, member })
}

interface Step { readonly at: string; readonly outcome: Outcome | null }

function missOf(opening: string, place: Place, steps: readonly Step[]): Miss {
  const first = steps.findIndex(({ outcome }) => outcome === 'fail')
  const changes = steps.filter(({ outcome }, index) => index >= first && (index === 0 || steps[index - 1]?.outcome !== outcome))
  return { ...place, fingerprint: fingerprintOf(opening, place), status: statusOf(steps, first), since: steps[first]?.at ?? '', changed: changes.at(-1)?.at ?? '' }
}

/** Open: it was missed, and whether it still is cannot be told. */
function statusOf(steps: readonly Step[], first: number): MissStatus {
  const last = steps.at(-1)?.outcome ?? null
  if (last === 'pass' || last === 'notApplicable') return 'settled'
  if (last !== 'fail') return 'open'
  if (first === steps.length - 1) return 'new'
  const mended = steps.slice(first).some(({ outcome }) => outcome === 'pass' || outcome === 'notApplicable')
  return mended ? 'reopened' : 'unchanged'
}
