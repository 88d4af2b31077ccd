import type { IncomingMessage } from 'node:http'
import type { FastifyServerOptions } from 'fastify'

const traceparent = /^(?!ff)[0-9a-f]{2}-(?!0{32})([0-9a-f]{32})-(?!0{16})[0-9a-f]{16}-[0-9a-f]{2}(?:$|-)/

/** The trace that a caller's W3C traceparent header names; undefined where it is not one. Later versions may add to it, version 00 may not. */
export function traceOf(header: string | string[] | undefined): string | undefined {
  if (typeof header !== 'string' || (header.startsWith('00') && header.length !== 55)) return undefined
  return traceparent.exec(header)?.[1]
}

/** A W3C traceparent header that is one, to be passed on; undefined for anything else. */
export function traceparentIn(header: string | string[] | undefined): string | undefined {
  return typeof header === 'string' && traceOf(header) !== undefined ? header : undefined
}

const logged = new WeakMap<IncomingMessage, string>()

/** Puts a trace into every line that is logged about a request, under the name that OpenTelemetry gives it in logs: that of its caller, else one of its own. */
export function logTraces(newTraceId: () => string): NonNullable<FastifyServerOptions['childLoggerFactory']> {
  return (logger, bindings, options, raw) => {
    const trace = traceOf(raw.headers['traceparent']) ?? newTraceId()
    logged.set(raw, trace)
    return logger.child({ ...bindings, trace_id: trace }, options)
  }
}

/** The trace that the log lines of a request name. */
export function loggedTrace(raw: IncomingMessage): string | undefined {
  return logged.get(raw)
}
