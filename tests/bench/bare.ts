import { readFile } from 'node:fs/promises'
import Fastify from 'fastify'

/** What the framework takes by itself: the body is parsed, and an answer goes out that was made beforehand. */
const bytes = await readFile(process.argv[2] ?? '')
const text = bytes.toString('utf8')
const app = Fastify()
app.get('/', async () => 'ready')
for (const [path, answer] of [['/text', text], ['/bytes', bytes]] as const) app.post(path, async (_, reply) => reply.type('application/json; charset=utf-8').send(answer))
await app.listen({ host: '127.0.0.1', port: Number(process.env['PORT']) })
process.once('SIGTERM', () => void app.close())
