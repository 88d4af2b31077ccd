import { randomUUID } from 'node:crypto'
import type { Catalog } from '../../catalog/catalog.ts'
import { batchBy, type BatchSettings } from '../../operations/evaluate-batch.ts'
import type { Tally } from '../../operations/operation.ts'
import { usePlatformSha256 } from '../../store/platform-sha256.ts'
import { gatherAnswers, type LineAnswers } from './line-answers.ts'
import type { Line } from './lines.ts'

/** Some lines of a batch, for a thread beside the one that serves. */
export interface LineWork {
  /** Which catalog is meant, of those that the service has had since its start; the catalog itself for a thread that did not know it. */
  readonly number: number
  readonly catalog: Catalog | null
  readonly settings: BatchSettings
  readonly lines: readonly Line[]
  /** Whether somebody counts the evaluations. */
  readonly counted: boolean
}

export type Tallied = Parameters<Tally['evaluated']>[0]

export interface LineWorkDone extends LineAnswers {
  readonly tallied: readonly Tallied[]
}

/** The one in force, and a past release. */
const mostCatalogs = 2
const catalogs = new Map<number, Catalog>()

usePlatformSha256()

/** Answers lines as they would be in the thread that serves; null when the catalog has to be sent along. */
export default function answerLines({ number, catalog: sent, settings, lines, counted }: LineWork): LineWorkDone | null {
  const catalog = sent ?? catalogs.get(number)
  if (!catalog) return null
  keep(number, catalog)
  const tallied: Tallied[] = []
  const tally = { evaluated: ({ resolvedAt, summary }: Tallied) => { tallied.push({ resolvedAt, summary }) } }
  const batch = batchBy({ catalog, now: () => new Date(), newId: randomUUID, ...(counted ? { tally } : {}) }, settings)
  if (!batch.ok) throw new Error(`the batch was opened, and cannot be here: ${batch.code}`)
  const gathered = gatherAnswers(batch.value.answer)
  for (const line of lines) gathered.add(line)
  return { ...gathered.all(), tallied }
}

function keep(number: number, catalog: Catalog): void {
  catalogs.delete(number)
  catalogs.set(number, catalog)
  const [oldest] = catalogs.keys()
  if (catalogs.size > mostCatalogs && oldest !== undefined) catalogs.delete(oldest)
}
