import type { FiledDocuments } from '../assemble.ts'
import type { Catalog, CatalogProblem } from '../catalog.ts'
import type { Publication } from '../publication.ts'
import { checkPair } from './pair.ts'

/** Parameters and tables must cite a known edition, say where they were read, and have figures that agree; a code must bring standards that are known. */
export function checkReferences(filed: FiledDocuments, catalog: Catalog): readonly CatalogProblem[] {
  const cited = [...filed.parameter, ...filed.table].flatMap(({ path, entry }) => checkSource(entry, catalog).map((defect) => ({ path, pointer: '', ...defect })))
  const pairs = filed.parameter.flatMap(({ path, entry }) => {
    const defect = checkPair(entry, undefined)
    return defect ? [{ path, pointer: '/inchPound', ...defect }] : []
  })
  return [...cited, ...pairs, ...filed.publication.flatMap(({ path, entry }) => checkBrought(entry, catalog).map((defect) => ({ path, ...defect })))]
}

function checkBrought({ editions }: Publication, { publications }: Catalog): readonly Omit<CatalogProblem, 'path'>[] {
  return editions.flatMap(({ references = [] }, at) =>
    references.flatMap(({ publication, edition }, index) => {
      const known = publications.get(publication)?.editions.some((one) => one.edition === edition) ?? false
      return known ? [] : [{ code: 'unknownPublication' as const, pointer: `/editions/${at}/references/${index}`, detail: `"${publication}" has no edition "${edition}"` }]
    }),
  )
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
