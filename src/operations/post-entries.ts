import { z } from 'zod'
import { outcome } from '../catalog/rule.ts'
import type { Problem } from '../opening/problem.ts'
import { entryInput } from '../record/entry.ts'
import type { Appended, Project } from '../store/journal.ts'
import { recordEvents } from './events.ts'
import { judgeEntries, type Judged } from './judge-entries.ts'
import { outlookAfter } from './opening-outlook.ts'
import { entriesOf, standingView } from './opening-standing.ts'
import { failure, notFound, parseInput, type Answer, type RecordDependencies, type RecordOperation } from './operation.ts'
import { projectFor, projectId } from './projects.ts'
import { readEntry, type Read, type ReadEntry } from './read-entry.ts'

const text = z.string()

const posted = { entries: z.array(entryInput).min(1).max(500) }
const input = z.strictObject({ project: projectId, ...posted }).meta({ id: 'EntriesRequest' })
const unread = z.strictObject({ project: projectId, entries: z.array(z.unknown()).min(1).max(500) })

const problem = z.strictObject({ code: text, pointer: text, detail: text }).meta({ id: 'EntryProblem' })
export const entryResult = z
  .strictObject({
    id: text.nullable(),
    outcome: z.enum(['recorded', 'alreadyRecorded', 'refused']).meta({ id: 'EntryOutcome', description: 'On record now; on record since an earlier time; not taken, for the reasons given.' }),
    sequence: z.int().nullable().meta({ description: 'Its number in the journal of the project.' }),
    problems: z.array(problem),
  })
  .meta({ id: 'EntryResult' })
export type EntryResult = z.infer<typeof entryResult>

const outcomeChange = z
  .strictObject({ rule: text, title: text, member: z.enum(['left', 'right']).nullable(), before: outcome.nullable().meta({ description: 'Null where it was not judged before.' }), after: outcome })
  .meta({ id: 'OutcomeChange' })

const output = z
  .strictObject({
    results: z.array(entryResult).meta({ description: 'One for each entry, in the order sent.' }),
    openings: z
      .array(z.strictObject({ standing: standingView, changed: z.array(outcomeChange).meta({ description: 'What comes out otherwise than before this posting.' }) }).meta({ id: 'OpeningAfterPosting' }))
      .meta({ description: 'Each opening that was touched, as it stands now.' }),
  })
  .meta({ id: 'EntriesAnswer' })
export type EntriesAnswer = z.infer<typeof output>

/** Puts things on record. Each is taken or refused by itself, so that one bad reading does not hold back the others. */
export const postEntries: RecordOperation<typeof input, typeof output> = {
  name: 'postEntries',
  cost: { units: 3, each: 'entries' },
  makes: true,
  summary: 'Put things on record',
  description: 'Designs, observations, corrections, sign-offs, waivers, remedies and verifications, in any order, late or twice. Each is answered by itself; nothing that was taken is ever dropped or overwritten.',
  input,
  output,
  run: async (outer, raw) => {
    const deps = { ...outer, catalog: outer.active.state.catalog }
    const request = parseInput(unread, raw)
    if (!request.ok) return request
    const project = await projectFor(deps, request.value.project)
    return project.ok ? record(deps, project.value, request.value.entries) : project
  },
}

/** How often a posting is judged anew because somebody else was faster on the same opening. */
const mostTries = 25

async function record(deps: RecordDependencies, project: Project, sent: readonly unknown[]): Promise<Answer<EntriesAnswer>> {
  const read = sent.map((one, index) => readEntry(project.id, one, index))
  const readable = read.flatMap((one) => ('fresh' in one ? [one] : []))
  const received = { receivedAt: deps.now().toISOString(), receivedBy: deps.caller.token ?? '', posting: deps.newId() }
  for (let tries = 0; tries < mostTries; tries += 1) {
    const before = await entriesOf(deps, project.id, openingsOf(readable))
    const judged = judgeEntries(deps, project, readable, before)
    const outlook = await outlookAfter(deps, project, { before, accepted: judged.accepted.map(({ fresh }) => fresh) })
    const eventsOf = (appended: readonly Appended[]) => recordEvents(deps, project.id, outlook(appended), received.receivedAt)
    const appending = await deps.records.appendEntries(project.id, judged.accepted.map(({ fresh }) => fresh), received, judged.seen, eventsOf)
    if (appending.ok) return { ok: true, value: { results: resultsOf(sent, read, judged, appending.appended), openings: outlook(appending.appended).map(({ standing, changed }) => ({ standing, changed: [...changed] })) } }
    if (appending.reason === 'absent') return notFound('project', project.id)
  }
  return failure('recordBusy', [{ code: 'recordBusy', pointer: '', detail: 'Others put on record at the same openings, faster than this could be judged. Nothing of it was taken; send it again.' }])
}

function openingsOf(entries: readonly ReadEntry[]): readonly string[] {
  return [...new Set(entries.map(({ entry }) => entry.opening))]
}

function resultsOf(sent: readonly unknown[], read: readonly Read[], { accepted, refused }: Judged, appended: readonly Appended[]): EntryResult[] {
  const placed = new Map(accepted.map(({ index }, order) => [index, appended[order]] as const))
  return sent.map((one, index) => {
    const own = read[index]
    return resultOf(idOf(one), own && 'problems' in own ? own.problems : (refused.get(index) ?? []), placed.get(index))
  })
}

function resultOf(id: string | null, problems: readonly Problem[], appended: Appended | undefined): EntryResult {
  if (problems.length > 0 || !appended) return { id, outcome: 'refused', sequence: null, problems: problems.map((one) => ({ ...one })) }
  if (appended.outcome === 'idTaken') return { id, outcome: 'refused', sequence: null, problems: [{ code: 'idTaken', pointer: '/id', detail: 'Another entry has this id. What is on record is never changed: make a new id, or a correction.' }] }
  return { id, outcome: appended.outcome, sequence: appended.entry.sequence, problems: [] }
}

function idOf(sent: unknown): string | null {
  return typeof sent === 'object' && sent !== null && 'id' in sent && typeof sent.id === 'string' ? sent.id : null
}
