import type { ReleaseDifferences } from '../catalog/release.ts'

/** The differences of a release in words: what changed, then which answers, each with the places where it does. */
export function differencesText(differences: ReleaseDifferences): string {
  const { counts, rulesAdded, rulesRemoved, rulesChanged, requirements, outcomes, quantities } = differences
  const lines = [
    `Rules: ${counts.rulesAdded} added, ${counts.rulesRemoved} removed, ${counts.rulesChanged} changed`,
    ...(counts.rulesAdded === 0 ? [] : [`  added: ${rulesAdded.join(', ')}`]),
    ...(counts.rulesRemoved === 0 ? [] : [`  removed: ${rulesRemoved.join(', ')}`]),
    ...(counts.rulesChanged === 0 ? [] : [`  changed: ${rulesChanged.join(', ')}`]),
    `Requirements: ${counts.requirements} that are not as before${counts.requirements === 0 ? '' : `\n  ${requirements.join('\n  ')}`}`,
    `Outcomes of reference openings: ${counts.outcomes} changed`,
    ...grouped(outcomes.map(({ rule, ...change }) => ({ ...change, id: rule }))),
    `Quantities of reference openings: ${counts.quantities} changed`,
    ...grouped(quantities.map(({ quantity, ...change }) => ({ ...change, id: quantity }))),
  ]
  return lines.join('\n')
}

type Change = Omit<ReleaseDifferences['quantities'][number], 'quantity'> & { readonly id: string }

function grouped(changes: readonly Change[]): readonly string[] {
  const places = new Map<string, string[]>()
  for (const change of changes) {
    const head = `  ${change.vector}, ${change.id}: ${change.before ?? 'not there'} > ${change.after ?? 'not there'}`
    places.set(head, [...(places.get(head) ?? []), placeText(change)])
  }
  return [...places].map(([head, where]) => `${head}\n    ${where.join(', ')}`)
}

function placeText({ jurisdiction, publication, edition }: Change): string {
  if (jurisdiction === null) return edition ?? ''
  return publication === null ? jurisdiction : `${jurisdiction} (${publication})`
}
