import type { ExportedBuilding } from './exported-building.ts'
import { nameOf, readingsBehind, type Judged } from './judged.ts'
import { grouped } from '../record/grouped.ts'
import { ids, ifAny, objectiveOf, propertiesOf } from './oscal-words.ts'
import { stableId } from './stable-id.ts'

/** One finding for each rule over the whole building, as far as it goes out. */
export function findingsOf(building: ExportedBuilding, judged: readonly Judged[]): readonly object[] {
  return [...grouped(judged, ({ finding }) => finding.rule)].flatMap(([rule, all]) => {
    const status = statusOf(all)
    return status && goesOut(status, building) ? [findingOf(building, rule, all, status)] : []
  })
}

interface Status {
  readonly state: 'satisfied' | 'not-satisfied'
  readonly reason: 'pass' | 'fail' | 'other'
}

/** Undefined where the rule applies nowhere. What cannot be decided is never satisfied. */
function statusOf(all: readonly Judged[]): Status | undefined {
  const outcomes = new Set(all.map(({ outcome }) => outcome))
  if (outcomes.has('fail')) return { state: 'not-satisfied', reason: 'fail' }
  if (outcomes.has('notDetermined')) return { state: 'not-satisfied', reason: 'other' }
  return outcomes.has('pass') ? { state: 'satisfied', reason: 'pass' } : undefined
}

function goesOut({ reason }: Status, { scope }: ExportedBuilding): boolean {
  return scope === 'all' || reason === 'fail' || (scope === 'open' && reason === 'other')
}

function findingOf({ project }: ExportedBuilding, rule: string, all: readonly Judged[], status: Status): object {
  const title = all[0]?.finding.title ?? rule
  const of = (outcome: Judged['outcome']) => all.filter((one) => one.outcome === outcome)
  const [missed, open, met, ruledOut] = [of('fail'), of('notDetermined'), of('pass'), of('notApplicable')]
  const observations = [...new Set(all.flatMap(readingsBehind).map(({ entry }) => ids.observation(entry)))]
  return {
    uuid: stableId('finding', project.id, rule),
    title,
    description: [told('Not met', missed), told('Not determined', open), told('Met', met), told('Does not apply', ruledOut)].filter((one) => one !== '').join('\n'),
    props: propertiesOf({ force: all[0]?.finding.force ?? null, 'not-met': missed.length, 'not-determined': open.length, met: met.length, 'not-applicable': ruledOut.length }),
    origins: [{ actors: [{ type: 'assessment-platform', 'actor-uuid': ids.platform }] }],
    target: {
      type: 'objective-id', 'target-id': objectiveOf(rule), title,
      status: { ...status, ...(status.reason === 'other' ? { remarks: [...new Set(open.flatMap(({ finding }) => finding.nextStep ?? []))].join('\n') || 'Not determined.' } : {}) },
    },
    ...ifAny('related-observations', observations.map((uuid) => ({ 'observation-uuid': uuid }))),
    ...ifAny('related-risks', missed.map(({ id }) => ({ 'risk-uuid': ids.risk(id) }))),
  }
}

/** "Not met: W-104, right end; W-105." */
function told(what: string, places: readonly Judged[]): string {
  return places.length === 0 ? '' : `${what}: ${places.map(({ at, member }) => `${nameOf(at)}${member === null ? '' : `, ${member} end`}`).join('; ')}.`
}
