import type { Flavor, Trx } from '../flavor.ts'

/** Drafts, adopted amendments, kept evaluations and tokens. */
export async function createRecords({ schema }: Trx, { text }: Flavor): Promise<void> {
  await schema
    .createTable('drafts')
    .addColumn('id', text, (column) => column.primaryKey())
    .addColumn('jurisdiction', text, (column) => column.notNull())
    .addColumn('document', text, (column) => column.notNull())
    .addColumn('version', text, (column) => column.notNull())
    .addColumn('created_at', text, (column) => column.notNull())
    .addColumn('changed_at', text, (column) => column.notNull())
    .execute()
  await schema.createIndex('drafts_by_jurisdiction').on('drafts').columns(['jurisdiction', 'id']).execute()

  await schema
    .createTable('adopted_amendments')
    .addColumn('sequence', 'integer', (column) => column.primaryKey())
    .addColumn('amendment_id', text, (column) => column.notNull().unique())
    .addColumn('amendment', text, (column) => column.notNull())
    .addColumn('digest', text, (column) => column.notNull())
    .addColumn('adopted_at', text, (column) => column.notNull())
    .addColumn('adopted_by', text, (column) => column.notNull())
    .execute()

  await schema
    .createTable('kept_evaluations')
    .addColumn('id', text, (column) => column.primaryKey())
    .addColumn('jurisdiction', text)
    .addColumn('evaluated_at', text, (column) => column.notNull())
    .addColumn('release', text, (column) => column.notNull())
    .addColumn('catalog_digest', text, (column) => column.notNull())
    .addColumn('sequence', 'integer', (column) => column.notNull())
    .addColumn('digest', text, (column) => column.notNull())
    .addColumn('verdict', text, (column) => column.notNull())
    .addColumn('request', text, (column) => column.notNull())
    .addColumn('answer', text, (column) => column.notNull())
    .execute()
  await schema.createIndex('kept_evaluations_by_jurisdiction').on('kept_evaluations').columns(['jurisdiction', 'id']).execute()

  await schema
    .createTable('tokens')
    .addColumn('id', text, (column) => column.primaryKey())
    .addColumn('secret_hash', text, (column) => column.notNull().unique())
    .addColumn('title', text, (column) => column.notNull())
    .addColumn('scopes', text, (column) => column.notNull())
    .addColumn('created_at', text, (column) => column.notNull())
    .addColumn('expires_at', text)
    .addColumn('revoked_at', text)
    .execute()
}
