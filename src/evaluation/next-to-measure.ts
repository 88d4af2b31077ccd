import { facts } from '../opening/facts.ts'
import { compareHoldPoints, type HoldPoint } from '../opening/hold-points.ts'
import type { FactToMeasure, Finding } from './document.ts'

/**
 * The facts still missing, those first that would settle the most mandatory rules; of equals, the one that is hidden soonest.
 * What can no longer be seen is left out.
 */
export function nextToMeasure(findings: readonly Finding[], holdPoint: HoldPoint | null): FactToMeasure[] {
  const open = findings.filter(({ outcome, reason }) => outcome === 'notDetermined' && reason !== 'covered')
  const wanted = [...new Set(open.flatMap(({ missing }) => missing))].filter((path) => isInSight(path, holdPoint))
  return wanted
    .map((path) => ({ entry: entryOf(path, open), settles: mandatorySettled(path, open) }))
    .toSorted((a, b) => b.settles - a.settles || b.entry.decides.length - a.entry.decides.length || soonest(a.entry, b.entry) || (a.entry.fact < b.entry.fact ? -1 : 1))
    .map(({ entry }) => entry)
}

function entryOf(fact: string, open: readonly Finding[]): FactToMeasure {
  const definition = facts.get(fact)
  if (!definition) throw new Error(`a checked catalog names an unknown fact: ${fact}`)
  const asking = open.filter(({ missing }) => missing.includes(fact))
  return {
    fact,
    title: definition.title,
    help: definition.help,
    holdPoint: definition.from,
    hiddenBy: definition.hiddenBy ?? null,
    decides: asking.filter(({ missing }) => missing.length === 1).map(({ rule }) => rule),
    contributesTo: asking.filter(({ missing }) => missing.length > 1).map(({ rule }) => rule),
  }
}

function mandatorySettled(fact: string, open: readonly Finding[]): number {
  return open.filter(({ force, missing }) => force === 'mandatory' && missing.length === 1 && missing[0] === fact).length
}

function soonest(a: FactToMeasure, b: FactToMeasure): number {
  if (a.hiddenBy && b.hiddenBy && a.hiddenBy !== b.hiddenBy) return compareHoldPoints(a.hiddenBy, b.hiddenBy)
  if ((a.hiddenBy === null) !== (b.hiddenBy === null)) return a.hiddenBy === null ? 1 : -1
  return compareHoldPoints(a.holdPoint, b.holdPoint)
}

function isInSight(fact: string, holdPoint: HoldPoint | null): boolean {
  const hiddenBy = facts.get(fact)?.hiddenBy
  return facts.has(fact) && (holdPoint === null || hiddenBy === undefined || compareHoldPoints(holdPoint, hiddenBy) < 0)
}
