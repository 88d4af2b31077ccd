import type { Amendment, Modification } from './amendment.ts'
import type { CatalogCode, CatalogProblem } from './catalog.ts'

/** A modification together with the amendment it stands in. */
export interface Placed {
  readonly amendment: Amendment
  readonly modification: Modification
  readonly index: number
}

export function placeOf({ amendment, modification }: Placed): string {
  return `${amendment.amendment}#${modification.modification}`
}

/** The rule a modification changes, adds or removes. */
export function targetOf(modification: Modification): string {
  return modification.kind === 'insertion' ? modification.new.rule : modification.target.rule
}

export function problemIn({ amendment, index }: Placed, code: CatalogCode, detail: string): CatalogProblem {
  return { code, path: amendment.amendment, pointer: `/modifications/${index}`, detail }
}
