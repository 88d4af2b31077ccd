import { analyzeDrivingRain } from './analyze-driving-rain.ts'
import { adoptDraft } from './adopt-draft.ts'
import { changeDraft, createDraft, deleteDraft, listDrafts, readDraft } from './amendment-drafts.ts'
import { listAmendments, readAmendment } from './amendments.ts'
import { evaluateBatch } from './evaluate-batch.ts'
import { exportProject } from './export-project.ts'
import { listFacts, listHoldPoints } from './facts.ts'
import { readForm, readOpeningForm } from './forms.ts'
import { listJurisdictions, readJurisdiction } from './jurisdictions.ts'
import { drawEvaluation, readEvaluation, reproduceEvaluation } from './kept-evaluations.ts'
import { readBuilding } from './building.ts'
import { readBuildingTable } from './building-table.ts'
import { readBuildingReport, readEvaluationReport, readOpeningReport, reportOpening } from './reports.ts'
import { importSchedule } from './import-schedule.ts'
import { listOpenings } from './list-openings.ts'
import { listRules } from './list-rules.ts'
import { planCuts } from './plan-cuts.ts'
import { evaluateRecordedOpening, readJournal, readOpeningRecord } from './opening-records.ts'
import { postEntries } from './post-entries.ts'
import { postFormAnswers } from './post-form-answers.ts'
import { changeProject, createProject, listProjects, readProject } from './projects.ts'
import { previewDraft } from './preview-draft.ts'
import { listPublications, readPublication } from './publications.ts'
import { readRule } from './read-rule.ts'
import { listReleases } from './releases.ts'
import { serveDrawing } from './serve-drawing.ts'
import { keepEvaluation, serveEvaluation } from './serve-evaluation.ts'
import { computeQuantities } from './compute-quantities.ts'
import { listQuantities, readQuantity } from './quantities.ts'
import { takeOff } from './take-off.ts'
import { createToken, listTokens, revokeToken } from './tokens.ts'
import { listDeliveries, pingWebhook, replayDelivery } from './webhook-deliveries.ts'
import { createWebhook, deleteWebhook, enableWebhook, listWebhooks, readWebhook, rotateWebhookSecret } from './webhooks.ts'

/** Everything the service does. */
export const operations = {
  evaluateOpening: serveEvaluation, evaluateBatch, keepEvaluation, readEvaluation, reproduceEvaluation, drawOpening: serveDrawing, drawEvaluation, reportOpening, readEvaluationReport,
  listRules, readRule, listJurisdictions, readJurisdiction, listPublications, readPublication, listFacts, listHoldPoints, listReleases, readForm,
  listQuantities, readQuantity, computeQuantities, takeOff, planCuts, analyzeDrivingRain,
  listAmendments, readAmendment, createDraft, readDraft, listDrafts, changeDraft, deleteDraft, previewDraft, adoptDraft,
  createProject, readProject, listProjects, changeProject, postEntries, readOpeningRecord, evaluateRecordedOpening, readJournal, exportProject,
  listOpenings, readBuilding, readBuildingTable, readBuildingReport, readOpeningReport, importSchedule, readOpeningForm, postFormAnswers,
  createToken, listTokens, revokeToken,
  createWebhook, listWebhooks, readWebhook, deleteWebhook, enableWebhook, rotateWebhookSecret, listDeliveries, pingWebhook, replayDelivery,
} as const
