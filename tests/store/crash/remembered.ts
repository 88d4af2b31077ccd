import type { Page, Records } from '../../../src/store/records.ts'

/** What a store holds after its writers have gone, in the words of the writers. */
export interface Remembered {
  readonly drafts: readonly string[]
  readonly evaluations: readonly string[]
  readonly adoptions: readonly string[]
}

export async function remembered(records: Records): Promise<Remembered> {
  const adopted = await records.adoptionsAfter(0)
  return {
    drafts: await idsOf((after) => records.listDrafts(null, after, 500)),
    evaluations: await idsOf((after) => records.listEvaluations(['us-xa'], after, 500)),
    adoptions: adopted.map(({ sequence, amendment }) => `${sequence} ${amendment.amendment}`),
  }
}

/**
 * What is wrong with a store, given the lines its writers printed before they were killed. Each writer was in the middle of at
 * most one record when it was killed: that one may be there although nobody was told.
 */
export function losses(said: readonly string[], found: Remembered, kills: number): readonly string[] {
  const names = found.adoptions.map((one) => one.split('us-xa/')[1] ?? '')
  const gone = new Set(names.map((name) => `${name}-goes`))
  const told = (kind: string): readonly string[] => said.filter((line) => line.startsWith(`${kind} `)).map((line) => line.slice(kind.length + 1))
  const tables = [
    { kind: 'adoption', told: told('adoption'), found: found.adoptions },
    { kind: 'evaluation', told: told('evaluation'), found: found.evaluations },
    { kind: 'draft', told: told('draft').filter((id) => !gone.has(id)), found: found.drafts },
  ]
  const untold = tables.reduce((sum, table) => sum + table.found.length - table.told.length, 0)
  return [
    ...tables.flatMap(({ kind, told: known, found: there }) => known.filter((one) => !there.includes(one)).map((one) => `lost: ${kind} ${one}`)),
    ...tables.flatMap(({ kind, found: there }) => repeated(there).map((one) => `twice: ${kind} ${one}`)),
    ...repeated(names).map((name) => `adopted twice: ${name}`),
    ...found.drafts.filter((id) => gone.has(id)).map((id) => `adopted and still a draft: ${id}`),
    ...found.adoptions.filter((one, index) => !one.startsWith(`${index + 1} `)).map((one) => `out of sequence: adoption ${one}`),
    ...(untold > kills ? [`${untold} records that nobody was told of, after ${kills} kills`] : []),
  ]
}

async function idsOf(read: (after: string | null) => Promise<Page<{ readonly id: string }>>): Promise<readonly string[]> {
  const ids: string[] = []
  for (let after: string | null | undefined = null; after !== undefined;) {
    const { items, next }: Page<{ readonly id: string }> = await read(after)
    ids.push(...items.map(({ id }) => id))
    after = next ?? undefined
  }
  return ids
}

function repeated(all: readonly string[]): readonly string[] {
  return all.filter((one, index) => all.indexOf(one) !== index)
}
