import { startReceiver } from '../webhooks/receiver.ts'

type Value = { readonly stringValue?: string; readonly intValue?: number; readonly arrayValue?: object }

/** As much of a span as is looked at, by OTLP 1.x in JSON: github.com/open-telemetry/opentelemetry-proto, trace.proto. */
export interface CollectedSpan {
  readonly traceId: string
  readonly spanId: string
  readonly parentSpanId?: string
  readonly name: string
  /** 1 internal, 2 server, 3 client. */
  readonly kind: number
  readonly status: { readonly code?: number }
  readonly attributes: readonly { readonly key: string; readonly value: Value }[]
  readonly events: readonly object[]
}

interface Exported {
  readonly resourceSpans: readonly { readonly resource: { readonly attributes: CollectedSpan['attributes'] }; readonly scopeSpans: readonly { readonly spans: readonly CollectedSpan[] }[] }[]
}

/** A collector of traces on this machine, which takes OTLP over HTTP in JSON. */
export async function startCollector() {
  const receiver = await startReceiver()
  receiver.answer = (_, response) => { response.writeHead(200, { 'content-type': 'application/json' }).end('{}') }
  const exported = () => receiver.arrived.map(({ text }) => JSON.parse(text) as Exported)
  return {
    endpoint: `http://127.0.0.1:${receiver.port}`,
    spans: () => exported().flatMap(({ resourceSpans }) => resourceSpans.flatMap(({ scopeSpans }) => scopeSpans.flatMap(({ spans }) => spans))),
    services: () => exported().flatMap(({ resourceSpans }) => resourceSpans.flatMap(({ resource }) => resource.attributes.filter(({ key }) => key === 'service.name').map(({ value }) => value.stringValue))),
    close: () => receiver.close(),
  }
}

export function attributesOf({ attributes }: CollectedSpan): Readonly<Record<string, unknown>> {
  return Object.fromEntries(attributes.map(({ key, value }) => [key, Object.values(value)[0] as unknown]))
}
