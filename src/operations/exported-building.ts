import { method } from '../evaluation/evaluate.ts'
import type { ExportedBuilding, ExportedOpening, ExportScope } from '../exports/exported-building.ts'
import { missesOver } from '../record/finding-history.ts'
import { grouped } from '../record/grouped.ts'
import { openingRecordOf } from '../record/opening-record.ts'
import type { Entry, Project } from '../store/journal.ts'
import { looksOf } from './opening-records.ts'
import { assessmentBy } from './opening-standing.ts'
import { failure, type Answer, type RecordDependencies } from './operation.ts'
import { resolvePlace } from './place.ts'

/** As many openings go into one document. */
export const mostOpenings = 200
const atATime = 1_000

export interface Asked {
  readonly scope: ExportScope
  /** Only openings whose id starts so. */
  readonly startsWith: string
}

/** A building with all its openings, one evaluated after the other, and others have their turn in between. */
export async function exportedBuilding(deps: RecordDependencies, project: Project, { scope, startsWith }: Asked): Promise<Answer<ExportedBuilding>> {
  const ruleSet = resolvePlace(deps, project)
  if (!ruleSet.ok) return ruleSet
  const entries = grouped((await entriesOfProject(deps, project.id)).filter(({ opening }) => opening.startsWith(startsWith)), ({ opening }) => opening)
  if (entries.size > mostOpenings) return failure('invalidInput', [{ code: 'outOfRange', pointer: '/startsWith', detail: `They are ${entries.size} openings; at most ${mostOpenings} go into one document. Name a part of them by how their ids start.` }])
  const openings: ExportedOpening[] = []
  for (const opening of [...entries.keys()].toSorted()) openings.push(await exportedOpening(deps, project, opening, entries.get(opening) ?? []))
  const { catalog, publicUrl } = deps
  return { ok: true, value: { project, catalog, method, rules: ruleSet.value.rules, openings, scope, at: deps.now().toISOString(), publicUrl } }
}

async function exportedOpening(deps: RecordDependencies, project: Project, opening: string, entries: readonly Entry[]): Promise<ExportedOpening> {
  const record = openingRecordOf(opening, entries)
  const looks = await looksOf(deps, project, opening, entries)
  const assessed = assessmentBy(deps, project, record, 'asBuiltOverDesign')
  const known = assessed.ok ? { assessment: assessed.value, missing: [] } : { assessment: null, missing: assessed.problems.map(({ pointer }) => pointer.slice(1).replaceAll('/', '.')) }
  return { opening, record, entries, ...known, before: looks.at(-2)?.findings ?? null, misses: missesOver(opening, looks) }
}

async function entriesOfProject({ records }: RecordDependencies, project: string): Promise<readonly Entry[]> {
  const entries: Entry[] = []
  for (;;) {
    const some = await records.readEntries(project, null, entries.at(-1)?.sequence ?? 0, atATime)
    entries.push(...some)
    if (some.length < atATime) return entries
  }
}
