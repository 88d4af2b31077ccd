import { zipSync, type Zippable } from 'fflate'
import { topicOf, topicWords, type Topic } from './bcf-topic.ts'
import type { ExportedBuilding } from './exported-building.ts'
import { judgedIn } from './judged.ts'
import { line } from './plain-text.ts'
import { element, xmlDocument, type Element } from './xml.ts'

/** The first day a zip can name, taken in local time as the format does: the same bytes wherever and whenever it is made. */
const zipDate = new Date(1980, 0, 1)

/** What is not met in a building as topics in BCF 3.0 (buildingSMART), one for each miss; without viewpoints, since no model is known. */
export function bcfOf(building: ExportedBuilding): Uint8Array {
  const topics = judgedIn(building).filter(({ outcome }) => outcome === 'fail' || outcome === 'notDetermined').map((judged) => topicOf(building, judged))
  const { project } = building
  const files: Zippable = {
    'bcf.version': fileOf(element('Version', [], { VersionId: '3.0' })),
    'project.bcfp': fileOf(element('ProjectInfo', [element('Project', [element('Name', line(project.title))], { ProjectId: project.id })])),
    'extensions.xml': fileOf(extensionsOf(topics)),
    ...Object.fromEntries(topics.map(({ guid, markup }) => [guid, { 'markup.bcf': fileOf(markup) }])),
  }
  return zipSync(files, { mtime: zipDate, level: 6 })
}

function fileOf(root: Element): Uint8Array {
  return new TextEncoder().encode(xmlDocument(root))
}

/** Every word that a topic may use, so that a reader can offer them in its lists. */
function extensionsOf(topics: readonly Topic[]): Element {
  const each = (name: string, words: readonly string[]) => [...new Set(words)].toSorted().map((word) => element(name, word))
  return element('Extensions', [
    element('TopicTypes', each('TopicType', topicWords.types)),
    element('TopicStatuses', each('TopicStatus', topicWords.statuses)),
    element('Priorities', each('Priority', topicWords.priorities)),
    element('TopicLabels', each('TopicLabel', topics.flatMap(({ labels }) => labels))),
    element('Users', each('User', topics.flatMap(({ users }) => users))),
    element('SnippetTypes'),
    element('Stages', each('Stage', topics.map(({ stage }) => stage))),
  ])
}
