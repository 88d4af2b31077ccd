import type { Amendment } from './amendment.ts'
import type { Catalog } from './catalog.ts'
import { isInForce } from './in-force.ts'
import { pathTo } from './resolve.ts'

/**
 * The dates on which to look at what amendments change: their first days, the days on which they end, and in between every
 * day on which an adoption or another amendment of the same layers, or of one within, begins or ends.
 */
export function datesTouched(catalog: Pick<Catalog, 'jurisdictions' | 'adoptions' | 'amendments'>, amendments: readonly Amendment[]): readonly string[] {
  return [...new Set(amendments.flatMap((one) => [...boundsOf(one), ...boundsNear(catalog, one).filter((date) => isInForce(one, date))]))].toSorted()
}

interface Interval {
  readonly effectiveFrom: string
  readonly effectiveUntil: string | null
}

function boundsOf({ effectiveFrom, effectiveUntil }: Interval): readonly string[] {
  return effectiveUntil === null ? [effectiveFrom] : [effectiveFrom, effectiveUntil]
}

function boundsNear(catalog: Pick<Catalog, 'jurisdictions' | 'adoptions' | 'amendments'>, { jurisdiction }: Amendment): readonly string[] {
  const path = pathTo(catalog, jurisdiction) ?? []
  const isNear = (other: string) => path.includes(other) || (pathTo(catalog, other)?.includes(jurisdiction) ?? false)
  const adoptions = [...catalog.adoptions].flatMap(([layer, list]) => (isNear(layer) ? list : []))
  return [...adoptions, ...catalog.amendments.filter((one) => isNear(one.jurisdiction))].flatMap(boundsOf)
}
