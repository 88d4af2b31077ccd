import { z } from 'zod'
import { toMeasure, verdict, type Assessment } from '../evaluation/document.ts'
import { evaluate } from '../evaluation/evaluate.ts'
import { holdPointId } from '../opening/hold-points.ts'
import { openingBy, openingRecordOf, type Basis, type OpeningRecord } from '../record/opening-record.ts'
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
    notMet: z.array(text).meta({ description: 'Mandatory rules that are not met.' }),
    contradicted: z.array(text).meta({ description: 'Facts of which two readings disagree.' }),
    nextToMeasure: z.array(toMeasure).meta({ description: 'What to look at next, most telling first.' }),
    missing: z.array(text).meta({ description: 'What has to be known before it can be evaluated at all.' }),
  })
  .meta({ id: 'OpeningStanding' })

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
export function assessmentBy(deps: RecordDependencies, { jurisdiction, asOf, edition, publication }: Project, kept: OpeningRecord, basis: Basis): Answer<Assessment> {
  const opening = openingBy(basis, kept)
  if (!opening.ok) return failure('invalidInput', opening.problems)
  const ruleSet = resolvePlace(deps, { jurisdiction, asOf, edition, publication })
  return ruleSet.ok ? { ok: true, value: evaluate(opening.value, ruleSet.value, deps.catalog, basis === 'asDesigned' ? null : kept.holdPoint) } : ruleSet
}

/** How an opening stands, in a few words: as it was seen, and as it was drawn where nobody has looked yet. */
export function standingOf(deps: RecordDependencies, project: Project, opening: string, entries: readonly Entry[]): z.infer<typeof standingView> {
  const kept = openingRecordOf(opening, entries)
  const assessed = assessmentBy(deps, project, kept, 'asBuiltOverDesign')
  const contradicted = kept.facts.filter((one) => one.contradicted).map(({ fact, member }) => (member ? `${fact} ${member}` : fact))
  const plain = { opening, holdPoint: kept.holdPoint, contradicted }
  if (!assessed.ok) return { ...plain, reference: null, verdict: null, notMet: [], nextToMeasure: [], missing: assessed.problems.map(({ pointer }) => pointer.slice(1).replaceAll('/', '.')) }
  const { subject, summary, findings, nextToMeasure } = assessed.value
  const notMet = findings.filter(({ force, outcome }) => force === 'mandatory' && outcome === 'fail').map(({ rule }) => rule)
  return { ...plain, reference: subject.reference, verdict: summary.verdict, notMet, nextToMeasure: nextToMeasure.slice(0, shown), missing: [] }
}

const shown = 8
