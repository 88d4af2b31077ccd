import { z } from 'zod'
import { force, outcome, reason } from '../catalog/rule.ts'
import { chainStep } from '../catalog/rule-set.ts'
import { margin, verdict } from '../evaluation/document.ts'
import type { Impact } from '../evaluation/impact.ts'
import { holdPointId } from '../opening/hold-points.ts'

const text = z.string()
const counted = z.int().min(0).max(1_000_000)
const outcomeOrAbsent = z.enum([...outcome.options, 'absent']).meta({ id: 'OutcomeOrAbsent', description: '"absent" where the rule is not among those of the place.' })

const ruleState = z
  .strictObject({ required: text, appliesWhen: text.nullable(), force, holdPoint: holdPointId, statement: text, by: chainStep.nullable() })
  .meta({ id: 'RuleState' })

const ruleChange = z
  .strictObject({
    rule: text,
    title: text,
    change: z.enum(['added', 'removed', 'changed']).meta({ id: 'RuleChangeKind' }),
    requirementChanged: z.boolean().meta({ description: 'False where only the source or the words are others.' }),
    dates: z.array(text),
    before: ruleState.nullable(),
    after: ruleState.nullable(),
  })
  .meta({ id: 'RuleChange' })

const findingState = z.strictObject({ outcome, reason: reason.nullable(), force, margin: margin.nullable(), required: text }).meta({ id: 'FindingState' })

const example = z
  .strictObject({
    reference: text.meta({ description: 'The mark of the opening; of a kept one that the token may not read, only that it is one.' }),
    asOf: text,
    verdictBefore: verdict,
    verdictAfter: verdict,
    findings: z.array(z.strictObject({ rule: text, title: text, before: findingState.nullable(), after: findingState.nullable() }).meta({ id: 'FindingChange' })),
  })
  .meta({ id: 'ImpactExample' })

export const previewView = z
  .strictObject({
    draft: text,
    dates: z.array(text).meta({ description: 'Permit application dates on which something changes; each opening was tried on all.' }),
    rules: z.array(ruleChange),
    reviewNeeded: z.array(z.strictObject({ amendment: text, modification: text, rule: text, reason: text }).meta({ id: 'RepealToReview' })),
    openings: counted,
    referenceOpenings: counted,
    keptOpenings: counted,
    moreKept: z.boolean().meta({ description: 'True when there are more kept evaluations than were tried.' }),
    openingsChanged: counted,
    verdictsChanged: counted,
    notSettled: counted.meta({ description: 'Tries for which no rules could be settled.' }),
    outcomes: z.array(z.strictObject({ from: outcomeOrAbsent, to: outcomeOrAbsent, count: counted }).meta({ id: 'OutcomeTransition' })),
    verdicts: z.array(z.strictObject({ from: verdict, to: verdict, count: counted }).meta({ id: 'VerdictTransition' })),
    examples: z.array(example),
  })
  .meta({ id: 'AmendmentPreview' })
export type PreviewView = z.infer<typeof previewView>

/** What a preview says of the impact itself. */
export function impactView({ rules, reviewNeeded, examples, outcomes, verdicts, openings, openingsChanged, verdictsChanged, notSettled }: Impact) {
  return {
    rules: rules.map((change) => ({ ...change, dates: [...change.dates] })),
    reviewNeeded: reviewNeeded.map((one) => ({ ...one })),
    openings, openingsChanged, verdictsChanged, notSettled,
    outcomes: outcomes.map((one) => ({ ...one })),
    verdicts: verdicts.map((one) => ({ ...one })),
    examples: examples.map(({ reference, asOf, verdict: { before, after }, findings }) => ({ reference, asOf, verdictBefore: before, verdictAfter: after, findings: findings.map((one) => ({ ...one })) })),
  }
}
