import type { Amendment } from '../catalog/amendment.ts'
import type { Catalog } from '../catalog/catalog.ts'
import { reviewNeeded, type ReviewNeeded } from '../catalog/review.ts'
import { comparePlaces } from './compared-place.ts'
import { compareOpening, type OpeningChange, type TriedOpening } from './opening-change.ts'
import type { Finding, Summary } from './document.ts'
import { ruleChanges, type RuleChange } from './rule-changes.ts'

export interface ImpactQuestion {
  readonly jurisdiction: string
  /** Permit application dates to try, such as those of `datesTouched`. */
  readonly dates: readonly string[]
  /** The code that is meant where several are adopted. */
  readonly publication?: string | undefined
  /** How many examples of changed outcomes and verdicts to keep. */
  readonly examples: number
}

/** How often something went from one outcome to another; "absent" where a catalog does not have the rule. */
export interface Transition<S extends string> {
  readonly from: S
  readonly to: S
  readonly count: number
}

type OutcomeState = Finding['outcome'] | 'absent'
type Verdict = Summary['verdict']

export interface Impact {
  readonly rules: readonly RuleChange[]
  readonly reviewNeeded: readonly ReviewNeeded[]
  /** Openings that were tried, each on every date. */
  readonly openings: number
  /** Of these, the ones with another outcome on some date, and those with another verdict. */
  readonly openingsChanged: number
  readonly verdictsChanged: number
  /** Tries for which no rules could be settled, such as where several codes are adopted and none is named. */
  readonly notSettled: number
  readonly outcomes: readonly Transition<OutcomeState>[]
  readonly verdicts: readonly Transition<Verdict>[]
  /** The first changes that were found. */
  readonly examples: readonly (OpeningChange & { readonly reference: string; readonly asOf: string })[]
}

/** Compares two catalogs over openings that come one at a time, in whatever portions they can be had. */
export interface ImpactTally {
  readonly take: (opening: TriedOpening) => void
  readonly report: () => Impact
}

export function tallyImpact(before: Catalog, after: Catalog, question: ImpactQuestion): ImpactTally {
  const { jurisdiction, dates, publication } = question
  const placeFor = comparePlaces(before, after)
  const counted = { openings: 0, openingsChanged: 0, verdictsChanged: 0, notSettled: 0 }
  const outcomes = new Map<string, number>()
  const verdicts = new Map<string, number>()
  const examples: Impact['examples'][number][] = []
  const take = (tried: TriedOpening) => {
    const changes = dates.flatMap((asOf) => {
      const place = placeFor({ jurisdiction: tried.jurisdiction ?? jurisdiction, publication: tried.publication ?? publication, asOf })
      if (!place) counted.notSettled += 1
      const change = place && compareOpening(tried, place)
      return change ? [{ reference: tried.reference, asOf, ...change }] : []
    })
    counted.openings += 1
    counted.openingsChanged += changes.some(({ findings }) => findings.length > 0) ? 1 : 0
    counted.verdictsChanged += changes.some(({ verdict }) => verdict.before !== verdict.after) ? 1 : 0
    for (const { findings, verdict } of changes) {
      for (const { before: was, after: is } of findings) add(outcomes, was?.outcome ?? 'absent', is?.outcome ?? 'absent')
      if (verdict.before !== verdict.after) add(verdicts, verdict.before, verdict.after)
    }
    examples.push(...changes.slice(0, Math.max(0, question.examples - examples.length)))
  }
  const rules = ruleChanges(before, after, { jurisdiction, publication }, dates)
  const review = reviewNeeded(after, addedAmendments(before, after))
  return { take, report: () => ({ rules, reviewNeeded: review, ...counted, outcomes: transitions(outcomes), verdicts: transitions(verdicts), examples: [...examples] }) }
}

/** The same over openings that are all at hand. Yields after each, so that the caller can give way; returns the whole. */
export function* impactOf(before: Catalog, after: Catalog, question: ImpactQuestion, openings: Iterable<TriedOpening>): Generator<number, Impact, undefined> {
  const tally = tallyImpact(before, after, question)
  let done = 0
  for (const opening of openings) {
    tally.take(opening)
    done += 1
    yield done
  }
  return tally.report()
}

function addedAmendments(before: Catalog, after: Catalog): readonly Amendment[] {
  const known = new Set(before.amendments.map(({ amendment }) => amendment))
  return after.amendments.filter(({ amendment }) => !known.has(amendment))
}

function add(counts: Map<string, number>, from: string, to: string): void {
  const key = `${from} ${to}`
  counts.set(key, (counts.get(key) ?? 0) + 1)
}

/** Most frequent first. */
function transitions<S extends string>(counts: ReadonlyMap<string, number>): readonly Transition<S>[] {
  return [...counts].toSorted(([a, m], [b, n]) => n - m || (a < b ? -1 : 1)).map(([key, count]) => {
    const [from, to] = key.split(' ') as [S, S]
    return { from, to, count }
  })
}
