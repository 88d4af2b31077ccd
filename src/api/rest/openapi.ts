import type { FastifyDynamicSwaggerOptions } from '@fastify/swagger'

const cautions =
  'Not a substitute for the adopted code text, the authority having jurisdiction or a licensed professional. The local code prevails. Structural results must be confirmed by a licensed professional.'

/** What the OpenAPI document says beside the routes. */
export function documentOptions(publicUrl: string): FastifyDynamicSwaggerOptions {
  return {
    openapi: {
      openapi: '3.1.0',
      info: {
        title: 'Wythe',
        version: '1.0.0',
        description: `Checks window, door and vent openings in anchored brick veneer and computes what the crew needs to build them.\n\n${cautions}`,
        license: { name: 'Apache-2.0', identifier: 'Apache-2.0' },
      },
      servers: [{ url: publicUrl }],
      tags: [
        { name: 'Evaluations', description: 'Findings and quantities for an opening.' },
        { name: 'Rules', description: 'What is required, by which edition, on what evidence.' },
        { name: 'Jurisdictions', description: 'What was adopted and amended where and when.' },
        { name: 'Publications', description: 'The codes, standards and notes that figures are taken from.' },
        { name: 'Facts', description: 'The words of an opening description and the order of the work.' },
        { name: 'Health', description: 'For the platform that runs the service.' },
      ],
    },
    refResolver: { buildLocalReference: ({ $id }) => (typeof $id === 'string' ? $id : '') },
  }
}
