import type { FastifyServerOptions } from 'fastify'

type Controller = NonNullable<FastifyServerOptions['schemaController']>

/** Schemas of routes only describe them: operations validate, and what goes out was written before. Without these, compilers that are never asked would be loaded. */
export const nothingCompiled = {
  compilersFactory: { buildValidator: () => () => () => true, buildSerializer: () => () => (data: unknown) => JSON.stringify(data) },
} as unknown as Controller
