/** A jurisdiction: drafts an amendment from a file, looks at what it changes, and adopts it. Arguments: the address of the service, a token that may amend, a JSON file. */
import { readFile } from 'node:fs/promises'
import { createClient, valueOf } from '../create-client.ts'

const [address = 'http://127.0.0.1:8080', token, file = 'amendment.json'] = process.argv.slice(2)
const wythe = createClient(address, token)
const document = JSON.parse(await readFile(file, 'utf8')) as Record<string, never>

const drafted = await wythe.POST('/v1/amendment-drafts', { body: document })
const { id: draft } = valueOf(drafted)
const preview = valueOf(await wythe.POST('/v1/amendment-drafts/{draft}/preview', { params: { path: { draft } } }))
const version = drafted.response.headers.get('etag') ?? ''
const adopted = valueOf(await wythe.POST('/v1/amendment-drafts/{draft}/adopt', { params: { path: { draft }, header: { 'if-match': version } } }))
process.stdout.write(`${JSON.stringify({ preview, adopted })}\n`)
