import { digestOf } from '../catalog/digest.ts'
import { sourceText } from '../evaluation/words.ts'
import type { UnreadEntry } from '../record/entry.ts'
import type { ExportedBuilding } from './exported-building.ts'
import { judgedIn, nameOf, type Judged } from './judged.ts'
import { findingsOf } from './oscal-findings.ts'
import { logOf } from './oscal-log.ts'
import { observationsOf, resourcesOf } from './oscal-observations.ts'
import { risksOf } from './oscal-risks.ts'
import { ids, ifAny, objectiveOf, propertiesOf } from './oscal-words.ts'
import { instant, line } from './plain-text.ts'
import { stableId } from './stable-id.ts'

/** The findings of a building as assessment results in OSCAL 1.1.2 (NIST): a rule is a control, an opening is an item of the inventory, a miss is a risk. */
export function oscalOf(building: ExportedBuilding): object {
  const content = contentOf(building)
  return { 'assessment-results': { uuid: stableId('assessment results', building.project.id, digestOf(content)), ...content } }
}

function contentOf(building: ExportedBuilding) {
  const { project, catalog, openings, at, method } = building
  const notices = [...new Set(openings.flatMap(({ assessment }) => assessment?.notice ?? []))]
  const authors = [...new Set(openings.flatMap(({ entries }) => entries.map(({ body }) => (body as UnreadEntry).by)))].toSorted()
  return {
    metadata: {
      title: line(`Anchored brick veneer openings: ${project.title}`),
      'last-modified': at, version: at, 'oscal-version': '1.1.2',
      props: propertiesOf({ project: project.id, jurisdiction: project.jurisdiction, 'as-of': project.asOf, 'catalog-release': catalog.release, 'catalog-digest': catalog.digest, method, findings: building.scope }),
      ...ifAny('parties', authors.map((by) => ({ uuid: ids.party(project.id, by), type: 'organization', name: line(by), remarks: 'A role or an opaque id as it stands in the record; no person is named.' }))),
      ...(notices.length > 0 ? { remarks: notices.join('\n\n') } : {}),
    },
    'import-ap': { href: `#${ids.noPlan}`, remarks: 'There is no assessment plan: what is assessed follows from the place and the permit date.' },
    'local-definitions': localDefinitionsOf(building),
    results: [resultOf(building, judgedIn({ ...building, scope: 'all' }))],
    'back-matter': { resources: [{ uuid: ids.noPlan, title: 'No assessment plan', description: 'Stands in for an assessment plan, which this assessment has none of.' }, ...resourcesOf(building)] },
  }
}

/** Each rule with its requirement, so that the document can be read without a catalog beside it. */
function localDefinitionsOf({ rules }: ExportedBuilding): object {
  return ifAny('objectives-and-methods', rules.map(({ rule, chain }) => ({
    'control-id': rule.rule, description: rule.title,
    props: propertiesOf({ force: rule.force, part: rule.part, 'hold-point': rule.holdPoint, source: sourceText(chain) }),
    parts: [{ id: objectiveOf(rule.rule), name: 'assessment-objective', prose: rule.statement }],
  })))
}

function resultOf(building: ExportedBuilding, judged: readonly Judged[]): object {
  const { project, openings, rules, at } = building
  const silent = openings.filter(({ assessment }) => assessment === null).map((one) => `${nameOf(one)} (${one.missing.join(', ')})`)
  const content = {
    title: line(`Findings of ${project.title}`),
    description: [
      'One finding for each rule over all openings of the building. A rule is not satisfied where it is missed at any opening; where it cannot be decided at some, it is not satisfied either, with the reason "other". A rule that applies at no opening has no finding.',
      ...(silent.length > 0 ? [`Not evaluated, since more has to be known: ${silent.join('; ')}.`] : []),
    ].join('\n\n'),
    start: startOf(building), end: at,
    'local-definitions': {
      ...ifAny('inventory-items', openings.map((one) => ({
        uuid: ids.opening(project.id, one.opening), description: `Opening ${nameOf(one)}`,
        props: propertiesOf({ opening: one.opening, reference: one.assessment?.subject.reference ?? null, 'hold-point': one.record.holdPoint, verdict: one.assessment?.summary.verdict ?? null }),
      }))),
      'assessment-assets': { 'assessment-platforms': [{ uuid: ids.platform, title: 'Wythe', props: propertiesOf({ method: building.method }) }] },
    },
    'reviewed-controls': {
      'control-selections': [rules.length > 0 ? { 'include-controls': rules.map(({ rule }) => ({ 'control-id': rule.rule })) } : { description: 'No rule was in force.' }],
      ...ifAny('control-objective-selections', rules.length > 0 ? [{ 'include-objectives': rules.map(({ rule }) => ({ 'objective-id': objectiveOf(rule.rule) })) }] : []),
    },
    ...logOf(building),
    ...ifAny('observations', observationsOf(building)),
    ...ifAny('risks', risksOf(building, judged)),
    ...ifAny('findings', findingsOf(building, judged)),
  }
  return { uuid: stableId('result', project.id, digestOf(content)), ...content }
}

/** When the first thing on record was collected. */
function startOf({ openings, project }: ExportedBuilding): string {
  const times = openings.flatMap(({ entries }) => entries.map(({ body, receivedAt }) => instant((body as UnreadEntry).at, receivedAt)))
  return times.toSorted()[0] ?? instant(project.createdAt, project.createdAt)
}
