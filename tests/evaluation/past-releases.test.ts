import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { parse } from 'yaml'
import { resolveRules } from '../../src/catalog/resolve.ts'
import { evaluate } from '../../src/evaluation/evaluate.ts'
import { describeOpening } from '../../src/opening/describe.ts'
import { loadBaseCatalog } from '../../src/store/base-catalog.ts'

const root = join(import.meta.dirname, '../..')
const releases = Object.keys(JSON.parse(readFileSync(join(root, 'catalog/releases/index.json'), 'utf8')) as object)
const fixtures = readdirSync(join(root, 'tests/fixtures/openings'))

// A quantity may ask for figures that a past release does not have yet: it is not determined then, and nothing fails
test.each(releases)('every opening can still be evaluated by release %s', async (release) => {
  const base = await loadBaseCatalog({ folder: join(root, 'catalog'), release, trusted: null })
  if (!base.ok) throw new Error(JSON.stringify(base.problems))
  const { catalog } = base
  for (const file of fixtures) {
    const opening = describeOpening(parse(readFileSync(join(root, 'tests/fixtures/openings', file), 'utf8')))
    const rules = resolveRules(catalog, { jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' })
    if (!opening.ok || !rules.ok) throw new Error(file)
    const { quantities } = evaluate(opening.value, rules.value, catalog, null)
    expect(quantities.length).toBeGreaterThan(10)
    const unexplained = quantities.filter(({ status, missing, why }) => status !== 'computed' && missing.length === 0 && why === null)
    expect([file, unexplained.map(({ id }) => id)]).toEqual([file, []])
  }
})
