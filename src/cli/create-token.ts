import { readConfig } from '../config.ts'
import { createToken } from '../operations/tokens.ts'
import { openService } from '../service.ts'
import { failureText, type CommandResult } from './output.ts'

export interface TokenOptions {
  readonly title: string
  readonly evaluate: boolean
  readonly record: boolean
  readonly projects: readonly string[]
  readonly amend: readonly string[]
  readonly administer: boolean
  readonly expiresAt?: string | undefined
}

/** Makes a token in the store that the environment names, as whoever runs the service may. Its secret is printed this once. */
export async function createTokenInStore(options: TokenOptions): Promise<CommandResult> {
  const config = readConfig(process.env)
  const { deps, close } = await openService(config, { error: (detail, message) => process.stderr.write(`${message}: ${JSON.stringify(detail)}\n`) })
  try {
    const caller = { token: 'command line', scopes: [{ kind: 'administer' } as const] }
    const answer = await createToken.run({ ...deps, publicUrl: config.publicUrl, caller, catalog: deps.active.state.catalog }, { ...options, amend: [...options.amend], projects: [...options.projects] })
    return answer.ok ? { text: `${answer.value.secret}\n`, exitCode: 0 } : { text: failureText(answer), exitCode: 2 }
  } finally {
    await close()
  }
}
