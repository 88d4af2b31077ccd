import type { FiledDocuments } from '../assemble.ts'
import type { Catalog, CatalogProblem } from '../catalog.ts'
import { checkPair } from './pair.ts'

/** Parameters and tables must cite a known edition, say where they were read, and have figures that agree. */
export function checkReferences(filed: FiledDocuments, catalog: Catalog): readonly CatalogProblem[] {
  const cited = [...filed.parameter, ...filed.table].flatMap(({ path, entry }) => checkSource(entry, catalog).map((defect) => ({ path, pointer: '', ...defect })))
  const pairs = filed.parameter.flatMap(({ path, entry }) => {
    const defect = checkPair(entry, undefined)
    return defect ? [{ path, pointer: '/inchPound', ...defect }] : []
  })
  return [...cited, ...pairs]
}

interface Cited {
  readonly publication: string
  readonly edition: string
  readonly evidence: string
  readonly readIn?: string | undefined
}

function checkSource({ publication, edition, evidence, readIn }: Cited, catalog: Catalog): readonly Pick<CatalogProblem, 'code' | 'detail'>[] {
  const known = catalog.publications.get(publication)?.editions.some((one) => one.edition === edition) ?? false
  return [
    ...(known ? [] : [{ code: 'unknownPublication', detail: `"${publication}" has no edition "${edition}"` } as const]),
    ...(evidence === 'memory' || readIn !== undefined ? [] : [{ code: 'sourceMissing', detail: `evidence "${evidence}" needs "readIn"` } as const]),
  ]
}
