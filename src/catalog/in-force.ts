/** Whether an interval that is open at its end covers the date. */
export function isInForce({ effectiveFrom, effectiveUntil }: { effectiveFrom: string; effectiveUntil: string | null }, asOf: string): boolean {
  return effectiveFrom <= asOf && (effectiveUntil === null || asOf < effectiveUntil)
}
