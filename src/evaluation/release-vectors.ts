import type { Building } from '../catalog/building.ts'
import type { Catalog } from '../catalog/catalog.ts'
import { editionIdOf } from '../catalog/identifier.ts'
import { resolveRules, type Place } from '../catalog/resolve.ts'
import { describeOpening } from '../opening/describe.ts'
import { holdPointId, type HoldPoint } from '../opening/hold-points.ts'
import type { Opening } from '../opening/opening.ts'
import type { Checked } from '../opening/problem.ts'

/** A reference opening, on which two catalogs are tried. */
export interface Vector {
  readonly id: string
  readonly opening: Opening
  readonly holdPoint: HoldPoint | null
  readonly home: Pick<Building, 'jurisdiction' | 'publication' | 'asOf'>
}

/** The openings of the buildings of a catalog, or every one that cannot be read. */
export function vectorsOf({ buildings }: Catalog): Checked<readonly Vector[]> {
  const read = [...buildings.values()].flatMap((building) => building.openings.map((entry, index) => vectorOf(building, entry, index)))
  const problems = read.flatMap((one) => (one.ok ? [] : one.problems))
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: read.flatMap((one) => (one.ok ? [one.value] : [])) }
}

function vectorOf({ building, jurisdiction, publication, asOf }: Building, { opening, holdPoint }: Building['openings'][number], index: number): Checked<Vector> {
  const [described, stage] = [describeOpening(opening), holdPointId.optional().safeParse(holdPoint)]
  const at = `/${building}/openings/${index}`
  if (!described.ok) return { ok: false, problems: described.problems.map((problem) => ({ ...problem, pointer: `${at}/opening${problem.pointer}` })) }
  if (!stage.success) return { ok: false, problems: [{ code: 'notAllowed', pointer: `${at}/holdPoint`, detail: `"${holdPoint ?? ''}" is not a hold point` }] }
  const { reference } = described.value
  const id = `${building}/${index + 1}${reference === undefined ? '' : ` ${reference}`}`
  return { ok: true, value: { id, opening: described.value, holdPoint: stage.data ?? null, home: { jurisdiction, publication, asOf } } }
}

/**
 * Where an opening is tried: at home, in every jurisdiction that adopts or amends and has a code on that date, under each code
 * where there are several, and by every published edition of the model codes. All others answer as the layer they lie in.
 */
export function placesOf(catalog: Catalog, { jurisdiction, publication, asOf }: Vector['home']): readonly Place[] {
  const codes = [...catalog.publications.values()].filter(({ kind }) => kind === 'modelCode')
  const editions = codes.flatMap((code) => code.editions.map(({ edition }): Place => ({ jurisdiction: null, edition: editionIdOf(code.publication, edition), asOf })))
  const acting = new Set([...catalog.adoptions.keys(), ...catalog.amendments.map((amendment) => amendment.jurisdiction)])
  const adopted = [...acting].toSorted().flatMap((id) => codes.map((code): Place => ({ jurisdiction: id, publication: code.publication, asOf })))
  const home: Place = { jurisdiction, publication, asOf }
  const elsewhere = adopted.filter((place) => !(place.jurisdiction === jurisdiction && place.publication === publication) && hasCode(catalog, place))
  return [home, ...elsewhere, ...editions]
}

function hasCode(catalog: Catalog, place: Place): boolean {
  const resolved = resolveRules(catalog, place)
  return resolved.ok && resolved.value.adopted
}
