import { expect, test } from 'vitest'
import { traceOf } from '../../src/api/trace.ts'
import { newTraceId } from '../../src/service.ts'
import { client } from './client.ts'
import { LogLines } from './log-lines.ts'

// The examples and the rules for invalid headers are those of https://www.w3.org/TR/trace-context/#traceparent-header
const example = '00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01'
const trace = '4bf92f3577b34da6a3ce929d0e0e4736'

const log = new LogLines()
const { http } = await client({ logger: { level: 'info', stream: log.stream } })

test('every line about a request names the trace of its caller', async () => {
  await http.get('/v1/rules/none').set('traceparent', example).expect(404)
  expect(log.lines.map(({ trace_id: id }) => id)).toEqual([trace, trace])
})

// A path that cannot be read is answered before any route
test.each(['/livez', '/v1/rules/none', '/nothing', '/v1/%zz'])('every line about a request to %s whose caller names no trace has one of its own', async (path) => {
  log.clear()
  for (const header of [undefined, 'none', example.replace(trace, '0'.repeat(32))]) await http.get(path).set(header === undefined ? {} : { traceparent: header })
  expect(log.lines.length).toBeGreaterThanOrEqual(3)
  const distinct = (texts: readonly string[]) => [...new Set(texts)]
  const [requests, ids, pairs] = [distinct(log.lines.map(({ reqId }) => String(reqId))), distinct(log.lines.map(({ trace_id: id }) => String(id))), distinct(log.lines.map(({ reqId, trace_id: id }) => `${String(reqId)} ${String(id)}`))]
  expect([requests.length, ids.length, pairs.length]).toEqual([3, 3, 3])
  for (const id of ids) expect(traceOf(`00-${id}-00f067aa0ba902b7-00`)).toBe(id)
})

test('the service makes traces of its own at random, as W3C Trace Context wants them', () => {
  const ids = Array.from({ length: 50 }, newTraceId)
  expect(new Set(ids).size).toBe(50)
  for (const id of ids) expect(traceOf(`00-${id}-00f067aa0ba902b7-00`)).toBe(id)
})

test.each([
  ['the published example', example, trace],
  ['one that is not sampled', example.replace(/01$/, '00'), trace],
  ['a later version that says more', `cc${example.slice(2)}-what-the-future-will-be-like`, trace],
  ['a later version that says no more', `01${example.slice(2)}`, trace],
  ['version 00 that says more', `${example}-more`, undefined],
  ['a later version without a separator', `01${example.slice(2)}.`, undefined],
  ['the version that is forbidden', `ff${example.slice(2)}`, undefined],
  ['a trace of zeros', example.replace(trace, '0'.repeat(32)), undefined],
  ['a parent of zeros', example.replace('00f067aa0ba902b7', '0'.repeat(16)), undefined],
  ['capitals', example.toUpperCase(), undefined],
  ['too short', example.slice(0, -1), undefined],
  ['words', 'none', undefined],
  ['nothing', undefined, undefined],
])('%s', (_, header, found) => expect(traceOf(header)).toBe(found))
