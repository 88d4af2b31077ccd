/** What a source brings next; or that it has ended, and whether in an error. */
type Arrival<T> = { readonly piece: T } | { readonly ended: { readonly error?: unknown } }

/**
 * Works on a few pieces at once and gives what comes of them in their order, each as soon as it is there, though the next piece may
 * be long in coming. No piece is asked for while as many as may be are worked on, or while nobody takes what came of them. When the
 * pieces end in an error, what is under way is given before it.
 */
export async function* inOrder<T, R>(source: AsyncIterable<T>, work: (piece: T) => Promise<R>, most: () => number): AsyncGenerator<R> {
  const pieces = source[Symbol.asyncIterator]()
  const underWay: Promise<R>[] = []
  let coming: Promise<Arrival<T>> | undefined
  let end: { readonly error?: unknown } | undefined
  for (;;) {
    if (!end && !coming && underWay.length < most()) coming = arrival(pieces)
    const [first] = underWay
    if (!first && !coming) break
    const arrived = await (coming ? Promise.race([...(first ? [first.then(() => undefined)] : []), coming]) : undefined)
    if (!arrived) {
      void underWay.shift()
      if (first) yield await first
      continue
    }
    coming = undefined
    if ('piece' in arrived) underWay.push(begun(work(arrived.piece)))
    else end = arrived.ended
  }
  if (end && 'error' in end) throw end.error
}

async function arrival<T>(pieces: AsyncIterator<T>): Promise<Arrival<T>> {
  try {
    const next = await pieces.next()
    return next.done === true ? { ended: {} } : { piece: next.value }
  } catch (error) {
    return { ended: { error } }
  }
}

/** Where it fails, that is told when its turn comes, or to nobody when the turns are over. */
function begun<R>(work: Promise<R>): Promise<R> {
  work.catch(() => undefined)
  return work
}
