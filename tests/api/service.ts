import type { ServiceDependencies } from '../../src/api/caller.ts'
import type { Dependencies } from '../../src/operations/operation.ts'
import { openRecords } from '../../src/store/open-records.ts'
import { sealerBy } from '../../src/webhooks/secret.ts'

/** What the service works with: a catalog that nobody amends, and records that are forgotten. */
export async function serviceOf(deps: Dependencies): Promise<ServiceDependencies> {
  const records = await openRecords({ dataDir: ':memory:' })
  let [secrets, traces] = [0, 0]
  const state = { get catalog() { return deps.catalog }, sequence: 0 }
  return {
    records,
    now: deps.now,
    newId: deps.newId,
    newTraceId: () => (++traces).toString(16).padStart(32, '0'),
    newSecret: () => `secret-${++secrets}`,
    webhooks: { sealer: sealerBy(undefined), targets: 'public' },
    giveWay: async () => undefined,
    active: { state, refresh: async () => state, release: async () => undefined, releases: async () => [], catalogsOf: async () => [deps.catalog] },
  }
}
