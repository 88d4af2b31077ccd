import { openingRecordOf, type RecordedEntry } from '../record/opening-record.ts'
import { outcomeChanges, type OutcomeChange } from '../record/outcomes.ts'
import type { Appended, Entry, NewEntry, Project } from '../store/journal.ts'
import type { RecordDependencies } from './operation.ts'
import { assessmentBy, standingOf, type Standing } from './opening-standing.ts'

/** How an opening stands after a posting, and what of it comes out otherwise than before. */
export interface Outlook {
  readonly standing: Standing
  readonly changed: readonly OutcomeChange[]
  /** What the posting put on record of it. */
  readonly recorded: readonly Entry[]
}

interface Posting {
  readonly before: ReadonlyMap<string, readonly Entry[]>
  readonly accepted: readonly NewEntry[]
}

/**
 * Works out beforehand how each opening stands when all that is new has been put on record. Nothing else is appended in between,
 * or the posting is judged anew; only what turns out to be refused for its id has to be worked out again.
 */
export async function outlookAfter(deps: RecordDependencies, project: Project, { before, accepted }: Posting): Promise<(appended: readonly Appended[]) => readonly Outlook[]> {
  const openings = [...new Set(accepted.map(({ opening }) => opening))]
  const earlier = (opening: string) => before.get(opening) ?? []
  const foreseen = new Map<string, { readonly ids: string; readonly outlook: Omit<Outlook, 'recorded'> }>()
  for (const opening of openings) {
    const fresh = firstOfEachId(accepted, earlier(opening), opening)
    foreseen.set(opening, { ids: idsOf(fresh), outlook: outlookOf(deps, project, opening, { was: earlier(opening), fresh }) })
    await deps.giveWay()
  }
  return (appended) => openings.map((opening) => {
    const recorded = appended.flatMap((one) => (one.outcome === 'recorded' && one.entry.opening === opening ? [one.entry] : []))
    const known = foreseen.get(opening)
    const outlook = known?.ids === idsOf(recorded) ? known.outlook : outlookOf(deps, project, opening, { was: earlier(opening), fresh: recorded })
    return { ...outlook, recorded }
  })
}

function outlookOf(deps: RecordDependencies, project: Project, opening: string, { was, fresh }: { readonly was: readonly Entry[]; readonly fresh: readonly NewEntry[] }): Omit<Outlook, 'recorded'> {
  const last = was.at(-1)?.sequence ?? 0
  const added = fresh.map((entry, index): RecordedEntry => ({ ...entry, sequence: last + 1 + index, receivedAt: deps.now().toISOString() }))
  const [earlier, record] = [openingRecordOf(opening, was), openingRecordOf(opening, [...was, ...added])]
  const [before, now] = [assessmentBy(deps, project, earlier, 'asBuiltOverDesign'), assessmentBy(deps, project, record, 'asBuiltOverDesign')]
  const changed = now.ok ? outcomeChanges(before.ok ? before.value.findings : null, now.value.findings) : []
  return { standing: standingOf(deps, record, now), changed }
}

function firstOfEachId(accepted: readonly NewEntry[], known: readonly Entry[], opening: string): readonly NewEntry[] {
  const ids = new Set(known.map(({ id }) => id))
  return accepted.filter((entry) => {
    if (entry.opening !== opening || ids.has(entry.id)) return false
    ids.add(entry.id)
    return true
  })
}

function idsOf(entries: readonly NewEntry[]): string {
  return entries.map(({ id }) => id).join()
}
