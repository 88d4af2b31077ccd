import type { FastifyPluginAsync } from 'fastify'
import { amendments } from './amendments.ts'
import { batches } from './batches.ts'
import { answerConditionally } from '../conditional.ts'
import { drawings } from './drawings.ts'
import { evaluations } from './evaluations.ts'
import { exports } from './exports.ts'
import { facts } from './facts.ts'
import { forms } from './forms.ts'
import { jurisdictions } from './jurisdictions.ts'
import { keepAnswers } from './once.ts'
import { quantities } from './quantities.ts'
import { projects } from './projects.ts'
import { publications } from './publications.ts'
import { reports } from './reports.ts'
import { releases } from './releases.ts'
import { rules } from './rules.ts'
import { tokens } from './tokens.ts'
import { webhooks } from './webhooks.ts'

/** The REST door: one file for each resource. Operations validate, so that REST and GraphQL refuse the same things in the same words. */
export const rest: FastifyPluginAsync = async (app) => {
  answerConditionally(app)
  keepAnswers(app)
  for (const resource of [evaluations, batches, drawings, rules, jurisdictions, amendments, publications, releases, facts, forms, quantities, projects, exports, reports, tokens, webhooks]) await app.register(resource)
}
