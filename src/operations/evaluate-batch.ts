import { z } from 'zod'
import type { Catalog } from '../catalog/catalog.ts'
import { releaseName } from '../catalog/release.ts'
import type { RuleSet } from '../catalog/rule-set.ts'
import { brief, briefOf, evaluateBriefly, type Brief } from '../evaluation/brief.ts'
import { evaluation, type Evaluation } from '../evaluation/document.ts'
import { evaluateInFull } from '../evaluation/evaluate.ts'
import { holdPointId, type HoldPoint } from '../opening/hold-points.ts'
import type { Opening } from '../opening/opening.ts'
import type { Problem } from '../opening/problem.ts'
import { openingSchema } from '../opening/schema.ts'
import { malformedPlaces } from '../opening/well-formed.ts'
import { readWithOpening, stamped } from './evaluate-opening.ts'
import { failure, parseInput, type Answer, type Dependencies, type RecordDependencies, type RecordOperation } from './operation.ts'
import { place, resolvePlace } from './place.ts'
import { catalogOfRelease } from './serve-evaluation.ts'

const text = z.string()
const holdPoint = holdPointId.nullish().meta({ description: 'Where the work stands at this opening; where it stands for the whole batch when left out.' })
const key = z.string().min(1).max(200).nullish().meta({ description: 'What the caller calls it. It comes back with the answer.' })

const item = z.strictObject({ key, holdPoint, opening: openingSchema }).meta({ id: 'BatchOpening' })
const unreadItem = z.strictObject({ key, holdPoint, opening: z.unknown().optional() })

/** What holds for every opening of a batch. */
export const batchSettings = z.strictObject({
  ...place,
  release: releaseName.nullish().meta({ description: 'Evaluates by a past release of the catalog as it was cut; by what is in force now when left out.' }),
  holdPoint: holdPointId.nullish().meta({ description: 'Where the work stands, for openings that do not say it themselves.' }),
  detail: z.enum(['brief', 'full']).meta({ id: 'BatchDetail' }).nullish().meta({ description: 'brief: the verdict, what is not met, what is not determined and what to measure next. full: whole evaluations beside, with quantities and digest. Brief when left out.' }),
})
export type BatchSettings = z.output<typeof batchSettings>

export const batchAnswer = z
  .strictObject({
    line: z.int().min(1).max(1_000_000_000).meta({ description: 'Which it was of the openings, or on which line it stood, from 1.' }),
    key: text.nullable(),
    reference: text.nullable(),
    brief: brief.nullable(),
    evaluation: evaluation.nullable().meta({ description: 'With "detail": "full".' }),
    code: text.nullable().meta({ description: 'The problem code, where it was not evaluated.' }),
    problems: z.array(z.strictObject({ code: text, pointer: text, detail: text }).meta({ id: 'BatchProblem' })),
  })
  .meta({ id: 'BatchAnswer', description: 'What one opening came to, or why it was not evaluated.' })
export type BatchAnswer = z.infer<typeof batchAnswer>

const mostOpenings = 100
const input = batchSettings.extend({ openings: z.array(item).min(1).max(mostOpenings) }).meta({ id: 'BatchRequest' })
const unread = batchSettings.extend({ openings: z.array(z.unknown()).min(1).max(mostOpenings) })
const output = z.strictObject({ answers: z.array(batchAnswer) }).meta({ id: 'BatchEvaluation' })

/** Evaluates a few openings at once. One that cannot be read is told as such and holds nothing up. */
export const evaluateBatch: RecordOperation<typeof input, typeof output> = {
  name: 'evaluateBatch',
  cost: { units: 5, each: 'openings' },
  summary: 'Evaluate many openings',
  description: `Evaluates openings of one place and date, in their order; one that cannot be read is told as such and holds nothing up. A JSON body holds up to ${mostOpenings}. A body of lines of JSON (application/x-ndjson, application/jsonl) has no end of them: what holds for all stands in the query, each line is one opening, and each is answered by one line while more are still coming, so read while you send. When the quota is used up, the lines wait for it. Nothing is kept.`,
  input,
  output,
  run: async (deps, raw) => {
    const request = parseInput(unread, raw)
    if (!request.ok) return request
    const { openings, ...settings } = request.value
    const batch = await openBatch(deps, settings)
    if (!batch.ok) return batch
    const answers: BatchAnswer[] = []
    for (const [index, opening] of openings.entries()) {
      answers.push(batch.value.answer(opening, index + 1))
      await deps.giveWay()
    }
    return { ok: true, value: { answers } }
  },
}

/** Answers one opening of a batch. */
export type EvaluateItem = (raw: unknown, line: number) => BatchAnswer

/** What a batch is answered by. The catalog was pinned at its start, and the day with it, so that neither an adoption nor midnight changes what is being answered. */
export interface Batch {
  readonly catalog: Catalog
  readonly settings: BatchSettings
  readonly answer: EvaluateItem
}

export async function openBatch(deps: RecordDependencies, raw: unknown): Promise<Answer<Batch>> {
  const settings = parseInput(batchSettings, raw)
  if (!settings.ok) return settings
  const catalog = await catalogOfRelease(deps, settings.value.release ?? null)
  return catalog.ok ? batchBy({ ...deps, catalog: catalog.value }, settings.value) : catalog
}

/** The same settings and the same catalog answer alike wherever they are. */
export function batchBy(deps: BatchDependencies, settings: BatchSettings): Answer<Batch> {
  const ruleSet = resolvePlace(deps, settings)
  if (!ruleSet.ok) return ruleSet
  const pinned = { ...settings, asOf: ruleSet.value.asOf }
  return { ok: true, value: { catalog: deps.catalog, settings: pinned, answer: answerer(deps, { ruleSet: ruleSet.value, settings: pinned }) } }
}

type BatchDependencies = Dependencies & Pick<RecordDependencies, 'tally'>

interface Ground {
  readonly ruleSet: RuleSet
  readonly settings: BatchSettings
}

function answerer(deps: BatchDependencies, ground: Ground): EvaluateItem {
  return (raw, line) => {
    const malformed = malformedPlaces(raw)
    const read = malformed.length > 0 ? failure('invalidInput', malformed) : readWithOpening(unreadItem, raw)
    if (!read.ok) return notEvaluated(line, read.problems, keyIn(raw))
    const { opening, request: { key, holdPoint } } = read.value
    const answered = evaluated(deps, ground, opening, holdPoint ?? ground.settings.holdPoint ?? null)
    deps.tally?.evaluated({ resolvedAt: ground.ruleSet.resolvedAt, summary: answered.brief.summary })
    return { line, key: key ?? null, reference: opening.reference ?? null, ...answered, code: null, problems: [] }
  }
}

function evaluated(deps: BatchDependencies, { ruleSet, settings }: Ground, opening: Opening, point: HoldPoint | null): { readonly brief: Brief; readonly evaluation: Evaluation | null } {
  if (settings.detail !== 'full') return { brief: evaluateBriefly(opening, ruleSet, deps.catalog, point), evaluation: null }
  const full = evaluateInFull(opening, ruleSet, deps.catalog, point)
  return { brief: briefOf(full.assessment), evaluation: stamped(deps, full) }
}

export function notEvaluated(line: number, problems: readonly Problem[], key: string | null = null, code = 'invalidInput'): BatchAnswer {
  return { line, key, reference: null, brief: null, evaluation: null, code, problems: problems.map(({ code, pointer, detail }) => ({ code, pointer, detail })) }
}

function keyIn(raw: unknown): string | null {
  const { key } = typeof raw === 'object' && raw !== null ? (raw as { readonly key?: unknown }) : {}
  return typeof key === 'string' && key.length <= 200 ? key : null
}
