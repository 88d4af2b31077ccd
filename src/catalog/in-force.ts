interface Interval {
  readonly effectiveFrom: string
  /** Exclusive; null while nobody has ended it. */
  readonly effectiveUntil: string | null
}

/** Whether an interval that is open at its end covers the date. */
export function isInForce({ effectiveFrom, effectiveUntil }: Interval, asOf: string): boolean {
  return effectiveFrom <= asOf && (effectiveUntil === null || asOf < effectiveUntil)
}

/** For the schema of anything that is in force for a time. */
export const beginsBeforeItEnds = {
  holds: ({ effectiveFrom, effectiveUntil }: Interval) => effectiveUntil === null || effectiveFrom < effectiveUntil,
  otherwise: { error: 'must be later than effectiveFrom, or null while it has no end', path: ['effectiveUntil'] as PropertyKey[] },
} as const
