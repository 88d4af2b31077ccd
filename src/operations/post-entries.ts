import { z } from 'zod'
import { digestOf } from '../catalog/digest.ts'
import { describeOpening } from '../opening/describe.ts'
import type { Problem } from '../opening/problem.ts'
import { entryInput, kindOf, unreadEntry, type EntryKind, type UnreadEntry } from '../record/entry.ts'
import { observationProblems } from '../record/observed.ts'
import { openingRecordOf } from '../record/opening-record.ts'
import { readinessAt } from '../record/readiness.ts'
import type { Appended, Entry, NewEntry, Project } from '../store/journal.ts'
import { assessmentBy, entriesOf, standingOf, standingView } from './opening-standing.ts'
import { failure, parseInput, type Answer, type RecordDependencies, type RecordOperation } from './operation.ts'
import { projectFor, projectId } from './projects.ts'

const text = z.string()

const posted = { entries: z.array(entryInput).min(1).max(500) }
const input = z.strictObject({ project: projectId, ...posted }).meta({ id: 'EntriesRequest' })
const unread = z.strictObject({ project: projectId, entries: z.array(z.unknown()).min(1).max(500) })

const problem = z.strictObject({ code: text, pointer: text, detail: text }).meta({ id: 'EntryProblem' })
const result = z
  .strictObject({
    id: text.nullable(),
    outcome: z.enum(['recorded', 'alreadyRecorded', 'refused']).meta({ id: 'EntryOutcome', description: 'On record now; on record since an earlier time; not taken, for the reasons given.' }),
    sequence: z.int().nullable().meta({ description: 'Its number in the journal of the project.' }),
    problems: z.array(problem),
  })
  .meta({ id: 'EntryResult' })

const output = z
  .strictObject({
    results: z.array(result).meta({ description: 'One for each entry, in the order sent.' }),
    openings: z.array(standingView).meta({ description: 'How each opening that was touched stands now.' }),
  })
  .meta({ id: 'EntriesAnswer' })

interface Taken {
  readonly index: number
  readonly kind: EntryKind
  readonly entry: UnreadEntry
  readonly fresh: NewEntry
}

/** Puts things on record. Each is taken or refused by itself, so that one bad reading does not hold back the others. */
export const postEntries: RecordOperation<typeof input, typeof output> = {
  name: 'postEntries',
  summary: 'Put things on record',
  description: 'Designs, observations, corrections, sign-offs, waivers and verifications, in any order, late or twice. Each is answered by itself; nothing that was taken is ever dropped or overwritten.',
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

type Answered = Answer<z.infer<typeof output>>

async function record(deps: RecordDependencies, project: Project, sent: readonly unknown[]): Promise<Answered> {
  const read = sent.map((one, index) => readEntry(project, one, index))
  const taken = read.flatMap((one) => ('fresh' in one ? [one] : []))
  const before = await entriesOf(deps, project.id, [...new Set(taken.map(({ entry }) => entry.opening))])
  const accepted: Taken[] = []
  const checked = taken.map((one) => {
    const problems = problemsAmong(deps, project, one, { all: taken, accepted, before })
    if (problems.length === 0) accepted.push(one)
    return { one, problems }
  })
  const appended = await deps.records.appendEntries(project.id, accepted.map(({ fresh }) => fresh), { receivedAt: deps.now().toISOString(), receivedBy: deps.caller.token ?? '', posting: deps.newId() })
  if (!appended) return failure('notFound', [{ code: 'notFound', pointer: '/project', detail: 'The project is gone.' }])
  const refused = new Map(checked.flatMap(({ one, problems }) => (problems.length > 0 ? [[one.index, problems] as const] : [])))
  const placed = new Map(accepted.map(({ index }, order) => [index, appended[order]] as const))
  const results = sent.map((one, index) => resultOf(one, read[index], refused.get(index), placed.get(index)))
  const touched = [...new Set(accepted.map(({ entry }) => entry.opening))]
  const after = await entriesOf(deps, project.id, touched)
  return { ok: true, value: { results, openings: touched.map((opening) => standingOf(deps, project, opening, after.get(opening) ?? [])) } }
}

type Read = Taken | { readonly problems: readonly Problem[] }

function readEntry(project: Project, sent: unknown, index: number): Read {
  const parsed = parseInput(unreadEntry, sent)
  if (!parsed.ok) return { problems: parsed.problems }
  const kind = kindOf(parsed.value)
  if (!kind) return { problems: [{ code: 'notAllowed', pointer: '', detail: 'must hold exactly one of design, observation, correction, signOff, waiver and verification' }] }
  const entry = parsed.value
  const problems = ownProblems(entry)
  if (problems.length > 0) return { problems }
  return { index, kind, entry, fresh: { id: entry.id, opening: entry.opening, kind, body: entry, digest: digestOf({ project: project.id, entry: sent }) } }
}

function ownProblems({ observation, design }: UnreadEntry): readonly Problem[] {
  if (observation) return observationProblems(observation).map((one) => ({ ...one, pointer: `/observation${one.pointer}` }))
  if (!design) return []
  const described = describeOpening(design.description)
  return described.ok ? [] : described.problems.map((one) => ({ ...one, pointer: `/design/description${one.pointer}` }))
}

/** What stands beside an entry: all of its posting, what of it was accepted so far, and what was on record before. */
interface Beside {
  readonly all: readonly Taken[]
  readonly accepted: readonly Taken[]
  readonly before: ReadonlyMap<string, readonly Entry[]>
}

/** What depends on other entries: a design that another has replaced, a sign-off of what is not ready. What is on record already is not judged again. */
function problemsAmong(deps: RecordDependencies, project: Project, { kind, entry, fresh }: Taken, { all, accepted, before }: Beside): readonly Problem[] {
  const earlier = before.get(entry.opening) ?? []
  if ([...earlier, ...accepted.map((one) => one.fresh)].some(({ id }) => id === fresh.id)) return []
  if (kind === 'design') return designProblems(entry, [...earlier, ...batchOf(accepted, entry.opening)])
  return kind === 'signOff' ? signOffProblems(deps, project, entry, [...earlier, ...batchOf(all, entry.opening)]) : []
}

/** Entries of the same posting as they will stand, so that what is seen and signed off together goes together. */
function batchOf(all: readonly Taken[], opening: string) {
  return all.filter(({ entry, kind }) => entry.opening === opening && kind !== 'signOff').map(({ fresh }, index) => ({ ...fresh, sequence: Number.MAX_SAFE_INTEGER - all.length + index, receivedAt: '' }))
}

function designProblems({ opening, design }: UnreadEntry, earlier: Parameters<typeof openingRecordOf>[1]): readonly Problem[] {
  const current = openingRecordOf(opening, earlier).designs.at(-1)?.version ?? null
  if ((design?.replaces ?? null) === current) return []
  const detail = current === null ? 'There is no design to replace; leave it out for the first.' : `The design on record is ${current}. Read it, and name it in "replaces".`
  return [{ code: 'versionStale', pointer: '/design/replaces', detail }]
}

function signOffProblems(deps: RecordDependencies, project: Project, { opening, signOff, at }: UnreadEntry, entries: Parameters<typeof openingRecordOf>[1]): readonly Problem[] {
  if (!signOff || (signOff.reason ?? null) !== null) return []
  const kept = openingRecordOf(opening, entries)
  const assessed = assessmentBy(deps, project, kept, 'asBuilt')
  if (!assessed.ok) return [{ code: 'notReady', pointer: '/signOff/reason', detail: 'The opening is not described far enough to be evaluated. Say why it is signed off all the same.' }]
  const { ready, undecided, notMet } = readinessAt(signOff.holdPoint, assessed.value, kept.waivers, at)
  if (ready) return []
  const open = [...(undecided.length > 0 ? [`not decided: ${undecided.join(', ')}`] : []), ...(notMet.length > 0 ? [`not met: ${notMet.join(', ')}`] : [])]
  return [{ code: 'notReady', pointer: '/signOff/reason', detail: `Mandatory at this hold point and ${open.join('; ')}. Say why it is signed off all the same.` }]
}

function resultOf(sent: unknown, read: Read | undefined, refused: readonly Problem[] | undefined, appended: Appended | undefined): z.infer<typeof result> {
  const id = typeof sent === 'object' && sent !== null && 'id' in sent && typeof sent.id === 'string' ? sent.id : null
  const problems = refused ?? (read && 'problems' in read ? read.problems : [])
  if (problems.length > 0 || !appended) return { id, outcome: 'refused', sequence: null, problems: problems.map((one) => ({ ...one })) }
  if (appended.outcome === 'idTaken') return { id, outcome: 'refused', sequence: null, problems: [{ code: 'idTaken', pointer: '/id', detail: 'Another entry has this id. What is on record is never changed: make a new id, or a correction.' }] }
  return { id, outcome: appended.outcome, sequence: appended.entry.sequence, problems: [] }
}
