import type { FastifyRequest } from 'fastify'
import { takeUnits, waitForUnits } from '../quota.ts'
import type { Line } from './lines.ts'

/** Few enough to be answered while the caller waits for the first of them. */
const mostInGroup = 32

/**
 * The lines that came together, in groups, each line charged to the quota of its caller but the first, which the request was charged
 * for. Those that the quota has units for do not wait for one that it has none for.
 */
export async function* groupsOf(parts: AsyncIterable<readonly Line[]>, request: FastifyRequest, units: number): AsyncGenerator<readonly Line[]> {
  let isPaid = true
  for await (const part of parts) {
    let group: Line[] = []
    for (const line of part) {
      const isCharged = isPaid || (await takeUnits(request, units))
      if (group.length > 0 && (!isCharged || group.length === mostInGroup)) {
        yield group
        group = []
      }
      if (!isCharged) await waitForUnits(request, units)
      isPaid = false
      group.push(line)
    }
    if (group.length > 0) yield group
  }
}
