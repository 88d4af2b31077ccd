import { Client } from 'pg'

export const channel = 'wythe_adoptions'

export interface Hearing {
  /** A notification with the sequence of an adoption. */
  readonly heard: (sequence: number) => void
  /** From now on notifications arrive; again, when a connection was lost and some may have been missed. */
  readonly listening: (again: boolean) => void
}

/** Keeps one connection listening, and makes a new one whenever it is lost. Answers how to stop. */
export function listenOn(connectionString: string, { heard, listening }: Hearing): () => void {
  let client: Client | undefined
  let timer: NodeJS.Timeout | undefined
  let stopped = false
  let failures = 0
  let again = false
  const connect = (): void => {
    const next = new Client({ connectionString, keepAlive: true, connectionTimeoutMillis: 5_000, application_name: 'wythe listener' })
    client = next
    const lose = (): void => {
      if (stopped || client !== next) return
      client = undefined
      discard(next)
      timer = setTimeout(connect, delay(failures++)).unref()
    }
    next.on('error', lose).on('end', lose).on('notification', ({ payload }) => heard(Number(payload)))
    begin(next).then(() => {
      failures = 0
      listening(again)
      again = true
    }, lose)
  }
  connect()
  return () => {
    stopped = true
    clearTimeout(timer)
    if (client) discard(client)
  }
}

async function begin(client: Client): Promise<void> {
  await client.connect()
  await client.query(`listen ${channel}`)
}

/** A tenth of a second at first, doubling to five seconds; scattered, so that replicas do not return in step. */
function delay(failures: number): number {
  return Math.min(100 * 2 ** failures, 5_000) * (0.5 + Math.random() / 2)
}

function discard(client: Client): void {
  client.end().catch(() => undefined)
}
