import { z } from 'zod'
import { openingRecordOf } from '../record/opening-record.ts'
import type { Project } from '../store/journal.ts'
import { defineRecordOperation, type RecordDependencies } from './operation.ts'
import { assessmentBy, entriesOf, standingOf, standingView, type Standing } from './opening-standing.ts'
import { pageOf, paging } from './page.ts'
import { projectFor, projectId } from './projects.ts'

export const listOpenings = defineRecordOperation({
  name: 'listOpenings',
  summary: 'List the openings of a project',
  description: 'How every opening stands that anything is on record of, in the order of their ids.',
  input: z.strictObject({ project: projectId, ...paging }),
  output: pageOf(standingView, 'OpeningPage'),
  keyOf: ({ opening }) => opening,
  answer: async (deps, { project: id, first, after }) => {
    const project = await projectFor(deps, id)
    if (!project.ok) return project
    const { items, next } = await deps.records.listOpenings(id, after ?? null, first ?? 50)
    return { ok: true, value: { items: await standingsOf(deps, project.value, items), nextCursor: next } }
  },
})

/** One after the other: each takes an evaluation, and others have their turn in between. */
async function standingsOf(deps: RecordDependencies, project: Project, openings: readonly string[]): Promise<Standing[]> {
  const standings: Standing[] = []
  for (const opening of openings) {
    const entries = (await entriesOf(deps, project.id, [opening])).get(opening) ?? []
    const record = openingRecordOf(opening, entries)
    standings.push(standingOf(deps, record, assessmentBy(deps, project, record, 'asBuiltOverDesign')))
    await deps.giveWay()
  }
  return standings
}
