/** One thing wrong with what was sent: what, where (a JSON Pointer, RFC 6901), and how to mend it. */
export interface Problem<Code extends string = string> {
  readonly code: Code
  readonly pointer: string
  readonly detail: string
}

export type Checked<T, Code extends string = string> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem<Code>[] }

export function pointerOf(path: readonly (string | number | symbol)[]): string {
  return path.map((key) => `/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('')
}
