import { openingPath, serviceBase } from './address.ts'
import { evidenceBehind } from './evidence.ts'
import type { ExportedBuilding } from './exported-building.ts'
import { placesOf, type Judged } from './judged.ts'
import { keyOf, type Artifacts } from './sarif-artifacts.ts'
import { placeNameOf, type LogicalPlaces } from './sarif-places.ts'
import { levels } from './sarif-rules.ts'
import { stableId } from './stable-id.ts'
import { marksOf, outcomeText, titleOf, waiverText } from './words.ts'

const kinds: Readonly<Record<Judged['outcome'], string>> = { pass: 'pass', fail: 'fail', notDetermined: 'open', notApplicable: 'notApplicable' }

interface Within {
  readonly rule: number | undefined
  readonly places: LogicalPlaces
  readonly artifacts: Artifacts
  /** Whether there is anything to compare with; all results say how they compare, or none. */
  readonly lookedAtBefore: boolean
}

export function resultOf(building: ExportedBuilding, judged: Judged, { rule, places, artifacts, lookedAtBefore }: Within): object {
  const { finding, outcome, fingerprint, id } = judged
  const attachments = evidenceBehind(judged).map((one) => ({ description: { text: `Evidence of entry ${one.entry}` }, artifactLocation: { uri: one.uri, index: artifacts.indexOf.get(keyOf(one)) } }))
  return {
    ruleId: finding.rule, ruleIndex: rule,
    kind: kinds[outcome], level: outcome === 'fail' ? levels[finding.force] : 'none',
    message: { text: messageText([`${titleOf(judged)}. ${outcomeText(judged)}`, ...marksOf(judged)].join(' ')) },
    locations: [{
      physicalLocation: { artifactLocation: { uri: openingPath(building, judged.at.opening), uriBaseId: serviceBase } },
      logicalLocations: [{ fullyQualifiedName: placeNameOf(building.project.id, judged), index: places.indexOf.get(placeNameOf(building.project.id, judged)) }],
    }],
    correlationGuid: id,
    partialFingerprints: { 'wytheFinding/v1': fingerprint },
    ...(lookedAtBefore ? { baselineState: stateOf(judged) } : {}),
    ...(outcome === 'fail' ? { suppressions: judged.waivers.map((waiver) => ({ kind: 'external', status: 'accepted', guid: stableId(waiver.entry), justification: waiverText(waiver) })) } : {}),
    ...(attachments.length > 0 ? { attachments } : {}),
    properties: propertiesOf(judged),
  }
}

function propertiesOf({ at, finding, member, measured, miss }: Judged): object {
  return {
    opening: at.opening, reference: at.assessment?.subject.reference ?? null, end: member, force: finding.force, holdPoint: finding.holdPoint,
    ...(finding.reason === null ? {} : { reason: finding.reason }),
    ...(measured === null ? {} : { measured: measured.text }),
    required: finding.required.text,
    ...(miss ? { miss: miss.status, since: miss.since, changed: miss.changed } : {}),
  }
}

/**
 * How it compares with the look before the last posting. A miss that was none then is new, whatever it was;
 * everything else that was judged then is unchanged, or updated where it came out otherwise.
 */
function stateOf(judged: Judged): 'new' | 'unchanged' | 'updated' {
  const then = judged.at.before?.find(({ rule }) => rule === judged.finding.rule)
  const place = then && placesOf(then).find(({ member }) => member === judged.member)
  if (!place || (judged.outcome === 'fail' && place.outcome !== 'fail')) return 'new'
  return place.outcome === judged.outcome && place.measured?.text === judged.measured?.text ? 'unchanged' : 'updated'
}

/** In a message "{0}" and "[text](target)" have a meaning; what only looks like it is escaped. */
function messageText(text: string): string {
  return text.replaceAll(/\{(\d+)\}/g, '{{$1}}').replaceAll(/\[(?=[^\]]*\]\()/g, '\\[')
}
