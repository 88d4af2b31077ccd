import type { Catalog, CatalogProblem } from '../catalog.ts'
import type { FiledDocuments } from '../assemble.ts'
import type { Adoption } from '../jurisdiction.ts'

/** Layers must be known and must not go round in a circle; adoptions of one code must not overlap. */
export function checkJurisdictions(filed: FiledDocuments, catalog: Catalog): readonly CatalogProblem[] {
  return [
    ...filed.jurisdiction.flatMap(({ path, entry }) => checkLayer(entry.jurisdiction, catalog).map((defect) => ({ path, pointer: '/within', ...defect }))),
    ...filed.adoptions.flatMap(({ path, entry }) => [
      ...known(entry.adoptions, catalog).map((defect) => ({ path, pointer: '/adoptions', ...defect })),
      ...entry.list.flatMap((adoption, index) => checkAdoption(adoption, entry.list.slice(0, index), catalog).map((defect) => ({ path, pointer: `/list/${index}`, ...defect }))),
    ]),
    ...checkAdoptionIds(filed),
    ...checkPlaces(filed.amendment, catalog),
  ]
}

/** Amendments are of jurisdictions that are known. */
export function checkPlaces(filed: FiledDocuments['amendment'], catalog: Catalog): readonly CatalogProblem[] {
  return filed.flatMap(({ path, entry }) => known(entry.jurisdiction, catalog).map((defect) => ({ path, pointer: '/jurisdiction', ...defect })))
}

type Defect = Pick<CatalogProblem, 'code' | 'detail'>

function known(jurisdiction: string, { jurisdictions }: Catalog): readonly Defect[] {
  return jurisdictions.has(jurisdiction) ? [] : [{ code: 'unknownJurisdiction', detail: `"${jurisdiction}" has no jurisdiction file` }]
}

function checkLayer(jurisdiction: string, catalog: Catalog, below: readonly string[] = []): readonly Defect[] {
  if (jurisdiction === below[0]) return [{ code: 'circularJurisdiction', detail: [...below, jurisdiction].join(' lies within ') }]
  if (below.includes(jurisdiction)) return []
  const within = catalog.jurisdictions.get(jurisdiction)?.within
  if (within === null || within === undefined) return []
  const unknown = known(within, catalog)
  return unknown.length > 0 ? unknown : checkLayer(within, catalog, [...below, jurisdiction])
}

function checkAdoption(adoption: Adoption, earlier: readonly Adoption[], catalog: Catalog): readonly Defect[] {
  const editions = catalog.publications.get(adoption.publication)?.editions.map(({ edition }) => edition) ?? []
  const unknown: readonly Defect[] = editions.includes(adoption.edition) ? [] : [{ code: 'unknownPublication', detail: `"${adoption.publication}" has no edition "${adoption.edition}"` }]
  const overlapping = earlier.filter((other) => other.publication === adoption.publication && overlap(other, adoption))
  return [...unknown, ...overlapping.map((other): Defect => ({ code: 'overlappingAdoption', detail: `${adoption.adoption} and ${other.adoption} are in force at the same time. End the earlier on the day the later begins` }))]
}

function checkAdoptionIds({ adoptions }: FiledDocuments): readonly CatalogProblem[] {
  const seen = new Map<string, string>()
  return adoptions.flatMap(({ path, entry }) =>
    entry.list.flatMap(({ adoption }, index): readonly CatalogProblem[] => {
      const first = seen.get(adoption)
      seen.set(adoption, first ?? path)
      return first === undefined ? [] : [{ code: 'duplicate', path, pointer: `/list/${index}/adoption`, detail: `adoption "${adoption}" is already in ${first}. Ids are used once.` }]
    }),
  )
}

function overlap(a: Adoption, b: Adoption): boolean {
  return (b.effectiveUntil === null || a.effectiveFrom < b.effectiveUntil) && (a.effectiveUntil === null || b.effectiveFrom < a.effectiveUntil)
}
