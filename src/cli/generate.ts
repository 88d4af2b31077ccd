import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { openService } from '../service.ts'
import { contract } from './contract.ts'
import { clientTypes } from './client-types.ts'

/** Writes the generated files under openapi/, and from them the types of the client. A test fails when they no longer match the code. */
const { deps, close } = await openService(
  { catalogDir: 'catalog', catalogRelease: 'working', releasePublicKeys: undefined, dataDir: ':memory:', databaseUrl: undefined },
  { error: (detail, message) => process.stderr.write(`${message}: ${JSON.stringify(detail)}\n`) },
)
await mkdir('openapi', { recursive: true })
const files = await contract(deps)
for (const [name, text] of Object.entries(files)) await writeFile(join('openapi', name), text)
await writeFile('src/client/schema.d.ts', await clientTypes(files['openapi.json'] ?? ''))
await close()
