import { getNullableType, GraphQLError, GraphQLObjectType, GraphQLSchema, type GraphQLFieldConfig } from 'graphql'
import { runFor } from '../../operations/access.ts'
import { operations } from '../../operations/index.ts'
import type { AnyOperation, RecordDependencies } from '../../operations/operation.ts'
import { codeOfFailure, problemTypes } from '../problems.ts'
import { asSent } from './as-sent.ts'
import { asConnection } from './connection.ts'
import { costOfField } from './cost.ts'
import { TypesFromSchemas } from './types.ts'

/** What a resolver is given beside its arguments. */
export interface Context {
  readonly deps: RecordDependencies
  /** Which operation of the document is meant. */
  readonly operationName: string | undefined
}

/** The field under which each operation that changes nothing stands. */
const queries: Readonly<Record<string, AnyOperation>> = {
  evaluation: operations.evaluateOpening,
  batch: operations.evaluateBatch,
  keptEvaluation: operations.readEvaluation,
  reproduction: operations.reproduceEvaluation,
  report: operations.reportOpening,
  evaluationReport: operations.readEvaluationReport,
  drawing: operations.drawOpening,
  keptDrawing: operations.drawEvaluation,
  rules: operations.listRules,
  rule: operations.readRule,
  jurisdictions: operations.listJurisdictions,
  jurisdiction: operations.readJurisdiction,
  publications: operations.listPublications,
  publication: operations.readPublication,
  quantities: operations.listQuantities,
  quantity: operations.readQuantity,
  computation: operations.computeQuantities,
  takeOff: operations.takeOff,
  cutList: operations.planCuts,
  drivingRain: operations.analyzeDrivingRain,
  facts: operations.listFacts,
  holdPoints: operations.listHoldPoints,
  form: operations.readForm,
  amendments: operations.listAmendments,
  amendment: operations.readAmendment,
  amendmentDrafts: operations.listDrafts,
  amendmentDraft: operations.readDraft,
  amendmentPreview: operations.previewDraft,
  projects: operations.listProjects,
  project: operations.readProject,
  openingRecord: operations.readOpeningRecord,
  recordedEvaluation: operations.evaluateRecordedOpening,
  openingForm: operations.readOpeningForm,
  journal: operations.readJournal,
  projectExport: operations.exportProject,
  openings: operations.listOpenings,
  building: operations.readBuilding,
  buildingTable: operations.readBuildingTable,
  buildingReport: operations.readBuildingReport,
  openingReport: operations.readOpeningReport,
  releases: operations.listReleases,
  tokens: operations.listTokens,
  webhooks: operations.listWebhooks,
  webhook: operations.readWebhook,
  webhookDeliveries: operations.listDeliveries,
}

/** The field under which each operation that changes what is remembered stands. */
const mutations: Readonly<Record<string, AnyOperation>> = {
  keepEvaluation: operations.keepEvaluation,
  createAmendmentDraft: operations.createDraft,
  changeAmendmentDraft: operations.changeDraft,
  deleteAmendmentDraft: operations.deleteDraft,
  adoptAmendmentDraft: operations.adoptDraft,
  createProject: operations.createProject,
  changeProject: operations.changeProject,
  postEntries: operations.postEntries,
  importSchedule: operations.importSchedule,
  postFormAnswers: operations.postFormAnswers,
  createToken: operations.createToken,
  revokeToken: operations.revokeToken,
  createWebhook: operations.createWebhook,
  deleteWebhook: operations.deleteWebhook,
  enableWebhook: operations.enableWebhook,
  rotateWebhookSecret: operations.rotateWebhookSecret,
  pingWebhook: operations.pingWebhook,
  replayDelivery: operations.replayDelivery,
}

/** The GraphQL door, built from the same operations as the REST one. */
export function buildGraphqlSchema(): GraphQLSchema {
  const types = new TypesFromSchemas()
  const rootOf = (name: string, fields: Readonly<Record<string, AnyOperation>>) =>
    new GraphQLObjectType<unknown, Context>({ name, fields: Object.fromEntries(Object.entries(fields).map(([field, operation]) => [field, fieldOf(operation, field, types)])) })
  return new GraphQLSchema({ query: rootOf('Query', queries), mutation: rootOf('Mutation', mutations) })
}

/** A field may be null, so that one refusal leaves the other fields of a query standing. */
function fieldOf(operation: AnyOperation, name: string, types: TypesFromSchemas): GraphQLFieldConfig<unknown, Context> {
  const members = Object.entries(operation.input.shape)
  return {
    type: getNullableType(types.output(operation.output, name)),
    description: operation.description,
    ...(operation.deprecated ? { deprecationReason: `See ${operation.deprecated.link}.` } : {}),
    extensions: { complexity: costOfField(operation) },
    args: Object.fromEntries(members.map(([key, schema]) => [key, types.inputField(schema as never, name.charAt(0).toUpperCase() + name.slice(1), key)])),
    resolve: async (_, args, { deps }) => {
      const asked = asSent(operation.input, args)
      const answered = await runFor(operation, deps, asked)
      if (answered.ok) return asConnection(operation, deps, asked, answered.value)
      const code = codeOfFailure[answered.code]
      throw new GraphQLError(problemTypes[code].title, { extensions: { code, errors: answered.problems } })
    },
  }
}
