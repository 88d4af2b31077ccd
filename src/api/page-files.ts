import fastifyStatic, { type FastifyStaticOptions } from '@fastify/static'
import Fastify, { type FastifyInstance } from 'fastify'

/** The files of a folder below a prefix. */
export async function pageFiles(folder: Pick<FastifyStaticOptions, 'root' | 'prefix' | 'index'>): Promise<FastifyInstance> {
  const app = Fastify()
  await app.register(fastifyStatic, { ...folder, decorateReply: false })
  await app.ready()
  return app
}
