import type { Force } from '../catalog/rule.ts'
import type { ResolvedRule } from '../catalog/rule-set.ts'
import { sourceText } from '../evaluation/words.ts'
import { ruleAddress } from './address.ts'
import type { ExportedBuilding } from './exported-building.ts'

/** How grave a miss is, in the words of SARIF. */
export const levels: Readonly<Record<Force, 'error' | 'warning' | 'note'>> = { mandatory: 'error', recommended: 'warning', informative: 'note' }

/** A rule with how a miss of it is put right. */
export function ruleOf(building: ExportedBuilding, { rule, limit, chain }: ResolvedRule): object {
  const cautions = (rule.cautions ?? []).flatMap((id) => building.catalog.cautions.get(id)?.text ?? [])
  const remedies = [`Before cover-up: ${rule.remedy.beforeCoverUp}`, `After: ${rule.remedy.afterCoverUp}`]
  return {
    id: rule.rule,
    shortDescription: { text: rule.title },
    fullDescription: { text: rule.statement },
    help: {
      text: [...remedies, ...cautions.map((caution) => `Caution: ${caution}`)].join('\n'),
      markdown: [...remedies.map((one) => one.replace(/^([^:]+:)/, '**$1**')), ...cautions.map((caution) => `> **Caution:** ${caution}`)].join('\n\n'),
    },
    helpUri: ruleAddress(building, rule.rule),
    defaultConfiguration: { level: levels[rule.force] },
    properties: {
      tags: [...new Set([rule.force, rule.part, rule.topic, rule.holdPoint])],
      force: rule.force, part: rule.part, holdPoint: rule.holdPoint, evidence: limit.evidence, lastReviewed: limit.lastReviewed, revision: rule.revision, source: sourceText(chain),
    },
  }
}
