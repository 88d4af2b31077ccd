import type { ReleaseDifferences } from './release.ts'

/** Negative when the first is the earlier one. */
export function compareReleases(a: string, b: string): number {
  const [left, right] = [partsOf(a), partsOf(b)]
  const at = left.findIndex((part, index) => part !== right[index])
  return at === -1 ? 0 : (left[at] ?? 0) - (right[at] ?? 0)
}

/** The smallest name the next release may have: N rises when an answer may change, P for words, sources and evidence. */
export function requiredVersion(previous: string, { counts }: ReleaseDifferences): string {
  const [year = 0, n = 0, p = 0] = partsOf(previous)
  return counts.outcomes + counts.quantities + counts.requirements > 0 ? `${year}.${n + 1}.0` : `${year}.${n}.${p + 1}`
}

/** Why a release may not bear a name, if it may not. The first release may have any. */
export function versionFault(version: string, previous: string | null, differences: ReleaseDifferences): string | undefined {
  if (previous === null) return undefined
  const least = requiredVersion(previous, differences)
  if (compareReleases(version, least) >= 0) return undefined
  const { outcomes, quantities, requirements } = differences.counts
  return `${version} is too small after ${previous}: ${outcomes} outcomes, ${quantities} quantities and ${requirements} requirements changed, so it has to be at least ${least}`
}

function partsOf(release: string): readonly number[] {
  return release.split('.').map(Number)
}
