import { z } from 'zod'
import { drawings } from '../drawing/index.ts'
import type { Evaluation } from '../evaluation/document.ts'
import { openingId } from '../record/entry.ts'
import { missesOver, type Look } from '../record/finding-history.ts'
import { nonConformances } from '../record/non-conformance.ts'
import { descriptionBy, type OpeningRecord } from '../record/opening-record.ts'
import { signOffGround } from '../record/sign-off.ts'
import { grantsOn } from '../record/waivers.ts'
import type { ReportedRecord } from '../report/recorded.ts'
import type { Project } from '../store/journal.ts'
import { buildingAsked, buildingFor } from './building.ts'
import { evaluateAs, stamped, unread } from './evaluate-opening.ts'
import { catalogOfThen, keptAsked, keptFor } from './kept-evaluations.ts'
import { looksOf, openingFor } from './opening-records.ts'
import { evaluatedBy } from './opening-standing.ts'
import { defineRecordOperation, type RecordDependencies, type RecordOperation } from './operation.ts'
import { projectId } from './projects.ts'
import { catalogAsked, withRelease } from './serve-evaluation.ts'

const reportRequest = withRelease.meta({ id: 'ReportRequest' })
const page = z.string()

/** Reads the request as an evaluation does, so that both refuse the same things. */
export const reportOpening: RecordOperation<typeof reportRequest, typeof page> = {
  name: 'reportOpening',
  cost: { units: 10 },
  summary: 'Report on one opening',
  description: 'Evaluates an opening and answers a page of HTML to print: findings by hold point with sources and remedies, drawings, quantities, and how to reproduce it. The page takes nothing from anywhere and runs no script. Nothing is kept.',
  input: reportRequest,
  output: page,
  run: async (deps, raw) => {
    const asked = await catalogAsked(deps, raw)
    if (!asked.ok) return asked
    const evaluated = evaluateAs(unread, { ...deps, catalog: asked.value.catalog }, asked.value.request)
    if (!evaluated.ok) return evaluated
    const { openingPage } = await import('../report/opening-page.ts')
    const { opening, full } = evaluated.value
    const evaluation = stamped(deps, full)
    deps.tally?.evaluated(evaluation)
    const origin = { publicUrl: deps.publicUrl, path: null, request: requestOf(raw as object, evaluation) }
    return { ok: true, value: openingPage({ evaluation, drawings: drawings(opening, full), withoutDrawings: null, origin }) }
  },
}

/** The request with its date said, in one order whichever door it came through. */
function requestOf(raw: object, { asOf }: Evaluation): object {
  const { opening, ...around } = { opening: null, ...raw, asOf }
  return { ...Object.fromEntries(Object.entries(around).toSorted(([a], [b]) => (a < b ? -1 : 1))), opening }
}

export const readEvaluationReport = defineRecordOperation({
  name: 'readEvaluationReport',
  cost: { units: 10 },
  summary: 'Report on a kept evaluation',
  description: 'A kept evaluation, word for word as it was given, as a page of HTML to print. Drawings are in it while the catalog of that time is here.',
  input: keptAsked,
  output: page,
  answer: async (deps, { evaluation: id }) => {
    const found = await keptFor(deps, id)
    if (!found.ok) return found
    const { openingPage } = await import('../report/opening-page.ts')
    const { answer, request } = found.value
    const catalog = await catalogOfThen(deps, found.value)
    const again = catalog && evaluateAs(unread, { ...deps, catalog }, request)
    const evaluation = answer as Evaluation
    const drawn = again?.ok ? drawings(again.value.opening, { ...again.value.full, assessment: evaluation }) : []
    const origin = { publicUrl: deps.publicUrl, path: `/v1/evaluations/${encodeURIComponent(id)}`, request }
    return { ok: true, value: openingPage({ evaluation, drawings: drawn, withoutDrawings: 'The catalog of that time is not here, so nothing is drawn.', origin }) }
  },
})

export const readOpeningReport = defineRecordOperation({
  name: 'readOpeningReport',
  cost: { units: 30 },
  summary: 'Report on an opening of a project',
  description: 'An opening by its record as a page of HTML to print: findings by what is known now, as seen and as drawn where nobody has looked yet, with drawings and quantities; readings that contradict, sign-offs, waivers, and how every miss stands.',
  input: z.strictObject({ project: projectId, opening: openingId }),
  output: page,
  answer: async (deps, { project: id, opening: name }) => {
    const found = await openingFor(deps, id, name)
    if (!found.ok) return found
    const { project, entries } = found.value
    const { looks, record } = await looksOf(deps, project, name, entries)
    const evaluated = evaluatedBy(deps, project, record, 'asBuiltOverDesign')
    if (!evaluated.ok) return evaluated
    const { openingPage } = await import('../report/opening-page.ts')
    const { opening, full } = evaluated.value
    const evaluation = stamped(deps, full)
    deps.tally?.evaluated(evaluation)
    const origin = { publicUrl: deps.publicUrl, path: `/v1/projects/${encodeURIComponent(id)}/openings/${encodeURIComponent(name)}/evaluation?basis=asBuiltOverDesign`, request: recordedRequest(project, record, evaluation) }
    return { ok: true, value: openingPage({ evaluation, drawings: drawings(opening, full), withoutDrawings: null, origin, record: reportedRecord(deps, record, evaluation, looks) }) }
  },
})

/** What would be sent to have the opening evaluated as it is known now, however its record grows. */
function recordedRequest({ jurisdiction, edition, publication }: Project, record: OpeningRecord, evaluation: Evaluation): object {
  const around = { jurisdiction, edition, publication, holdPoint: record.holdPoint }
  return requestOf({ ...Object.fromEntries(Object.entries(around).filter(([, value]) => value !== null)), opening: descriptionBy('asBuiltOverDesign', record) }, evaluation)
}

function reportedRecord({ now }: RecordDependencies, record: OpeningRecord, { findings }: Evaluation, looks: readonly Look[]): ReportedRecord {
  const grants = grantsOn(record.waivers, now().toISOString())
  return {
    record, grants,
    misses: nonConformances(missesOver(record.opening, looks), findings, record, grants),
    signOffs: record.signOffs.map((given) => ({ given, ground: given.judged === null ? null : signOffGround.parse(given.judged) })),
  }
}

export const readBuildingReport = defineRecordOperation({
  name: 'readBuildingReport',
  cost: { units: 10 },
  summary: 'Report on a building',
  description: 'The building by its openings as a page of HTML to print: status at every hold point, what is not met with its remedies, lintel schedule, cut list, take-off, and every opening in short.',
  input: z.strictObject(buildingAsked),
  output: page,
  answer: async (deps, asked) => {
    const building = await buildingFor(deps, asked)
    if (!building.ok) return building
    const { buildingPage } = await import('../report/building-page.ts')
    const { rules } = deps.catalog
    const path = `/v1/projects/${encodeURIComponent(asked.project)}/building`
    return { ok: true, value: buildingPage({ building: building.value, at: deps.now().toISOString(), publicUrl: deps.publicUrl, path, titleOf: (rule) => rules.get(rule)?.title ?? rule }) }
  },
})
