import type { NewEvent } from '../outbox.ts'
import type { KeptEvaluation, Page } from '../records.ts'
import { putOut } from './events.ts'
import type { Db, Flavor } from './flavor.ts'
import { pageOf } from './page.ts'
import type { EvaluationRow } from './schema.ts'

export async function keepEvaluation(db: Db, evaluation: KeptEvaluation, events: readonly NewEvent[]): Promise<void> {
  await db.transaction().setIsolationLevel('read committed').execute(async (trx) => {
    await trx.insertInto('keptEvaluations').values(toRow(evaluation)).execute()
    await putOut(trx, events)
  })
}

export async function readEvaluation(db: Db, id: string): Promise<KeptEvaluation | undefined> {
  const row = await db.selectFrom('keptEvaluations').selectAll().where('id', '=', id).executeTakeFirst()
  return row && toKept(row)
}

export async function listEvaluations(db: Db, { among }: Flavor, jurisdictions: readonly string[], after: string | null, first: number): Promise<Page<KeptEvaluation>> {
  const some = db.selectFrom('keptEvaluations').selectAll().where(among('jurisdiction', jurisdictions)).orderBy('id').limit(first + 1)
  const rows = await (after === null ? some : some.where('id', '>', after)).execute()
  return pageOf(rows.map(toKept), first)
}

function toRow(kept: KeptEvaluation): EvaluationRow {
  return { ...kept, request: JSON.stringify(kept.request), answer: JSON.stringify(kept.answer) }
}

function toKept(row: EvaluationRow): KeptEvaluation {
  return { ...row, request: JSON.parse(row.request) as unknown, answer: JSON.parse(row.answer) as unknown }
}
