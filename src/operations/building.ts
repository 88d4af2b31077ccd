import { z } from 'zod'
import type { RuleSet } from '../catalog/rule-set.ts'
import { evaluateInFull } from '../evaluation/evaluate.ts'
import { notice } from '../evaluation/notice.ts'
import { holdPointId } from '../opening/hold-points.ts'
import { buildingView as viewOfReports, type NotEvaluated } from '../record/building-view.ts'
import { openingBy, openingRecordOf, type Basis } from '../record/opening-record.ts'
import { openingReport, type OpeningReport } from '../record/opening-report.ts'
import type { Entry, Project } from '../store/journal.ts'
import { quantityText } from '../units/quantity-text.ts'
import { basis, buildingView, type Building } from './building-schema.ts'
import { cutListsOf } from './flashing-cut-lists.ts'
import { viewOfLength } from './lengths.ts'
import { defineRecordOperation, failure, type Answer, type RecordDependencies } from './operation.ts'
import { resolvePlace } from './place.ts'
import { entriesByOpening } from './project-entries.ts'
import { projectFor, projectId } from './projects.ts'
import { viewOfFlashing, viewOfGap, viewOfTotal } from './take-off.ts'

/** As many openings are evaluated for one answer. */
const mostOpenings = 1_000

export const buildingAsked = {
  project: projectId,
  basis: basis.nullish().meta({ description: 'By which reading of the record; asBuiltOverDesign when left out.' }),
  startsWith: z.string().max(100).nullish().meta({ description: `Only openings whose id starts so: a story, an elevation. At most ${mostOpenings} are answered at once.` }),
  holdPoint: holdPointId.nullish().meta({ description: 'Only what is to be looked at on the walk at this hold point; every walk when left out.' }),
}
export type BuildingAsked = z.output<z.ZodObject<typeof buildingAsked>>

export const readBuilding = defineRecordOperation({
  name: 'readBuilding',
  summary: 'Read a building by its openings',
  description: 'Status by part and by hold point, every mandatory rule that is not met, what to look at on each walk, the lintel schedule, flashing with its cutting lists, weeps and ties in total. What could not be evaluated or computed is named, never counted as nought.',
  input: z.strictObject(buildingAsked),
  output: buildingView,
  answer: buildingFor,
})

/** The view of a building. Each opening is evaluated once, and others have their turn in between. */
export async function buildingFor(deps: RecordDependencies, { project: id, basis = null, startsWith, holdPoint }: BuildingAsked): Promise<Answer<Building>> {
  const project = await projectFor(deps, id)
  if (!project.ok) return project
  const ruleSet = resolvePlace(deps, project.value)
  if (!ruleSet.ok) return ruleSet
  const openings = await entriesByOpening(deps, id, ({ opening }) => opening.startsWith(startsWith ?? ''))
  if (openings.size > mostOpenings) return failure('invalidInput', [{ code: 'outOfRange', pointer: '/startsWith', detail: `They are ${openings.size} openings; at most ${mostOpenings} are answered at once. Name a part of them by how their ids start.` }])
  const looked = await lookAtAll(deps, openings, { ruleSet: ruleSet.value, basis: basis ?? 'asBuiltOverDesign' })
  return { ok: true, value: viewOf(project.value, ruleSet.value, deps, { ...looked, basis: basis ?? 'asBuiltOverDesign', holdPoint: holdPoint ?? null }) }
}

interface Looked {
  readonly reports: readonly OpeningReport[]
  readonly notEvaluated: readonly NotEvaluated[]
}

async function lookAtAll(deps: RecordDependencies, openings: ReadonlyMap<string, readonly Entry[]>, by: { readonly ruleSet: RuleSet; readonly basis: Basis }): Promise<Looked> {
  const on = deps.now().toISOString()
  const reports: OpeningReport[] = []
  const notEvaluated: NotEvaluated[] = []
  for (const [id, entries] of openings) {
    const record = openingRecordOf(id, entries)
    const opening = openingBy(by.basis, record)
    if (opening.ok) reports.push(openingReport({ basis: by.basis, record, opening: opening.value, on }, evaluateInFull(opening.value, by.ruleSet, deps.catalog, by.basis === 'asDesigned' ? null : record.holdPoint)))
    else notEvaluated.push({ opening: id, reference: referenceIn(record.designs.at(-1)?.description), holdPoint: record.holdPoint, problems: opening.problems })
    await deps.giveWay()
  }
  return { reports, notEvaluated }
}

function referenceIn(description: Readonly<Record<string, unknown>> | undefined): string | null {
  const reference = description?.['reference']
  return typeof reference === 'string' ? reference : null
}

interface Shown extends Looked {
  readonly basis: Basis
  readonly holdPoint: BuildingAsked['holdPoint'] & {} | null
}

function viewOf(project: Project, ruleSet: RuleSet, { catalog }: RecordDependencies, { reports, notEvaluated, basis, holdPoint }: Shown): Building {
  const { takeOff, ...view } = viewOfReports(reports, notEvaluated, holdPoint)
  return {
    project: project.id, title: project.title, jurisdiction: project.jurisdiction, asOf: project.asOf, editions: [...ruleSet.editions], basis,
    catalog: { release: catalog.release, digest: catalog.digest },
    openings: view.openings, evaluated: view.evaluated,
    counted: `${view.evaluated} of ${view.openings} openings counted`,
    verdicts: { ...view.verdicts, notEvaluated: notEvaluated.length },
    parts: [...view.parts], holdPoints: [...view.holdPoints],
    status: reports.map(statusOf),
    failures: reports.flatMap(({ opening, reference, failures }) => failures.map((one) => ({ opening, reference, ...one }))),
    walks: view.walks.map(walkOf),
    lintels: view.lintels.map(lintelOf),
    flashing: takeOff.flashing.map(viewOfFlashing),
    cutLists: cutListsOf(reports.map(({ scheduled }) => scheduled)),
    totals: takeOff.totals.map(viewOfTotal),
    gaps: takeOff.gaps.map(viewOfGap),
    notEvaluated: notEvaluated.map(({ problems, ...one }) => ({ ...one, problems: problems.map(({ code, pointer, detail }) => ({ code, pointer, detail })) })),
    notice,
  }
}

function statusOf({ opening, reference, unitSystem, holdPoint, summary, readiness, noLongerInSight }: OpeningReport): Building['status'][number] {
  const { pass, fail, notDetermined, notApplicable, mandatoryFailures, mandatoryNotDetermined, verdict } = summary
  const ready = readiness.map(({ undecided, notMet, waived, ...one }) => ({ ...one, undecided: [...undecided], notMet: [...notMet], waived: [...waived] }))
  return { opening, reference, unitSystem, holdPoint, verdict, pass, fail, notDetermined, notApplicable, mandatoryFailures, mandatoryNotDetermined, noLongerInSight: [...noLongerInSight], readiness: ready }
}

function walkOf({ openings, ...walk }: ReturnType<typeof viewOfReports>['walks'][number]): Building['walks'][number] {
  const factsOf = (facts: (typeof openings)[number]['facts']) =>
    facts.map(({ fact, title, hiddenBy, lastChance, mandatory, decides, contributesTo }) => ({ fact, title, hiddenBy, lastChance, mandatory, decides: [...decides], contributesTo: [...contributesTo] }))
  return { ...walk, openings: openings.map(({ facts, ...one }) => ({ ...one, facts: factsOf(facts) })) }
}

function lintelOf({ width, height, length, bearing, described, weight, references, ...line }: ReturnType<typeof viewOfReports>['lintels'][number]): Building['lintels'][number] {
  const lengthOr = (nanometers: number | null) => (nanometers === null ? null : viewOfLength(nanometers))
  return {
    ...line, references: [...references], width: lengthOr(width), height: lengthOr(height), length: viewOfLength(length), bearing: lengthOr(bearing),
    described: { length: lengthOr(described.length), left: lengthOr(described.left), right: lengthOr(described.right) },
    weight: weight === null ? null : { inchPound: quantityText({ dimension: 'force', amount: weight }, 'inchPound'), si: quantityText({ dimension: 'force', amount: weight }, 'si'), newtons: weight },
  }
}
