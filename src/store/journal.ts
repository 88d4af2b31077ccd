import { digestOf, digestOfText } from '../catalog/digest.ts'
import type { NewEvent } from './outbox.ts'

/** A building whose openings are recorded, with the place and date that its permit fixes. */
export interface Project {
  readonly id: string
  readonly title: string
  readonly jurisdiction: string | null
  /** The permit application date, which selects the rules. */
  readonly asOf: string
  readonly edition: string | null
  readonly publication: string | null
  /** Changes with the content; a change has to name it. */
  readonly version: string
  readonly createdAt: string
  readonly changedAt: string
}

/** One thing that was put on record, before it has its place in the journal. The id is the client's, so that the same thing sent twice is one. */
export interface NewEntry {
  readonly id: string
  readonly opening: string
  readonly kind: string
  readonly body: unknown
  /** SHA-256 over what the client sent: the same thing sent again has the same. */
  readonly digest: string
  /** What the service found when it took the entry in; null where it had nothing to judge. */
  readonly judged: unknown
}

/** An entry in its place. Entries are numbered without a gap for each project, and each is chained to the one before. */
export interface Entry extends NewEntry {
  readonly project: string
  readonly sequence: number
  /** SHA-256 over the chain before, this digest, the body and what was judged: nothing can be changed, taken out or put in between without breaking it. */
  readonly chain: string
  readonly receivedAt: string
  /** The id of the token that sent it. */
  readonly receivedBy: string
  /** What was sent together has the same. */
  readonly posting: string
}

/** What became of one entry: put on record now, on record already, or refused because another entry has its id. */
export type Appended =
  | { readonly outcome: 'recorded'; readonly entry: Entry }
  | { readonly outcome: 'alreadyRecorded'; readonly entry: Entry }
  | { readonly outcome: 'idTaken' }

export interface Received {
  readonly receivedAt: string
  readonly receivedBy: string
  readonly posting: string
}

/** The last sequence of each opening against whose record the entries were judged; 0 where there was none. */
export type Seen = ReadonlyMap<string, number>

/** What became of all; or nothing was appended, because there is no such project or a record that was judged by has grown meanwhile. */
export type Appending = { readonly ok: true; readonly appended: readonly Appended[] } | { readonly ok: false; readonly reason: 'absent' | 'grown' }

/** The events that follow from what became of entries. Called inside the transaction: it must be quick. */
export type EventsOf = (appended: readonly Appended[]) => readonly NewEvent[]

export type ProjectChange = { readonly ok: true; readonly project: Project } | { readonly ok: false; readonly reason: 'absent' | 'stale' }

/** The chain before the first entry. */
export const chainStart = 'sha256:'

/** The chain after an entry. */
export function linkOf(chain: string, { digest, body, judged }: Pick<NewEntry, 'digest' | 'body' | 'judged'>): string {
  return digestOfText([chain, digest, digestOf(body), ...(judged === null ? [] : [digestOf(judged)])].join('\n'))
}

/** The sequence of the first entry at which the chain from `chain` on is broken; undefined when it holds. */
export function brokenLink(entries: readonly Entry[], chain: string): number | undefined {
  const links = entries.map((entry, index) => linkOf(entries[index - 1]?.chain ?? chain, entry))
  return entries.find((entry, index) => entry.chain !== links[index])?.sequence
}

/** Projects and what was recorded on them: nothing in a journal is ever changed or deleted. */
export interface Journal {
  /** False when the id is taken. */
  createProject(project: Project, events?: readonly NewEvent[]): Promise<boolean>
  readProject(id: string): Promise<Project | undefined>
  listProjects(ids: readonly string[] | null, after: string | null, first: number): Promise<{ readonly items: readonly Project[]; readonly next: string | null }>
  changeProject(id: string, seenVersion: string, next: Project, events?: readonly NewEvent[]): Promise<ProjectChange>

  /** Appends entries in the order given, all or none, with the events that follow from what became of them. */
  appendEntries(project: string, entries: readonly NewEntry[], received: Received, seen: Seen, eventsOf?: EventsOf): Promise<Appending>
  /** Entries of a project, or of one opening, after a sequence, in order. */
  readEntries(project: string, opening: string | null, afterSequence: number, first: number): Promise<readonly Entry[]>
  /** The ids of the openings of which a project has entries, in the order of their code points, after an id. */
  listOpenings(project: string, after: string | null, first: number): Promise<{ readonly items: readonly string[]; readonly next: string | null }>
}
