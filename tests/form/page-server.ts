import { readFileSync } from 'node:fs'
import { createServer } from 'node:http'
import { text } from 'node:stream/consumers'
import type { AddressInfo } from 'node:net'
import { join } from 'node:path'
import { setTimeout as later } from 'node:timers/promises'
import { build } from 'vite'

const folder = join(import.meta.dirname, 'page')

/** Serves the page of a form app, and passes its calls on to the service, as the app's own server would. */
export async function servePage(service: string): Promise<{ readonly address: string; readonly close: () => Promise<void> }> {
  const files: Readonly<Record<string, readonly [type: string, body: string]>> = {
    '/': ['text/html; charset=utf-8', readFileSync(join(folder, 'index.html'), 'utf8')],
    '/app.js': ['text/javascript; charset=utf-8', await bundled(join(folder, 'app.js'))],
  }
  const server = createServer((request, response) => {
    const address = request.url ?? '/'
    const file = files[address.replace(/\?.*/, '')]
    if (file) return void response.setHeader('content-type', file[0]).end(file[1])
    void passOn(service + address, request.method ?? 'GET', request.headers.authorization ?? '', request.method === 'POST' ? text(request) : undefined)
      .then(({ status, body }) => response.writeHead(status, { 'content-type': 'application/json' }).end(body))
  })
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening))
  const { port } = server.address() as AddressInfo
  return { address: `http://127.0.0.1:${port}`, close: () => new Promise((closed) => server.close(() => closed())) }
}

/** Tries again while the service says that it is too busy, as it does on a machine that runs other tests beside. */
async function passOn(address: string, method: string, authorization: string, sent: Promise<string> | undefined) {
  const body = await sent
  for (;;) {
    const answered = await fetch(address, { method, headers: { authorization, 'content-type': 'application/json' }, ...(body === undefined ? {} : { body }) })
    if (answered.status !== 503) return { status: answered.status, body: await answered.text() }
    await later(200)
  }
}

/** One script of the page and the form library, made anew at each run. */
async function bundled(entry: string): Promise<string> {
  const built = await build({ configFile: false, logLevel: 'silent', define: { 'process.env.NODE_ENV': '"production"' }, build: { write: false, target: 'es2022', rollupOptions: { input: entry, output: { format: 'es' } } } })
  const outputs = (Array.isArray(built) ? built : [built]).flatMap((one) => ('output' in one ? one.output : []))
  const chunk = outputs.find((one) => one.type === 'chunk' && one.isEntry)
  if (chunk?.type !== 'chunk') throw new Error('the page was not bundled')
  return chunk.code
}
