import { randomBytes, randomUUID } from 'node:crypto'
import { setImmediate, setTimeout as later } from 'node:timers/promises'
import type { ServiceDependencies } from './api/caller.ts'
import type { Config } from './config.ts'
import { loadBaseCatalog } from './store/base-catalog.ts'
import { openActiveCatalog } from './store/open-active-catalog.ts'
import { openRecords } from './store/open-records.ts'
import { usePlatformSha256 } from './store/platform-sha256.ts'
import type { Records } from './store/records.ts'
import { readPublicKeys } from './store/release-signature.ts'
import { deliverer, type Deliverer, type DelivererLog } from './webhooks/deliverer.ts'
import { sealerBy } from './webhooks/secret.ts'
import { sendBy, type Send } from './webhooks/send.ts'

export interface Log {
  readonly error: (detail: object, message: string) => void
}

/** What the service works with, and how to let go of it. */
export interface Service {
  readonly deps: ServiceDependencies
  readonly close: () => Promise<void>
}

type Settings = Pick<Config, 'catalogDir' | 'catalogRelease' | 'releasePublicKeys' | 'dataDir' | 'databaseUrl'> & Partial<Pick<Config, 'webhookKey' | 'webhookTargets'>>

/** The catalog cannot be used, and why: one entry for each defect. */
export class CatalogRefused extends Error {
  readonly problems: readonly object[]

  constructor(problems: readonly object[]) {
    super('catalog refused')
    this.problems = problems
  }
}

/** Reads the catalog, opens the store and puts both together. Throws what makes that impossible. */
export async function openService({ catalogDir, catalogRelease, releasePublicKeys, dataDir, databaseUrl, webhookKey, webhookTargets = 'public' }: Settings, log: Log): Promise<Service> {
  usePlatformSha256()
  const trusted = releasePublicKeys === undefined ? null : await readPublicKeys(releasePublicKeys)
  const base = await loadBaseCatalog({ folder: catalogDir, release: catalogRelease, trusted })
  if (!base.ok) throw new CatalogRefused(base.problems)
  for (const problem of base.passedOver) log.error(problem, 'release passed over')
  const records = await openRecords({ databaseUrl, dataDir })
  const opened = await openActiveCatalog({ base: base.catalog, folder: catalogDir, trusted, records, onFault: (fault) => log.error(fault, 'adoptions not taken in; the last good catalog stays') })
  if (!opened.ok) {
    await records.close()
    throw new CatalogRefused(opened.problems)
  }
  return { deps: dependenciesOf(records, opened.active, { sealer: sealerBy(webhookKey), targets: webhookTargets }), close: () => records.close() }
}

function dependenciesOf(records: Records, active: ServiceDependencies['active'], webhooks: ServiceDependencies['webhooks']): ServiceDependencies {
  return { records, active, webhooks, now: () => new Date(), newId: randomUUID, newTraceId, newSecret: () => `wythe_${randomBytes(32).toString('base64url')}`, giveWay: () => setImmediate() }
}

/** 16 random bytes; all zeros would name no trace. */
export function newTraceId(): string {
  const id = randomBytes(16).toString('hex')
  return /[^0]/.test(id) ? id : newTraceId()
}

/** Takes what is due from the outbox and posts it, beside other replicas that do the same. Nothing is sent before it is started. */
export function delivererOf({ records, now, webhooks: { sealer, targets } }: ServiceDependencies, log: DelivererLog, followed: (send: Send) => Send = (send) => send): Deliverer {
  const wait = async (milliseconds: number, signal: AbortSignal): Promise<void> => { await later(milliseconds, undefined, { signal }).catch(() => undefined) }
  return deliverer({ outbox: records, sealer, send: followed(sendBy(targets)), now, random: Math.random, wait, log })
}
