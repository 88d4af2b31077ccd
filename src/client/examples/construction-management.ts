/** Construction-management software: takes a schedule in, and reads the building as a whole. Arguments: the address of the service, a token that may record. */
import { randomUUID } from 'node:crypto'
import { createClient, valueOf } from '../create-client.ts'

const [address = 'http://127.0.0.1:8080', token] = process.argv.slice(2)
const wythe = createClient(address, token)
const project = randomUUID()

valueOf(await wythe.POST('/v1/projects', { body: { id: project, title: 'Row of six', jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' } }))
const imported = valueOf(await wythe.POST('/v1/projects/{project}/schedule-imports', {
  params: { path: { project } },
  body: {
    import: randomUUID(), at: '2026-03-02T09:00:00Z', by: 'design-office', lengthUnit: 'in', markColumn: 'Mark',
    csv: 'Mark,Type,Width,Height\nW-1,DH,48,60\nW-2,DH,36,60\n',
    columns: [{ column: 'Type', fact: 'opening.kind', values: [{ cell: 'DH', value: 'window' }] }, { column: 'Width', fact: 'opening.width' }, { column: 'Height', fact: 'opening.height' }],
  },
}))
const building = valueOf(await wythe.GET('/v1/projects/{project}/building', { params: { path: { project } } }))
process.stdout.write(`${JSON.stringify({ project, imported, building })}\n`)
