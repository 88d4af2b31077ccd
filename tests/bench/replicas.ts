import { execFile } from 'node:child_process'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { promisify } from 'node:util'
import { parse } from 'yaml'
import { digestOf } from '../../src/catalog/digest.ts'
import { readAmendment } from '../../src/catalog/read-amendment.ts'
import { openRecords } from '../../src/store/open-records.ts'
import { embedmentOrdinance } from '../api/jurisdiction.ts'
import { root } from '../read-sources.ts'
import { startPostgres } from '../store/postgres-server.ts'
import { place, type Ground } from './cases.ts'
import { post, rate, startService, type Process } from './processes.ts'
import { row, table } from './report.ts'

/** Replicas as processes on one PostgreSQL: what they answer together, and how long after an adoption all of them go by it. */
export async function measureReplicas(on: Ground, milliseconds: number): Promise<string> {
  const server = await startPostgres()
  try {
    const rows: string[] = []
    for (const count of [1, 2, 4]) rows.push(row(String(count), ...(await measured(on, await server.freshDatabase(), count, milliseconds)).map((figure) => figure.toFixed(0))))
    return `## Replicas\n\nProcesses on one PostgreSQL, all on this machine with the client beside them, so that more of them than cores cannot answer more.\n\n${table(['replicas', 'evaluations each second', 'kept ones each second', 'ms until all go by an adoption'], rows)}`
  } finally {
    await server.end()
  }
}

async function measured({ windows }: Ground, databaseUrl: string, count: number, milliseconds: number): Promise<readonly number[]> {
  const token = await tokenIn(databaseUrl)
  const replicas = await Promise.all(Array.from({ length: count }, () => startService({ DATABASE_URL: databaseUrl })))
  const bodies = (more: object) => windows.map(({ description }) => JSON.stringify({ ...place, ...more, opening: description }))
  const together = async (asked: readonly string[]) => (await Promise.all(replicas.map(({ url }) => rate(`${url}/v1/evaluations`, asked, milliseconds, { atOnce: 4, token })))).reduce((sum, each) => sum + each, 0)
  try {
    await together(bodies({})) // until the code is compiled
    return [await together(bodies({})), await together(bodies({ keep: true })), await untilAllGoBy(replicas, databaseUrl, bodies({})[0] ?? '')]
  } finally {
    await Promise.all(replicas.map((replica) => replica.end()))
  }
}

async function tokenIn(databaseUrl: string): Promise<string> {
  const { stdout } = await promisify(execFile)(process.execPath, [join(root, 'dist/cli/wythe.js'), 'create-token', 'bench', '--record'], { cwd: root, env: { PATH: process.env['PATH'], DATABASE_URL: databaseUrl } })
  return stdout.trim()
}

async function untilAllGoBy(replicas: readonly Process[], databaseUrl: string, body: string): Promise<number> {
  const catalogAt = async ({ url }: Process) => (JSON.parse((await post(`${url}/v1/evaluations`, body)).toString()) as { readonly catalog: { readonly digest: string } }).catalog.digest
  const before = await Promise.all(replicas.map(catalogAt))
  const records = await openRecords({ databaseUrl, dataDir: '' })
  const read = readAmendment(parse(embedmentOrdinance('us-xa-101')))
  if (!read.ok) throw new Error('the ordinance cannot be read')
  const start = performance.now()
  const adopted = await records.adopt({ amendment: read.value, digest: digestOf(read.value), adoptedAt: '2026-03-01T12:00:00.000Z', adoptedBy: 'bench' }, null, 0)
  if (!adopted.ok) throw new Error('the ordinance was not adopted')
  while ((await Promise.all(replicas.map(catalogAt))).some((digest, index) => digest === before[index])) {
    if (performance.now() - start > 20_000) throw new Error('a replica does not take the adoption in')
    await pause(10)
  }
  const took = performance.now() - start
  await records.close()
  return took
}
