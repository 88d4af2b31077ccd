import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { contract } from './contract.ts'
import { clientTypes } from './client-types.ts'

/** Writes the generated files under openapi/, and from them the types of the client. A test fails when they no longer match the code. */
await mkdir('openapi', { recursive: true })
const files = await contract()
for (const [name, text] of Object.entries(files)) await writeFile(join('openapi', name), text)
await writeFile('src/client/schema.d.ts', await clientTypes(files['openapi.json'] ?? ''))
