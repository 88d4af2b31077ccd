import type { FastifyRequest } from 'fastify'
import Negotiator from 'negotiator'

/** The media types of GraphQL over HTTP; whoever names none gets plain JSON. */
export const mediaTypes = ['application/json', 'application/graphql-response+json'] as const
export type MediaType = (typeof mediaTypes)[number]

/** The type that the caller would rather have; undefined when it would have neither. */
export function mediaTypeFor({ headers }: Pick<FastifyRequest, 'headers'>): MediaType | undefined {
  const [chosen] = new Negotiator({ headers }).mediaTypes([...mediaTypes])
  return mediaTypes.find((type) => type === chosen)
}
