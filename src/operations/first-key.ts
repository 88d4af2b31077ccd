import { createToken } from './tokens.ts'
import type { RecordDependencies } from './operation.ts'
import { isUsable } from './usable-token.ts'

type Needed = Omit<RecordDependencies, 'caller' | 'catalog'>

/** Whoever holds the store may make tokens: the command line, and the first start. */
const keeper = (name: string) => ({ token: name, scopes: [{ kind: 'administer' } as const] })
const hours = 24

/** Whether there is a token by which a caller can be told from others. */
export async function hasUsableToken({ records, now }: Needed): Promise<boolean> {
  return (await records.listTokens()).some((token) => isUsable(token, now()))
}

/** The secret of a token that may make others, for a service that never had one; undefined for any other. */
export async function firstKey(deps: Needed): Promise<string | undefined> {
  if ((await deps.records.listTokens()).length > 0) return undefined
  const expiresAt = new Date(deps.now().getTime() + hours * 3_600_000).toISOString()
  const made = await createToken.run({ ...deps, catalog: deps.active.state.catalog, caller: keeper('first start') }, { title: 'First key', administer: true, expiresAt })
  if (!made.ok) throw new Error('the first key was refused')
  return made.value.secret
}
