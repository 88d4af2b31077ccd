import { digestOf } from '../catalog/digest.ts'
import { describeOpening, type DescriptionCode } from '../opening/describe.ts'
import { compareHoldPoints, type HoldPoint } from '../opening/hold-points.ts'
import type { Opening } from '../opening/opening.ts'
import type { Checked } from '../opening/problem.ts'
import { asBuiltOf, describedBy, type FactRecord } from './as-built.ts'
import type { EntryKind, UnreadEntry } from './entry.ts'
import { observedIn } from './observed.ts'

/** An entry as it stands in the journal. */
export interface RecordedEntry {
  readonly id: string
  readonly sequence: number
  readonly opening: string
  readonly kind: string
  readonly body: unknown
  /** What the service found when it took the entry in. */
  readonly judged: unknown
  readonly receivedAt: string
}

/** What an entry holds of one kind, with when and by whom. */
export interface Recorded<K extends EntryKind> {
  readonly entry: string
  readonly sequence: number
  readonly at: string
  readonly by: string
  readonly note: string | null
  readonly evidence: NonNullable<UnreadEntry['evidence']>
  readonly receivedAt: string
  readonly judged: unknown
  readonly held: NonNullable<UnreadEntry[K]>
}

export interface Design {
  readonly entry: string
  /** Changes with the description; the next revision has to name it. */
  readonly version: string
  readonly description: Readonly<Record<string, unknown>>
  readonly at: string
  readonly by: string
}

/** Everything on record of one opening, in the order in which it arrived. What was corrected is out of account, and found through its correction. */
export interface OpeningRecord {
  readonly opening: string
  readonly designs: readonly Design[]
  readonly facts: readonly FactRecord[]
  readonly corrections: readonly Recorded<'correction'>[]
  readonly signOffs: readonly Recorded<'signOff'>[]
  readonly waivers: readonly Recorded<'waiver'>[]
  readonly remedies: readonly Recorded<'remedy'>[]
  readonly verifications: readonly Recorded<'verification'>[]
  /** As far as the work is known to stand: the latest hold point at which anything was seen or signed off. */
  readonly holdPoint: HoldPoint | null
}

export function openingRecordOf(opening: string, entries: readonly RecordedEntry[]): OpeningRecord {
  const of = <K extends EntryKind>(kind: K) => entries.filter((entry) => entry.kind === kind).map((entry) => recordedOf(entry, kind))
  const corrections = of('correction')
  const corrected = new Set(corrections.map(({ held }) => held.entry))
  const standing = <K extends EntryKind>(kind: K) => of(kind).filter(({ entry }) => !corrected.has(entry))
  const [observations, signOffs, verifications] = [standing('observation'), standing('signOff'), standing('verification')]
  return {
    opening,
    designs: of('design').map(({ entry, at, by, held }) => ({ entry, at, by, version: versionOf(held.description), description: held.description as Design['description'] })),
    facts: asBuiltOf(observations.flatMap(({ entry, sequence, at, by, held }) => observedIn(held, { entry, sequence, at, by }))),
    corrections, signOffs, verifications,
    waivers: standing('waiver'),
    remedies: standing('remedy'),
    holdPoint: latestOf([...observations, ...signOffs, ...verifications].map(({ held }) => held.holdPoint)),
  }
}

export function versionOf(description: unknown): string {
  return digestOf(description)
}

export const bases = ['asDesigned', 'asBuilt', 'asBuiltOverDesign'] as const
export type Basis = (typeof bases)[number]

/** The opening by one of three readings of its record: what was drawn, what was seen, or what was seen with the drawing where nobody has looked yet. */
export function openingBy(basis: Basis, record: OpeningRecord): Checked<Opening, DescriptionCode> {
  return describeOpening(descriptionBy(basis, record))
}

/** The same as it would be written in a request. */
export function descriptionBy(basis: Basis, record: OpeningRecord): Readonly<Record<string, unknown>> {
  const design = record.designs.at(-1)?.description ?? {}
  if (basis === 'asDesigned') return { ...design, basis: 'asDesigned' }
  const built = basis === 'asBuilt' ? describedBy(record.facts, identityOf(design)) : describedBy(record.facts, design)
  return { ...built, basis: 'asBuilt' }
}

/** What tells which opening it is, and in what units its papers are; the masonry opening is as drawn until somebody measures it. */
function identityOf(design: Design['description']): Readonly<Record<string, unknown>> {
  const geometry = typeof design['opening'] === 'object' && design['opening'] !== null ? (design['opening'] as Readonly<Record<string, unknown>>) : {}
  const known = Object.entries({ reference: design['reference'], lengthUnit: design['lengthUnit'] }).filter(([, value]) => value !== undefined && value !== null)
  const drawn = ['kind', 'width', 'height'].filter((key) => Object.hasOwn(geometry, key)).map((key) => [key, geometry[key]] as const)
  return { ...Object.fromEntries(known), ...(drawn.length > 0 ? { opening: Object.fromEntries(drawn) } : {}) }
}

function recordedOf<K extends EntryKind>({ id, sequence, body, judged, receivedAt }: RecordedEntry, kind: K): Recorded<K> {
  const entry = body as UnreadEntry
  const { at, by, note, evidence } = entry
  const held: UnreadEntry[K] = entry[kind]
  if (!held) throw new Error(`entry ${id} is a ${kind} without one`)
  return { entry: id, sequence, at, by, note: note ?? null, evidence: evidence ?? [], receivedAt, judged, held }
}

function latestOf(points: readonly HoldPoint[]): HoldPoint | null {
  return points.reduce<HoldPoint | null>((latest, point) => (latest === null || compareHoldPoints(point, latest) > 0 ? point : latest), null)
}
