import { z } from 'zod'
import type { Catalog } from '../catalog/catalog.ts'
import { evaluation, type Evaluation } from '../evaluation/document.ts'
import { refuseUnless } from './caller.ts'
import { evaluateOpening } from './evaluate-opening.ts'
import { failure, type Answer, type RecordDependencies, type RecordOperation } from './operation.ts'

export const release = z.string().regex(/^\d{4}\.\d{1,4}\.\d{1,4}$/, 'must be a release like "2026.1.0"').nullish()
  .meta({ description: 'Evaluates by a past release of the catalog, as it was cut; the current one when left out.' })
const keep = z.boolean().nullish().meta({ description: 'Keeps the evaluation, so that it can be read and reproduced. Needs the scope "record".' })

/** The evaluation as the doors offer it: of one opening, by the active catalog or a past release, kept on request. */
export const serveEvaluation: RecordOperation<z.ZodObject, typeof evaluation> = {
  name: 'evaluateOpening',
  summary: evaluateOpening.summary,
  description: 'Applies the rules of a place and date to an opening, and computes what the crew needs to build it. Nothing is kept unless asked.',
  input: evaluateOpening.input.extend({ release, keep }).meta({ id: 'EvaluationRequest' }),
  output: evaluation,
  run: async (deps, raw) => {
    const { release: version, keep: kept, request } = apart(raw)
    if (kept !== undefined && kept !== null && typeof kept !== 'boolean') return failure('invalidInput', [{ code: 'wrongType', pointer: '/keep', detail: 'must be a boolean' }])
    const refused = kept ? refuseUnless(deps.caller, 'record') : undefined
    if (refused) return refused
    const { sequence, catalog: active } = deps.active.state
    const catalog = version === undefined || version === null ? active : await pastRelease(deps, version)
    if ('ok' in catalog) return catalog
    const answered = evaluateOpening.run({ ...deps, catalog }, request)
    if (answered.ok && kept) await remember(deps, answered.value, request, catalog === active ? sequence : 0)
    return answered
  },
}

/** Keeping is this operation's business; all else is the evaluation's. */
function apart(raw: unknown): { release?: unknown; keep?: unknown; request: unknown } {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) return { request: raw }
  const { release: version, keep: kept, ...request } = raw as Record<string, unknown>
  return { release: version, keep: kept, request }
}

async function pastRelease(deps: RecordDependencies, version: unknown): Promise<Catalog | Extract<Answer<never>, { ok: false }>> {
  const parsed = release.safeParse(version)
  if (!parsed.success || !parsed.data) return failure('invalidInput', [{ code: 'notAllowed', pointer: '/release', detail: 'must be a release like "2026.1.0"' }])
  const catalog = await deps.active.release(parsed.data)
  return catalog ?? failure('catalogGone', [{ code: 'catalogGone', pointer: '/release', detail: `Release ${parsed.data} is not here. The list of releases has those that are.` }])
}

async function remember({ records }: RecordDependencies, answer: Evaluation, request: unknown, sequence: number): Promise<void> {
  const { id, evaluatedAt, resolvedAt, catalog, digest, summary, asOf } = answer
  await records.keepEvaluation({
    id, evaluatedAt, jurisdiction: resolvedAt, release: catalog.release, catalogDigest: catalog.digest, sequence, digest, verdict: summary.verdict,
    request: { ...(request as object), asOf }, answer,
  })
}
