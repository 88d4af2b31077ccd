import type { Problem } from '../opening/problem.ts'
import type { UnreadEntry } from '../record/entry.ts'
import type { RecordDependencies } from './operation.ts'
import { postEntries } from './post-entries.ts'
import type { ScheduleAnswer } from './schedule-request.ts'

/** What became of an entry on the road that every entry takes. */
export interface Posted {
  readonly outcome: 'recorded' | 'alreadyRecorded' | 'refused'
  readonly verdict: ScheduleAnswer['results'][number]['verdict']
  readonly problems: readonly Pick<Problem, 'code' | 'detail'>[]
}

/** Each posting evaluates its openings without a pause, so that there are not many in one. */
const atATime = 10

/** Posts entries some at a time and answers by their ids. What was posted before a refusal stays on record; the same import sent again goes on from there. */
export async function postInParts(deps: RecordDependencies, project: string, entries: readonly UnreadEntry[]): Promise<ReadonlyMap<string, Posted>> {
  const posted = new Map<string, Posted>()
  for (let from = 0; from < entries.length; from += atATime) {
    const part = entries.slice(from, from + atATime)
    const answered = await postEntries.run(deps, { project, entries: part })
    for (const [index, { id }] of part.entries()) posted.set(id, answered.ok ? postedAt(index, part, answered.value) : { outcome: 'refused', verdict: null, problems: answered.problems })
    await deps.giveWay()
  }
  return posted
}

type Answered = Extract<Awaited<ReturnType<typeof postEntries.run>>, { readonly ok: true }>['value']

function postedAt(index: number, part: readonly UnreadEntry[], { results, openings }: Answered): Posted {
  const [result, after] = [results[index], openings.find(({ standing }) => standing.opening === part[index]?.opening)]
  return { outcome: result?.outcome ?? 'refused', verdict: after?.standing.verdict ?? null, problems: result?.problems ?? [] }
}
