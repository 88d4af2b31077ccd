import { method } from '../evaluation/evaluate.ts'
import type { ExportedBuilding, ExportedOpening, ExportScope } from '../exports/exported-building.ts'
import { missesOver } from '../record/finding-history.ts'
import type { Entry, Project } from '../store/journal.ts'
import { looksOf } from './opening-records.ts'
import { failure, type Answer, type RecordDependencies } from './operation.ts'
import { resolvePlace } from './place.ts'
import { entriesByOpening } from './project-entries.ts'

/** As many openings go into one document. */
export const mostOpenings = 200

export interface Asked {
  readonly scope: ExportScope
  /** Only openings whose id starts so. */
  readonly startsWith: string
}

/** A building with all its openings, one evaluated after the other, and others have their turn in between. */
export async function exportedBuilding(deps: RecordDependencies, project: Project, { scope, startsWith }: Asked): Promise<Answer<ExportedBuilding>> {
  const ruleSet = resolvePlace(deps, project)
  if (!ruleSet.ok) return ruleSet
  const entries = await entriesByOpening(deps, project.id, ({ opening }) => opening.startsWith(startsWith))
  if (entries.size > mostOpenings) return failure('invalidInput', [{ code: 'outOfRange', pointer: '/startsWith', detail: `They are ${entries.size} openings; at most ${mostOpenings} go into one document. Name a part of them by how their ids start.` }])
  const openings: ExportedOpening[] = []
  for (const [opening, own] of entries) openings.push(await exportedOpening(deps, project, opening, own))
  const { catalog, publicUrl } = deps
  return { ok: true, value: { project, catalog, method, rules: ruleSet.value.rules, openings, scope, at: deps.now().toISOString(), publicUrl } }
}

async function exportedOpening(deps: RecordDependencies, project: Project, opening: string, entries: readonly Entry[]): Promise<ExportedOpening> {
  const { looks, record, assessed } = await looksOf(deps, project, opening, entries)
  const known = assessed.ok ? { assessment: assessed.value, missing: [] } : { assessment: null, missing: assessed.problems.map(({ pointer }) => pointer.slice(1).replaceAll('/', '.')) }
  return { opening, record, entries, ...known, before: looks.at(-2)?.findings ?? null, misses: missesOver(opening, looks) }
}
