import { setImmediate } from 'node:timers/promises'
import supertest from 'supertest'
import { afterAll } from 'vitest'
import type { z } from 'zod'
import { problemDocument } from '../../src/api/problem-document.ts'
import { buildApp, type AppOptions } from '../../src/app.ts'
import { digestOfText } from '../../src/catalog/digest.ts'
import { openActiveCatalog } from '../../src/store/open-active-catalog.ts'
import { openRecords } from '../../src/store/open-records.ts'
import type { Scope } from '../../src/store/records.ts'
import { sealerBy } from '../../src/webhooks/secret.ts'
import { realCatalog } from '../catalog/real-catalog.ts'
import { clock, publicUrl } from './client.ts'
import { keepContract } from './contract.ts'

/** A service with a store of its own, in which amendments can be adopted, and tokens with the scopes that are asked for. Its answers are held to the contract. */
export async function jurisdictionService(options: Pick<AppOptions, 'doorkeeping' | 'logger' | 'quota' | 'trustedProxies'> = {}) {
  const records = await openRecords({ dataDir: ':memory:' })
  const faults: unknown[] = []
  const opened = await openActiveCatalog({ base: await realCatalog(), folder: 'catalog', trusted: null, records, onFault: (fault) => faults.push(fault) })
  if (!opened.ok) throw new Error('the catalog is refused')
  let [made, traces] = [0, 0]
  const next = () => `id-${String(++made).padStart(6, '0')}`
  const deps = { records, active: opened.active, now: () => new Date(clock), newId: next, newTraceId: () => (++traces).toString(16).padStart(32, '0'), newSecret: () => `secret-${next()}`, giveWay: () => setImmediate(), webhooks: { sealer: sealerBy(undefined), targets: 'publicAndLoopback' as const } }
  const app = await buildApp({ deps, publicUrl, mostLag: 0, watchers: [keepContract()], ...options })
  await app.ready()
  afterAll(async () => {
    await app.close()
    await records.close()
  })
  return { app, records, active: opened.active, faults, http: supertest(app.server), tokenFor: (...scopes: Scope[]) => tokenIn(records, next(), scopes) }
}

async function tokenIn(records: Awaited<ReturnType<typeof openRecords>>, id: string, scopes: readonly Scope[]): Promise<string> {
  const secret = `wythe_${id}`
  await records.createToken({ id, title: id, secretHash: digestOfText(secret), scopes, createdAt: clock, expiresAt: null, revokedAt: null })
  return secret
}

/** An ordinance that asks for longer ties in the bed joint, as a file would have it. */
export function embedmentOrdinance(jurisdiction: string, number = 'ord-2026-01', inchPound = '2 [in_i]', si = '51 mm'): string {
  return `amendment: ${jurisdiction}/${number}
jurisdiction: ${jurisdiction}
amends: { publication: irc, editions: ["2021"] }
instrument: { kind: ordinance, number: ${number}, section: 14-1, adopted: 2026-02-02, href: "https://law.example/${jurisdiction}/${number}" }
effectiveFrom: 2026-03-01
effectiveUntil: null
application: permitApplicationDate
supersedes: []
modifications:
  - modification: m1
    kind: substitution
    target: { rule: tie.embedment, part: limit }
    old: { inchPound: "1 1/2 [in_i]" }
    new: { governing: inchPound, inchPound: "${inchPound}", si: "${si}", locator: 14-1(a) }
examples:
  - { name: the day before, rule: tie.embedment, asOf: 2026-02-28, facts: { ties.kind: wire, ties.embedment: "1 3/4 in" }, outcome: pass, margin: "6.35 mm" }
  - { name: from the day on, rule: tie.embedment, asOf: 2026-03-01, facts: { ties.kind: wire, ties.embedment: "1 3/4 in" }, outcome: fail }
`
}

/** A body that is exactly what the operation promises. */
export function bodyOf<O extends z.ZodType>(operation: { readonly output: O }, response: { readonly body: unknown }): z.output<O> {
  return operation.output.parse(response.body)
}

/** A body that is a problem document. */
export function problemIn(response: { readonly body: unknown }): z.output<typeof problemDocument> {
  return problemDocument.parse(response.body)
}
