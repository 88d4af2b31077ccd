import { z } from 'zod'
import type { Catalog } from '../catalog/catalog.ts'
import { evaluation, type Evaluation } from '../evaluation/document.ts'
import { draw, drawingKinds } from '../drawing/index.ts'
import type { KeptEvaluation } from '../store/records.ts'
import { answerDifferences } from './answer-difference.ts'
import type { Caller } from './caller.ts'
import { drawing, onTheWire } from './draw-opening.ts'
import { mayRecord, recordable } from './permission.ts'
import { evaluateAs, evaluateOpening, unread } from './evaluate-opening.ts'
import { defineRecordOperation, failure, notFound, type Answer, type RecordDependencies } from './operation.ts'

const text = z.string()
export const keptAsked = z.strictObject({ evaluation: text.max(100).meta({ description: 'The id of a kept evaluation.' }) })

export const readEvaluation = defineRecordOperation({
  name: 'readEvaluation',
  summary: 'Read a kept evaluation',
  description: 'Answers a kept evaluation word for word as it was given.',
  input: keptAsked,
  output: evaluation,
  answer: async (deps, { evaluation: id }) => {
    const found = await keptFor(deps, id)
    return found.ok ? { ok: true, value: found.value.answer as Evaluation } : found
  },
})

const reproduction = z
  .strictObject({
    evaluation: text,
    outcome: z.enum(['identical', 'different']).meta({ id: 'ReproductionOutcome' }),
    keptDigest: text,
    digest: text.meta({ description: 'Of the answer computed now.' }),
    keptCatalog: text.meta({ description: 'Digest of the catalog that answered then.' }),
    catalog: text.meta({ description: 'Digest of the catalog that answered now; the same unless the one of that time is gone.' }),
    differences: z.array(
      z.strictObject({ pointer: text, kept: text.nullable(), now: text.nullable() }).meta({ id: 'AnswerDifference', description: 'Each value as JSON text; null where one answer has nothing there.' }),
    ),
  })
  .meta({ id: 'Reproduction' })

export const reproduceEvaluation = defineRecordOperation({
  name: 'reproduceEvaluation',
  cost: { units: 6 },
  summary: 'Reproduce a kept evaluation',
  description: 'Computes a kept evaluation again from the catalog of that time: identical, or the exact difference.',
  input: keptAsked,
  output: reproduction,
  answer: async (deps, { evaluation: id }) => {
    const found = await keptFor(deps, id)
    if (!found.ok) return found
    const again = await computeAgain(deps, found.value)
    return again.ok ? { ok: true, value: comparison(found.value, again.value) } : again
  },
})

export const drawEvaluation = defineRecordOperation({
  name: 'drawEvaluation',
  cost: { units: 6 },
  summary: 'Draw the opening of a kept evaluation',
  description: 'The opening as it was described, computed by the catalog of that time, with the findings of the kept evaluation numbered in it.',
  input: z.strictObject({ ...keptAsked.shape, kind: z.enum(drawingKinds).meta({ description: 'Which drawing: the front, a section, the blanks of the flashings, or the layout of weeps and ties.' }) }),
  output: drawing,
  answer: async (deps, { evaluation: id, kind }) => {
    const found = await keptFor(deps, id)
    if (!found.ok) return found
    const kept = found.value
    const catalog = await catalogOfThen(deps, kept)
    if (!catalog) return failure('catalogGone', [{ code: 'catalogGone', pointer: '', detail: `The catalog with the digest ${kept.catalogDigest} is not here, so that what was computed from it cannot be drawn.` }])
    const evaluated = evaluateAs(unread, { ...deps, catalog }, kept.request)
    if (!evaluated.ok) return failure('catalogGone', evaluated.problems)
    const { opening, full } = evaluated.value
    return { ok: true, value: onTheWire(draw(kind, opening, { ...full, assessment: kept.answer as Evaluation })) }
  },
})

/** A kept evaluation for a caller who may read it; one of another project is as good as none. */
export async function keptFor({ records, caller }: RecordDependencies, id: string): Promise<Answer<KeptEvaluation>> {
  const kept = await records.readEvaluation(id)
  return kept && mayRead(caller, kept) ? { ok: true, value: kept } : notFound('evaluation', id)
}

/** What was kept in no project is for those who may read all records. */
export function mayRead(caller: Caller, { project }: KeptEvaluation): boolean {
  return project === null ? recordable(caller) === null : mayRecord(caller, project)
}

/** By the catalog of that time, told by its digest; by today's where that one is gone, which the answer then shows. */
async function computeAgain(deps: RecordDependencies, kept: KeptEvaluation): Promise<Answer<Evaluation>> {
  const catalog = (await catalogOfThen(deps, kept)) ?? deps.catalog
  const answered = evaluateOpening.run({ ...deps, catalog }, kept.request)
  return answered.ok ? answered : failure('catalogGone', answered.problems)
}

/** The catalog by which it was answered, where that is still here. */
export async function catalogOfThen(deps: RecordDependencies, { release, sequence, catalogDigest }: KeptEvaluation): Promise<Catalog | undefined> {
  const past = await deps.active.catalogsOf(release, sequence)
  return past.find(({ digest }) => digest === catalogDigest)
}

function comparison(kept: KeptEvaluation, again: Evaluation): z.infer<typeof reproduction> {
  const asKept = { id: kept.id, evaluatedAt: kept.evaluatedAt }
  return {
    evaluation: kept.id, outcome: again.digest === kept.digest ? 'identical' : 'different', keptDigest: kept.digest, digest: again.digest,
    keptCatalog: kept.catalogDigest, catalog: again.catalog.digest,
    differences: [...answerDifferences(kept.answer, { ...again, ...asKept })],
  }
}
