import { z } from 'zod'
import { conditionText } from '../catalog/condition-text.ts'
import { limitText, tradeUnits } from '../catalog/limit-text.ts'
import { comparator, evidence, unitSystem, type Limit } from '../catalog/limit.ts'
import { chainStep, type ResolvedRule } from '../catalog/rule-set.ts'
import { force, outcome, part, type Rule } from '../catalog/rule.ts'
import { disagreement, remedy } from '../evaluation/document.ts'
import { holdPointId } from '../opening/hold-points.ts'

const text = z.string()

const summaryShape = {
  rule: text,
  revision: z.int().min(0).max(1_000_000),
  title: text,
  topic: text,
  part,
  holdPoint: holdPointId,
  status: z.enum(['draft', 'inForce', 'withdrawn']).meta({ id: 'RuleStatus' }),
  force,
  statement: text,
}

export const ruleSummary = z.strictObject(summaryShape).meta({ id: 'RuleSummary' })

const limitView = z
  .strictObject({
    publication: text,
    edition: text,
    locator: text,
    comparator,
    text: text.meta({ description: 'The limit in a few words.' }),
    governing: unitSystem.nullable(),
    inchPound: text.nullable(),
    si: text.nullable(),
    evidence,
    lastReviewed: text,
    readIn: text.nullable(),
    note: text.nullable(),
    printedConflict: text.nullable().meta({ description: 'What to know where the text prints two figures that contradict each other.' }),
  })
  .meta({ id: 'RuleLimit', description: 'What one edition requires.' })

const resolvedView = z
  .strictObject({ jurisdiction: text.nullable(), resolvedAt: text.nullable(), asOf: text, adoption: text.nullable(), inForce: z.boolean(), required: text.nullable(), chain: z.array(chainStep) })
  .meta({ id: 'ResolvedRule', description: 'The rule as it stands for one place and date.' })

export const ruleDetail = z
  .strictObject({
    ...summaryShape,
    appliesWhen: text.nullable(),
    fact: text.nullable(),
    quantity: text.nullable(),
    history: z.array(limitView).meta({ description: 'One entry for each edition.' }),
    disagreements: z.array(disagreement),
    remedy,
    cautions: z.array(text),
    related: z.array(text),
    examples: z.array(z.strictObject({ name: text, outcome, margin: text.nullable() }).meta({ id: 'RuleExample' })),
    resolved: resolvedView.nullable().meta({ description: 'Answered when a jurisdiction or an edition is asked for.' }),
  })
  .meta({ id: 'RuleDetail' })
export type RuleDetail = z.infer<typeof ruleDetail>

export function summaryOf({ rule, revision, title, topic, part, holdPoint, status, force, statement }: Rule): z.infer<typeof ruleSummary> {
  return { rule, revision, title, topic, part, holdPoint, status, force, statement }
}

export function detailOf(rule: Rule, resolved: RuleDetail['resolved']): RuleDetail {
  return {
    ...summaryOf(rule),
    appliesWhen: rule.appliesWhen ? conditionText(rule.appliesWhen) : null,
    fact: 'fact' in rule.check ? rule.check.fact : null,
    quantity: 'quantity' in rule.check ? rule.check.quantity : null,
    history: rule.limits.flatMap((limit) => limit.editions.map((edition) => limitOf(rule, limit, edition))),
    disagreements: (rule.disagreements ?? []).map((one) => ({ ...one, note: one.note ?? null })),
    remedy: rule.remedy,
    cautions: rule.cautions ?? [],
    related: rule.related ?? [],
    examples: rule.examples.map(({ name, outcome, margin }) => ({ name, outcome, margin: margin ?? null })),
    resolved,
  }
}

function limitOf(rule: Rule, limit: Limit, edition: string): RuleDetail['history'][number] {
  const { publication, locator, evidence, lastReviewed, readIn, note, comparator = rule.check.comparator } = limit
  const amounts = 'inchPound' in limit ? { governing: limit.governing, inchPound: tradeUnits(limit.inchPound), si: tradeUnits(limit.si) } : { governing: null, inchPound: null, si: null }
  const printedConflict = 'printedConflict' in limit ? (limit.printedConflict ?? null) : null
  return { publication, edition, locator, comparator, text: limitText(limit, comparator), ...amounts, evidence, lastReviewed, readIn: readIn ?? null, note: note ?? null, printedConflict }
}

export function requiredText({ limit, comparator }: ResolvedRule): string {
  return limitText(limit, comparator)
}
