import type { Db, Flavor, Trx } from './flavor.ts'
import { createRecords } from './migrations/001-records.ts'
import { keepAdoptions } from './migrations/002-adoptions-stay.ts'
import { createJournal } from './migrations/003-journal.ts'
import { addJudged } from './migrations/004-judged.ts'
import { createWebhooks } from './migrations/005-webhooks.ts'
import { keepAnswers } from './migrations/006-kept-answers.ts'
import { placeEvaluations } from './migrations/007-evaluations-in-projects.ts'

/** In order. One that was ever published is never edited; a change of mind is the next one. */
const migrations: ReadonlyMap<string, (trx: Trx, flavor: Flavor) => Promise<void>> = new Map([
  ['001-records', createRecords],
  ['002-adoptions-stay', keepAdoptions],
  ['003-journal', createJournal],
  ['004-judged', addJudged],
  ['005-webhooks', createWebhooks],
  ['006-kept-answers', keepAnswers],
  ['007-evaluations-in-projects', placeEvaluations],
])

export const migrationNames: readonly string[] = [...migrations.keys()]

/** Brings a database up to what this program expects, or only so far: everything or nothing, and once, however many processes start together. */
export async function migrate(db: Db, flavor: Flavor, wanted: readonly string[] = migrationNames): Promise<void> {
  await db.transaction().execute(async (trx) => {
    await flavor.lockMigrations(trx)
    const applied = await appliedTo(trx, flavor)
    const unknown = applied.filter((name) => !migrations.has(name))
    if (unknown.length > 0) throw new Error(`a newer version of this service has used it (${unknown.join(', ')}); start that version`)
    for (const [name, apply] of migrations) {
      if (applied.includes(name) || !wanted.includes(name)) continue
      await apply(trx, flavor)
      await trx.insertInto('appliedMigrations').values({ name, appliedAt: new Date().toISOString() }).execute()
    }
  })
}

async function appliedTo(trx: Trx, { text }: Flavor): Promise<readonly string[]> {
  const table = trx.schema.createTable('applied_migrations').ifNotExists()
  await table.addColumn('name', text, (column) => column.primaryKey()).addColumn('applied_at', text, (column) => column.notNull()).execute()
  const rows = await trx.selectFrom('appliedMigrations').select('name').execute()
  return rows.map(({ name }) => name)
}
