import { evidenceBehind, type Evidence } from './evidence.ts'
import type { Judged } from './judged.ts'

/** Pictures and papers that stand behind the results, each once, with where each stands in the list. */
export interface Artifacts {
  readonly list: readonly object[]
  readonly indexOf: ReadonlyMap<string, number>
}

export function artifactsOf(judged: readonly Judged[]): Artifacts {
  const all = [...new Map(judged.flatMap(evidenceBehind).map((one) => [keyOf(one), one])).values()]
  return {
    list: all.map(({ uri, sha256 }) => ({ location: { uri }, roles: ['attachment'], hashes: { 'sha-256': sha256 } })),
    indexOf: new Map(all.map((one, index) => [keyOf(one), index])),
  }
}

export function keyOf({ uri, sha256 }: Evidence): string {
  return `${uri} ${sha256}`
}
