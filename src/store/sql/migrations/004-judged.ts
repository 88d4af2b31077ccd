import type { Flavor, Trx } from '../flavor.ts'

/** What the service found when it took an entry in stands beside it, and in its chain. */
export async function addJudged({ schema }: Trx, { text }: Flavor): Promise<void> {
  await schema.alterTable('entries').addColumn('judged', text).execute()
}
