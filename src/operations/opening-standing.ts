import { z } from 'zod'
import { toMeasure, verdict, type Assessment } from '../evaluation/document.ts'
import { evaluateInFull, type FullEvaluation } from '../evaluation/evaluate.ts'
import { nextToHide } from '../opening/facts.ts'
import { holdPointId } from '../opening/hold-points.ts'
import type { Opening } from '../opening/opening.ts'
import { openingBy, type Basis, type OpeningRecord } from '../record/opening-record.ts'
import { grantsOn, isCovered, verdictAsGranted } from '../record/waivers.ts'
import type { Entry, Project } from '../store/journal.ts'
import { failure, type Answer, type RecordDependencies } from './operation.ts'
import { resolvePlace } from './place.ts'

const text = z.string()

export const standingView = z
  .strictObject({
    opening: text,
    reference: text.nullable(),
    holdPoint: holdPointId.nullable().meta({ description: 'As far as the work is known to stand.' }),
    verdict: verdict.nullable().meta({ description: 'Of the opening as seen, and as drawn where nobody has looked yet; null while it is not described far enough.' }),
    verdictAsGranted: verdict.nullable().meta({ description: 'The same with waivers and modifications in force counted in.' }),
    notMet: z.array(text).meta({ description: 'Mandatory rules that are not met, waived or not.' }),
    waived: z.array(text).meta({ description: 'Rules not met or not decided that a waiver or a modification in force covers.' }),
    contradicted: z.array(text).meta({ description: 'Facts of which two readings disagree.' }),
    beforeCoverUp: z.array(toMeasure).meta({ description: 'What the next operation hides: look at it now.' }),
    nextToMeasure: z.array(toMeasure).meta({ description: 'What to look at next, most telling first.' }),
    missing: z.array(text).meta({ description: 'What has to be known before it can be evaluated at all.' }),
  })
  .meta({ id: 'OpeningStanding' })
export type Standing = z.infer<typeof standingView>

/** Everything on record of some openings. */
export async function entriesOf({ records }: RecordDependencies, project: string, openings: readonly string[]): Promise<ReadonlyMap<string, readonly Entry[]>> {
  const pairs = await Promise.all(openings.map(async (opening) => [opening, await allEntries(records, project, opening)] as const))
  return new Map(pairs)
}

const atATime = 1_000

async function allEntries(records: RecordDependencies['records'], project: string, opening: string): Promise<readonly Entry[]> {
  const entries: Entry[] = []
  for (;;) {
    const some = await records.readEntries(project, opening, entries.at(-1)?.sequence ?? 0, atATime)
    entries.push(...some)
    if (some.length < atATime) return entries
  }
}

/** An opening evaluated by one reading of its record, at the place and date of its project. */
export function assessmentBy(deps: RecordDependencies, project: Project, kept: OpeningRecord, basis: Basis): Answer<Assessment> {
  const evaluated = evaluatedBy(deps, project, kept, basis)
  return evaluated.ok ? { ok: true, value: evaluated.value.full.assessment } : evaluated
}

/** The same with the opening as it was read, and with its quantities. */
export function evaluatedBy(deps: RecordDependencies, { jurisdiction, asOf, edition, publication }: Project, kept: OpeningRecord, basis: Basis): Answer<{ readonly opening: Opening; readonly full: FullEvaluation }> {
  const opening = openingBy(basis, kept)
  if (!opening.ok) return failure('invalidInput', opening.problems)
  const ruleSet = resolvePlace(deps, { jurisdiction, asOf, edition, publication })
  return ruleSet.ok ? { ok: true, value: { opening: opening.value, full: evaluateInFull(opening.value, ruleSet.value, deps.catalog, basis === 'asDesigned' ? null : kept.holdPoint) } } : ruleSet
}

/** How an opening stands, in a few words, given what its record comes to as seen, and as drawn where nobody has looked yet. */
export function standingOf({ now }: RecordDependencies, kept: OpeningRecord, assessed: Answer<Assessment>): Standing {
  const { opening, holdPoint } = kept
  const contradicted = kept.facts.filter((one) => one.contradicted).map(({ fact, member }) => (member ? `${fact} ${member}` : fact))
  if (!assessed.ok) {
    const missing = assessed.problems.map(({ pointer }) => pointer.slice(1).replaceAll('/', '.'))
    return { opening, reference: null, holdPoint, verdict: null, verdictAsGranted: null, notMet: [], waived: [], contradicted, beforeCoverUp: [], nextToMeasure: [], missing }
  }
  const { subject, summary, findings, nextToMeasure } = assessed.value
  const grants = grantsOn(kept.waivers, now().toISOString())
  const next = holdPoint && nextToHide(holdPoint)
  return {
    opening, reference: subject.reference, holdPoint, verdict: summary.verdict, verdictAsGranted: verdictAsGranted(assessed.value, grants),
    notMet: findings.filter(({ force, outcome }) => force === 'mandatory' && outcome === 'fail').map(({ rule }) => rule),
    waived: findings.filter((finding) => isCovered(finding, grants)).map(({ rule }) => rule),
    contradicted,
    beforeCoverUp: next === null ? [] : nextToMeasure.filter(({ hiddenBy }) => hiddenBy === next),
    nextToMeasure: nextToMeasure.slice(0, shown),
    missing: [],
  }
}

const shown = 8
