import type { FactDefinition } from '../opening/fact.ts'
import { facts, isHidden } from '../opening/facts.ts'
import { compareHoldPoints, type HoldPoint } from '../opening/hold-points.ts'
import type { FactToMeasure, Finding } from './document.ts'

/**
 * The facts still missing, those first that would settle the most mandatory rules; of equals, the one that is hidden soonest.
 * What can no longer be seen is left out.
 */
export function nextToMeasure(findings: readonly Finding[], holdPoint: HoldPoint | null): FactToMeasure[] {
  return [...askedFor(findings).values()]
    .filter(({ entry }) => !isHidden(entry.fact, holdPoint))
    .toSorted((a, b) => b.settles - a.settles || b.entry.decides.length - a.entry.decides.length || soonest(a.entry, b.entry) || (a.entry.fact < b.entry.fact ? -1 : 1))
    .map(({ entry }) => entry)
}

interface AskedFor {
  readonly entry: FactToMeasure
  /** How many mandatory rules it would settle by itself. */
  settles: number
}

/** Every fact that an open rule lacks, with the rules that ask for it. */
function askedFor(findings: readonly Finding[]): ReadonlyMap<string, AskedFor> {
  const asked = new Map<string, AskedFor>()
  for (const { rule, force, outcome, reason, missing } of findings) {
    if (outcome !== 'notDetermined' || reason === 'covered') continue
    for (const path of new Set(missing)) {
      const definition = facts.get(path)
      if (!definition) continue
      const one = asked.get(path) ?? { entry: entryOf(path, definition), settles: 0 }
      asked.set(path, one)
      const list = missing.length === 1 ? one.entry.decides : one.entry.contributesTo
      list.push(rule)
      if (missing.length === 1 && force === 'mandatory') one.settles += 1
    }
  }
  return asked
}

function entryOf(fact: string, { title, help, from, hiddenBy }: FactDefinition): FactToMeasure {
  return { fact, title, help, holdPoint: from, hiddenBy: hiddenBy ?? null, decides: [], contributesTo: [] }
}

function soonest(a: FactToMeasure, b: FactToMeasure): number {
  if (a.hiddenBy && b.hiddenBy && a.hiddenBy !== b.hiddenBy) return compareHoldPoints(a.hiddenBy, b.hiddenBy)
  if ((a.hiddenBy === null) !== (b.hiddenBy === null)) return a.hiddenBy === null ? 1 : -1
  return compareHoldPoints(a.holdPoint, b.holdPoint)
}
