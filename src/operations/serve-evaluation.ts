import { z } from 'zod'
import type { Catalog } from '../catalog/catalog.ts'
import { releaseName } from '../catalog/release.ts'
import { evaluation, type Evaluation } from '../evaluation/document.ts'
import { refuseUnless } from './permission.ts'
import { evaluateOpening } from './evaluate-opening.ts'
import { failure, parseInput, type Answer, type RecordDependencies, type RecordOperation } from './operation.ts'

const release = { release: releaseName.nullish().meta({ description: 'Evaluates by a past release of the catalog as it was cut; by what is in force now when left out.' }) }
const keep = { keep: z.boolean().nullish().meta({ description: 'Keeps the evaluation, so that it can be read and reproduced. Needs the scope "record".' }) }

const withRelease = evaluateOpening.input.extend(release)
const withKeep = withRelease.extend(keep).meta({ id: 'EvaluationRequest' })

/** An evaluation by the active catalog or by a past release. */
export const serveEvaluation: RecordOperation<typeof withRelease, typeof evaluation> = {
  name: 'evaluateOpening',
  cost: { units: 5 },
  summary: evaluateOpening.summary,
  description: evaluateOpening.description,
  input: withRelease,
  output: evaluation,
  run: async (deps, raw) => {
    const answered = await serve(deps, raw)
    return answered.ok ? { ok: true, value: answered.value.answer } : answered
  },
}

/** The same, kept when the request says so. */
export const keepEvaluation: RecordOperation<typeof withKeep, typeof evaluation> = {
  name: 'evaluateOpening',
  cost: { units: 6 },
  makes: true,
  summary: evaluateOpening.summary,
  description: 'Applies the rules of a place and date to an opening, and computes what the crew needs to build it. Nothing is kept unless asked.',
  input: withKeep,
  output: evaluation,
  run: async (deps, raw) => {
    const asked = parseInput(z.object(keep), membersOf(raw))
    if (!asked.ok) return asked
    const kept = asked.value.keep === true
    const refused = kept ? refuseUnless(deps.caller, 'record') : undefined
    if (refused) return refused
    const answered = await serve(deps, without(raw, 'keep'))
    if (!answered.ok) return answered
    if (kept) await deps.records.keepEvaluation(answered.value.record)
    return { ok: true, value: answered.value.answer }
  },
}

interface Served {
  readonly answer: Evaluation
  readonly record: Parameters<RecordDependencies['records']['keepEvaluation']>[0]
}

async function serve(deps: RecordDependencies, raw: unknown): Promise<Answer<Served>> {
  const { sequence, catalog: active } = deps.active.state
  const asked = parseInput(z.object(release), membersOf(raw))
  if (!asked.ok) return asked
  const past = asked.value.release ? await deps.active.release(asked.value.release) : active
  if (!past) return failure('catalogGone', [{ code: 'catalogGone', pointer: '/release', detail: `Release ${asked.value.release ?? ''} is not here, or not to be trusted. The list of releases has those that are.` }])
  const request = without(raw, 'release')
  const answered = evaluateOpening.run({ ...deps, catalog: past }, request)
  if (!answered.ok) return answered
  return { ok: true, value: { answer: answered.value, record: recordOf(answered.value, request, past, past === active ? sequence : 0) } }
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
