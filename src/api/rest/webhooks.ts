import type { FastifyPluginAsync } from 'fastify'
import { operations } from '../../operations/index.ts'
import { answer } from './answer.ts'
import { routeSchema } from './schemas.ts'

const { createWebhook, listWebhooks, readWebhook, deleteWebhook, enableWebhook, rotateWebhookSecret, listDeliveries, pingWebhook, replayDelivery } = operations
const tag = 'Webhooks'
const inPath = { path: ['webhook'] }
const secretOnce = () => ({ 'cache-control': 'no-store' })

/** Where events are sent, and what became of them. */
export const webhooks: FastifyPluginAsync = async (app) => {
  app.get('/webhooks', { schema: routeSchema(listWebhooks, tag) }, (request, reply) => answer(listWebhooks, request, reply))
  app.post('/webhooks', { schema: routeSchema(createWebhook, tag, { body: 'input', status: 201 }) }, (request, reply) => answer(createWebhook, request, reply, { status: 201, headers: secretOnce }))
  app.get('/webhooks/:webhook', { schema: routeSchema(readWebhook, tag, inPath) }, (request, reply) => answer(readWebhook, request, reply))
  app.delete('/webhooks/:webhook', { schema: routeSchema(deleteWebhook, tag, inPath) }, (request, reply) => answer(deleteWebhook, request, reply, { input: request.params }))
  app.post('/webhooks/:webhook/secret', { schema: routeSchema(rotateWebhookSecret, tag, { ...inPath, status: 201 }) }, (request, reply) => answer(rotateWebhookSecret, request, reply, { input: request.params, status: 201, headers: secretOnce }))
  app.post('/webhooks/:webhook/enable', { schema: routeSchema(enableWebhook, tag, inPath) }, (request, reply) => answer(enableWebhook, request, reply, { input: request.params }))
  app.post('/webhooks/:webhook/ping', { schema: routeSchema(pingWebhook, tag, { ...inPath, status: 202 }) }, (request, reply) => answer(pingWebhook, request, reply, { input: request.params, status: 202 }))
  app.get('/webhooks/:webhook/deliveries', { schema: routeSchema(listDeliveries, tag, inPath) }, (request, reply) => answer(listDeliveries, request, reply))
  app.post('/webhooks/:webhook/deliveries/:delivery/replay', { schema: routeSchema(replayDelivery, tag, { path: ['webhook', 'delivery'], status: 202 }) }, (request, reply) => answer(replayDelivery, request, reply, { input: request.params, status: 202 }))
}
