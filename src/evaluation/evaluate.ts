import { lastingPart } from '../catalog/canonical.ts'
import type { Catalog } from '../catalog/catalog.ts'
import { digestOf } from '../catalog/digest.ts'
import type { RepealedRule, RuleSet } from '../catalog/rule-set.ts'
import type { HoldPoint } from '../opening/hold-points.ts'
import { onceFor } from '../opening/once-for.ts'
import type { Opening } from '../opening/opening.ts'
import { recent, type Recall } from '../opening/recent.ts'
import { computeQuantities, computeSome } from '../quantities/compute.ts'
import type { QuantityDefinition } from '../quantities/define.ts'
import { everydayQuantities, quantities } from '../quantities/index.ts'
import type { QuantityResult } from '../quantities/result.ts'
import type { UnitSystem } from '../units/dimension.ts'
import type { Assessment, ComputedQuantity } from './document.ts'
import { nextToMeasure } from './next-to-measure.ts'
import { notice } from './notice.ts'
import { quantityInputs } from './quantity-inputs.ts'
import { quantityEntry } from './quantity-words.ts'
import { recollectionOf } from './recall.ts'
import { subjectOf } from './subject.ts'
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
  const recollection = recollectionOf(ruleSet, catalog)
  const computed = computeQuantities(everydayQuantities, inputs, recollection.quantity)
  const subject = { opening, quantities: computed, catalog, adopted: ruleSet.adopted, holdPoint }
  const findings = recollection.judges.map((judge) => judge(subject).finding)
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
    quantities: entriesOf(everydayQuantities, computed, opening.unitSystem),
    nextToMeasure: nextToMeasure(findings, holdPoint),
    repealed: repealedOf(ruleSet.repealed),
    notice,
  }
  return { assessment, quantities: computed, onRequest: onRequestFrom(computed, inputs) }
}

function entriesOf(definitions: readonly QuantityDefinition[], computed: ReadonlyMap<string, QuantityResult>, system: UnitSystem): ComputedQuantity[] {
  return definitions.flatMap((definition) => {
    const result = computed.get(definition.id)
    return result && isShown(result, definition) ? [recallEntry(definition)([result, system], () => quantityEntry(result, definition, system))] : []
  })
}

/** A result that was recalled is in the words in which it was put before, whose text is worth keeping the second time. */
const recallEntry = onceFor<QuantityDefinition, Recall<ComputedQuantity>>(() => recent({ again: lastingPart }))

/** Each is computed once, by what is computed already. */
function onRequestFrom(everyday: ReadonlyMap<string, QuantityResult>, inputs: Parameters<typeof computeSome>[2]): FullEvaluation['onRequest'] {
  let computed = everyday
  return (id) => {
    if (!computed.has(id)) computed = computeSome(quantities, [id], inputs, { taken: computed })
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

const repealedOf = onceFor((repealed: RuleSet['repealed']) => lastingPart(repealed.map(repealedEntry)))

function repealedEntry({ rule, reason, chain }: RepealedRule): Assessment['repealed'][number] {
  const last = chain.at(-1)
  return { rule: rule.rule, title: rule.title, reason, document: last?.document ?? null, modification: last?.modification ?? null, instrument: last?.instrument ?? null, chain: [...chain] }
}
