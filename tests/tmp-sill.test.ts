import { readFileSync } from 'node:fs'
import { parse } from 'yaml'
import { expect, it } from 'vitest'
import { rule as ruleSchema } from '../src/catalog/rule.ts'
import { publication } from '../src/catalog/publication.ts'
import { caution } from '../src/catalog/reference.ts'
import { editionIdOf } from '../src/catalog/identifier.ts'
import { facts as defs } from '../src/opening/facts.ts'
import { settleFact } from '../src/opening/describe.ts'
import { derive } from '../src/opening/derive.ts'
import { judge } from '../src/evaluation/judge.ts'
import { readQuantity } from '../src/units/quantity.ts'
import { compareHoldPoints } from '../src/opening/hold-points.ts'
import { readdirSync } from 'node:fs'

const ids = readFileSync('/tmp/gen-sill/ids.txt', 'utf8').trim().split('\n')
const cautionIds = readdirSync('catalog/cautions').map((f) => caution.parse(parse(readFileSync(`catalog/cautions/${f}`, 'utf8'))).caution)
const pubs = new Map(readdirSync('catalog/publications').map((f) => publication.parse(parse(readFileSync(`catalog/publications/${f}`, 'utf8')))).map((p) => [p.publication, p]))
const factsOf = (c: any): string[] => c.all ? c.all.flatMap(factsOf) : c.any ? c.any.flatMap(factsOf) : c.not ? factsOf(c.not) : [c.fact]
it.each(ids)('%s', (id) => {
  const [topic, rest] = id.split('.')
  const r = ruleSchema.parse(parse(readFileSync(`catalog/rules/${topic}/${rest}.yaml`, 'utf8')))
  expect(r.rule).toBe(id)
  const used = [(r.check as any).fact, ...(r.appliesWhen ? factsOf(r.appliesWhen) : []), ...r.examples.flatMap((e) => Object.keys(e.facts))]
  for (const f of used) expect(defs.has(f), f).toBe(true)
  const d: any = defs.get((r.check as any).fact)
  expect(compareHoldPoints(r.holdPoint, d.from)).toBeGreaterThanOrEqual(0)
  for (const c of r.cautions ?? []) expect(cautionIds).toContain(c)
  for (const c of r.related ?? []) expect(ids).toContain(c)
  const seen = new Set<string>()
  for (const l of r.limits) {
    if (!['irc', 'ibc', 'tms-402'].includes(l.publication)) { expect(pubs.has(l.publication), l.publication).toBe(true); for (const e of l.editions) expect(pubs.get(l.publication)!.editions.map((x) => x.edition)).toContain(e) }
    for (const e of l.editions) { const k = editionIdOf(l.publication, e); expect(seen.has(k)).toBe(false); seen.add(k) }
    expect(l.evidence === 'memory').toBe(l.readIn === undefined)
    if ('inchPound' in l) {
      const a = readQuantity(l.inchPound)!, b = readQuantity(l.si)!
      expect(a.dimension).toBe(d.dimension); expect(b.dimension).toBe(d.dimension)
      if (a.dimension === 'length') expect(Math.abs(a.amount - b.amount)).toBeLessThanOrEqual(500_000)
    }
    for (const x of 'values' in l ? l.values : []) expect(d.choices ?? [], x).toContain(x)
  }
  const mandatory = r.limits.every((l) => ['irc', 'ibc', 'tms-402'].includes(l.publication))
  expect(r.force).toBe(mandatory ? 'mandatory' : 'recommended')
  const outcomes = new Set(r.examples.map((e) => e.outcome))
  for (const o of ['pass', 'fail', 'notDetermined', ...(r.appliesWhen ? ['notApplicable'] : [])]) expect(outcomes, o).toContain(o)
  for (const e of r.examples) {
    const limit = r.limits.find((l) => l.editions.some((x) => editionIdOf(l.publication, x) === e.edition))!
    expect(limit, e.edition).toBeDefined()
    const settled = new Map<string, any>()
    for (const [f, v] of Object.entries(e.facts)) {
      const rs = settleFact(defs.get(f)!, v, f.split('.'), {})
      settled.set(f, rs.map((x: any) => { if (x === undefined) return undefined; if (!x.ok) throw new Error(JSON.stringify(x.problems)); return x.value }))
    }
    const opening: any = { unitSystem: 'inchPound', facts: derive(settled) }
    const finding: any = judge({ rule: r, limit, comparator: limit.comparator ?? r.check.comparator, chain: [] }, { opening, quantities: new Map(), catalog: { tables: new Map(), cautions: new Map(cautionIds.map((c) => [c, { caution: c, title: c, text: c, source: c, evidence: 'memory' }])) } as any, adopted: true, holdPoint: null })
    expect([e.name, finding.outcome]).toEqual([e.name, e.outcome])
    if (e.reason) expect(finding.reason).toBe(e.reason)
    if (e.margin !== undefined) {
      const got = readQuantity(finding.margin.si), want = readQuantity(e.margin)
      expect([e.name, got?.amount]).toEqual([e.name, want?.amount])
    } else if (e.outcome !== 'notDetermined' && e.outcome !== 'notApplicable' && d.dimension === 'length') throw new Error(`${e.name}: margin missing ${finding.margin?.si}`)
  }
})
