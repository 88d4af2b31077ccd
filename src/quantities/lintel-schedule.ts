import type { Opening } from '../opening/opening.ts'
import { amountOf, sectionOf, type ScheduledOpening } from './schedule-pieces.ts'

/** What is known of the lintel of one opening; lengths in nanometers. */
export interface ScheduledLintel {
  readonly width: number | null
  readonly height: number | null
  readonly support: string | null
  /** The angle as described, else the lightest that carries the brick; null where neither is known. */
  readonly section: string | null
  readonly chosen: 'described' | 'lightest' | 'notKnown'
  /** The least that bears enough at both ends. */
  readonly length: number
  /** What that length rests on at each end when it is set dead center. */
  readonly bearing: number | null
  /** As drawn or as seen, where it is known. */
  readonly described: { readonly length: number | null; readonly left: number | null; readonly right: number | null }
  /** Of a piece of the least length, in newtons. */
  readonly weight: number | null
}

/** Identical lintels in one line of the schedule, with the openings that they are for. */
export interface LintelLine extends ScheduledLintel {
  readonly mark: string
  readonly count: number
  readonly references: readonly string[]
}

/** The lintel of an opening; undefined where it needs none, or where its length is not known. */
export function scheduledLintel(opening: Opening, { section, results }: Pick<ScheduledOpening, 'section' | 'results'>): ScheduledLintel | undefined {
  const length = amountOf(results.get('lintel.length'))
  if (length === undefined) return undefined
  const width = lengthAt(opening, 'opening.width')
  const support = opening.facts.get('head.support.kind')?.[0]?.value
  return {
    width, length,
    height: lengthAt(opening, 'opening.height'),
    support: typeof support === 'string' ? support : null,
    ...sectionOf(section, results.get('lintel.lightest-angle')),
    bearing: width === null ? null : (length - width) / 2,
    described: { length: lengthAt(opening, 'head.support.length'), left: lengthAt(opening, 'head.support.bearing', 0), right: lengthAt(opening, 'head.support.bearing', 1) },
    weight: weightOver(length, results),
  }
}

/** Lintels by everything that tells them apart, marked in the order in which the openings come. */
export function lintelSchedule(openings: readonly { readonly reference: string; readonly lintel: ScheduledLintel | undefined }[]): readonly LintelLine[] {
  const lines = new Map<string, { readonly lintel: ScheduledLintel; readonly references: string[] }>()
  for (const { reference, lintel } of openings) {
    if (!lintel) continue
    const line = lines.get(JSON.stringify(lintel))
    if (line) line.references.push(reference)
    else lines.set(JSON.stringify(lintel), { lintel, references: [reference] })
  }
  return [...lines.values()].map(({ lintel, references }, index) => ({ mark: `L${index + 1}`, ...lintel, count: references.length, references }))
}

/** What the weight of a lintel is worked out from. */
export const lintelWeighs: readonly [weight: string, span: string] = ['lintel.self-weight', 'lintel.effective-span']

/** The weight is computed over the span; a piece is longer than that. */
function weightOver(length: number, results: ScheduledOpening['results']): number | null {
  const [weight, span] = lintelWeighs.map((id) => amountOf(results.get(id)))
  return weight === undefined || span === undefined || span <= 0 ? null : (weight / span) * length
}

function lengthAt({ facts }: Opening, path: string, end = 0): number | null {
  const value = facts.get(path)?.[end]?.value
  return typeof value === 'object' && value.dimension === 'length' ? value.amount : null
}
