import type { Problem } from '../opening/problem.ts'
import type { UnreadEntry } from '../record/entry.ts'
import { openingRecordOf, type RecordedEntry } from '../record/opening-record.ts'
import { groundOf, type SignOffGround } from '../record/sign-off.ts'
import { grantsOn } from '../record/waivers.ts'
import type { Entry, NewEntry, Project, Seen } from '../store/journal.ts'
import { assessmentBy } from './opening-standing.ts'
import type { RecordDependencies } from './operation.ts'
import type { ReadEntry } from './read-entry.ts'

export interface Judged {
  /** To be appended, in the order sent. */
  readonly accepted: readonly (ReadEntry & { readonly fresh: NewEntry })[]
  /** Problems by the place in what was sent. */
  readonly refused: ReadonlyMap<number, readonly Problem[]>
  /** By what they were judged, and what follows from them foreseen; it must not have grown when they are appended. */
  readonly seen: Seen
}

type Verdict = { readonly problems: readonly Problem[] } | { readonly judged: SignOffGround | null }

/**
 * What depends on other entries: a design that another has replaced, a correction of what cannot be corrected, a sign-off of
 * what is not ready. Sign-offs are judged last, by everything else of the same posting that is taken: what is seen and signed
 * off together goes together. What is on record already is not judged again.
 */
export function judgeEntries(deps: RecordDependencies, project: Project, read: readonly ReadEntry[], before: ReadonlyMap<string, readonly Entry[]>): Judged {
  const accepted: ReadEntry[] = []
  const refused = new Map<number, readonly Problem[]>()
  const seen = new Map<string, number>()
  const signOffsLast = [...read.filter(({ kind }) => kind !== 'signOff'), ...read.filter(({ kind }) => kind === 'signOff')]
  for (const one of signOffsLast) {
    const { opening } = one.entry
    const earlier = before.get(opening) ?? []
    const known = [...earlier, ...accepted.map(({ fresh }) => fresh)].some(({ id }) => id === one.fresh.id)
    const verdict = known ? { judged: null } : verdictOn(deps, project, one, [...earlier, ...asRecorded(accepted, opening)])
    if ('problems' in verdict) refused.set(one.index, verdict.problems)
    else accepted.push({ ...one, fresh: { ...one.fresh, judged: verdict.judged } })
    if (!known) seen.set(opening, earlier.at(-1)?.sequence ?? 0)
  }
  return { accepted: accepted.toSorted((a, b) => a.index - b.index), refused, seen }
}

/** Entries of this posting as they will stand. */
function asRecorded(accepted: readonly ReadEntry[], opening: string): readonly RecordedEntry[] {
  return accepted.filter(({ entry }) => entry.opening === opening).map(({ fresh }, index) => ({ ...fresh, sequence: Number.MAX_SAFE_INTEGER - accepted.length + index, receivedAt: '' }))
}

function verdictOn(deps: RecordDependencies, project: Project, { kind, entry }: ReadEntry, earlier: readonly RecordedEntry[]): Verdict {
  if (kind === 'signOff') return verdictOnSignOff(deps, project, entry, earlier)
  const problems = kind === 'design' ? designProblems(entry, earlier) : kind === 'correction' ? correctionProblems(entry, earlier) : []
  return problems.length > 0 ? { problems } : { judged: null }
}

function designProblems({ opening, design }: UnreadEntry, earlier: readonly RecordedEntry[]): readonly Problem[] {
  const current = openingRecordOf(opening, earlier).designs.at(-1)?.version ?? null
  if ((design?.replaces ?? null) === current) return []
  const detail = current === null ? 'There is no design to replace; leave it out for the first.' : `The design on record is ${current}. Read it, and name it in "replaces".`
  return [{ code: 'versionStale', pointer: '/design/replaces', detail }]
}

/** A correction may arrive before what it corrects. */
function correctionProblems({ correction }: UnreadEntry, earlier: readonly RecordedEntry[]): readonly Problem[] {
  const kind = earlier.find(({ id }) => id === correction?.entry)?.kind
  if (kind === 'design') return [{ code: 'notAllowed', pointer: '/correction/entry', detail: 'is a design. Post the next revision, which replaces it.' }]
  if (kind === 'correction') return [{ code: 'notAllowed', pointer: '/correction/entry', detail: 'is a correction itself. Post anew what it took out of account.' }]
  return []
}

function verdictOnSignOff(deps: RecordDependencies, project: Project, { opening, signOff, at }: UnreadEntry, entries: readonly RecordedEntry[]): Verdict {
  if (!signOff) throw new Error('a sign-off without one was read')
  const given = (signOff.reason ?? null) !== null
  const kept = openingRecordOf(opening, entries)
  const assessed = assessmentBy(deps, project, kept, 'asBuilt')
  if (!assessed.ok) return given ? { judged: null } : refusedSignOff('The opening is not described far enough to be evaluated.')
  const ground = groundOf(signOff.holdPoint, assessed.value, grantsOn(kept.waivers, at))
  if (ground.ready || given) return { judged: ground }
  const lists = [['not decided', ground.undecided], ['not met', ground.notMet]] as const
  return refusedSignOff(`Mandatory at this hold point and ${lists.flatMap(([title, rules]) => (rules.length > 0 ? [`${title}: ${rules.join(', ')}`] : [])).join('; ')}.`)
}

function refusedSignOff(why: string): Verdict {
  return { problems: [{ code: 'notReady', pointer: '/signOff/reason', detail: `${why} Say why it is signed off all the same.` }] }
}
