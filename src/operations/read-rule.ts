import { z } from 'zod'
import type { RuleSet } from '../catalog/rule-set.ts'
import { defineOperation, notFound } from './operation.ts'
import { place, resolveIfAsked } from './place.ts'
import { detailOf, requiredText, ruleDetail, type RuleDetail } from './rule-views.ts'

export const readRule = defineOperation({
  name: 'readRule',
  summary: 'Read one rule',
  description: 'A rule with its history by edition, its sources and those that disagree, and, for a jurisdiction and date, the value in force with its chain.',
  input: z.strictObject({ rule: z.string().max(200).meta({ description: 'The id of the rule.', examples: ['lintel.bearing-length'] }), ...place }),
  output: ruleDetail,
  answer: (deps, { rule: id, ...where }) => {
    const resolved = resolveIfAsked(deps, where)
    if (!resolved.ok) return resolved
    const ruleSet = resolved.value
    const rule = ruleSet?.rules.find((one) => one.rule.rule === id)?.rule ?? deps.catalog.rules.get(id)
    return rule ? { ok: true, value: detailOf(rule, ruleSet && standing(id, ruleSet)) } : notFound('rule', id)
  },
})

function standing(id: string, { jurisdiction, resolvedAt, asOf, adoption, rules, repealed }: RuleSet): RuleDetail['resolved'] {
  const inForce = rules.find(({ rule }) => rule.rule === id)
  const chain = inForce?.chain ?? repealed.find(({ rule }) => rule.rule === id)?.chain ?? []
  return { jurisdiction, resolvedAt, asOf, adoption, inForce: inForce !== undefined, required: inForce ? requiredText(inForce) : null, chain: [...chain] }
}
