import { holdPointTitle } from '../opening/hold-points.ts'
import { openingPath, serviceBase } from './address.ts'
import type { ExportedBuilding, ExportedOpening } from './exported-building.ts'
import { judgedIn, nameOf } from './judged.ts'
import { artifactsOf } from './sarif-artifacts.ts'
import { logicalPlacesOf } from './sarif-places.ts'
import { resultOf } from './sarif-results.ts'
import { levels, ruleOf } from './sarif-rules.ts'
import { stableId } from './stable-id.ts'

/** The findings of a building as one run in SARIF 2.1.0 (OASIS), in which a rule is a rule and an opening is where the result lies. */
export function sarifOf(building: ExportedBuilding): object {
  const { project, catalog, rules, openings, at, method, publicUrl } = building
  const judged = judgedIn(building)
  const places = logicalPlacesOf(building, judged)
  const artifacts = artifactsOf(judged)
  const lookedAtBefore = openings.some(({ before }) => before !== null)
  const indexOfRule = new Map(rules.map(({ rule }, index) => [rule.rule, index]))
  return {
    $schema: 'https://json.schemastore.org/sarif-2.1.0.json',
    version: '2.1.0',
    runs: [{
      tool: {
        driver: {
          name: 'Wythe', version: method.replace(/^.*\//, ''), informationUri: `${publicUrl}/reference`,
          shortDescription: { text: 'Checks window, door and vent openings in anchored brick veneer.' },
          rules: rules.map((resolved) => ruleOf(building, resolved)),
          properties: { method, catalogRelease: catalog.release, catalogDigest: catalog.digest },
        },
      },
      automationDetails: {
        id: `wythe/${project.id}/${at}`, correlationGuid: stableId('sarif run', project.id),
        description: { text: `The openings of ${project.title}, judged by what applied on ${project.asOf}${project.jurisdiction === null ? '' : ` in ${project.jurisdiction}`}.` },
      },
      invocations: [{ executionSuccessful: true, endTimeUtc: at, toolExecutionNotifications: openings.flatMap((one) => (one.assessment === null ? [notEvaluated(building, one)] : [])) }],
      originalUriBaseIds: { [serviceBase]: { uri: `${publicUrl}/`, description: { text: 'The service, where the record of each opening is read.' } } },
      artifacts: artifacts.list,
      logicalLocations: places.list,
      results: judged.map((one) => resultOf(building, one, { rule: indexOfRule.get(one.finding.rule), places, artifacts, lookedAtBefore })),
      properties: { project: project.id, title: project.title, jurisdiction: project.jurisdiction, asOf: project.asOf, findings: building.scope, signOffs: openings.flatMap(signOffsOf) },
    }],
  }
}

/** An opening that is not described far enough is told of, so that nobody takes its silence for a pass. */
function notEvaluated(building: ExportedBuilding, opening: ExportedOpening): object {
  return {
    level: levels.recommended, timeUtc: building.at,
    message: { text: `${nameOf(opening)} was not evaluated; it has to be known: ${opening.missing.join(', ') || 'how the opening is described'}.` },
    locations: [{ physicalLocation: { artifactLocation: { uri: openingPath(building, opening.opening), uriBaseId: serviceBase } } }],
  }
}

function signOffsOf({ opening, record }: ExportedOpening): readonly object[] {
  return record.signOffs.map(({ at, by, held }) => ({ opening, holdPoint: held.holdPoint, title: holdPointTitle(held.holdPoint), at, by, reason: held.reason ?? null }))
}
