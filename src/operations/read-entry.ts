import { digestOf } from '../catalog/digest.ts'
import { describeOpening } from '../opening/describe.ts'
import type { Problem } from '../opening/problem.ts'
import { entryKinds, kindOf, unreadEntry, type EntryKind, type UnreadEntry } from '../record/entry.ts'
import { observationProblems } from '../record/observed.ts'
import type { NewEntry } from '../store/journal.ts'
import { parseInput } from './operation.ts'

/** An entry that can be read by itself; whether it is taken may depend on others. */
export interface ReadEntry {
  /** Its place in what was sent. */
  readonly index: number
  readonly kind: EntryKind
  readonly entry: UnreadEntry
  readonly fresh: NewEntry
}

export type Read = ReadEntry | { readonly problems: readonly Problem[] }

export function readEntry(project: string, sent: unknown, index: number): Read {
  const parsed = parseInput(unreadEntry, sent)
  if (!parsed.ok) return { problems: parsed.problems }
  const entry = parsed.value
  const kind = kindOf(entry)
  if (!kind) return { problems: [{ code: 'notAllowed', pointer: '', detail: `must hold exactly one of ${Object.keys(entryKinds).join(', ')}` }] }
  const problems = ownProblems(entry)
  if (problems.length > 0) return { problems }
  return { index, kind, entry, fresh: { id: entry.id, opening: entry.opening, kind, body: entry, digest: digestOf({ project, entry: sent }), judged: null } }
}

function ownProblems({ observation, design }: UnreadEntry): readonly Problem[] {
  if (observation) return observationProblems(observation).map((one) => ({ ...one, pointer: `/observation${one.pointer}` }))
  if (!design) return []
  const described = describeOpening(design.description)
  return described.ok ? [] : described.problems.map((one) => ({ ...one, pointer: `/design/description${one.pointer}` }))
}
