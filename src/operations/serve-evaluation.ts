import { z } from 'zod'
import type { Catalog } from '../catalog/catalog.ts'
import { releaseName } from '../catalog/release.ts'
import type { evaluation, Evaluation } from '../evaluation/document.ts'
import type { KeptEvaluation } from '../store/records.ts'
import { recordable, refuseUnlessAdmitted } from './permission.ts'
import { evaluateOpening } from './evaluate-opening.ts'
import { evaluationEvent } from './events.ts'
import { failure, parseInput, type Answer, type Failure, type RecordDependencies, type RecordOperation } from './operation.ts'
import { projectFor, projectId } from './projects.ts'

export const release = { release: releaseName.nullish().meta({ description: 'Evaluates by a past release of the catalog as it was cut; by what is in force now when left out.' }) }
const keep = {
  keep: z.boolean().nullish().meta({ description: 'Keeps the evaluation, so that it can be read and reproduced. Needs the scope "record".' }),
  project: projectId.nullish().meta({ description: 'The project in whose record it is kept, for all who may record in it. Left out, it is for those alone who may record in all projects.' }),
}

export const withRelease = evaluateOpening.input.extend(release)
const withKeep = withRelease.extend(keep).meta({ id: 'EvaluationRequest' })

/** An evaluation by the active catalog or by a past release. */
export const serveEvaluation: RecordOperation<typeof withRelease, typeof evaluation> = {
  ...evaluateOpening,
  cost: { units: 5 },
  input: withRelease,
  run: async (deps, raw) => {
    const answered = await serve(deps, raw)
    return answered.ok ? { ok: true, value: answered.value.answer } : answered
  },
}

/** The same, kept when the request says so. */
export const keepEvaluation: RecordOperation<typeof withKeep, typeof evaluation> = {
  ...evaluateOpening,
  cost: { units: 6 },
  makes: true,
  description: 'Applies the rules of a place and date to an opening, and computes what the crew needs to build it. Nothing is kept unless asked.',
  input: withKeep,
  run: async (deps, raw) => {
    const asked = parseInput(z.object(keep), membersOf(raw))
    if (!asked.ok) return asked
    const { keep: kept, project = null } = asked.value
    const refused = kept ? await refuseToKeep(deps, project) : project === null ? undefined : uselessProject
    if (refused) return refused
    const answered = await serve(deps, without(without(raw, 'keep'), 'project'))
    if (!answered.ok) return answered
    if (kept) await deps.records.keepEvaluation({ ...answered.value.record, project }, [evaluationEvent(deps, answered.value.answer)])
    return { ok: true, value: answered.value.answer }
  },
}

const uselessProject = failure('invalidInput', [{ code: 'notAllowed', pointer: '/project', detail: 'says where an evaluation is kept: send "keep": true with it, or leave it out' }])

const projectMissing = failure('forbidden', [{ code: 'forbidden', pointer: '/project', detail: 'is needed: the token may record in some projects only, so say in which one the evaluation is kept' }])

async function refuseToKeep(deps: RecordDependencies, project: string | null): Promise<Failure | undefined> {
  if (project === null) return recordable(deps.caller) === null ? undefined : (refuseUnlessAdmitted(deps.caller, 'record') ?? projectMissing)
  const found = await projectFor(deps, project)
  return found.ok ? undefined : found
}

interface Served {
  readonly answer: Evaluation
  readonly record: Omit<KeptEvaluation, 'project'>
}

async function serve(deps: RecordDependencies, raw: unknown): Promise<Answer<Served>> {
  const { sequence, catalog: active } = deps.active.state
  const asked = await catalogAsked(deps, raw)
  if (!asked.ok) return asked
  const { catalog, request } = asked.value
  const answered = evaluateOpening.run({ ...deps, catalog }, request)
  if (!answered.ok) return answered
  deps.tally?.evaluated(answered.value)
  return { ok: true, value: { answer: answered.value, record: recordOf(answered.value, request, catalog, catalog === active ? sequence : 0) } }
}

/** The catalog that a request names, and the rest of the request. */
export async function catalogAsked(deps: RecordDependencies, raw: unknown): Promise<Answer<{ readonly catalog: Catalog; readonly request: unknown }>> {
  const asked = parseInput(z.object(release), membersOf(raw))
  if (!asked.ok) return asked
  const catalog = await catalogOfRelease(deps, asked.value.release ?? null)
  return catalog.ok ? { ok: true, value: { catalog: catalog.value, request: without(raw, 'release') } } : catalog
}

/** The catalog of a past release as it was cut; what is in force now where none is named. */
export async function catalogOfRelease({ active }: Pick<RecordDependencies, 'active'>, name: string | null): Promise<Answer<Catalog>> {
  const catalog = name === null ? active.state.catalog : await active.release(name)
  return catalog ? { ok: true, value: catalog } : failure('catalogGone', [{ code: 'catalogGone', pointer: '/release', detail: `Release ${name ?? ''} is not here, or not to be trusted. The list of releases has those that are.` }])
}

function recordOf(answer: Evaluation, request: unknown, { release, digest }: Catalog, sequence: number): Served['record'] {
  const { id, evaluatedAt, resolvedAt, summary, asOf } = answer
  return { id, evaluatedAt, jurisdiction: resolvedAt, release, catalogDigest: digest, sequence, digest: answer.digest, verdict: summary.verdict, request: { ...(request as object), asOf }, answer }
}

/** What is not an object stays as it is, for the operation behind to refuse in its own words. */
function without(raw: unknown, member: string): unknown {
  const members = membersOf(raw)
  return members === undefined ? raw : Object.fromEntries(Object.entries(members).filter(([key]) => key !== member))
}

function membersOf(raw: unknown): object | undefined {
  return typeof raw === 'object' && raw !== null && !Array.isArray(raw) ? raw : undefined
}
