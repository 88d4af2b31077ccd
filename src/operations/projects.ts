import { z } from 'zod'
import { digestOf } from '../catalog/digest.ts'
import { date, editionId, jurisdictionId, publicationId } from '../catalog/identifier.ts'
import { entryId } from '../record/entry.ts'
import type { Project } from '../store/journal.ts'
import { defineRecordOperation, failure, notFound, type Answer, type RecordDependencies } from './operation.ts'
import { pageOf, paging } from './page.ts'
import { recordable, refuseUnlessRecords } from './permission.ts'
import { resolvePlace } from './place.ts'
import { projectEvent } from './events.ts'

const text = z.string()

const said = {
  title: text.min(1).max(200),
  jurisdiction: jurisdictionId.nullish().meta({ description: 'Whose rules apply. Left out with an edition, the published texts alone are meant.' }),
  asOf: date.meta({ description: 'The permit application date, which selects what was in force.' }),
  edition: editionId.nullish(),
  publication: publicationId.nullish().meta({ description: 'Which code is meant where several are adopted.' }),
}

const projectView = z
  .strictObject({
    project: text, title: text, jurisdiction: text.nullable(), asOf: text, edition: text.nullable(), publication: text.nullable(),
    version: text.meta({ description: 'Changes with the content; a change has to name it.' }),
    createdAt: text, changedAt: text,
  })
  .meta({ id: 'Project' })

export const projectId = text.max(100).meta({ description: 'The id of the project.' })

export const createProject = defineRecordOperation({
  name: 'createProject',
  makes: true,
  summary: 'Open the record of a building',
  description: 'A building whose openings are recorded, with the place and date that its permit fixes. The id is the client\'s; the same project sent twice is one. Needs the scope "record" for all projects.',
  input: z.strictObject({ id: entryId, ...said }).meta({ id: 'ProjectRequest' }),
  output: projectView,
  answer: async (deps, { id, ...rest }) => {
    const refused = placeProblem(deps, rest)
    if (refused) return refused
    const at = deps.now().toISOString()
    const project = projectOf(id, rest, at, at)
    if (await deps.records.createProject(project, [projectEvent(deps, 'projectCreated', project)])) return { ok: true, value: viewOf(project) }
    const there = await deps.records.readProject(id)
    if (there?.version === project.version) return { ok: true, value: viewOf(there) }
    return failure('idTaken', [{ code: 'idTaken', pointer: '/id', detail: 'Another project has this id. Make a new one.' }])
  },
})

export const readProject = defineRecordOperation({
  name: 'readProject',
  summary: 'Read a project',
  description: 'A building with its place and date.',
  input: z.strictObject({ project: projectId }),
  output: projectView,
  answer: async (deps, { project }) => {
    const found = await projectFor(deps, project)
    return found.ok ? { ok: true, value: viewOf(found.value) } : found
  },
})

export const listProjects = defineRecordOperation({
  name: 'listProjects',
  summary: 'List projects',
  description: 'Every building whose openings are recorded, among those that the token may record in.',
  input: z.strictObject(paging),
  output: pageOf(projectView, 'ProjectPage'),
  keyOf: ({ project }) => project,
  answer: async ({ records, caller }, { first, after }) => {
    const { items, next } = await records.listProjects(recordable(caller), after ?? null, first ?? 50)
    return { ok: true, value: { items: items.map(viewOf), nextCursor: next } }
  },
})

export const changeProject = defineRecordOperation({
  name: 'changeProject',
  summary: 'Change a project',
  description: 'Corrects the title, the place or the date. What was recorded is judged by the new place and date from then on; the journal is not touched.',
  input: z.strictObject({ project: projectId, version: text.max(100).nullish().meta({ description: 'The version that the change is based on; over REST the If-Match header.' }), ...said }).meta({ id: 'ProjectChange' }),
  output: projectView,
  answer: async (deps, { project: id, version, ...rest }) => {
    const found = await projectFor(deps, id)
    const refused = found.ok ? placeProblem(deps, rest) : found
    if (refused) return refused
    if (!version) return failure('versionMissing', [{ code: 'versionMissing', pointer: '', detail: 'Name the version that the change is based on.' }])
    const at = deps.now().toISOString()
    const next = projectOf(id, rest, at, at)
    const changed = await deps.records.changeProject(id, version, next, next.version === version ? [] : [projectEvent(deps, 'projectChanged', next)])
    if (changed.ok) return { ok: true, value: viewOf(changed.project) }
    return changed.reason === 'absent' ? notFound('project', id) : failure('versionStale', [{ code: 'versionStale', pointer: '', detail: 'The project was changed since that version.' }])
  },
})

/** A project for a caller who may record in it. */
export async function projectFor({ records, caller }: RecordDependencies, id: string): Promise<Answer<Project>> {
  const refused = refuseUnlessRecords(caller, id)
  if (refused) return refused
  const project = await records.readProject(id)
  return project ? { ok: true, value: project } : notFound('project', id)
}

type Said = z.output<z.ZodObject<typeof said>>

/** A place for which no rules can be settled is refused before anything is recorded under it. */
function placeProblem(deps: RecordDependencies, said: Said) {
  const resolved = resolvePlace(deps, said)
  return resolved.ok ? undefined : resolved
}

function projectOf(id: string, { title, jurisdiction = null, asOf, edition = null, publication = null }: Said, createdAt: string, changedAt: string): Project {
  const content = { title, jurisdiction, asOf, edition, publication }
  return { id, ...content, version: digestOf(content), createdAt, changedAt }
}

function viewOf({ id, ...project }: Project): z.infer<typeof projectView> {
  return { project: id, ...project }
}
