import { PassThrough, Readable } from 'node:stream'
import type { FastifyPluginAsync, FastifyReply, FastifyRequest } from 'fastify'
import { accessOf } from '../../operations/access.ts'
import { batchAnswer, batchSettings, notEvaluated, openBatch, type BatchAnswer, type EvaluateItem } from '../../operations/evaluate-batch.ts'
import { operations } from '../../operations/index.ts'
import { unitsOf } from '../../operations/operation.ts'
import { refuseUnlessAdmitted } from '../../operations/permission.ts'
import { depsOf } from '../caller.ts'
import { jsonBytes } from '../json.ts'
import { problemTypes } from '../problems.ts'
import { charge, refuseOverQuota, waitForUnits } from '../quota.ts'
import { answer, sendFailure } from './answer.ts'
import { linesOf, longestLine, type Line } from './lines.ts'
import { objectOf, referenceTo, routeSchema } from './schemas.ts'

const { evaluateBatch } = operations
const lineTypes = ['application/x-ndjson', 'application/jsonl']

const described = routeSchema(evaluateBatch, 'Evaluations', { body: 'input' })
const oneEach = { type: 'string', description: 'One line of JSON for each opening.' }
const schema = {
  ...described,
  querystring: objectOf(Object.entries(batchSettings.shape)),
  body: { content: { 'application/json': { schema: described.body }, ...Object.fromEntries(lineTypes.map((type) => [type, { schema: { ...oneEach, maxLength: Number.MAX_SAFE_INTEGER } }])) } },
  response: {
    ...described.response,
    200: { description: 'What was asked for; of lines, one line of JSON for each.', content: { 'application/json': { schema: referenceTo(evaluateBatch.output) }, 'application/x-ndjson': { schema: referenceTo(batchAnswer) } } },
  },
}

/** Many openings at once: a few in one document, or lines without an end. */
export const batches: FastifyPluginAsync = async (app) => {
  const underWay = new Set<Readable>()
  app.addContentTypeParser(lineTypes, (_, body, done) => done(null, body))
  app.addHook('preClose', async () => {
    for (const body of underWay) body.destroy()
  })
  app.post('/evaluations/batch', { schema, config: { inLines: true } }, (request, reply) =>
    request.body instanceof Readable ? answerLines(request.body, request, reply, underWay) : answer(evaluateBatch, request, reply),
  )
}

async function answerLines(body: Readable, request: FastifyRequest, reply: FastifyReply, underWay: Set<Readable>): Promise<FastifyReply> {
  const units = unitsOf(evaluateBatch, undefined)
  const refused = refuseUnlessAdmitted(request.caller, accessOf(evaluateBatch))
  if (refused) return sendFailure(refused, request, reply)
  if (!(await charge(request, reply, units))) return refuseOverQuota(request, reply, units)
  const batch = await openBatch(depsOf(request), request.query)
  if (!batch.ok) return sendFailure(batch, request, reply)
  const lines = endable(body)
  underWay.add(lines)
  const answers = Readable.from(answersTo(lines, batch.value, request), { objectMode: false })
  answers.once('close', () => underWay.delete(lines.destroy()))
  reply.raw.once('finish', () => { if (request.server.isClosing) request.raw.socket.destroySoon() })
  return reply.header('cache-control', 'no-store').type('application/x-ndjson; charset=utf-8').send(answers)
}

/** The body, in a stream that can be ended without the line to the caller, who is still to be told of it. */
function endable(body: Readable): Readable {
  const lines = body.pipe(new PassThrough())
  body.once('close', () => { if (!body.readableEnded) lines.destroy() })
  return lines
}

/** Each line is answered before the next is asked for, so that a slow reader slows the sender and nothing is heaped up. */
async function* answersTo(lines: Readable, evaluateItem: EvaluateItem, request: FastifyRequest): AsyncGenerator<Buffer> {
  const units = unitsOf(evaluateBatch, undefined)
  let next = 1
  try {
    for await (const line of linesOf(lines)) {
      if (next > 1) await waitForUnits(request, units)
      yield lineOf(answerTo(line, evaluateItem, request))
      next = line.line + 1
      await request.server.deps.giveWay()
    }
  } catch (error) {
    if (!request.server.isClosing) throw error
    yield lineOf(notEvaluated(next, [{ code: 'unavailable', pointer: '', detail: 'The service is stopping. Send this line and those after it again.' }], null, 'unavailable'))
  }
}

function lineOf(answer: BatchAnswer): Buffer {
  return Buffer.concat([jsonBytes(answer), lineFeed])
}

const lineFeed = Buffer.from('\n')

/** A fault of ours is told on its line and logged; the others are answered all the same. */
function answerTo(line: Line, evaluateItem: EvaluateItem, { log }: FastifyRequest): BatchAnswer {
  if ('flaw' in line) return unreadable(line.line, line.flaw, line.flaw === 'tooLarge' ? `The line is longer than ${longestLine} bytes.` : 'The line is not UTF-8.')
  const read = parsed(line.text)
  if (!('value' in read)) return unreadable(line.line, 'malformed', read.why)
  try {
    return evaluateItem(read.value, line.line)
  } catch (error) {
    log.error({ err: error, line: line.line }, 'an opening of a batch could not be evaluated')
    return unreadable(line.line, 'internal', `${problemTypes.internal.title}. ${problemTypes.internal.mend}`)
  }
}

function parsed(text: string): { readonly value: unknown } | { readonly why: string } {
  try {
    return { value: JSON.parse(text) as unknown }
  } catch (error) {
    return { why: error instanceof Error ? error.message : 'The line is not JSON.' }
  }
}

function unreadable(line: number, code: 'tooLarge' | 'malformed' | 'internal', detail: string): BatchAnswer {
  return notEvaluated(line, [{ code, pointer: '', detail }], null, code)
}
