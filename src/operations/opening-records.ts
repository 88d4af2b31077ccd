import { z } from 'zod'
import { evaluation, type Assessment } from '../evaluation/document.ts'
import { digestOfAssessment } from '../evaluation/evaluate.ts'
import { builtOtherwise } from '../record/differences.ts'
import { openingId } from '../record/entry.ts'
import { missesOver, type Look } from '../record/finding-history.ts'
import { nonConformances } from '../record/non-conformance.ts'
import { bases, openingBy, openingRecordOf, type OpeningRecord } from '../record/opening-record.ts'
import { readinessAt } from '../record/readiness.ts'
import { grantsOn } from '../record/waivers.ts'
import { brokenLink, chainStart, type Entry, type Project } from '../store/journal.ts'
import { assessmentBy, entriesOf, standingOf, standingView } from './opening-standing.ts'
import { defineRecordOperation, notFound, type Answer, type RecordDependencies } from './operation.ts'
import { projectFor, projectId } from './projects.ts'
import { factRecordOf, factRecordView, grantOf, grantView, keptEntry, keptOf, nonConformanceOf, nonConformanceView, otherwiseView, signOffOf, signOffView } from './record-views.ts'

const text = z.string()

const recordView = z
  .strictObject({
    project: text,
    standing: standingView,
    designVersion: text.nullable().meta({ description: 'What the next revision of the design has to name.' }),
    facts: z.array(factRecordView),
    builtOtherwise: z.array(otherwiseView).meta({ description: 'Where what was seen is not what was drawn.' }),
    nonConformances: z.array(nonConformanceView).meta({ description: 'Every miss there ever was, as it stands now.' }),
    signOffs: z.array(signOffView),
    grants: z.array(grantView).meta({ description: 'Waivers and modifications, in force or run out.' }),
    entries: z.array(keptEntry).meta({ description: 'All but observations, in the order in which they arrived; what was corrected, too.' }),
  })
  .meta({ id: 'OpeningRecord' })

const which = { project: projectId, opening: openingId }

export const readOpeningRecord = defineRecordOperation({
  name: 'readOpeningRecord',
  cost: { units: 20 },
  summary: 'Read the record of an opening',
  description: 'What was drawn, what was seen and by whom, where the two differ, where two readings contradict each other, and how every miss stands.',
  input: z.strictObject(which),
  output: recordView,
  answer: async (deps, { project: id, opening }) => {
    const found = await openingFor(deps, id, opening)
    if (!found.ok) return found
    const { project, entries } = found.value
    const { looks, record, assessed } = await looksOf(deps, project, opening, entries)
    const [designed, built] = [openingBy('asDesigned', record), openingBy('asBuilt', record)]
    const grants = grantsOn(record.waivers, deps.now().toISOString())
    const misses = missesOver(opening, looks)
    const seen = assessmentBy(deps, project, record, 'asBuilt')
    return {
      ok: true,
      value: {
        project: project.id,
        standing: standingOf(deps, record, assessed),
        designVersion: record.designs.at(-1)?.version ?? null,
        facts: record.facts.map(factRecordOf),
        builtOtherwise: designed.ok && built.ok ? [...builtOtherwise(designed.value, built.value)] : [],
        nonConformances: nonConformances(misses, looks.at(-1)?.findings ?? [], record, grants).map(nonConformanceOf),
        signOffs: record.signOffs.map((signOff) => signOffOf(signOff, seen.ok ? readinessAt(signOff.held.holdPoint, seen.value, grants).ready : null)),
        grants: grants.map(grantOf),
        entries: entries.filter(({ kind }) => kind !== 'observation').map(keptOf),
      },
    }
  },
})

export const evaluateRecordedOpening = defineRecordOperation({
  name: 'evaluateRecordedOpening',
  cost: { units: 6 },
  summary: 'Evaluate an opening by its record',
  description: 'As it was drawn, as it was seen, or as it was seen with the drawing where nobody has looked yet.',
  input: z.strictObject({ ...which, basis: z.enum(bases).meta({ description: 'By which reading of the record.' }) }),
  output: evaluation,
  answer: async (deps, { project: id, opening, basis }) => {
    const found = await openingFor(deps, id, opening)
    if (!found.ok) return found
    const assessed = assessmentBy(deps, found.value.project, openingRecordOf(opening, found.value.entries), basis)
    if (!assessed.ok) return assessed
    deps.tally?.evaluated(assessed.value)
    return { ok: true, value: { id: deps.newId(), evaluatedAt: deps.now().toISOString(), ...assessed.value, digest: digestOfAssessment(assessed.value) } }
  },
})

const journalEntry = z
  .strictObject({ sequence: z.int(), id: text, opening: text, kind: text, digest: text, judged: text.nullable().meta({ description: 'What the service found when it took the entry in, as JSON text.' }), chain: text, receivedAt: text, receivedBy: text, posting: text, content: text.meta({ description: 'The entry as JSON text.' }) })
  .meta({ id: 'JournalEntry' })

export const readJournal = defineRecordOperation({
  name: 'readJournal',
  summary: 'Read the journal of a project',
  description: 'Every entry in the order in which it arrived, chained to the one before. Whoever keeps the last link can tell later whether anything was changed, taken out or put in between.',
  input: z.strictObject({ project: projectId, after: z.coerce.number().int().min(0).nullish().meta({ description: 'Entries after this sequence.' }), first: z.coerce.number().int().min(1).max(1_000).nullish().meta({ description: 'How many to answer at most; 100 when left out.' }) }),
  output: z.strictObject({ items: z.array(journalEntry), holds: z.boolean().meta({ description: 'The links of these entries were worked out anew and hold.' }) }).meta({ id: 'JournalPage' }),
  answer: async (deps, { project, after, first }) => {
    const found = await projectFor(deps, project)
    if (!found.ok) return found
    const from = after ?? 0
    const entries = await deps.records.readEntries(project, null, from, first ?? 100)
    const before = from === 0 ? chainStart : (await deps.records.readEntries(project, null, from - 1, 1))[0]?.chain
    const holds = before !== undefined && brokenLink(entries, before) === undefined
    return { ok: true, value: { holds, items: entries.map(journalView) } }
  },
})

function journalView({ sequence, id, opening, kind, digest, judged, chain, receivedAt, receivedBy, posting, body }: Entry): z.infer<typeof journalEntry> {
  return { sequence, id, opening, kind, digest, judged: judged === null ? null : JSON.stringify(judged), chain, receivedAt, receivedBy, posting, content: JSON.stringify(body) }
}

interface Found {
  readonly project: Project
  readonly entries: readonly Entry[]
}

/** An opening with everything on record of it, for a caller who may record. */
export async function openingFor(deps: RecordDependencies, id: string, opening: string): Promise<Answer<Found>> {
  const project = await projectFor(deps, id)
  if (!project.ok) return project
  const entries = (await entriesOf(deps, id, [opening])).get(opening) ?? []
  return entries.length > 0 ? { ok: true, value: { project: project.value, entries } } : notFound('opening', opening)
}

/** As many postings are looked back on; of a longer record the earlier ones go together as the first look. */
const mostLooks = 100

interface LookedBack {
  readonly looks: readonly Look[]
  /** All that is on record, and what it comes to: that is the last look. */
  readonly record: OpeningRecord
  readonly assessed: Answer<Assessment>
}

/** One look for each posting, with everything that had arrived by then. */
export async function looksOf(deps: RecordDependencies, project: Project, opening: string, entries: readonly Entry[]): Promise<LookedBack> {
  const record = openingRecordOf(opening, entries)
  const assessed = assessmentBy(deps, project, record, 'asBuiltOverDesign')
  const looks: Look[] = []
  for (const last of lastOfPostings(entries)) {
    const then = last === entries.length - 1 ? assessed : assessmentBy(deps, project, openingRecordOf(opening, entries.slice(0, last + 1)), 'asBuiltOverDesign')
    if (then.ok) looks.push({ at: entries[last]?.receivedAt ?? '', findings: then.value.findings })
    await deps.giveWay()
  }
  return { looks, record, assessed }
}

/** Where the last entry of each posting stands. */
function lastOfPostings(entries: readonly Entry[]): readonly number[] {
  const lasts = new Map(entries.map(({ posting }, index) => [posting, index]))
  return [...lasts.values()].slice(-mostLooks)
}
