import { z } from 'zod'
import { exportScopes, type ExportedBuilding, type ExportScope } from '../exports/exported-building.ts'
import { exportedBuilding, mostOpenings } from './exported-building.ts'
import { defineRecordOperation } from './operation.ts'
import { projectFor, projectId } from './projects.ts'

const text = z.string()

const formats = ['sarif', 'oscal', 'bcf'] as const
type Format = (typeof formats)[number]

interface Written {
  readonly mediaType: string
  readonly extension: string
  readonly inBase64: boolean
  readonly scope: ExportScope
  readonly write: (building: ExportedBuilding) => Promise<string>
}

/** Each format is loaded when it is first asked for. */
const written: Readonly<Record<Format, Written>> = {
  sarif: { mediaType: 'application/sarif+json', extension: 'sarif', inBase64: false, scope: 'all', write: async (building) => JSON.stringify((await import('../exports/sarif.ts')).sarifOf(building)) },
  oscal: { mediaType: 'application/json', extension: 'oscal.json', inBase64: false, scope: 'all', write: async (building) => JSON.stringify((await import('../exports/oscal.ts')).oscalOf(building)) },
  bcf: { mediaType: 'application/zip', extension: 'bcf', inBase64: true, scope: 'misses', write: async (building) => Buffer.from((await import('../exports/bcf.ts')).bcfOf(building)).toString('base64') },
}

const output = z
  .strictObject({
    project: text,
    mediaType: text,
    fileName: text,
    inBase64: z.boolean().meta({ description: 'Whether `content` is the bytes of the document in Base64, and not the document itself.' }),
    content: text,
  })
  .meta({ id: 'ProjectExport' })
export type ProjectExport = z.infer<typeof output>

export const exportProject = defineRecordOperation({
  name: 'exportProject',
  summary: 'Export the findings of a building',
  description: 'The findings of every opening, as seen, and as drawn where nobody has looked yet, in an open format: SARIF 2.1.0 for viewers of results, OSCAL 1.1.2 assessment results for systems of record, BCF 3.0 topics for building-model software. Ids are the same each time, so that a receiver can tell what it has already.',
  input: z.strictObject({
    project: projectId,
    format: z.enum(formats).meta({ description: 'sarif: one run with a result for each rule at each place. oscal: assessment results with observations, findings and risks. bcf: a zip with one topic for each miss.' }),
    findings: z.enum(exportScopes).nullish().meta({ description: 'misses: what is not met. open: that, and what is not determined. all: every finding. All for sarif and oscal, misses for bcf when left out; a bcf never has topics for what is met.' }),
    startsWith: text.max(100).nullish().meta({ description: `Only openings whose id starts so: a story, an elevation. At most ${mostOpenings} openings go into one document.` }),
  }),
  output,
  answer: async (deps, { project: id, format, findings, startsWith }) => {
    const project = await projectFor(deps, id)
    if (!project.ok) return project
    const { mediaType, extension, inBase64, scope, write } = written[format]
    const building = await exportedBuilding(deps, project.value, { scope: findings ?? scope, startsWith: startsWith ?? '' })
    if (!building.ok) return building
    return { ok: true, value: { project: id, mediaType, fileName: `${id}.${extension}`, inBase64, content: await write(building.value) } }
  },
})
