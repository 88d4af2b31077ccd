import { randomUUID } from 'node:crypto'
import type { Catalog } from '../catalog/catalog.ts'
import { readRule } from '../operations/read-rule.ts'
import type { RuleDetail } from '../operations/rule-views.ts'
import { wrapped } from './evaluation-text.ts'
import { failureText, type CommandResult } from './output.ts'

export interface ExplainOptions {
  readonly jurisdiction?: string | undefined
  readonly asOf?: string | undefined
  readonly edition?: string | undefined
  readonly publication?: string | undefined
}

/** Explains one rule: what it asks, when, by which edition, on what evidence, and what stands for a place and date. */
export function explainRule(rule: string, place: ExplainOptions, catalog: Catalog): CommandResult {
  const answer = readRule.run({ catalog, now: () => new Date(), newId: randomUUID }, { rule, ...place })
  return answer.ok ? { text: ruleText(answer.value), exitCode: 0 } : { text: failureText(answer), exitCode: 2 }
}

function ruleText(rule: RuleDetail): string {
  const paragraphs = [
    `${rule.rule}: ${rule.title}\n${rule.force}, ${rule.part}, to be seen at ${rule.holdPoint}`,
    wrapped(rule.statement, ''),
    ...(rule.appliesWhen === null ? [] : [wrapped(`Applies when ${rule.appliesWhen}.`, '')]),
    `Judges ${rule.fact ?? rule.quantity ?? ''}`,
    ['BY EDITION', ...rule.history.map((one) => `  ${one.publication} ${one.edition}, ${one.locator}: ${one.text} [${one.evidence}]${one.readIn === null ? '' : `\n    read in ${one.readIn}`}`)].join('\n'),
    ...(rule.disagreements.length === 0 ? [] : [['SOURCES THAT DISAGREE', ...rule.disagreements.map((one) => wrapped(`${one.source}: ${one.states} [${one.evidence}]`, '  '))].join('\n')]),
    ...resolvedText(rule.resolved),
    ['MENDING IT', wrapped(`Before cover-up: ${rule.remedy.beforeCoverUp}`, '  '), wrapped(`After: ${rule.remedy.afterCoverUp}`, '  ')].join('\n'),
  ]
  return `${paragraphs.join('\n\n')}\n`
}

function resolvedText(resolved: RuleDetail['resolved']): string[] {
  if (resolved === null) return []
  const steps = resolved.chain.map(({ layer, action, publication, edition, locator, document, old, new: next }) =>
    wrapped([`${layer}: ${action}`, publication && `${publication} ${edition ?? ''}`, document, locator, old && `from ${old}`, next && `to ${next}`].filter(Boolean).join(', '), '  '),
  )
  return [[`IN FORCE FOR ${resolved.jurisdiction ?? 'the published text'} ON ${resolved.asOf}: ${resolved.inForce ? (resolved.required ?? '') : 'not in force'}`, ...steps].join('\n')]
}
