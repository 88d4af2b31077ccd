import type { IncomingMessage } from 'node:http'
import { Socket } from 'node:net'
import type { FastifyInstance } from 'fastify'

declare module 'fastify' {
  interface FastifyContextConfig {
    /** The body comes in lines, for as long as it likes. */
    readonly inLines?: boolean
  }
  interface FastifyInstance {
    /** That the service is stopping. */
    isClosing: boolean
  }
}

/** Ends requests that do not arrive in so many milliseconds; one that comes in lines only when it stands still for as long. */
export function awaitRequests(app: FastifyInstance, patience: number, endTooSlow: (socket: Socket) => void): void {
  app.decorate('isClosing', false)
  app.addHook('preClose', async () => {
    app.isClosing = true
  })
  app.addHook('onRequest', (request, reply, done) => {
    const { raw, routeOptions } = request
    if (routeOptions.config.inLines) standStill(raw, patience)
    else if (!raw.complete) {
      const timer = setTimeout(() => endTooSlow(raw.socket), patience)
      raw.once('end', () => clearTimeout(timer))
      reply.raw.once('close', () => clearTimeout(timer))
    }
    done()
  })
}

function standStill(raw: IncomingMessage, patience: number): void {
  if (raw.socket instanceof Socket) raw.setTimeout(patience, () => raw.destroy()) // one that is injected has no line
}
