import type { Finding } from '../evaluation/document.ts'
import type { ExportedBuilding } from './exported-building.ts'
import { looksAfterMending, readingsBehind, timeOf, type Judged } from './judged.ts'
import { ids, ifAny, propertiesOf } from './oscal-words.ts'
import { line } from './plain-text.ts'
import { stableId } from './stable-id.ts'
import { marksOf, outcomeText, titleOf, verificationText, waiverText } from './words.ts'

/** One risk for each miss, with how it is put right. */
export function risksOf(building: ExportedBuilding, judged: readonly Judged[]): readonly object[] {
  return judged.filter(({ outcome }) => outcome === 'fail').map((one) => riskOf(building, one))
}

function riskOf({ project }: ExportedBuilding, judged: Judged): object {
  const { finding, at, member, fingerprint, miss, waivers, id } = judged
  const observations = [...new Set(readingsBehind(judged).map(({ entry }) => ids.observation(entry)))]
  return {
    uuid: ids.risk(id),
    title: line(titleOf(judged)),
    description: [outcomeText(judged), ...marksOf(judged)].join(' '),
    statement: finding.statement,
    props: propertiesOf({ rule: finding.rule, opening: at.opening, end: member, force: finding.force, 'hold-point': finding.holdPoint, fingerprint, miss: miss?.status ?? null, since: miss?.since ?? null }),
    status: waivers.length > 0 ? 'deviation-approved' : 'open',
    origins: [{ actors: [{ type: 'assessment-platform', 'actor-uuid': ids.platform }] }],
    ...ifAny('remediations', finding.remedy === null ? [] : remediesOf(id, finding, finding.remedy)),
    ...riskLogOf(project.id, judged),
    ...ifAny('related-observations', observations.map((uuid) => ({ 'observation-uuid': uuid }))),
  }
}

function remediesOf(id: string, { cautions }: Finding, { beforeCoverUp, afterCoverUp }: NonNullable<Finding['remedy']>): readonly object[] {
  const warned = (remedy: string) => [remedy, ...cautions.map((caution) => `Caution: ${caution}`)].join('\n\n')
  return [
    { uuid: stableId('remedy before cover-up', id), lifecycle: 'recommendation', title: 'Before it is covered', description: warned(beforeCoverUp) },
    { uuid: stableId('remedy after cover-up', id), lifecycle: 'recommendation', title: 'After it is covered', description: warned(afterCoverUp) },
  ]
}

/** What the official granted, and who looked after mending. */
function riskLogOf(project: string, judged: Judged): object {
  const { at, waivers, id } = judged
  const entries = [...waivers.map((one) => ({ one, text: waiverText(one), change: { 'status-change': 'deviation-approved' } })), ...looksAfterMending(judged).map((one) => ({ one, text: verificationText(one), change: {} }))]
  const written = entries.map(({ one, text, change }) => ({
    uuid: stableId('risk log', id, one.entry), description: text, start: timeOf(at, one), 'logged-by': [{ 'party-uuid': ids.party(project, one.by) }], ...change,
    ...(one.note === null || one.note === '' ? {} : { remarks: one.note }),
  }))
  return written.length === 0 ? {} : { 'risk-log': { entries: written } }
}
