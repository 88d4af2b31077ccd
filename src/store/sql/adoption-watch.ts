export interface AdoptionWatch {
  /** Adds a listener; answers how to remove it. */
  readonly listen: (listener: () => void) => () => void
  /** Somebody adopted as far as this sequence. */
  readonly saw: (sequence: number) => void
  /** Calls every listener, whether or not something is known to be new. */
  readonly announce: () => void
  readonly close: () => void
}

/** How news of other processes come: started with the first listener, and ended with the last by what it answers. */
export type Wire = (watch: AdoptionWatch) => () => void

/** Calls listeners about each adoption once, however many ways the news come. */
export function watchAdoptions(wire: Wire): AdoptionWatch {
  const listeners = new Set<{ readonly call: () => void }>()
  let seen = 0
  let cut: (() => void) | undefined
  const remove = (listener: { readonly call: () => void }): void => {
    if (!listeners.delete(listener) || listeners.size > 0) return
    cut?.()
    cut = undefined
  }
  const watch: AdoptionWatch = {
    listen(call) {
      const listener = { call }
      listeners.add(listener)
      cut ??= wire(watch)
      return () => remove(listener)
    },
    saw(sequence) {
      if (sequence <= seen) return
      seen = sequence
      watch.announce()
    },
    // Later, so that a listener that fails cannot make an adoption look failed.
    announce: () => [...listeners].forEach((listener) => setImmediate(() => { if (listeners.has(listener)) listener.call() })),
    close: () => [...listeners].forEach(remove),
  }
  return watch
}

/** Looks for the last sequence now, every so often, and when asked to. Never keeps the process alive. */
export function pollSequence({ saw }: AdoptionWatch, read: () => Promise<number>, everyMilliseconds: number): { readonly look: () => void; readonly stop: () => void } {
  // A store that does not answer is told by its check; here the next look is soon enough.
  const look = (): void => { read().then(saw, () => undefined) }
  look()
  const timer = setInterval(look, everyMilliseconds).unref()
  return { look, stop: () => clearInterval(timer) }
}
