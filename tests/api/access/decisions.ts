import type { Scope } from '../../../src/store/records.ts'

export const project = '0199d000-0000-7000-8000-00000000000a'
export const otherProject = '0199d000-0000-7000-8000-00000000000b'

/** Which scopes let a caller ask at all. */
export type Decision = 'evaluate' | 'record' | 'recordAll' | 'amend' | 'administer'

/** Who may ask each operation: its name in the OpenAPI document, and the fields of the GraphQL schema behind which it stands. A new one has to be decided on here. */
export const decisions: Readonly<Record<Decision, Readonly<Record<string, string>>>> = {
  evaluate: {
    evaluateOpening: 'evaluation keepEvaluation', evaluateBatch: 'batch', listRules: 'rules', readRule: 'rule', listJurisdictions: 'jurisdictions', readJurisdiction: 'jurisdiction',
    listPublications: 'publications', readPublication: 'publication', listQuantities: 'quantities', readQuantity: 'quantity', computeQuantities: 'computation',
    takeOff: 'takeOff', planCuts: 'cutList', analyzeDrivingRain: 'drivingRain', listFacts: 'facts', listHoldPoints: 'holdPoints', readForm: 'form', reportOpening: 'report',
    listAmendments: 'amendments', readAmendment: 'amendment', listReleases: 'releases', drawOpening: 'drawing',
  },
  record: {
    readEvaluation: 'keptEvaluation', reproduceEvaluation: 'reproduction', readEvaluationReport: 'evaluationReport', drawEvaluation: 'keptDrawing', listProjects: 'projects', readProject: 'project', changeProject: 'changeProject',
    postEntries: 'postEntries', importSchedule: 'importSchedule', postFormAnswers: 'postFormAnswers', readOpeningRecord: 'openingRecord',
    evaluateRecordedOpening: 'recordedEvaluation', readOpeningForm: 'openingForm', readJournal: 'journal', exportProject: 'projectExport',
    listOpenings: 'openings', readBuilding: 'building', readBuildingTable: 'buildingTable', readBuildingReport: 'buildingReport', readOpeningReport: 'openingReport',
  },
  recordAll: { createProject: 'createProject' },
  amend: {
    createAmendmentDraft: 'createAmendmentDraft', readAmendmentDraft: 'amendmentDraft', listAmendmentDrafts: 'amendmentDrafts', changeAmendmentDraft: 'changeAmendmentDraft',
    deleteAmendmentDraft: 'deleteAmendmentDraft', previewAmendmentDraft: 'amendmentPreview', adoptAmendmentDraft: 'adoptAmendmentDraft',
  },
  administer: {
    createToken: 'createToken', listTokens: 'tokens', revokeToken: 'revokeToken',
    createWebhook: 'createWebhook', listWebhooks: 'webhooks', readWebhook: 'webhook', deleteWebhook: 'deleteWebhook', enableWebhook: 'enableWebhook', rotateWebhookSecret: 'rotateWebhookSecret', listDeliveries: 'webhookDeliveries', pingWebhook: 'pingWebhook', replayDelivery: 'replayDelivery',
  },
}

export interface Asker {
  readonly name: string
  /** Null for no token at all. */
  readonly scopes: readonly Scope[] | null
  readonly may: readonly Decision[]
}

/** Each scope by itself, a token without any, and nobody; with what each may ask where nothing may be asked without a token. */
export const askers: readonly Asker[] = [
  { name: 'nobody', scopes: null, may: [] },
  { name: 'a token without a scope', scopes: [], may: [] },
  { name: 'evaluate', scopes: [{ kind: 'evaluate' }], may: ['evaluate'] },
  { name: 'record', scopes: [{ kind: 'record' }], may: ['evaluate', 'record', 'recordAll'] },
  { name: 'record in one project', scopes: [{ kind: 'record', project }], may: ['evaluate', 'record'] },
  { name: 'amend', scopes: [{ kind: 'amend', jurisdiction: 'us-xa-101' }], may: ['evaluate', 'amend'] },
  { name: 'administer', scopes: [{ kind: 'administer' }], may: ['evaluate', 'administer'] },
]

export function decisionOn(operation: string): Decision | undefined {
  return (Object.keys(decisions) as Decision[]).find((decision) => Object.hasOwn(decisions[decision], operation))
}

export function decisionOnField(field: string): Decision | undefined {
  return (Object.keys(decisions) as Decision[]).find((decision) => Object.values(decisions[decision]).some((fields) => fields.split(' ').includes(field)))
}
