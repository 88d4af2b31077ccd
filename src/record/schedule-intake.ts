import { digestOf } from '../catalog/digest.ts'
import type { UnreadEntry } from './entry.ts'
import { versionOf } from './opening-record.ts'
import { importedEntryId, type ScheduledDesign } from './schedule-openings.ts'
import type { RowProblem } from './schedule-row.ts'

/** A design on record, in the order in which they arrived. */
export interface DesignOnRecord {
  readonly id: string
  readonly body: unknown
}

/** What is said once for all entries of an import. */
export interface Import {
  readonly project: string
  readonly id: string
  readonly at: string
  readonly by: string
  readonly revise: boolean
}

/** What is to become of one opening of a sheet, given what is on record of it. */
export type Intake =
  | { readonly kind: 'record'; readonly entry: UnreadEntry }
  | { readonly kind: 'alreadyRecorded'; readonly entry: string }
  | { readonly kind: 'unchanged' }
  | { readonly kind: 'refused'; readonly problem: RowProblem }

export function intakeOf({ row, opening, description }: ScheduledDesign, designs: readonly DesignOnRecord[], { project, id: imported, at, by, revise }: Import): Intake {
  const id = importedEntryId(project, imported, opening)
  const entry = (replaces: string | null): UnreadEntry => ({
    id, opening, at, by, note: `schedule import ${imported}`, design: { description, ...(replaces === null ? {} : { replaces }) },
  })
  const same = designs.find((design) => design.id === id)
  if (same) {
    const before = (same.body as UnreadEntry).design?.replaces ?? null
    if (digestOf(same.body) === digestOf(entry(before))) return { kind: 'alreadyRecorded', entry: id }
    return { kind: 'refused', problem: { row, column: null, code: 'idTaken', detail: `"${opening}" was taken by this import with other content, time or author. What is on record is never changed: send the sheet as another import, with "revise".` } }
  }
  const current = designs.at(-1)
  const version = current ? versionOf((current.body as UnreadEntry).design?.description) : null
  if (version === null) return { kind: 'record', entry: entry(null) }
  if (version === versionOf(description)) return { kind: 'unchanged' }
  if (revise) return { kind: 'record', entry: entry(version) }
  return { kind: 'refused', problem: { row, column: null, code: 'designExists', detail: `"${opening}" has another design on record. Send "revise": true to replace it.` } }
}
