import type { Amendment } from './amendment.ts'
import type { CatalogCode, CatalogProblem } from './catalog.ts'
import type { Modification } from './modification.ts'

/** A modification together with the amendment it stands in. */
export interface Placed {
  readonly amendment: Amendment
  readonly modification: Modification
  readonly index: number
}

/** What a modification cannot do. Its path is the id of the amendment, since files are not known here. */
export interface ModificationProblem extends CatalogProblem {
  /** The modification of another amendment that it cannot stand beside. */
  readonly against?: Placed
}

export function placeOf({ amendment, modification }: Placed): string {
  return `${amendment.amendment}#${modification.modification}`
}

/** The rule a modification changes, adds or removes. */
export function targetOf(modification: Modification): string {
  return modification.kind === 'insertion' ? modification.new.rule : modification.target.rule
}

export function problemIn({ amendment, index }: Pick<Placed, 'amendment' | 'index'>, code: CatalogCode, detail: string): CatalogProblem {
  return { code, path: amendment.amendment, pointer: `/modifications/${index}`, detail }
}

const targets = new WeakMap<Amendment, ReadonlySet<string>>()

/** All rules that an amendment changes, adds or removes. */
export function targetsOf(amendment: Amendment): ReadonlySet<string> {
  const known = targets.get(amendment) ?? new Set(amendment.modifications.map(targetOf))
  targets.set(amendment, known)
  return known
}
