import { setTimeout as later } from 'node:timers/promises'
import { context, createContextKey, diag, DiagLogLevel, isSpanContextValid, propagation, ROOT_CONTEXT, SpanKind, SpanStatusCode, trace, TraceFlags, type Context, type Span } from '@opentelemetry/api'
import { OTLPTraceExporter } from '@opentelemetry/exporter-trace-otlp-http'
import { detectResources, envDetector, resourceFromAttributes } from '@opentelemetry/resources'
import { BatchSpanProcessor, NodeTracerProvider, RandomIdGenerator, type IdGenerator } from '@opentelemetry/sdk-trace-node'
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import type { Follow, Tally } from '../operations/operation.ts'
import type { ActiveCatalog } from '../store/active-catalog.ts'
import { followedRecords, type FollowCall } from '../store/followed-records.ts'
import type { Records } from '../store/records.ts'
import type { Send } from '../webhooks/send.ts'
import { loggedTrace } from './trace.ts'

/**
 * Spans of requests, operations, calls of the store and deliveries, sent to a collector by OTLP over HTTP. Their attributes
 * take values from closed lists and the catalog, and counts: no id, reference, address, name or text of anybody.
 * Names and attributes are those of the OpenTelemetry semantic conventions for HTTP where they have one.
 */
export interface Tracing {
  /** A span for every request that the application answers. */
  readonly watch: (app: FastifyInstance) => void
  readonly follow: Follow
  /** The same records, with a span for each call within a request. */
  readonly following: (records: Records) => Records
  /** The same posting, with a span under the trace of what is told of, which the receiver gets as its parent. */
  readonly sending: (send: Send) => Send
  readonly tally: Tally
  /** Sends what is left, and gives up when that takes long. */
  readonly stop: () => Promise<void>
}

export interface TracingLog {
  readonly warn: (detail: object, message: string) => void
}

/** In milliseconds; a collector that does not answer must not hold up the end. */
const patience = 3_000

/** Where spans go, how many are kept and what is sent along is read from the variables of OpenTelemetry. To be called once in a process. */
export function startTracing(active: ActiveCatalog, log: TracingLog): Tracing {
  const silent = (): void => undefined
  const told = (message: string): void => log.warn({ fault: message.slice(0, 500) }, 'spans cannot be handed over')
  diag.setLogger({ verbose: silent, debug: silent, info: silent, warn: silent, error: told }, { logLevel: DiagLogLevel.ERROR, suppressOverrideMessage: true })
  const resource = resourceFromAttributes({ 'service.name': 'wythe' }).merge(detectResources({ detectors: [envDetector] }))
  const provider = new NodeTracerProvider({ resource, idGenerator, spanProcessors: [new BatchSpanProcessor(new OTLPTraceExporter())] })
  provider.register()
  return {
    watch,
    follow: followOperation(active),
    following: (records) => followedRecords(records, followCall),
    sending,
    tally: { evaluated: sayVerdict },
    stop: async () => {
      const end = new AbortController()
      await Promise.race([provider.shutdown().catch(() => undefined), later(patience, undefined, { signal: end.signal }).catch(() => undefined)])
      end.abort()
    },
  }
}

const tracer = trace.getTracer('wythe')

const ownTrace = createContextKey('the trace of a request whose caller names none')
const randomIds = new RandomIdGenerator()

/** A trace that begins with a request has the id that its log lines name. */
const idGenerator: IdGenerator = {
  generateTraceId: () => (context.active().getValue(ownTrace) as string | undefined) ?? randomIds.generateTraceId(),
  generateSpanId: () => randomIds.generateSpanId(),
}

/** What platforms ask every few seconds would bury all else. */
const unwatched: readonly string[] = ['/livez', '/readyz']

const contexts = new WeakMap<FastifyRequest, Context>()

function watch(app: FastifyInstance): void {
  app.addHook('onRequest', (request, reply, done) => {
    const route = request.is404 ? undefined : request.routeOptions.url
    const isProbe = route !== undefined && unwatched.includes(route)
    const around = isProbe ? context.active() : trace.setSpan(ROOT_CONTEXT, begun(request, reply, route))
    contexts.set(request, around)
    context.with(around, done)
  })
  // The body is read from the connection, which knows nothing of the request it belongs to.
  app.addHook('preValidation', (request, _, done) => { context.with(contexts.get(request) ?? context.active(), done) })
}

function begun(request: FastifyRequest, reply: FastifyReply, route: string | undefined): Span {
  const method = methods.includes(request.method) ? request.method : '_OTHER'
  const attributes = { 'http.request.method': method, 'url.scheme': request.protocol, 'network.protocol.version': request.raw.httpVersion, ...(route === undefined ? {} : { 'http.route': route }) }
  const parent = propagation.extract(ROOT_CONTEXT, request.headers)
  const named = context.active().setValue(ownTrace, loggedTrace(request.raw))
  const span = context.with(named, () => tracer.startSpan([method === '_OTHER' ? 'HTTP' : method, route].filter(Boolean).join(' '), { kind: SpanKind.SERVER, attributes }, parent))
  // What happens because of this request has this span for its parent.
  request.headers['traceparent'] = traceparentOf(span) ?? request.headers['traceparent']
  reply.raw.once('close', () => end(span, reply.raw.statusCode, reply.raw.writableFinished))
  return span
}

const methods: readonly string[] = ['GET', 'HEAD', 'POST', 'PUT', 'PATCH', 'DELETE', 'OPTIONS']

/** A refusal is an answer; only what failed on this side is an error of a server. */
function end(span: Span, status: number, answered: boolean): void {
  if (answered) span.setAttribute('http.response.status_code', status)
  if (status >= 500) span.setAttribute('error.type', String(status)).setStatus({ code: SpanStatusCode.ERROR })
  else if (!answered) span.setAttribute('error.type', 'aborted')
  span.end()
}

function followOperation(active: ActiveCatalog): Follow {
  return (operation, work) =>
    within(`operation ${operation}`, SpanKind.INTERNAL, async (span) => {
      span.setAttributes({ 'wythe.operation': operation, 'wythe.catalog.release': active.state.catalog.release })
      const answer = await work()
      span.setAttribute('wythe.answer', answer.ok ? 'ok' : answer.code)
      if (!answer.ok) span.setAttribute('wythe.problems', answer.problems.length)
      return answer
    })
}

/** Only within a request: what replicas ask of the store all day long would be a trace of its own each time. */
const followCall: FollowCall = (call, work) => (trace.getActiveSpan() ? within(`store ${call}`, SpanKind.CLIENT, async (span) => {
  span.setAttribute('db.operation.name', call)
  return work()
}) : work())

const sending: (send: Send) => Send = (send) => (post) => {
  const parent = propagation.extract(ROOT_CONTEXT, post.headers)
  return context.with(parent, () => within('POST webhook', SpanKind.CLIENT, async (span) => {
    const { type } = JSON.parse(post.text) as { readonly type: string }
    span.setAttributes({ 'http.request.method': 'POST', 'wythe.event': type })
    const traceparent = traceparentOf(span)
    const reply = await send(traceparent === undefined ? post : { ...post, headers: { ...post.headers, traceparent } })
    const fault = 'fault' in reply ? 'unreachable' : reply.status >= 300 ? String(reply.status) : undefined
    if ('status' in reply) span.setAttribute('http.response.status_code', reply.status)
    if (fault !== undefined) span.setAttribute('error.type', fault).setStatus({ code: SpanStatusCode.ERROR })
    return reply
  }))
}

/** The place is one of the catalog; how many findings there are of each outcome tells nothing of whose they are. */
const sayVerdict: Tally['evaluated'] = ({ resolvedAt, summary }) => {
  trace.getActiveSpan()?.setAttributes({
    'wythe.verdict': summary.verdict, 'wythe.findings.pass': summary.pass, 'wythe.findings.fail': summary.fail, 'wythe.findings.not_determined': summary.notDetermined,
    ...(resolvedAt === null ? {} : { 'wythe.jurisdiction': resolvedAt }),
  })
}

/** Runs work under a span. What it throws may quote what somebody wrote, so that only its class is told. */
function within<T>(name: string, kind: SpanKind, work: (span: Span) => Promise<T>): Promise<T> {
  return tracer.startActiveSpan(name, { kind }, async (span) => {
    try {
      return await work(span)
    } catch (error) {
      span.setAttribute('error.type', error instanceof Error ? error.name : '_OTHER').setStatus({ code: SpanStatusCode.ERROR })
      throw error
    } finally {
      span.end()
    }
  })
}

function traceparentOf(span: Span): string | undefined {
  const { traceId, spanId, traceFlags } = span.spanContext()
  return isSpanContextValid(span.spanContext()) ? `00-${traceId}-${spanId}-0${traceFlags & TraceFlags.SAMPLED}` : undefined
}
