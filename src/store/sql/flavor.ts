import type { Expression, Kysely, RawBuilder, SelectQueryBuilder, Transaction } from 'kysely'
import type { Schema } from './schema.ts'

export type Db = Kysely<Schema>
export type Trx = Transaction<Schema>

/** What SQLite and PostgreSQL do differently; everything else is said once, for both. */
export interface Flavor {
  /** Text that sorts by its bytes, so that pages have one order everywhere. */
  readonly text: 'text' | RawBuilder<unknown>
  /** Holds other processes back until the transaction ends. */
  readonly lockMigrations: (trx: Trx) => Promise<void>
  /** Statements after which the table refuses every change but a new row. */
  readonly appendOnly: (table: string) => readonly RawBuilder<unknown>[]
  /** Whether the column holds one of the values; they are one parameter, however many there are. */
  readonly among: (column: string, values: readonly string[]) => Expression<boolean>
  /** Locks the deliveries that are read until the transaction ends, passing over those that another transaction has locked. */
  readonly lockFree: <O>(deliveries: SelectQueryBuilder<Schema, 'deliveries' | 'webhooks' | 'events', O>) => SelectQueryBuilder<Schema, 'deliveries' | 'webhooks' | 'events', O>
  /** Tells other processes about an adoption when the transaction is committed. */
  readonly tell: (trx: Trx, sequence: number) => Promise<void>
}
