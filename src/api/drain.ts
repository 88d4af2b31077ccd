import type { Server as HttpServer } from 'node:http'
import { Server } from 'node:net'
import { setTimeout as later } from 'node:timers/promises'
import { promisify } from 'node:util'

/** How long a connection that was made already may take to bring its request, in milliseconds. */
const mostLinger = 1_000
const lookEvery = 20

/**
 * Goes on serving for some milliseconds, takes no more connections then, and lets those it has bring what is on its way. To close
 * the server at once would reset them: a connection whose request has not been read yet counts as idle.
 */
export async function drained(server: HttpServer, milliseconds: number): Promise<void> {
  if (milliseconds === 0) return
  await later(milliseconds)
  Server.prototype.close.call(server)
  const connections = promisify(server.getConnections.bind(server))
  for (const end = Date.now() + mostLinger; Date.now() < end && (await connections()) > 0;) await later(lookEvery)
}
