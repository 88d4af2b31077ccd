import { z } from 'zod'
import { force, part } from '../catalog/rule.ts'
import { holdPointId } from '../opening/hold-points.ts'
import { defineOperation } from './operation.ts'
import { page, pageOf, paging } from './page.ts'
import { place, resolveIfAsked } from './place.ts'
import { ruleSummary, summaryOf } from './rule-views.ts'

const input = z.strictObject({
  ...place,
  part: part.nullish().meta({ description: 'Only rules of this part of the wall.' }),
  topic: z.string().max(40).nullish().meta({ description: 'Only rules of this topic: "flashing".' }),
  force: force.nullish().meta({ description: 'Only rules of this force.' }),
  holdPoint: holdPointId.nullish().meta({ description: 'Only rules to be seen at this hold point.' }),
  ...paging,
})

export const listRules = defineOperation({
  name: 'listRules',
  summary: 'List rules',
  description: 'All rules of the catalog, or those in force for a jurisdiction, date and edition; filtered by part, topic, force or hold point.',
  input,
  output: pageOf(ruleSummary, 'RulePage'),
  keyOf: ({ rule }) => rule,
  answer: (deps, { part, topic, force, holdPoint, first, after, ...where }) => {
    const resolved = resolveIfAsked(deps, where)
    if (!resolved.ok) return resolved
    const rules = resolved.value?.rules.map(({ rule }) => rule) ?? [...deps.catalog.rules.values()]
    const wanted = rules.filter((rule) => matches(rule, { part, topic, force, holdPoint }))
    return page(wanted.map(summaryOf), ({ rule }) => rule, { first, after })
  },
})

function matches(rule: object, filter: Readonly<Record<string, unknown>>): boolean {
  return Object.entries(filter).every(([key, wanted]) => wanted === null || wanted === undefined || (rule as Record<string, unknown>)[key] === wanted)
}
