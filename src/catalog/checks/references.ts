import { facts } from '../../opening/facts.ts'
import type { FiledDocuments } from '../assemble.ts'
import type { Catalog, CatalogProblem } from '../catalog.ts'
import type { Publication } from '../publication.ts'
import type { Table } from '../reference.ts'
import { unknownFact } from './conditions.ts'
import { checkPair } from './pair.ts'

/** Parameters and tables must cite a known edition, say where they were read, and have figures that agree; a code must bring standards that are known. */
export function checkReferences(filed: FiledDocuments, catalog: Catalog): readonly CatalogProblem[] {
  const cited = [...filed.parameter, ...filed.table].flatMap(({ path, entry }) => checkSource(entry, catalog).map((defect) => ({ path, pointer: '', ...defect })))
  const pairs = filed.parameter.flatMap(({ path, entry }) => {
    const defect = checkPair(entry, undefined)
    return defect ? [{ path, pointer: '/inchPound', ...defect }] : []
  })
  const tables = filed.table.flatMap(({ path, entry }) => [...checkLookup(entry), ...checkGiven(entry)].map((defect) => ({ path, ...defect })))
  return [...cited, ...pairs, ...tables, ...filed.publication.flatMap(({ path, entry }) => checkBrought(entry, catalog).map((defect) => ({ path, ...defect })))]
}

function checkBrought({ editions }: Publication, { publications }: Catalog): readonly Defect[] {
  return editions.flatMap(({ references = [] }, at) =>
    references.flatMap(({ publication, edition }, index) => {
      const known = publications.get(publication)?.editions.some((one) => one.edition === edition) ?? false
      return known ? [] : [{ code: 'unknownPublication' as const, pointer: `/editions/${at}/references/${index}`, detail: `"${publication}" has no edition "${edition}"` }]
    }),
  )
}

type Defect = Omit<CatalogProblem, 'path'>

/** A lookup goes by facts that exist, into columns that exist. */
function checkLookup({ lookup, columns }: Table): readonly Defect[] {
  const unknownFacts = (lookup?.keys ?? []).flatMap(({ fact }, index) => (facts.has(fact) ? [] : [unknownFact(fact, `/lookup/keys/${index}/fact`)]))
  const named = lookup ? [...lookup.keys.map(({ column }) => column), lookup.gives] : []
  const unknownColumns = named.filter((column) => !Object.hasOwn(columns, column))
  return [...unknownFacts, ...unknownColumns.map((column): Defect => ({ code: 'shape', pointer: '/lookup', detail: `"${column}" is not a column of this table` }))]
}

/** Cells that become limits agree like limits; elsewhere a table may hold sizes that are made differently in each system. */
function checkGiven({ rows, lookup }: Table): readonly Defect[] {
  if (!lookup) return []
  return rows.flatMap((row, index) => {
    const cell = row[lookup.gives]
    const defect = typeof cell === 'object' && cell !== null ? checkPair({ governing: lookup.governing, ...cell }, undefined) : undefined
    return defect ? [{ pointer: `/rows/${index}/${lookup.gives}`, ...defect }] : []
  })
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
