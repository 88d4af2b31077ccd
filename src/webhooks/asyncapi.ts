import { z } from 'zod'
import { envelopeOf, eventData, typeOf, type EventName } from './event.ts'

type JsonSchema = Record<string, unknown>

const names = Object.keys(eventData) as EventName[]

/** What the service sends by itself, as an AsyncAPI 3.0 document made from the schemas that the events are checked by. */
export function asyncapiDocument(version: string): JsonSchema {
  const bodies = names.map((name) => [name, schemaOf(name)] as const)
  return {
    asyncapi: '3.0.0',
    info: {
      title: 'Wythe: events', version, license: { name: 'Apache-2.0' },
      description: 'Events that the service posts to webhooks: CloudEvents 1.0 in JSON, signed as Standard Webhooks 1.0 says. Each is delivered at least once, in any order.',
    },
    defaultContentType: 'application/cloudevents+json',
    channels: {
      webhook: {
        title: 'A webhook', description: 'The target that was given with POST /v1/webhooks. Every 2xx answer takes a delivery; 410 ends the webhook; anything else is tried again.',
        address: null,
        messages: Object.fromEntries(names.map((name) => [name, { $ref: `#/components/messages/${name}` }])),
        bindings: { http: { bindingVersion: '0.3.0' } },
      },
    },
    operations: Object.fromEntries(names.map((name) => [name, { action: 'send', summary: eventData[name].meta()?.description, channel: { $ref: '#/channels/webhook' }, messages: [{ $ref: `#/channels/webhook/messages/${name}` }], bindings: { http: { method: 'POST', bindingVersion: '0.3.0' } } }])),
    components: {
      messages: Object.fromEntries(names.map((name) => [name, {
        name: typeOf(name), title: name, summary: eventData[name].meta()?.description, contentType: 'application/cloudevents+json; charset=utf-8',
        headers: { $ref: '#/components/schemas/headers' }, payload: { $ref: `#/components/schemas/${name}` },
      }])),
      schemas: { headers, ...Object.assign({}, ...bodies.map(([, { inner }]) => inner)) as JsonSchema, ...Object.fromEntries(bodies.map(([name, { body }]) => [name, body])) },
    },
  }
}

const headers = {
  type: 'object', required: ['webhook-id', 'webhook-timestamp', 'webhook-signature'],
  properties: {
    'webhook-id': { type: 'string', description: 'The id of the event, the same at each attempt.' },
    'webhook-timestamp': { type: 'string', pattern: '^\\d+$', description: 'The moment of the attempt in seconds since 1970; refuse what is more than five minutes off.' },
    'webhook-signature': { type: 'string', description: 'One or more, parted by spaces, over webhook-id, webhook-timestamp and the body, joined by full stops: "v1," and the Base64 of an HMAC-SHA256 by the secret, or "v1a," and the Base64 of an Ed25519 signature, which the public key of the webhook checks. One that fits is enough.' },
  },
}

/** The body of an event, and the named schemas within it. Draft 7 is what AsyncAPI builds on. */
function schemaOf(name: EventName): { readonly body: JsonSchema; readonly inner: JsonSchema } {
  const { $schema, definitions = {}, ...body } = z.toJSONSchema(envelopeOf(name), { target: 'draft-7', override: ({ jsonSchema }) => { if (jsonSchema.format === 'date-time') delete jsonSchema.pattern } }) as JsonSchema & { definitions?: JsonSchema }
  if ($schema !== 'http://json-schema.org/draft-07/schema#') throw new Error('the events are described in another draft than is said')
  return { body: referred(body) as JsonSchema, inner: referred(definitions) as JsonSchema }
}

function referred(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(referred)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).filter(([key, inner]) => key !== 'id' || typeof inner !== 'string').map(([key, inner]) => [key, key === '$ref' ? String(inner).replace('#/definitions/', '#/components/schemas/') : referred(inner)]))
}
