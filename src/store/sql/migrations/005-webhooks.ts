import type { Flavor, Trx } from '../flavor.ts'

/** Where events are sent, the events themselves, and each on its way to each receiver. */
export async function createWebhooks({ schema }: Trx, { text }: Flavor): Promise<void> {
  await schema
    .createTable('webhooks')
    .addColumn('id', text, (column) => column.primaryKey())
    .addColumn('target', text, (column) => column.notNull())
    .addColumn('description', text)
    .addColumn('event_types', text, (column) => column.notNull())
    .addColumn('projects', text)
    .addColumn('secrets', text, (column) => column.notNull())
    .addColumn('created_at', text, (column) => column.notNull())
    .addColumn('created_by', text, (column) => column.notNull())
    .addColumn('enabled_at', text, (column) => column.notNull())
    .addColumn('disabled_at', text)
    .addColumn('disabled_because', text)
    .addColumn('last_delivered_at', text)
    .execute()

  await schema
    .createTable('event_sources')
    .addColumn('source', text, (column) => column.primaryKey())
    .addColumn('last_sequence', 'integer', (column) => column.notNull())
    .execute()

  await schema
    .createTable('events')
    .addColumn('id', text, (column) => column.primaryKey())
    .addColumn('type', text, (column) => column.notNull())
    .addColumn('text', text, (column) => column.notNull())
    .addColumn('created_at', text, (column) => column.notNull())
    .execute()

  await schema
    .createTable('deliveries')
    .addColumn('id', text, (column) => column.primaryKey())
    // No foreign key: what is put on record must not fail because somebody takes a webhook away at the same moment.
    .addColumn('webhook', text, (column) => column.notNull())
    .addColumn('event', text, (column) => column.notNull().references('events.id'))
    .addColumn('created_at', text, (column) => column.notNull())
    .addColumn('state', text, (column) => column.notNull())
    .addColumn('attempts', 'integer', (column) => column.notNull())
    .addColumn('next_at', text)
    .addColumn('status', 'integer')
    .addColumn('fault', text)
    .addColumn('delivered_at', text)
    .execute()
  await schema.createIndex('deliveries_due').on('deliveries').columns(['state', 'next_at', 'id']).execute()
  await schema.createIndex('deliveries_by_webhook').on('deliveries').columns(['webhook', 'created_at', 'id']).execute()
  await schema.createIndex('deliveries_by_event').on('deliveries').column('event').execute()
}
