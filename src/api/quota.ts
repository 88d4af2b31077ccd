import { setTimeout } from 'node:timers/promises'
import type { FastifyReply, FastifyRequest } from 'fastify'
import type { QuotaKeeper } from './quota-keeper.ts'
import { sendProblem } from './send-problem.ts'

declare module 'fastify' {
  interface FastifyInstance {
    /** Null where nobody counts. */
    quotaKeeper: QuotaKeeper | null
  }
}

/** The name of the one policy, in the headers and in the problem. */
const policy = 'default'

/** Takes the units of a request from its caller's quota and says so in its headers; false when there is not that much left. */
export async function charge(request: FastifyRequest, reply: FastifyReply, units: number): Promise<boolean> {
  const { quotaKeeper } = request.server
  if (!quotaKeeper) return true
  const { allowed, left, secondsLeft } = await quotaKeeper.take(callerOf(request), units)
  reply.header('ratelimit-policy', `"${policy}";q=${quotaKeeper.quota.units};w=${quotaKeeper.quota.window}`)
  reply.header('ratelimit', `"${policy}";r=${left};t=${secondsLeft}`)
  if (!allowed) reply.header('retry-after', secondsLeft)
  return allowed
}

/** Takes the units when there are that many left; false when there are not. */
export async function takeUnits(request: FastifyRequest, units: number): Promise<boolean> {
  const { quotaKeeper } = request.server
  return !quotaKeeper || (await quotaKeeper.take(callerOf(request), units)).allowed
}

/** Takes the units as soon as there are that many left, for an answer that is under way already. */
export async function waitForUnits(request: FastifyRequest, units: number): Promise<void> {
  while (!request.raw.socket.destroyed) {
    const standing = await request.server.quotaKeeper?.take(callerOf(request), units)
    if (standing?.allowed ?? true) return
    await setTimeout((standing?.secondsLeft ?? 1) * 1_000, undefined, { ref: false })
  }
}

function callerOf({ caller, ip }: FastifyRequest): string {
  return caller.token ?? `at ${ip}`
}

export function refuseOverQuota(request: FastifyRequest, reply: FastifyReply, units: number): FastifyReply {
  return sendProblem(request, reply, 'quotaExceeded', [{ code: 'quotaExceeded', pointer: '', detail: overQuota(request, units) }], [policy])
}

export function overQuota({ server: { quotaKeeper } }: FastifyRequest, units: number): string {
  return `Asked for: ${units} of the ${quotaKeeper?.quota.units ?? 0} units in ${quotaKeeper?.quota.window ?? 0} seconds, of which fewer are left. Retry-After tells when there are all again.`
}
