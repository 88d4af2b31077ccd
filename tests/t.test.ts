import { loadCatalog } from '../src/store/load-catalog.ts'
import { test } from 'vitest'
test('x', async () => {
 const t0 = performance.now()
 const c = await loadCatalog('catalog')
 console.log(performance.now()-t0, c.ok, c.ok ? c.catalog.rules.size : c.problems.map(p => `${p.code} ${p.path}${p.pointer} ${p.detail}`).join('\n'))
})
