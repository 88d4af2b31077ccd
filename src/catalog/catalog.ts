import type { Amendment } from './amendment.ts'
import type { Building } from './building.ts'
import type { Adoption, Jurisdiction } from './jurisdiction.ts'
import type { Publication } from './publication.ts'
import type { Caution, Parameter, Table } from './reference.ts'
import type { Rule } from './rule.ts'

/** Everything that is required anywhere at any time, read once and never changed. */
export interface Catalog {
  /** YYYY.N.P: N rises when an outcome may change, P for wording and sources. */
  readonly release: string
  readonly digest: string
  readonly publications: ReadonlyMap<string, Publication>
  readonly rules: ReadonlyMap<string, Rule>
  readonly jurisdictions: ReadonlyMap<string, Jurisdiction>
  readonly adoptions: ReadonlyMap<string, readonly Adoption[]>
  readonly amendments: readonly Amendment[]
  readonly parameters: ReadonlyMap<string, Parameter>
  readonly tables: ReadonlyMap<string, Table>
  readonly cautions: ReadonlyMap<string, Caution>
  readonly buildings: ReadonlyMap<string, Building>
  /** The digest of each document that the catalog's digest covers, by path. */
  readonly documents: ReadonlyMap<string, string>
}

/** One file of the catalog, parsed from YAML or JSON but not yet checked. */
export interface CatalogDocument {
  readonly path: string
  readonly content: unknown
}

export type CatalogCode =
  | 'unreadableFile' | 'unknownDocument' | 'shape' | 'duplicate' | 'misplacedFile'
  | 'unknownFact' | 'unknownPublication' | 'unknownRule' | 'unknownTable' | 'unknownCaution' | 'unknownQuantity' | 'unknownJurisdiction' | 'circularJurisdiction'
  | 'unitMismatch' | 'pairMismatch' | 'printedConflictUnneeded' | 'sourceMissing' | 'comparatorMismatch'
  | 'overlappingAdoption' | 'staleAmendment' | 'unknownTarget' | 'insertionExists' | 'competingModifications' | 'lessStringent' | 'localAmendmentProhibited'
  | 'exampleMissing' | 'exampleFailed'

/** A defect of the catalog: which file, where in it, what, and how to mend it. */
export interface CatalogProblem {
  readonly code: CatalogCode
  readonly path: string
  readonly pointer: string
  readonly detail: string
}
