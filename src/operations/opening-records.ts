import { z } from 'zod'
import { evaluation } from '../evaluation/document.ts'
import { digestOfAssessment } from '../evaluation/evaluate.ts'
import { holdPointId } from '../opening/hold-points.ts'
import { entryKinds, observationMethod, openingId, type EntryKind } from '../record/entry.ts'
import { builtOtherwise } from '../record/differences.ts'
import type { Observed } from '../record/observed.ts'
import { bases, openingBy, openingRecordOf, type OpeningRecord } from '../record/opening-record.ts'
import { missesOver, type Look } from '../record/finding-history.ts'
import { brokenLink, chainStart, type Entry, type Project } from '../store/journal.ts'
import { assessmentBy, entriesOf, standingOf, standingView } from './opening-standing.ts'
import { defineRecordOperation, notFound, type Answer, type RecordDependencies } from './operation.ts'
import { projectFor, projectId } from './projects.ts'

const text = z.string()
const end = z.enum(['left', 'right']).nullable()

const readingView = z
  .strictObject({ entry: text, value: text, method: observationMethod, holdPoint: holdPointId, at: text, by: text })
  .meta({ id: 'ReadingView' })
const factRecordView = z
  .strictObject({ fact: text, member: end, governs: readingView, earlier: z.array(readingView), contradicted: z.boolean().meta({ description: 'An earlier reading says something else, beyond what the tapes can tell.' }) })
  .meta({ id: 'FactRecord' })
const otherwise = z.strictObject({ fact: text, member: end, designed: text, built: text }).meta({ id: 'BuiltOtherwise' })
const miss = z
  .strictObject({
    fingerprint: text.meta({ description: 'The same for the same rule at the same end of the same opening, however often it is looked at.' }),
    rule: text, member: end,
    status: z.enum(['new', 'unchanged', 'reopened', 'open', 'settled']).meta({ id: 'MissStatus', description: 'open: it was missed, and whether it still is cannot be told.' }),
    since: text, changed: text,
  })
  .meta({ id: 'Miss' })
const kept = z.strictObject({ entry: text, kind: z.enum(Object.keys(entryKinds) as [EntryKind, ...EntryKind[]]).meta({ id: 'EntryKind' }), at: text, by: text, content: text.meta({ description: 'The entry as JSON text.' }) }).meta({ id: 'KeptEntry' })

const recordView = z
  .strictObject({
    project: text,
    standing: standingView,
    designVersion: text.nullable().meta({ description: 'What the next revision of the design has to name.' }),
    facts: z.array(factRecordView),
    builtOtherwise: z.array(otherwise).meta({ description: 'Where what was seen is not what was drawn.' }),
    misses: z.array(miss).meta({ description: 'Every miss there ever was, as it stands now.' }),
    entries: z.array(kept).meta({ description: 'Designs, corrections, sign-offs, waivers and verifications, in the order in which they arrived.' }),
  })
  .meta({ id: 'OpeningRecord' })

const which = { project: projectId, opening: openingId }

export const readOpeningRecord = defineRecordOperation({
  name: 'readOpeningRecord',
  summary: 'Read the record of an opening',
  description: 'What was drawn, what was seen and by whom, where the two differ, where two readings contradict each other, and how every miss stands.',
  input: z.strictObject(which),
  output: recordView,
  answer: async (deps, { project: id, opening }) => {
    const found = await openingFor(deps, id, opening)
    if (!found.ok) return found
    const { project, entries } = found.value
    const record = openingRecordOf(opening, entries)
    const [designed, built] = [openingBy('asDesigned', record), openingBy('asBuilt', record)]
    return {
      ok: true,
      value: {
        project: project.id,
        standing: standingOf(deps, project, opening, entries),
        designVersion: record.designs.at(-1)?.version ?? null,
        facts: record.facts.map(({ fact, member, governs, earlier, contradicted }) => ({ fact, member, governs: readingOf(governs), earlier: earlier.map(readingOf), contradicted })),
        builtOtherwise: designed.ok && built.ok ? [...builtOtherwise(designed.value, built.value)] : [],
        misses: [...missesOver(opening, await looksOf(deps, project, opening, entries))],
        entries: entries.filter(({ kind }) => kind !== 'observation').map(keptOf),
      },
    }
  },
})

export const evaluateRecordedOpening = defineRecordOperation({
  name: 'evaluateRecordedOpening',
  summary: 'Evaluate an opening by its record',
  description: 'As it was drawn, as it was seen, or as it was seen with the drawing where nobody has looked yet.',
  input: z.strictObject({ ...which, basis: z.enum(bases).meta({ description: 'By which reading of the record.' }) }),
  output: evaluation,
  answer: async (deps, { project: id, opening, basis }) => {
    const found = await openingFor(deps, id, opening)
    if (!found.ok) return found
    const assessed = assessmentBy(deps, found.value.project, openingRecordOf(opening, found.value.entries), basis)
    if (!assessed.ok) return assessed
    return { ok: true, value: { id: deps.newId(), evaluatedAt: deps.now().toISOString(), ...assessed.value, digest: digestOfAssessment(assessed.value) } }
  },
})

const journalEntry = z
  .strictObject({ sequence: z.int(), id: text, opening: text, kind: text, digest: text, chain: text, receivedAt: text, receivedBy: text, posting: text, content: text.meta({ description: 'The entry as JSON text.' }) })
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

function journalView({ sequence, id, opening, kind, digest, chain, receivedAt, receivedBy, posting, body }: Entry): z.infer<typeof journalEntry> {
  return { sequence, id, opening, kind, digest, chain, receivedAt, receivedBy, posting, content: JSON.stringify(body) }
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

/** One look for each posting, with everything that had arrived by then. */
async function looksOf(deps: RecordDependencies, project: Project, opening: string, entries: readonly Entry[]): Promise<readonly Look[]> {
  const postings = [...new Set(entries.map(({ posting }) => posting))].slice(-mostLooks)
  const looks: Look[] = []
  for (const posting of postings) {
    const last = entries.findLastIndex((entry) => entry.posting === posting)
    const record: OpeningRecord = openingRecordOf(opening, entries.slice(0, last + 1))
    const assessed = assessmentBy(deps, project, record, 'asBuiltOverDesign')
    if (assessed.ok) looks.push({ at: entries[last]?.receivedAt ?? '', findings: assessed.value.findings })
    await deps.giveWay()
  }
  return looks
}

function readingOf({ entry, reading, method, holdPoint, at, by }: Observed): z.infer<typeof readingView> {
  return { entry, value: reading.text, method, holdPoint, at, by }
}

function keptOf({ id, kind, body }: Entry): z.infer<typeof kept> {
  const { at, by } = body as { at: string; by: string }
  return { entry: id, kind: kind as EntryKind, at, by, content: JSON.stringify(body) }
}
