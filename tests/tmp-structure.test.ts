import { test } from 'vitest'
import { readCatalogFiles } from '../src/store/catalog-files.ts'
import { assembleCatalog } from '../src/catalog/assemble.ts'
import { checkCatalog } from '../src/catalog/checks/check-catalog.ts'
import { checkExamples } from '../src/evaluation/check-examples.ts'
test('mine', async () => {
  const { documents, problems } = await readCatalogFiles('catalog')
  const assembly = assembleCatalog(documents)
  const all = [...problems, ...checkCatalog(assembly)]
  const mine = /rules\/(lintel|tie|height|movement)|tables|parameters|publications/
  console.log(all.length, all.filter((p) => mine.test(p.path)).map((p) => JSON.stringify(p)).join('\n'))
  const filed = { ...assembly.filed, rule: assembly.filed.rule.filter(({ path }) => mine.test(path)), amendment: [] }
  let ex: readonly unknown[] = []
  try { ex = checkExamples(filed, assembly.catalog) } catch (e) { console.log('threw', e) }
  console.log('examples', filed.rule.length, ex.map((p) => JSON.stringify(p)).join('\n'))
  console.log('others', all.filter((p) => !mine.test(p.path)).map((p) => JSON.stringify(p)).join('\n').slice(0, 3000))
})
