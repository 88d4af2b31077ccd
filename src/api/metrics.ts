import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { collectDefaultMetrics, Counter, Gauge, Histogram, Registry } from 'prom-client'
import type { Tally } from '../operations/operation.ts'
import type { ActiveCatalog } from '../store/active-catalog.ts'
import { countedRecords } from '../store/counted-records.ts'
import type { Records } from '../store/records.ts'

/** What the service counts of itself, for a Prometheus to fetch. Labels take their values from closed lists only: no id, address or text of a caller. */
export interface Metrics {
  readonly registry: Registry
  readonly tally: Tally
  /** Times every request that the application answers. To be called before routes are added. */
  readonly time: (app: FastifyInstance) => void
  /** The same records, counting what is put on record and what the store fails to do. */
  readonly counting: (records: Records) => Records
  /** Shows which adoptions this replica has taken in. */
  readonly watch: (active: ActiveCatalog) => void
}

/** In seconds, as the OpenTelemetry semantic conventions advise for http.server.request.duration. */
const buckets = [0.005, 0.01, 0.025, 0.05, 0.075, 0.1, 0.25, 0.5, 0.75, 1, 2.5, 5, 7.5, 10]

export function createMetrics(): Metrics {
  const registry = new Registry()
  const registers = [registry]
  collectDefaultMetrics({ register: registry })
  const requests = new Histogram({ name: 'http_server_request_duration_seconds', help: 'How long requests took, by route template.', labelNames: ['http_request_method', 'http_route', 'http_response_status_class'], buckets, registers })
  const evaluations = new Counter({ name: 'wythe_evaluations_total', help: 'Evaluations answered, by verdict.', labelNames: ['verdict'], registers })
  const entries = new Counter({ name: 'wythe_entries_recorded_total', help: 'Entries put on record, by kind.', labelNames: ['kind'], registers })
  const faults = new Counter({ name: 'wythe_store_errors_total', help: 'Calls that the store failed to answer, by call.', labelNames: ['call'], registers })
  return {
    registry,
    tally: { evaluated: ({ summary: { verdict } }) => { evaluations.inc({ verdict }) } },
    time: (app) => { app.addHook('onResponse', async (request, reply) => { requests.observe(labelsOf(request, reply), reply.elapsedTime / 1_000) }) },
    counting: (records) => countedRecords(records, { recorded: (kind) => { entries.inc({ kind }) }, failed: (call) => { faults.inc({ call }) } }),
    watch: (active) => {
      new Gauge({ name: 'wythe_adoptions_taken_in', help: 'The sequence of the last adoption in the catalog of this replica.', registers, collect() { this.set(active.state.sequence) } })
    },
  }
}

/** Methods that routes have; whatever else is sent is one more, as the semantic conventions name it. */
const methods: readonly string[] = ['GET', 'HEAD', 'POST', 'PUT', 'PATCH', 'DELETE', 'OPTIONS']

function labelsOf({ method, is404, routeOptions }: FastifyRequest, { statusCode }: FastifyReply) {
  return {
    http_request_method: methods.includes(method) ? method : '_OTHER',
    http_route: is404 ? 'none' : (routeOptions.url ?? 'none'),
    http_response_status_class: `${Math.floor(statusCode / 100)}xx`,
  }
}
