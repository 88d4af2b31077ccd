import { factTitle } from '../opening/facts.ts'
import type { ExportedBuilding } from './exported-building.ts'
import { nameOf, type Judged } from './judged.ts'

/** The building, its openings and the facts that were judged, each once, with where each stands in the list. */
export interface LogicalPlaces {
  readonly list: readonly object[]
  readonly indexOf: ReadonlyMap<string, number>
}

interface Place {
  readonly fullyQualifiedName: string
  readonly name: string
  readonly kind: 'building' | 'opening' | 'fact'
  readonly within: string | null
}

export function logicalPlacesOf({ project, openings }: ExportedBuilding, judged: readonly Judged[]): LogicalPlaces {
  const building: Place = { fullyQualifiedName: project.id, name: project.title, kind: 'building', within: null }
  const doors = openings.map((one): Place => ({ fullyQualifiedName: `${project.id}/${one.opening}`, name: nameOf(one), kind: 'opening', within: project.id }))
  const checked = judged.map((one): Place => ({ fullyQualifiedName: placeNameOf(project.id, one), name: factTitle(checkedIn(one)), kind: 'fact', within: `${project.id}/${one.at.opening}` }))
  const all = [...new Map([building, ...doors, ...checked].map((place) => [place.fullyQualifiedName, place])).values()]
  const indexOf = new Map(all.map(({ fullyQualifiedName }, index) => [fullyQualifiedName, index]))
  const list = all.map(({ within, ...place }) => ({ ...place, ...(within === null ? {} : { parentIndex: indexOf.get(within) }) }))
  return { list, indexOf }
}

/** "project/opening/fact": what was checked, the fact or the quantity. */
export function placeNameOf(project: string, judged: Judged): string {
  return `${project}/${judged.at.opening}/${checkedIn(judged)}`
}

function checkedIn({ finding }: Judged): string {
  return finding.fact ?? finding.quantity ?? finding.rule
}
