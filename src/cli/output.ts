import type { Failure } from '../operations/operation.ts'

/** What a command says, and the exit code it ends with: 0 done, 1 not met or refused, 2 called wrongly. */
export interface CommandResult {
  readonly text: string
  readonly exitCode: 0 | 1 | 2
}

export function failureText({ problems }: Failure): string {
  return `${problems.map(({ pointer, detail }) => `${pointer === '' ? '' : `${pointer} `}${detail}`).join('\n')}\n`
}
