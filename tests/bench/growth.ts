import type { Amendment } from '../../src/catalog/amendment.ts'
import type { Catalog } from '../../src/catalog/catalog.ts'
import type { Jurisdiction } from '../../src/catalog/jurisdiction.ts'
import { resolveRules } from '../../src/catalog/resolve.ts'
import { evaluate } from '../../src/evaluation/evaluate.ts'
import { openRecords } from '../../src/store/open-records.ts'
import type { KeptEvaluation } from '../../src/store/records.ts'
import { described, place, stranger, type Ground } from './cases.ts'
import type { Curve } from './plot.ts'
import { medianOf, row, table } from './report.ts'

type Point = readonly [size: number, microseconds: number]

/** What each thing costs as there is more and more of something, and by which power of it the cost grows at the large end. */
export async function measureGrowth(on: Ground, mostKept: number): Promise<{ readonly report: string; readonly curves: readonly Curve[] }> {
  const curves: Curve[] = [
    ...overRules(on),
    { name: 'settle the rules of a place', against: 'amendments of its county', points: overAmendments(on) },
    { name: 'find the settled rules again', against: 'amendments of its county', points: againOverAmendments(on) },
    { name: 'settle the rules of a place', against: 'jurisdictions', points: overJurisdictions(on) },
    ...(await overKept(mostKept)),
  ]
  const rows = curves.map(({ name, against, points }) => row(name, against, points.map(([size, each]) => `${size}: ${each.toFixed(0)}`).join(', '), powerOf(points).toFixed(2)))
  return { curves, report: `## Growth\n\nMicroseconds for one, by how many there are. The power is that of the last step: 0 does not grow, 1 grows in proportion.\n\n${table(['what', 'against', 'µs', 'power'], rows)}` }
}

function powerOf(points: readonly Point[]): number {
  const [[size, each] = [1, 1], [more, later] = [1, 1]] = points.slice(-2)
  return Math.log(later / each) / Math.log(more / size)
}

/** The median of several runs, each on what was made for it alone. */
function timed<T>(make: () => T, run: (made: T) => unknown, times = 9): number {
  const taken = Array.from({ length: times }, () => {
    const made = make()
    const start = performance.now()
    run(made)
    return (performance.now() - start) * 1000
  })
  return medianOf(taken)
}

function settled(catalog: Catalog) {
  const rules = resolveRules(catalog, place)
  if (!rules.ok) throw new Error(rules.problems.map(({ detail }) => detail).join('\n'))
  return rules.value
}

function overRules({ catalog, windows }: Ground): readonly Curve[] {
  const sizes = [60, 600, 6_000]
  const opening = windows[0] && described(windows[0])
  if (!opening) throw new Error('no window')
  const points = sizes.map((size) => {
    const many = { ...catalog, rules: new Map(Array.from({ length: size }, (_, index) => copyOf(catalog, index))) }
    const rules = settled(many)
    for (let round = 0; round < 3; round += 1) evaluate(opening, rules, many, null)
    return { size, settle: timed(() => ({ ...many }), settled), evaluate: timed(() => stranger(opening), (one) => evaluate(one, rules, many, null)) }
  })
  const against = 'rules'
  return [
    { name: 'settle the rules of a place', against, points: points.map(({ size, settle }) => [size, settle] as const) },
    { name: 'evaluate an opening in full', against, points: points.map((one) => [one.size, one.evaluate] as const) },
  ]
}

/** A rule of the catalog under a name of its own. */
function copyOf({ rules, amendments }: Catalog, index: number) {
  const touched = new Set(amendments.flatMap(({ modifications }) => modifications.flatMap((one) => ('target' in one ? [one.target.rule] : []))))
  const all = [...rules.values()].toSorted((a, b) => Number(touched.has(b.rule)) - Number(touched.has(a.rule)))
  const rule = all[index % all.length]
  if (!rule) throw new Error('no rule')
  const id = index < all.length ? rule.rule : `${rule.rule}-${index}`
  return [id, { ...rule, rule: id }] as const
}

/** One amendment for each day, of which one is in force. */
function amended(catalog: Catalog, size: number): Catalog {
  const day = (index: number) => new Date(Date.UTC(2026, 2, 1) + index * 86_400_000).toISOString().slice(0, 10)
  const amendments = Array.from({ length: size }, (_, index): Amendment => ({
    amendment: `us-xa-101/day-${index}`, jurisdiction: 'us-xa-101', amends: { publication: 'irc', editions: ['2021'] },
    instrument: { kind: 'ordinance', number: String(index), section: '1', adopted: '2026-02-10' },
    effectiveFrom: day(index), effectiveUntil: day(index + 1), application: 'permitApplicationDate', supersedes: [],
    modifications: [{ modification: 'm1', kind: 'substitution', target: { rule: 'tie.embedment', part: 'limit' }, old: { inchPound: '1 1/2 [in_i]' }, new: { governing: 'inchPound', inchPound: '2 [in_i]', si: '51 mm', locator: '1' } }],
    examples: [],
  }))
  return { ...catalog, amendments: [...catalog.amendments.filter(({ jurisdiction }) => jurisdiction !== 'us-xa-101'), ...amendments] }
}

const amendmentSizes = [1, 100, 10_000]

function overAmendments({ catalog }: Ground): readonly Point[] {
  return amendmentSizes.map((size) => { const many = amended(catalog, size); return [size, timed(() => ({ ...many }), settled)] })
}

/** As each evaluation after the first does. */
function againOverAmendments({ catalog }: Ground): readonly Point[] {
  return amendmentSizes.map((size) => {
    const many = amended(catalog, size)
    settled(many)
    return [size, timed(() => many, (same) => { for (let round = 0; round < 100; round += 1) settled(same) }) / 100]
  })
}

function overJurisdictions({ catalog }: Ground): readonly Point[] {
  return [10, 1_000, 100_000].map((size) => {
    const others = Array.from({ length: size }, (_, index): [string, Jurisdiction] => [`us-xa-9${index}`, { jurisdiction: `us-xa-9${index}`, name: `County ${index}`, level: 'county', within: 'us-xa', localAmendment: 'permitted' }])
    const many = { ...catalog, jurisdictions: new Map([...catalog.jurisdictions, ...others]) }
    return [size, timed(() => ({ ...many }), settled)]
  })
}

async function overKept(most: number): Promise<readonly Curve[]> {
  const records = await openRecords({ dataDir: ':memory:' })
  const sizes = [1_000, 10_000, 100_000, 1_000_000].filter((size) => size <= most)
  const [keep, read, list]: [Point[], Point[], Point[]] = [[], [], []]
  let kept = 0
  for (const size of sizes) {
    for (; kept < size - 200; kept += 1) await records.keepEvaluation(evaluationOf(kept))
    const start = performance.now()
    for (; kept < size; kept += 1) await records.keepEvaluation(evaluationOf(kept))
    keep.push([size, ((performance.now() - start) * 1000) / 200])
    read.push([size, await eachOf(200, (index) => records.readEvaluation(idOf((index * 7_919) % size)))])
    list.push([size, await eachOf(50, () => records.listEvaluations(['us-xa-7'], idOf(Math.floor(size / 2)), 50))])
  }
  await records.close()
  const against = 'kept evaluations'
  return [{ name: 'keep one', against, points: keep }, { name: 'read one', against, points: read }, { name: 'list 50 of one in ten jurisdictions', against, points: list }]
}

async function eachOf(times: number, run: (index: number) => Promise<unknown>): Promise<number> {
  const start = performance.now()
  for (let index = 0; index < times; index += 1) await run(index)
  return ((performance.now() - start) * 1000) / times
}

function idOf(index: number): string {
  return `0199a000-0000-7000-8000-${index.toString().padStart(12, '0')}`
}

function evaluationOf(index: number): KeptEvaluation {
  return { id: idOf(index), jurisdiction: `us-xa-${index % 10}`, project: null, evaluatedAt: '2026-03-01T12:00:00.000Z', release: '2026.3.0', catalogDigest: 'sha256:0', sequence: 0, digest: `sha256:${index}`, verdict: 'pass', request: { asOf: '2026-03-01' }, answer: { id: index } }
}
