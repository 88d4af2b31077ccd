import type { Records } from '../records.ts'
import { adopt, adoptionsAfter } from './adoptions.ts'
import type { AdoptionWatch } from './adoption-watch.ts'
import { changeDraft, createDraft, deleteDraft, listDrafts, readDraft } from './drafts.ts'
import { keepEvaluation, listEvaluations, readEvaluation } from './evaluations.ts'
import type { Db, Flavor } from './flavor.ts'
import { appendEntries, listOpenings, readEntries } from './journal.ts'
import { sqlOutbox } from './outbox.ts'
import { claimRequest, keepAnswer, releaseRequest } from './kept-answers.ts'
import { sql } from 'kysely'
import { changeProject, createProject, listProjects, readProject } from './projects.ts'
import { createToken, findToken, listTokens, revokeToken } from './tokens.ts'

/** Records over either database. */
export function sqlRecords(db: Db, flavor: Flavor, watch: AdoptionWatch): Records {
  return {
    createDraft: (draft) => createDraft(db, draft),
    readDraft: (id) => readDraft(db, id),
    listDrafts: (jurisdictions, after, first) => listDrafts(db, flavor, jurisdictions, after, first),
    changeDraft: (id, seenVersion, next) => changeDraft(db, id, seenVersion, next),
    deleteDraft: (id, seenVersion) => deleteDraft(db, id, seenVersion),

    async adopt(adoption, draft, seenSequence, events = []) {
      const answer = await adopt(db, flavor, adoption, { draft, seenSequence, events })
      if (answer.ok) watch.saw(answer.adopted.sequence)
      return answer
    },
    adoptionsAfter: (sequence) => adoptionsAfter(db, sequence),

    keepEvaluation: (evaluation, events = []) => keepEvaluation(db, evaluation, events),
    readEvaluation: (id) => readEvaluation(db, id),
    listEvaluations: (jurisdictions, after, first) => listEvaluations(db, flavor, jurisdictions, after, first),

    createProject: (project, events = []) => createProject(db, project, events),
    readProject: (id) => readProject(db, id),
    listProjects: (ids, after, first) => listProjects(db, flavor, ids, after, first),
    changeProject: (id, seenVersion, next, events = []) => changeProject(db, id, seenVersion, next, events),
    appendEntries: (project, entries, received, seen, eventsOf = () => []) => appendEntries(db, flavor, { project, entries, received, seen, eventsOf }),
    readEntries: (project, opening, afterSequence, first) => readEntries(db, project, opening, afterSequence, first),
    listOpenings: (project, after, first) => listOpenings(db, project, after, first),

    ...sqlOutbox(db, flavor),

    createToken: (token) => createToken(db, token),
    findToken: (secretHash) => findToken(db, secretHash),
    listTokens: () => listTokens(db),
    revokeToken: (id, revokedAt) => revokeToken(db, id, revokedAt),

    claimRequest: (claim, limits) => claimRequest(db, claim, limits),
    keepAnswer: (claim, sealed) => keepAnswer(db, claim, sealed),
    releaseRequest: (claim) => releaseRequest(db, claim),

    onAdoption: (listener) => watch.listen(listener),
    check: async () => { await sql`select 1`.execute(db) },
    async close() {
      watch.close()
      await db.destroy()
    },
  }
}
