import type { Catalog } from '../catalog/catalog.ts'

/** The catalog in use and how many adoptions it holds. Replaced as a whole, never changed. */
export interface ActiveState {
  readonly catalog: Catalog
  /** The sequence of the last adoption in it; 0 when there is none. */
  readonly sequence: number
}

/** What is in force now. A load that fails leaves it as it was. */
export interface ActiveCatalog {
  readonly state: ActiveState
  /** Takes in adoptions made since, here or by another process. */
  refresh(): Promise<ActiveState>
  /** A release as it was cut, without adoptions made since. Undefined when it is not here or not to be trusted. */
  release(version: string): Promise<Catalog | undefined>
  /** The names of the releases that were cut, earliest first. */
  releases(): Promise<readonly string[]>
  /** The catalogs that may have been in use with a release and the adoptions up to a sequence; their digests tell which was. */
  catalogsOf(release: string, sequence: number): Promise<readonly Catalog[]>
}
