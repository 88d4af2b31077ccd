import { lastingPart } from '../catalog/canonical.ts'
import type { Catalog } from '../catalog/catalog.ts'
import { digestOf } from '../catalog/digest.ts'
import type { RepealedRule, RuleSet } from '../catalog/rule-set.ts'
import type { HoldPoint } from '../opening/hold-points.ts'
import { onceFor } from '../opening/once-for.ts'
import type { Opening, Reading } from '../opening/opening.ts'
import { computeQuantities, computeSome } from '../quantities/compute.ts'
import type { QuantityDefinition } from '../quantities/define.ts'
import { everydayQuantities, quantities } from '../quantities/index.ts'
import type { QuantityResult } from '../quantities/result.ts'
import { quantityText } from '../units/quantity-text.ts'
import type { Assessment } from './document.ts'
import { judgesOf } from './judge.ts'
import { nextToMeasure } from './next-to-measure.ts'
import { notice } from './notice.ts'
import { quantityInputs } from './quantity-inputs.ts'
import { quantityEntry } from './quantity-words.ts'
import { summarise } from './summary.ts'

/** Rises when arithmetic or logic changes, so that the same digest always means the same answer for the same reasons. */
export const method = 'wythe-openings/3'

/**
 * The whole service in one function: the rules of a place and date applied to an opening, and the quantities computed from both.
 * Pure: no clock, no I/O. A fault in here throws; it never becomes a pass.
 */
export function evaluate(opening: Opening, ruleSet: RuleSet, catalog: Catalog, holdPoint: HoldPoint | null): Assessment {
  return evaluateInFull(opening, ruleSet, catalog, holdPoint).assessment
}

/** An evaluation with the quantities as they were computed, for whoever adds them up. */
export interface FullEvaluation {
  readonly assessment: Assessment
  readonly quantities: ReadonlyMap<string, QuantityResult>
  /** One quantity more, computed when it is asked for: those that an evaluation does without. */
  readonly onRequest: (id: string) => QuantityResult | undefined
}

export function evaluateInFull(opening: Opening, ruleSet: RuleSet, catalog: Catalog, holdPoint: HoldPoint | null): FullEvaluation {
  const inputs = quantityInputs(opening, ruleSet, catalog)
  const computed = computeQuantities(everydayQuantities, inputs)
  const subject = { opening, quantities: computed, catalog, adopted: ruleSet.adopted, holdPoint }
  const findings = judgesOf(ruleSet.rules, catalog).map((judge) => judge(subject))
  const assessment: Assessment = {
    method,
    catalog: { release: catalog.release, digest: catalog.digest },
    jurisdiction: ruleSet.jurisdiction,
    resolvedAt: ruleSet.resolvedAt,
    asOf: ruleSet.asOf,
    adoption: ruleSet.adoption,
    editions: [...ruleSet.editions],
    holdPoint,
    subject: subjectOf(opening),
    inPart: ruleSet.inPart,
    summary: summarise(findings, ruleSet.inPart),
    findings,
    quantities: everydayQuantities.flatMap((definition) => {
      const result = computed.get(definition.id)
      return result && isShown(result, definition) ? [quantityEntry(result, definition, opening.unitSystem)] : []
    }),
    nextToMeasure: nextToMeasure(findings, holdPoint),
    repealed: repealedOf(ruleSet.repealed),
    notice,
  }
  return { assessment, quantities: computed, onRequest: onRequestFrom(computed, inputs) }
}

/** Each is computed once, by what is computed already. */
function onRequestFrom(everyday: ReadonlyMap<string, QuantityResult>, inputs: Parameters<typeof computeSome>[2]): FullEvaluation['onRequest'] {
  let computed = everyday
  return (id) => {
    if (!computed.has(id)) computed = computeSome(quantities, [id], inputs, computed)
    return computed.get(id)
  }
}

/** What does not apply is left out, and so is what this opening was never described for. */
function isShown({ status, reason }: QuantityResult, { onlyWhenKnown }: QuantityDefinition): boolean {
  return status !== 'notApplicable' && !(onlyWhenKnown && reason === 'missing')
}

export function digestOfAssessment(assessment: Assessment): string {
  return digestOf(assessment)
}

/** The facts as they were judged, each end by itself; the same at every place and date at which an opening is evaluated. */
const subjectOf = onceFor(({ reference, basis, unitSystem, facts }: Opening): Assessment['subject'] => {
  const entries = [...facts].flatMap(([fact, readings]) => readings.flatMap((reading, index) => (reading ? [subjectFact(fact, reading, readings.length === 2 ? ends[index] : null)] : [])))
  lastingPart(entries)
  return lastingPart({ reference: reference ?? null, basis: basis ?? null, unitSystem, digest: digestOf(entries), facts: entries })
})

const ends = ['left', 'right'] as const

function subjectFact(fact: string, { value, text, derivedFrom = [], conflictsWith = [] }: Reading, member: (typeof ends)[number] | null = null): Assessment['subject']['facts'][number] {
  const settled = typeof value === 'object' ? quantityText(value, 'si') : String(value)
  return { fact, member, given: text, settled, derivedFrom: [...derivedFrom], conflictsWith: [...conflictsWith] }
}

const repealedOf = onceFor((repealed: RuleSet['repealed']) => lastingPart(repealed.map(repealedEntry)))

function repealedEntry({ rule, reason, chain }: RepealedRule): Assessment['repealed'][number] {
  const last = chain.at(-1)
  return { rule: rule.rule, title: rule.title, reason, document: last?.document ?? null, modification: last?.modification ?? null, instrument: last?.instrument ?? null, chain: [...chain] }
}
