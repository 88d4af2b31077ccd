import type { Flavor, Trx } from '../flavor.ts'

/** The project in whose record an evaluation was kept. What was kept before belongs to none, and is for those who may read all. */
export async function placeEvaluations({ schema }: Trx, { text }: Flavor): Promise<void> {
  await schema.alterTable('kept_evaluations').addColumn('project', text, (column) => column.references('projects.id')).execute()
}
