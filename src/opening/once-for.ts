/**
 * Works something out once for each object that it is asked about, and forgets it together with that object.
 * Says what was asked for a second time.
 */
export function onceFor<G extends object, T>(workOut: (given: G) => T, again?: (value: T) => void): (given: G) => T {
  const known = new WeakMap<G, { readonly value: T; isNew: boolean }>()
  return (given) => {
    const ready = known.get(given)
    if (!ready) {
      const value = workOut(given)
      known.set(given, { value, isNew: true })
      return value
    }
    if (again && ready.isNew) again(ready.value)
    ready.isNew = false
    return ready.value
  }
}
