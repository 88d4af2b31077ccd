/** A document with one value laid at a path, made from what was there before; everything beside it stays. */
export function laid(within: unknown, [key, ...rest]: readonly string[], value: (before: unknown) => unknown): Readonly<Record<string, unknown>> {
  const members = typeof within === 'object' && within !== null && !Array.isArray(within) ? (within as Readonly<Record<string, unknown>>) : {}
  if (key === undefined) return members
  return { ...members, [key]: rest.length === 0 ? value(members[key]) : laid(members[key], rest, value) }
}
