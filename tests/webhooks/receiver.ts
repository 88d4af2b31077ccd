import { createServer, type IncomingHttpHeaders, type RequestListener, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'

export interface Arrived {
  readonly headers: IncomingHttpHeaders
  readonly text: string
}

export interface Receiver {
  readonly address: string
  readonly port: number
  readonly arrived: readonly Arrived[]
  /** What the next calls are answered with, instead of 204. */
  answer: RequestListener
  readonly close: () => Promise<void>
}

/** A server of another's, on this machine, that keeps what it is sent. */
export async function startReceiver(host = '127.0.0.1'): Promise<Receiver> {
  const arrived: Arrived[] = []
  const receiver = { answer: ((_, response) => { response.writeHead(204).end() }) as RequestListener }
  const server = createServer((request, response) => {
    const parts: Buffer[] = []
    request.on('data', (part: Buffer) => parts.push(part)).on('end', () => {
      arrived.push({ headers: request.headers, text: Buffer.concat(parts).toString('utf8') })
      receiver.answer(request, response)
    })
  })
  await new Promise<void>((resolve) => { server.listen(0, host, resolve) })
  const { port } = server.address() as AddressInfo
  return Object.assign(receiver, { arrived, port, address: `http://${host}:${port}/hook`, close: () => closed(server) })
}

function closed(server: Server): Promise<void> {
  server.closeAllConnections()
  return new Promise((resolve) => { server.close(() => resolve()) })
}
