import { z } from 'zod'

/*
 * Not the published schema of OSCAL. It holds the objects that this service writes, with the names, the lists that may not be
 * empty, the lists of choices and the patterns of NIST's schema of assessment results; see tests/fixtures/published-schemas/README.md.
 */

const uuid = z.string().regex(/^[0-9A-Fa-f]{8}-[0-9A-Fa-f]{4}-[45][0-9A-Fa-f]{3}-[89ABab][0-9A-Fa-f]{3}-[0-9A-Fa-f]{12}$/)
const token = z.string().regex(/^(\p{L}|_)(\p{L}|\p{N}|[.\-_])*$/u)
const oneLine = z.string().regex(/^\S(.*\S)?$/u)
const dateTime = z.string().regex(
  /^(((2000|2400|2800|(19|2[0-9](0[48]|[2468][048]|[13579][26])))-02-29)|(((19|2[0-9])[0-9]{2})-02-(0[1-9]|1[0-9]|2[0-8]))|(((19|2[0-9])[0-9]{2})-(0[13578]|10|12)-(0[1-9]|[12][0-9]|3[01]))|(((19|2[0-9])[0-9]{2})-(0[469]|11)-(0[1-9]|[12][0-9]|30)))T(2[0-3]|[01][0-9]):([0-5][0-9]):([0-5][0-9])(\.[0-9]+)?(Z|[+-][0-9]{2}:[0-9]{2})$/,
)
/** RFC 3986 leaves no other characters, "%" only before two digits, "#" at most once, and brackets only around an address of IPv6. */
const uriReference = z.string().regex(/^(?:[\w.~:/?@!$&'()*+,;=-]|%[0-9A-Fa-f]{2}|\[[0-9A-Fa-f:.]+\])*(?:#(?:[\w.~:/?@!$&'()*+,;=-]|%[0-9A-Fa-f]{2})*)?$/)
const uri = z.string().regex(/^[a-zA-Z][a-zA-Z0-9+\-.]+:.+$/)
const text = z.string()
const some = <T extends z.ZodType>(item: T) => z.array(item).min(1)

const property = z.strictObject({ name: token, ns: uri, value: oneLine })
const about = { props: some(property).optional(), remarks: text.optional() }
const origins = some(z.strictObject({ actors: some(z.strictObject({ type: z.enum(['tool', 'assessment-platform', 'party']), 'actor-uuid': uuid })) }))
const loggedBy = some(z.strictObject({ 'party-uuid': uuid }))
const relatedObservations = some(z.strictObject({ 'observation-uuid': uuid }))

const metadata = z.strictObject({
  title: text, 'last-modified': dateTime, version: oneLine, 'oscal-version': z.literal('1.1.2'), ...about,
  parties: some(z.strictObject({ uuid, type: z.enum(['person', 'organization']), name: oneLine, remarks: text })).optional(),
})

const observation = z.strictObject({
  uuid, description: text, ...about, methods: some(z.enum(['EXAMINE', 'INTERVIEW', 'TEST', 'UNKNOWN'])), types: some(token).optional(), origins,
  subjects: some(z.strictObject({ 'subject-uuid': uuid, type: token, title: text })),
  'relevant-evidence': some(z.strictObject({ href: uriReference, description: text, ...about })).optional(),
  collected: dateTime,
})

const risk = z.strictObject({
  uuid, title: text, description: text, statement: text, props: some(property),
  status: z.enum(['open', 'investigating', 'remediating', 'deviation-requested', 'deviation-approved', 'closed']), origins,
  remediations: some(z.strictObject({ uuid, lifecycle: z.enum(['recommendation', 'planned', 'completed']), title: text, description: text })).optional(),
  'risk-log': z.strictObject({ entries: some(z.strictObject({ uuid, description: text, start: dateTime, 'logged-by': loggedBy, 'status-change': token.optional(), remarks: text.optional() })) }).optional(),
  'related-observations': relatedObservations.optional(),
})

const finding = z.strictObject({
  uuid, title: text, description: text, props: some(property), origins,
  target: z.strictObject({
    type: z.enum(['statement-id', 'objective-id']), 'target-id': token, title: text,
    status: z.strictObject({ state: z.enum(['satisfied', 'not-satisfied']), reason: z.enum(['pass', 'fail', 'other']), remarks: text.optional() }),
  }),
  'related-observations': relatedObservations.optional(),
  'related-risks': some(z.strictObject({ 'risk-uuid': uuid })).optional(),
})

const result = z.strictObject({
  uuid, title: text, description: text, start: dateTime, end: dateTime,
  'local-definitions': z.strictObject({
    'inventory-items': some(z.strictObject({ uuid, description: text, props: some(property) })).optional(),
    'assessment-assets': z.strictObject({ 'assessment-platforms': some(z.strictObject({ uuid, title: text, ...about })) }),
  }),
  'reviewed-controls': z.strictObject({
    'control-selections': some(z.strictObject({ 'include-controls': some(z.strictObject({ 'control-id': token })) })),
    'control-objective-selections': some(z.strictObject({ 'include-objectives': some(z.strictObject({ 'objective-id': token })) })),
  }),
  'assessment-log': z.strictObject({ entries: some(z.strictObject({ uuid, title: text, description: text, start: dateTime, 'logged-by': loggedBy, remarks: text.optional() })) }).optional(),
  observations: some(observation).optional(), risks: some(risk).optional(), findings: some(finding).optional(),
})

export const oscalAsWritten = z.strictObject({
  'assessment-results': z.strictObject({
    uuid, metadata,
    'import-ap': z.strictObject({ href: uriReference, remarks: text }),
    'local-definitions': z.strictObject({
      'objectives-and-methods': some(z.strictObject({ 'control-id': token, description: text, props: some(property), parts: some(z.strictObject({ id: token, name: token, prose: text })) })),
    }),
    results: some(result),
    'back-matter': z.strictObject({
      resources: some(z.strictObject({ uuid, title: text, description: text.optional(), rlinks: some(z.strictObject({ href: uriReference, hashes: some(z.strictObject({ algorithm: z.literal('SHA-256'), value: z.string().regex(/^[0-9a-f]{64}$/) })) })).optional() })),
    }),
  }),
})
export type Oscal = z.infer<typeof oscalAsWritten>['assessment-results']
