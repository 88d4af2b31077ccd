import { closest } from 'fastest-levenshtein'
import { z } from 'zod'
import { digestOf } from '../catalog/digest.ts'
import { assessment, computedQuantity } from '../evaluation/document.ts'
import { method } from '../evaluation/evaluate.ts'
import { readGiven, withGiven, type Given } from '../evaluation/given.ts'
import { notice } from '../evaluation/notice.ts'
import { quantityInputs } from '../evaluation/quantity-inputs.ts'
import { quantityEntry } from '../evaluation/quantity-words.ts'
import type { Problem } from '../opening/problem.ts'
import { partialOpeningSchema } from '../opening/schema.ts'
import { computeSome } from '../quantities/compute.ts'
import { quantities } from '../quantities/index.ts'
import type { QuantityResult } from '../quantities/result.ts'
import { failure, parseInput, type Answer, type Dependencies, type Operation } from './operation.ts'
import { place, resolveIfAsked } from './place.ts'

const text = z.string()

const givenValue = z
  .union([text.max(200), z.number(), z.boolean(), z.array(z.union([text.max(200), z.number(), z.boolean(), z.null()])).min(1).max(2)], { error: 'a text with its unit, a number, a choice, true or false, or a list [left, right]' })
  .meta({ id: 'GivenValue', title: 'Given value', description: 'A text with its unit, a number, a choice, true or false, or a list [left, right].' })

const givenInput = z
  .strictObject({
    from: text.max(200).meta({ description: 'A fact by its path, "opening.width"; or "rule …", "parameter …", "quantity …" with an id, as answers name their inputs.' }),
    value: givenValue,
  })
  .meta({ id: 'GivenInput' })

const around = {
  quantities: z.array(text.max(200)).min(1).max(50).meta({ description: 'The ids of the quantities to compute.' }),
  given: z.array(givenInput).max(200).nullish().meta({ description: 'What to compute with. It goes before the description, the rules in force and the figures of the catalog.' }),
  lengthUnit: z.enum(['in', 'mm']).nullish().meta({ description: 'The unit of every length that is given without one.' }),
  ...place,
}
const input = z.strictObject({ ...around, opening: partialOpeningSchema.nullish().meta({ description: 'As much of a description as there is.' }) }).meta({ id: 'ComputationRequest' })
/** The description is read by its own parser, so that all problems are told at once. */
const unread = z.strictObject({ ...around, opening: z.record(text, z.unknown()).nullish() })

const { method: methodField, catalog, jurisdiction, editions, notice: noticeField } = assessment.shape

const computation = z
  .strictObject({
    method: methodField, catalog, jurisdiction,
    asOf: text.nullable(),
    editions,
    quantities: z.array(computedQuantity),
    buildsOn: z.array(computedQuantity).meta({ description: 'What was computed on the way, in the order of the work.' }),
    notice: noticeField,
    digest: text.meta({ description: 'SHA-256 over RFC 8785 canonical JSON of the rest.' }),
  })
  .meta({ id: 'Computation', title: 'Quantities computed by themselves' })

type Request = z.output<typeof unread>

export const computeQuantities: Operation<typeof input, typeof computation> = {
  name: 'computeQuantities',
  cost: { units: 3 },
  summary: 'Compute single quantities',
  description: 'Sizes a lintel or counts weeps without a whole wall: whatever is given is used, the rest is computed, and what is missing is named. Nothing is kept. Without a place no rule is in force, and its limit is missing unless given.',
  input,
  output: computation,
  run: (deps, raw) => {
    const request = parseInput(unread, raw)
    if (!request.ok) return request
    const given = readGiven(request.value.opening ?? {}, request.value.given ?? [], { catalog: deps.catalog, definitions: quantities, lengthUnit: request.value.lengthUnit ?? undefined })
    const problems = [...unknownQuantities(request.value.quantities), ...(given.ok ? [] : given.problems)]
    return !given.ok || problems.length > 0 ? failure('invalidInput', problems) : compute(deps, request.value, given.value)
  },
}

function compute(deps: Dependencies, { quantities: wanted, jurisdiction, asOf, edition, publication }: Request, given: Given): Answer<z.infer<typeof computation>> {
  const resolved = resolveIfAsked(deps, { jurisdiction, asOf, edition, publication })
  if (!resolved.ok) return resolved
  const ruleSet = resolved.value
  const inputs = withGiven(quantityInputs(given.opening, ruleSet ?? { rules: [] }, deps.catalog), given)
  const results = computeSome(quantities, wanted, inputs, { taken: given.quantities })
  const entries = (chosen: (id: string) => boolean) => quantities.flatMap((definition) => {
    const result = results.get(definition.id)
    return result && chosen(definition.id) ? [quantityEntry(result, definition, given.opening.unitSystem)] : []
  })
  const answer = {
    method,
    catalog: { release: deps.catalog.release, digest: deps.catalog.digest },
    jurisdiction: ruleSet?.jurisdiction ?? null,
    asOf: ruleSet?.asOf ?? null,
    editions: [...(ruleSet?.editions ?? [])],
    quantities: entries((id) => wanted.includes(id)),
    buildsOn: entries((id) => !wanted.includes(id) && isShown(results.get(id))),
    notice,
  }
  return { ok: true, value: { ...answer, digest: digestOf(answer) } }
}

function isShown(result: QuantityResult | undefined): boolean {
  return result !== undefined && result.status !== 'notApplicable'
}

function unknownQuantities(wanted: readonly string[]): readonly Problem[] {
  const known = quantities.map(({ id }) => id)
  return wanted.flatMap((id, index) => (known.includes(id) ? [] : [{ code: 'notFound', pointer: `/quantities/${index}`, detail: `There is no quantity "${id.slice(0, 80)}".${id.length <= 80 ? ` Did you mean "${closest(id, known)}"?` : ''}` }]))
}
