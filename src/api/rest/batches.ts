import { PassThrough, Readable } from 'node:stream'
import type { FastifyPluginAsync, FastifyReply, FastifyRequest } from 'fastify'
import { accessOf } from '../../operations/access.ts'
import { batchAnswer, batchSettings, notEvaluated, openBatch, type Batch } from '../../operations/evaluate-batch.ts'
import { operations } from '../../operations/index.ts'
import { unitsOf } from '../../operations/operation.ts'
import { refuseUnlessAdmitted } from '../../operations/permission.ts'
import { depsOf } from '../caller.ts'
import { charge, refuseOverQuota } from '../quota.ts'
import { answer, sendFailure } from './answer.ts'
import { inOrder } from './in-order.ts'
import { answerBytes } from './line-answers.ts'
import { groupsOf } from './line-groups.ts'
import { lineAnswerer } from './line-answerer.ts'
import { linesOf } from './lines.ts'
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

/** So many bytes may wait to be answered, beside those that are being answered. */
const mostWaiting = 65_536

/** The body, in a stream that can be ended without the line to the caller, who is still to be told of it. */
function endable(body: Readable): Readable {
  const lines = body.pipe(new PassThrough({ highWaterMark: mostWaiting }))
  body.once('close', () => { if (!body.readableEnded) lines.destroy() })
  return lines
}

/** No more lines are taken in than are being answered, so that a slow reader slows the sender and nothing is heaped up. */
async function* answersTo(lines: Readable, batch: Batch, request: FastifyRequest): AsyncGenerator<Uint8Array> {
  let next = 1
  const { answerGroup, most } = lineAnswerer(batch, request.server)
  const groups = groupsOf(linesOf(lines), request, unitsOf(evaluateBatch, undefined))
  try {
    for await (const { bytes, faults, tallied, last } of inOrder(groups, answerGroup, most)) {
      for (const { line, error } of faults) request.log.error({ err: error, line }, 'an opening of a batch could not be evaluated')
      for (const evaluation of tallied) request.server.deps.tally?.evaluated(evaluation)
      yield bytes
      next = last + 1
    }
  } catch (error) {
    if (!request.server.isClosing) throw error
    yield answerBytes(notEvaluated(next, [{ code: 'unavailable', pointer: '', detail: 'The service is stopping. Send this line and those after it again.' }], null, 'unavailable'))
  }
}
