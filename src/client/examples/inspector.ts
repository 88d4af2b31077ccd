/** An inspector's app: asks for the form of a hold point, and sends it filled. Arguments: the address of the service, a token that may record, the answers as the form library made them, in JSON. */
import { randomUUID } from 'node:crypto'
import { createClient, valueOf } from '../create-client.ts'

const [address = 'http://127.0.0.1:8080', token] = process.argv.slice(2)
const wythe = createClient(address, token)
const project = randomUUID()
const at = '2026-03-02T09:00:00Z'
const where = { params: { path: { project, opening: 'w-1' } } }

valueOf(await wythe.POST('/v1/projects', { body: { id: project, title: 'Row of six', jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' } }))
const design = { description: { opening: { kind: 'window' as const, width: '4 ft', height: '5 ft' }, head: { support: { kind: 'looseSteelAngle' as const } } } }
valueOf(await wythe.POST('/v1/projects/{project}/entries', { params: { path: { project } }, body: { entries: [{ id: randomUUID(), opening: 'w-1', at, by: 'design-office', design }] } }))
const form = valueOf(await wythe.GET('/v1/projects/{project}/openings/{opening}/form', { params: { ...where.params, query: { holdPoint: 'lintelSet' } } }))
const filled = { id: randomUUID(), at, by: 'inspector', holdPoint: 'lintelSet' as const, method: 'examine' as const, answers: JSON.parse(process.argv[4] ?? '{}') as Record<string, never> }
const answered = valueOf(await wythe.POST('/v1/projects/{project}/openings/{opening}/form-answers', { ...where, body: filled }))
process.stdout.write(`${JSON.stringify({ form, answered })}\n`)
