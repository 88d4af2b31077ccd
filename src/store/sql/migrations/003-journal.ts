import type { Flavor, Trx } from '../flavor.ts'

/** Projects, and for each a journal to which the database itself lets nobody but append. */
export async function createJournal(trx: Trx, { text, appendOnly }: Flavor): Promise<void> {
  await trx.schema
    .createTable('projects')
    .addColumn('id', text, (column) => column.primaryKey())
    .addColumn('title', text, (column) => column.notNull())
    .addColumn('jurisdiction', text)
    .addColumn('as_of', text, (column) => column.notNull())
    .addColumn('edition', text)
    .addColumn('publication', text)
    .addColumn('version', text, (column) => column.notNull())
    .addColumn('created_at', text, (column) => column.notNull())
    .addColumn('changed_at', text, (column) => column.notNull())
    .addColumn('last_sequence', 'integer', (column) => column.notNull())
    .addColumn('last_chain', text, (column) => column.notNull())
    .execute()

  await trx.schema
    .createTable('entries')
    .addColumn('id', text, (column) => column.primaryKey())
    .addColumn('project', text, (column) => column.notNull().references('projects.id'))
    .addColumn('sequence', 'integer', (column) => column.notNull())
    .addColumn('opening', text, (column) => column.notNull())
    .addColumn('kind', text, (column) => column.notNull())
    .addColumn('body', text, (column) => column.notNull())
    .addColumn('digest', text, (column) => column.notNull())
    .addColumn('chain', text, (column) => column.notNull())
    .addColumn('received_at', text, (column) => column.notNull())
    .addColumn('received_by', text, (column) => column.notNull())
    .addColumn('posting', text, (column) => column.notNull())
    .addUniqueConstraint('entries_in_order', ['project', 'sequence'])
    .execute()
  await trx.schema.createIndex('entries_by_opening').on('entries').columns(['project', 'opening', 'sequence']).execute()
  for (const statement of appendOnly('entries')) await statement.execute(trx)
}
