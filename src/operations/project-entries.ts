import { grouped } from '../record/grouped.ts'
import type { Entry } from '../store/journal.ts'
import type { RecordDependencies } from './operation.ts'

const atATime = 1_000

/** Everything on record of a project, read once in order, by opening; in the order of the ids of the openings. */
export async function entriesByOpening({ records, giveWay }: RecordDependencies, project: string, wanted: (entry: Entry) => boolean): Promise<ReadonlyMap<string, readonly Entry[]>> {
  const entries: Entry[] = []
  for (let after = 0; ; ) {
    const some = await records.readEntries(project, null, after, atATime)
    entries.push(...some.filter(wanted))
    const last = some.at(-1)
    if (!last || some.length < atATime) break
    after = last.sequence
    await giveWay()
  }
  return new Map([...grouped(entries, ({ opening }) => opening)].toSorted(([a], [b]) => (a < b ? -1 : 1)))
}
