import type { FastifyDynamicSwaggerOptions } from '@fastify/swagger'
import { withConventions } from './conventions.ts'
import { examples } from './examples.ts'

const cautions =
  'Not a substitute for the adopted code text, the authority having jurisdiction or a licensed professional. The local code prevails. Structural results must be confirmed by a licensed professional.'

const otherDoor = 'The same operations are answered over GraphQL at `/graphql`, from the same rules and with the same words.'

const scopes = `A token of the service itself, or a JWT access token of the identity provider that it was told of, with these words in \`scope\`:

- \`wythe:evaluate\`: reads the catalog and evaluates. Every other scope takes this in, and a service may let anyone do it.
- \`wythe:record\`: opens projects, records in all of them, keeps and reads evaluations. \`wythe:record:<project>\`: in that project alone; any other is answered as if it were not there.
- \`wythe:amend:<jurisdiction>\`: drafts and adopts amendments of the jurisdiction and of all within it.
- \`wythe:administer\`: makes and revokes tokens.`

type TransformObject = NonNullable<FastifyDynamicSwaggerOptions['transformObject']>

/** What the OpenAPI document says beside the routes. Routes without a tag are not part of it. */
export function documentOptions(publicUrl: string): FastifyDynamicSwaggerOptions {
  return {
    openapi: {
      openapi: '3.1.0',
      info: {
        title: 'Wythe',
        version: '1.0.0',
        description: `Checks window, door and vent openings in anchored brick veneer and computes what the crew needs to build them.\n\n${cautions}\n\n${otherDoor}`,
        license: { name: 'Apache-2.0', identifier: 'Apache-2.0' },
      },
      servers: [{ url: publicUrl }],
      components: { securitySchemes: { token: { type: 'http', scheme: 'bearer', description: scopes } } },
      tags: [
        { name: 'Evaluations', description: 'Findings and quantities for an opening.' },
        { name: 'Reports', description: 'Evaluations and buildings as pages to print.' },
        { name: 'Drawings', description: 'An opening as SVG: elevation, section, flashing blanks, layout of weeps and ties.' },
        { name: 'Rules', description: 'What is required, by which edition, on what evidence.' },
        { name: 'Quantities', description: 'What the crew, the estimator and the engineer need, each computed by itself or for a whole schedule.' },
        { name: 'Jurisdictions', description: 'What was adopted and amended where and when.' },
        { name: 'Publications', description: 'The codes, standards and notes that figures are taken from.' },
        { name: 'Facts', description: 'The words of an opening description and the order of the work.' },
        { name: 'Forms', description: 'What to look at and write down at each hold point, as JSON Schema, and the filled forms.' },
        { name: 'Amendments', description: 'How a jurisdiction drafts, checks, tries and adopts its amendments.' },
        { name: 'Releases', description: 'Cut states of the catalog, kept for ever.' },
        { name: 'Records', description: 'Buildings and their openings as drawn and as seen; what is on record is never changed.' },
        { name: 'Tokens', description: 'Who may do what.' },
        { name: 'Webhooks', description: 'Where events are sent; the events themselves are described in `openapi/asyncapi.json` (AsyncAPI 3.0).' },
        { name: 'Health', description: 'For the platform that runs the service.' },
      ],
    },
    hideUntagged: true,
    refResolver: { buildLocalReference: ({ $id }) => (typeof $id === 'string' ? $id : '') },
    transformObject: withExamples,
  }
}

/** A route can give no example beside a named schema, so it is put into the finished document, with what all routes have in common. */
const withExamples: TransformObject = (document) => {
  if (!('openapiObject' in document)) return document.swaggerObject
  const { openapiObject } = document
  for (const methods of Object.values(openapiObject.paths ?? {})) Object.values(methods ?? {}).forEach(addExample)
  withConventions(openapiObject as Parameters<typeof withConventions>[0])
  return openapiObject
}

function addExample(operation: unknown): void {
  const { operationId = '', requestBody } = operation as { operationId?: string; requestBody?: { content?: Record<string, { example?: unknown }> } }
  const json = requestBody?.content?.['application/json']
  if (json === undefined) return
  if (!Object.hasOwn(examples, operationId)) throw new Error(`${operationId} takes a body and has no example`)
  json.example = examples[operationId]
}
