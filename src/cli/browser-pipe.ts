import type { ChildProcess } from 'node:child_process'
import type { Readable, Writable } from 'node:stream'

type Message = Readonly<Record<string, unknown>> & { readonly id?: number; readonly method?: string; readonly result?: Readonly<Record<string, unknown>>; readonly error?: { readonly message: string } }

export interface BrowserPipe {
  readonly ask: (method: string, params?: object, sessionId?: string) => Promise<Readonly<Record<string, unknown>>>
  readonly event: (method: string) => Promise<void>
}

/** Speaks the Chrome DevTools Protocol over the pipe that --remote-debugging-pipe opens: messages as JSON with a zero byte after each, on descriptors 3 and 4. */
export function pipeTo({ stdio }: ChildProcess): BrowserPipe {
  const [to, from] = [stdio[3] as Writable, stdio[4] as Readable]
  const waiting = new Map<number | string, (message: Message) => void>()
  let asked = 0
  let rest = ''
  to.on('error', () => undefined) // a browser that is gone answers nothing; its end is told elsewhere
  from.setEncoding('utf8').on('data', (data: string) => {
    const messages = (rest + data).split('\0')
    rest = messages.pop() ?? ''
    for (const message of messages.map((text) => JSON.parse(text) as Message)) waiting.get(message.id ?? message.method ?? '')?.(message)
  })
  return {
    ask: (method, params = {}, sessionId) => new Promise((resolve, reject) => {
      const id = (asked += 1)
      waiting.set(id, ({ result, error }) => { if (error) reject(new Error(error.message)); else resolve(result ?? {}) })
      to.write(`${JSON.stringify({ id, method, params, ...(sessionId === undefined ? {} : { sessionId }) })}\0`)
    }),
    event: (method) => new Promise((resolve) => { waiting.set(method, () => { resolve() }) }),
  }
}
