import { z } from 'zod'
import type { Catalog } from '../catalog/catalog.ts'
import type { ResolvedRule, RuleSet } from '../catalog/rule-set.ts'
import type { HoldPoint } from '../opening/hold-points.ts'
import { onceFor } from '../opening/once-for.ts'
import type { Opening } from '../opening/opening.ts'
import { computeSome } from '../quantities/compute.ts'
import { everydayQuantities } from '../quantities/index.ts'
import { assessment, finding, toMeasure, type Finding } from './document.ts'
import { nextToMeasure } from './next-to-measure.ts'
import { notice } from './notice.ts'
import { quantityInputs } from './quantity-inputs.ts'
import { recollectionOf } from './recall.ts'
import { summarise } from './summary.ts'

const openFinding = finding
  .pick({ rule: true, title: true, part: true, holdPoint: true, force: true, outcome: true, reason: true, nextStep: true, member: true, measured: true, required: true, margin: true, missing: true, cautions: true, evidence: true })
  .meta({ id: 'OpenFinding', description: 'A finding that is not met, or not determined, without the way to it.' })

export const brief = z
  .strictObject({
    asOf: assessment.shape.asOf,
    jurisdiction: assessment.shape.jurisdiction,
    catalog: assessment.shape.catalog,
    summary: assessment.shape.summary,
    notMet: z.array(openFinding),
    notDetermined: z.array(openFinding),
    nextToMeasure: z.array(toMeasure),
    notice: assessment.shape.notice,
  })
  .meta({ id: 'BriefEvaluation', description: 'The verdict with what stands in its way; the evaluation of the opening has the rest.' })
export type Brief = z.infer<typeof brief>

/** The same outcomes as an evaluation, with only those quantities computed that a rule in force judges. */
export function evaluateBriefly(opening: Opening, ruleSet: RuleSet, catalog: Catalog, holdPoint: HoldPoint | null): Brief {
  const { quantity: recall, judges } = recollectionOf(ruleSet, catalog)
  const quantities = computeSome(everydayQuantities, judgedQuantities(ruleSet.rules), quantityInputs(opening, ruleSet, catalog), { recall })
  const subject = { opening, quantities, catalog, adopted: ruleSet.adopted, holdPoint }
  const { asOf, jurisdiction, inPart } = ruleSet
  const rulings = judges.map((judge) => judge(subject))
  const findings = rulings.filter(isOpen).map(({ finding }) => finding)
  return briefOf({ asOf, jurisdiction, catalog: { release: catalog.release, digest: catalog.digest }, summary: summarise(rulings, inPart), findings, nextToMeasure: nextToMeasure(findings, holdPoint), notice })
}

/** Only what stands in the way is put into words. */
function isOpen({ outcome }: Pick<Finding, 'outcome'>): boolean {
  return outcome === 'fail' || outcome === 'notDetermined'
}

/** What stands in the way in an evaluation. */
export function briefOf({ asOf, jurisdiction, catalog, summary, findings, nextToMeasure, notice }: Omit<Brief, 'notMet' | 'notDetermined'> & { readonly findings: readonly Finding[] }): Brief {
  const open = (outcome: Finding['outcome']) => findings.filter((one) => one.outcome === outcome).map(shortened)
  return { asOf, jurisdiction, catalog, summary, notMet: open('fail'), notDetermined: open('notDetermined'), nextToMeasure, notice }
}

const judgedQuantities = onceFor((rules: readonly ResolvedRule[]) => rules.flatMap(({ rule: { check } }) => ('quantity' in check ? [check.quantity] : [])))

const shortened = onceFor(({ rule, title, part, holdPoint, force, outcome, reason, nextStep, member, measured, required, margin, missing, cautions, evidence }: Finding): Brief['notMet'][number] => (
  { rule, title, part, holdPoint, force, outcome, reason, nextStep, member, measured, required, margin, missing, cautions, evidence }
))
