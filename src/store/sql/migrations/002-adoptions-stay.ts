import type { Flavor, Trx } from '../flavor.ts'

/** The database itself refuses to change or to delete what was adopted, whoever asks. */
export async function keepAdoptions(trx: Trx, { appendOnly }: Flavor): Promise<void> {
  for (const statement of appendOnly('adopted_amendments')) await statement.execute(trx)
}
