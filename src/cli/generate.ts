import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { openService } from '../service.ts'
import { contract } from './contract.ts'

/** Writes the generated files under openapi/. A test fails when they no longer match the code. */
const { deps, close } = await openService(
  { catalogDir: 'catalog', catalogRelease: 'working', releasePublicKeys: undefined, dataDir: ':memory:', databaseUrl: undefined },
  { error: (detail, message) => process.stderr.write(`${message}: ${JSON.stringify(detail)}\n`) },
)
await mkdir('openapi', { recursive: true })
for (const [name, text] of Object.entries(await contract(deps))) await writeFile(join('openapi', name), text)
await close()
