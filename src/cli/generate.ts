import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { loadCatalog } from '../store/load-catalog.ts'
import { contract } from './contract.ts'

/** Writes the generated files under openapi/. A test fails when they no longer match the code. */
const loaded = await loadCatalog('catalog')
if (!loaded.ok) throw new Error('the catalog is refused; npm run wythe -- check-catalog tells why')
await mkdir('openapi', { recursive: true })
for (const [name, text] of Object.entries(await contract(loaded.catalog))) await writeFile(join('openapi', name), text)
