import { describe, expect, test } from 'vitest'
import { client } from './client.ts'
import { LogLines } from './log-lines.ts'

const log = new LogLines()
const { http } = await client({ logger: { level: 'info', stream: log.stream } })
const quietLog = new LogLines()
const quiet = await client({ logger: { level: 'warn', stream: quietLog.stream } })

const mark = 'Mark-7731'
const evaluation = { edition: 'irc-2021', opening: { reference: mark, opening: { kind: 'window', width: '4 ft', height: '4 ft' } } }

describe('each request', () => {
  test('is logged when it comes and when it is answered, under the id that the answer names', async () => {
    log.clear()
    const { body } = await http.get('/v1/rules/none') as { body: { instance: string } }
    const id = body.instance.replace('urn:request:', '')
    expect(log.lines).toMatchObject([
      { level: 30, reqId: id, msg: 'incoming request', req: { method: 'GET', url: '/v1/rules/none' } },
      { level: 30, reqId: id, msg: 'request completed', res: { statusCode: 404 }, responseTime: expect.any(Number) as number },
    ])
  })

  test('has an id of its own', async () => {
    log.clear()
    await Promise.all([http.get('/livez'), http.get('/readyz'), http.get('/v1/hold-points')])
    const ids = log.lines.map(({ reqId }) => reqId)
    expect(ids).toHaveLength(6)
    expect(new Set(ids).size).toBe(3)
  })
})

describe('what callers send is not logged', () => {
  const graphql = { query: 'query($o: OpeningInput!) { evaluation(edition: "irc-2021", opening: $o) { digest } }', variables: { o: evaluation.opening } }

  test.each<[string, () => PromiseLike<{ status: number }>, number]>([
    ['an evaluation', () => http.post('/v1/evaluations').send(evaluation), 200],
    ['one that is refused', () => http.post('/v1/evaluations').send({ ...evaluation, opening: { ...evaluation.opening, [mark]: mark } }), 422],
    ['a body that cannot be read', () => http.post('/v1/evaluations').set('content-type', 'application/json').send(`{"${mark}`), 400],
    ['a query', () => http.post('/graphql').send(graphql), 200],
    ['a query whose variables are refused', () => http.post('/graphql').send({ ...graphql, variables: { o: { ...evaluation.opening, reference: { [mark]: mark } } } }), 200],
    ['a query whose operation is refused', () => http.post('/graphql').send({ ...graphql, variables: { o: { ...evaluation.opening, head: { support: { section: mark } } } } }), 200],
    ['a query that cannot be read', () => http.post('/graphql').send({ query: `{ ${mark} ` }), 200],
    ['headers', () => http.get('/livez').set('authorization', mark).set('cookie', mark), 200],
  ])('%s', async (_, ask, status) => {
    log.clear()
    expect((await ask()).status).toBe(status)
    expect(log.lines.length).toBeGreaterThanOrEqual(2)
    expect(log.text).not.toContain(mark)
  })
})

test('the level is kept to', async () => {
  await quiet.http.get('/v1/rules/none').expect(404)
  await quiet.http.post('/graphql').send({ query: '{ rule(rule: "none") { rule } }' }).expect(200)
  expect(quietLog.lines).toEqual([])
})
