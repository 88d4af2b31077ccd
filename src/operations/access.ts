import { operations } from './index.ts'
import type { AnyOperation, Answer, RecordDependencies } from './operation.ts'
import { refuseUnlessAdmitted, type Access } from './permission.ts'

/** What each operation asks of its caller. One that is not in here does not compile, and is answered to nobody. */
const access: Readonly<Record<keyof typeof operations, Access>> = {
  evaluateOpening: 'evaluate', evaluateBatch: 'evaluate', keepEvaluation: 'evaluate', readEvaluation: 'record', reproduceEvaluation: 'record', drawOpening: 'evaluate', drawEvaluation: 'record', reportOpening: 'evaluate', readEvaluationReport: 'record',
  listRules: 'evaluate', readRule: 'evaluate', listJurisdictions: 'evaluate', readJurisdiction: 'evaluate', listPublications: 'evaluate', readPublication: 'evaluate',
  listFacts: 'evaluate', listHoldPoints: 'evaluate', listReleases: 'evaluate', readForm: 'evaluate',
  listQuantities: 'evaluate', readQuantity: 'evaluate', computeQuantities: 'evaluate', takeOff: 'evaluate', planCuts: 'evaluate', analyzeDrivingRain: 'evaluate',
  listAmendments: 'evaluate', readAmendment: 'evaluate',
  createDraft: 'amend', readDraft: 'amend', listDrafts: 'amend', changeDraft: 'amend', deleteDraft: 'amend', previewDraft: 'amend', adoptDraft: 'amend',
  createProject: 'recordAll', readProject: 'record', listProjects: 'record', changeProject: 'record', postEntries: 'record', readOpeningRecord: 'record',
  evaluateRecordedOpening: 'record', readJournal: 'record', exportProject: 'record', listOpenings: 'record', readBuilding: 'record', readBuildingTable: 'record', readBuildingReport: 'record', readOpeningReport: 'record',
  importSchedule: 'record', readOpeningForm: 'record', postFormAnswers: 'record',
  // Events leave the service, whatever they tell of
  createWebhook: 'administer', listWebhooks: 'administer', readWebhook: 'administer', deleteWebhook: 'administer', enableWebhook: 'administer', rotateWebhookSecret: 'administer',
  listDeliveries: 'administer', pingWebhook: 'administer', replayDelivery: 'administer',
  createToken: 'administer', listTokens: 'administer', revokeToken: 'administer',
}

const accessByOperation: ReadonlyMap<AnyOperation, Access> = new Map(Object.entries(operations).map(([name, operation]) => [operation, access[name as keyof typeof operations]]))

export function accessOf(operation: AnyOperation): Access {
  const wanted = accessByOperation.get(operation)
  if (!wanted) throw new Error(`nothing is decided on who may ask "${operation.name}"`)
  return wanted
}

/** Runs an operation for its caller. Whoever may not ask at all is refused before the input is looked at. */
export async function runFor(operation: AnyOperation, deps: RecordDependencies, raw: unknown): Promise<Answer<unknown>> {
  const work = async () => refuseUnlessAdmitted(deps.caller, accessOf(operation)) ?? operation.run(deps, raw)
  return deps.follow ? deps.follow(operation.name, work) : work()
}
