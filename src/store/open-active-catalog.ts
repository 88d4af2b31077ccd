import type { Catalog } from '../catalog/catalog.ts'
import { withAmendments, type ExtendedCatalog } from '../evaluation/with-amendments.ts'
import type { ActiveCatalog, ActiveState } from './active-catalog.ts'
import { loadRelease } from './load-release.ts'
import { releasesIn } from './release-files.ts'
import type { PublicKey } from './release-signature.ts'
import type { AdoptedAmendment, Records } from './records.ts'

export interface ActiveCatalogSource {
  /** What is in force before any adoption of this service. */
  readonly base: Catalog
  /** The folder whose releases may be evaluated by. */
  readonly folder: string
  /** Where given, one of these keys must have signed a release. */
  readonly trusted: readonly PublicKey[] | null
  readonly records: Records
  /** Told when adoptions cannot be taken in; the last good catalog stays. */
  readonly onFault: (problems: ExtendedCatalog) => void
}

export type Opened = { readonly ok: true; readonly active: ActiveCatalog } | Extract<ExtendedCatalog, { ok: false }>

/** Puts the base and all adoptions together, and keeps up with those that follow, from here or from another process. */
export async function openActiveCatalog(source: ActiveCatalogSource): Promise<Opened> {
  const first = extended({ catalog: source.base, sequence: 0 }, await source.records.adoptionsAfter(0))
  if (!first.ok) return first
  const active = new Following(source, first.state)
  source.records.onAdoption(() => void active.refresh())
  return { ok: true, active }
}

class Following implements ActiveCatalog {
  readonly #source: ActiveCatalogSource
  readonly #releases = new Map<string, Promise<Catalog | undefined>>()
  #state: ActiveState
  /** One refresh at a time, so that no older state follows a newer one. */
  #refreshing: Promise<ActiveState>

  constructor(source: ActiveCatalogSource, state: ActiveState) {
    this.#source = source
    this.#state = state
    this.#refreshing = Promise.resolve(state)
  }

  get state(): ActiveState {
    return this.#state
  }

  refresh(): Promise<ActiveState> {
    this.#refreshing = this.#refreshing.then(() => this.#takeIn()).catch(() => this.#state)
    return this.#refreshing
  }

  /** A release is immutable, so one reading is enough; one that could not be read is tried again. */
  release(version: string): Promise<Catalog | undefined> {
    const known = this.#releases.get(version)
    if (known) return known
    const reading = this.#readRelease(version)
    this.#releases.set(version, reading)
    void reading.then((catalog) => catalog ?? this.#releases.delete(version))
    return reading
  }

  async releases(): Promise<readonly string[]> {
    const names = await releasesIn(this.#source.folder)
    return names.ok ? names.value : []
  }

  async catalogsOf(version: string, sequence: number): Promise<readonly Catalog[]> {
    const adopted = (await this.#source.records.adoptionsAfter(0)).filter((one) => one.sequence <= sequence)
    const cut = await this.release(version)
    const bases = [this.#source.base, ...(cut ? [cut] : [])]
    const grown = bases.flatMap((catalog) => {
      const next = extended({ catalog, sequence: 0 }, adopted)
      return next.ok ? [next.state.catalog] : []
    })
    return [...grown, ...bases]
  }

  async #takeIn(): Promise<ActiveState> {
    const next = extended(this.#state, await this.#source.records.adoptionsAfter(this.#state.sequence))
    if (next.ok) this.#state = next.state
    else this.#source.onFault(next)
    return this.#state
  }

  async #readRelease(version: string): Promise<Catalog | undefined> {
    const loaded = await loadRelease(this.#source.folder, version, this.#source.trusted)
    return loaded.ok ? loaded.value.catalog : undefined
  }
}

type Extension = { readonly ok: true; readonly state: ActiveState } | Extract<ExtendedCatalog, { ok: false }>

function extended(state: ActiveState, adopted: readonly AdoptedAmendment[]): Extension {
  const last = adopted.at(-1)
  if (!last) return { ok: true, state }
  const next = withAmendments(state.catalog, adopted.map(({ amendment }) => amendment))
  return next.ok ? { ok: true, state: { catalog: next.catalog, sequence: last.sequence } } : next
}
