import { readdirSync, readFileSync } from 'node:fs'
import { test } from 'vitest'
import { parse } from 'yaml'
import { describeOpening } from '../../src/opening/describe.ts'
import { facts } from '../../src/opening/facts.ts'
import { loadCatalog } from '../../src/store/load-catalog.ts'
import { resolveRules } from '../../src/catalog/resolve.ts'
import { evaluate } from '../../src/evaluation/evaluate.ts'
test('x', async () => {
  const c = await loadCatalog('catalog')
  if (!c.ok) console.log(c.problems.slice(0, 5))
  for (const f of readdirSync('tests/fixtures/openings')) {
    const r = describeOpening(parse(readFileSync(`tests/fixtures/openings/${f}`, 'utf8')))
    if (!r.ok) { console.log(f, r.problems); continue }
    console.log(f, r.value.facts.size, [...r.value.facts].filter(([, x]) => x.some((y) => y?.conflictsWith)).map(([p]) => p))
    if (f.startsWith('base')) console.log('unknown', [...facts.keys()].filter((k) => !r.value.facts.has(k)))
    if (!c.ok) continue
    for (const edition of ['irc-2021', 'ibc-2021']) {
      const s = resolveRules(c.catalog, { jurisdiction: null, asOf: '2026-03-01', edition })
      if (!s.ok) { console.log(s.problems); continue }
      const e = evaluate(r.value, s.value, c.catalog, null)
      console.log(edition, JSON.stringify(e.summary), e.findings.filter((x) => x.outcome === 'fail' || (f.startsWith('base') && x.outcome === 'notDetermined')).map((x) => `${x.outcome} ${x.force} ${x.rule} ${x.measured?.text} ${x.required.text} ${x.missing}`))
      if (f.startsWith('base')) console.log(e.quantities.map((q) => `${q.id} ${q.status} ${q.inchPound ?? q.value} ${q.missing} ${q.why}`))
    }
  }
})
