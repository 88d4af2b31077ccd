/** Works something out once for each object that it is asked about, and forgets it together with that object. */
export function onceFor<G extends object, T>(workOut: (given: G) => T): (given: G) => T {
  const known = new WeakMap<G, { readonly value: T }>()
  return (given) => {
    const ready = known.get(given)
    if (ready) return ready.value
    const value = workOut(given)
    known.set(given, { value })
    return value
  }
}
