import { policyAbove } from './amend.ts'
import type { Amendment } from './amendment.ts'
import type { Catalog } from './catalog.ts'
import { pathTo } from './resolve.ts'

/** A repeal where an outer jurisdiction allows only stricter rules: no figure shows whether its reason holds, so somebody has to read it. */
export interface ReviewNeeded {
  readonly amendment: string
  readonly modification: string
  readonly rule: string
  readonly reason: string
}

export function reviewNeeded(catalog: Pick<Catalog, 'jurisdictions'>, amendments: readonly Amendment[]): readonly ReviewNeeded[] {
  return amendments.flatMap(({ amendment, jurisdiction, modifications }) => {
    const outer = pathTo(catalog, jurisdiction)?.slice(0, -1) ?? []
    if (policyAbove(catalog, outer) !== 'moreStringentOnly') return []
    return modifications.flatMap((one) => (one.kind === 'repeal' ? [{ amendment, modification: one.modification, rule: one.target.rule, reason: one.reason }] : []))
  })
}
