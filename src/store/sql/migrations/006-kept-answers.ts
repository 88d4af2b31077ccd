import type { Flavor, Trx } from '../flavor.ts'

/** Answers that are given again to a request that is sent again. */
export async function keepAnswers({ schema }: Trx, { text }: Flavor): Promise<void> {
  await schema
    .createTable('kept_answers')
    .addColumn('id', text, (column) => column.primaryKey())
    .addColumn('fingerprint', text, (column) => column.notNull())
    .addColumn('started_at', text, (column) => column.notNull())
    .addColumn('sealed', text)
    .execute()
  await schema.createIndex('kept_answers_by_age').on('kept_answers').column('started_at').execute()
}
