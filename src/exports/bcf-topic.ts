import type { Force } from '../catalog/rule.ts'
import { sourceText } from '../evaluation/words.ts'
import { holdPointTitle } from '../opening/hold-points.ts'
import type { MissStatus } from '../record/finding-history.ts'
import { openingPath, ruleAddress } from './address.ts'
import { commentsOf } from './bcf-comments.ts'
import { evidenceBehind } from './evidence.ts'
import type { ExportedBuilding } from './exported-building.ts'
import { nameOf, readingsBehind, type Judged } from './judged.ts'
import { instant, line } from './plain-text.ts'
import { stableId } from './stable-id.ts'
import { marksOf, outcomeText, titleOf } from './words.ts'
import { element, type Element } from './xml.ts'

/** A topic as a file, with the words it uses that a project has to list. */
export interface Topic {
  readonly guid: string
  readonly markup: Element
  readonly labels: readonly string[]
  readonly users: readonly string[]
  readonly stage: string
}

const types: Readonly<Record<Force, string>> = { mandatory: 'Requirement not met', recommended: 'Recommendation not followed', informative: 'Remark' }
const priorities: Readonly<Record<Force, string>> = { mandatory: 'High', recommended: 'Normal', informative: 'Low' }
const statuses: Readonly<Record<MissStatus, string>> = { new: 'Open', unchanged: 'Open', open: 'Open', reopened: 'Reopened', settled: 'Closed' }
const [undetermined, waived] = ['Not determined', 'Waived']

/** All that a type, a status and a priority can be. */
export const topicWords = { types: [...Object.values(types), undetermined], statuses: [...Object.values(statuses), waived], priorities: Object.values(priorities) }

export function topicOf(building: ExportedBuilding, judged: Judged): Topic {
  const { finding, id, at } = judged
  const labels = [nameOf(at), finding.part, finding.force, finding.rule].map(line)
  const stage = holdPointTitle(finding.holdPoint)
  const comments = commentsOf(judged)
  const { created, author, modified } = datesOf(building, judged)
  const topic = element('Topic', [
    element('ReferenceLinks', [`${building.publicUrl}/${openingPath(building, at.opening)}`, ruleAddress(building, finding.rule)].map((link) => element('ReferenceLink', link))),
    element('Title', line(titleOf(judged))),
    element('Priority', priorities[finding.force]),
    element('Labels', labels.map((label) => element('Label', label))),
    element('CreationDate', created),
    element('CreationAuthor', author),
    ...(modified === created ? [] : [element('ModifiedDate', modified), element('ModifiedAuthor', author)]),
    element('Stage', stage),
    element('Description', descriptionOf(judged)),
    documentsOf(judged),
    comments.length === 0 ? undefined : element('Comments', comments.map(({ comment }) => comment)),
  ], { Guid: id, TopicType: judged.outcome === 'fail' ? types[finding.force] : undetermined, TopicStatus: statusOf(judged) })
  return { guid: id, markup: element('Markup', [topic]), labels, stage, users: [author, ...comments.map((one) => one.author)] }
}

function statusOf({ outcome, miss, waivers }: Judged): string {
  if (waivers.length > 0) return waived
  return outcome === 'fail' && miss ? statuses[miss.status] : 'Open'
}

/** A miss is dated by when it was first known; its author is whoever read the fact, or else drew the opening. */
function datesOf(building: ExportedBuilding, judged: Judged): { readonly created: string; readonly author: string; readonly modified: string } {
  const { miss, at } = judged
  const lastArrival = at.entries.at(-1)?.receivedAt ?? building.at
  const author = line(readingsBehind(judged)[0]?.by ?? at.record.designs.at(-1)?.by ?? 'Wythe')
  return { created: instant(miss?.since ?? lastArrival, building.at), author, modified: instant(miss?.changed ?? lastArrival, building.at) }
}

function descriptionOf(judged: Judged): string {
  const { finding } = judged
  return [
    finding.statement, '',
    outcomeText(judged), ...marksOf(judged),
    ...(finding.remedy && judged.outcome === 'fail' ? ['', `Before cover-up: ${finding.remedy.beforeCoverUp}`, `After: ${finding.remedy.afterCoverUp}`] : []),
    ...finding.cautions.map((caution) => `Caution: ${caution}`),
    '', `Seen at: ${holdPointTitle(finding.holdPoint)}`, `Rule: ${finding.rule} (${finding.force}); ${sourceText(finding.chain)}`,
  ].join('\n')
}

function documentsOf(judged: Judged): Element | undefined {
  const evidence = evidenceBehind(judged)
  if (evidence.length === 0) return undefined
  return element('DocumentReferences', evidence.map(({ uri, sha256, entry }) =>
    element('DocumentReference', [element('Url', uri), element('Description', `Evidence of entry ${entry}, SHA-256 ${sha256}`)], { Guid: stableId(judged.id, uri, sha256) }),
  ))
}
