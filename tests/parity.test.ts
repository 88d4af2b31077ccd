import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { facts } from '../src/opening/facts.ts'
import { quantities } from '../src/quantities/index.ts'
import { realCatalog } from './catalog/real-catalog.ts'
import {
  editionGaps, editionsCited, everyRule, exampleGaps, factsOfRules, figuresIn, misplaced, renumberingSlips, sourceGaps, textsIn, unexplained, unknownNames, type Explained,
} from './parity-checks.ts'
import { readTexts, root } from './read-sources.ts'

const catalog = await realCatalog()
const rules = everyRule(catalog)
const quantitySources = readTexts('src/quantities', '.ts')
const quantityIds = quantities.map(({ id }) => id)
const namedByQuantities = new Set([...quantitySources.values()].flatMap((source) => textsIn(source).map(({ text }) => text)))
const factsKept = list('facts-without-a-rule.yaml') as Explained
const figuresKept = list('figures-without-a-use.yaml') as Readonly<Record<'parameters' | 'tables' | 'cautions' | 'editions', Explained>>

/** Rules that leave an edition of the residential code out, where the catalog itself does not say so. */
const editionsLeftOut: Explained = {
  'air-space.corrugated-tie-maximum says nothing of IRC 2012': 'From memory, 2012 has one air space for all ties (R703.7.4.2); the table by kind of tie came in 2015.',
  'tie.corrugated-backing says nothing of IRC 2012': 'From memory, the table by kind of tie and backing came in 2015.',
  'tie.steel-stud-adjustable says nothing of IRC 2012': 'From memory, the table by kind of tie and backing came in 2015.',
}

/** Numbers and texts in the code of quantities that are no figures of the trade. */
const plainInCode: Explained = {
  'define.ts: 100000': 'A tenth of a millimeter in nanometers, as metric tapes go. It decides how a length is shown, not what it is.',
  'tie-demand.ts: 500': 'The most ties that are laid out at one opening. It bounds the computing, and says so.',
}

describe('rules', () => {
  test('are many enough to be of use', () => expect(catalog.rules.size).toBeGreaterThanOrEqual(60))

  test('have a source for every limit', () => expect(rules.flatMap(sourceGaps)).toEqual([]))

  test('have an example of every kind', () => expect(rules.flatMap(exampleGaps)).toEqual([]))

  test('cover the five editions of the residential code, or say why not', () => {
    const gaps = rules.flatMap(editionGaps)
    expect(gaps.filter((gap) => !Object.hasOwn(editionsLeftOut, gap))).toEqual([])
    expect(Object.keys(editionsLeftOut).filter((gap) => !gaps.includes(gap))).toEqual([])
  })

  test('cite sections by the numbers of their edition', () => expect(rules.flatMap(({ limits }) => limits.flatMap(renumberingSlips))).toEqual([]))

  test('judge quantities that are computed', () => {
    expect(rules.flatMap(({ check }) => ('quantity' in check && !quantityIds.includes(check.quantity) ? [check.quantity] : []))).toEqual([])
  })
})

describe('the catalog', () => {
  test('has one path for one id', () => {
    expect([...readTexts('catalog', '.yaml')].flatMap(([path, text]) => misplaced(path, parse(text)))).toEqual([])
  })

  test('asks for every fact of an opening, or the list says why not', () => {
    expect(unexplained([...facts.keys()], new Set([...factsOfRules(catalog), ...namedByQuantities]), factsKept)).toEqual([])
  })

  test('has a use for every parameter', () => expect(unexplained([...catalog.parameters.keys()], namedByQuantities, figuresKept.parameters)).toEqual([]))

  test('has a use for every table', () => {
    const byRules = rules.flatMap(({ limits }) => limits.flatMap((limit) => ('table' in limit ? [limit.table] : [])))
    expect(unexplained([...catalog.tables.keys()], new Set([...byRules, ...namedByQuantities]), figuresKept.tables)).toEqual([])
  })

  test('has a use for every caution', () => {
    expect(unexplained([...catalog.cautions.keys()], new Set(rules.flatMap(({ cautions = [] }) => cautions)), figuresKept.cautions)).toEqual([])
  })

  test('cites every edition of every publication', () => {
    const editions = [...catalog.publications.values()].flatMap((one) => one.editions.map(({ edition }) => `${one.publication} ${edition}`))
    expect(unexplained(editions, editionsCited(catalog), figuresKept.editions)).toEqual([])
  })
})

describe('quantities', () => {
  test('have a test that names each of them', () => {
    const tests = [...readTexts('tests/quantities', '.test.ts').values()].join('\n')
    const names = new Map([...quantitySources.values()].flatMap((source) => [...source.matchAll(/export const (\w+) = defineQuantity\(\{\s*id: '([^']+)'/g)].map(([, name = '', id]) => [id, name] as const)))
    expect(quantityIds.filter((id) => !tests.includes(`'${id}'`) && !new RegExp(`\\b${names.get(id) ?? id}\\b`).test(tests))).toEqual([])
  })

  test('are all in the list that evaluations show', () => {
    const defined = [...quantitySources.values()].flatMap((source) => [...source.matchAll(/defineQuantity\(\{\s*id: '([^']+)'/g)].map(([, id]) => id))
    expect(defined.filter((id) => id !== undefined && !quantityIds.includes(id))).toEqual([])
    expect(new Set(quantityIds).size).toBe(quantityIds.length)
  })

  test('name only rules, figures, quantities and facts that exist', () => {
    const known = new Set([...facts.keys(), ...catalog.rules.keys(), ...catalog.parameters.keys(), ...catalog.tables.keys(), ...quantityIds])
    expect([...quantitySources].flatMap(([path, source]) => unknownNames(source, known).map((name) => `${path}: ${name}`))).toEqual([])
  })

  test('take their figures from the catalog', () => {
    const found = [...quantitySources].flatMap(([path, source]) => figuresIn(source).map((figure) => `${path}: ${figure}`))
    expect(found.filter((one) => !Object.hasOwn(plainInCode, one))).toEqual([])
    expect(Object.keys(plainInCode).filter((one) => !found.includes(one))).toEqual([])
  })
})

/** An example in the contract shows a caller what an id looks like; nothing is decided by it. */
const withoutExamples = (source: string) => source.replace(/examples: \[[^\]]*\]/g, 'examples: []')
const examplesAlone = 'rest/examples.ts'

test.each(['units', 'opening', 'catalog', 'evaluation', 'exports', 'report', 'store', 'operations', 'api'])('%s names no rule and no quantity', (folder) => {
  const ids = new Set([...catalog.rules.keys(), ...quantityIds])
  const named = [...readTexts(`src/${folder}`, '.ts')].filter(([path]) => path !== examplesAlone).flatMap(([path, source]) => textsIn(withoutExamples(source)).filter(({ text }) => ids.has(text)).map(({ text }) => `${path}: ${text}`))
  expect(named).toEqual([])
})

describe('the checks themselves', () => {
  const rule = catalog.rules.get('lintel.bearing-length')
  if (!rule) throw new Error('the rule that is changed here has gone')

  test('find a limit that was read nowhere, or never reviewed', () => {
    const [first] = rule.limits
    if (!first) throw new Error('the rule has no limit')
    expect(sourceGaps({ ...rule, limits: [{ ...first, evidence: 'primary', readIn: undefined, lastReviewed: '' }] })).toHaveLength(2)
  })

  test.each(['pass', 'fail', 'notDetermined', 'notApplicable'])('find that there is no example of %s', (kind) => {
    expect(exampleGaps({ ...rule, examples: rule.examples.filter(({ outcome }) => outcome !== kind) })).toContain(`lintel.bearing-length has no example of ${kind}`)
  })

  test('find a limit without an example exactly on it', () => {
    expect(exampleGaps({ ...rule, examples: rule.examples.filter(({ margin }) => margin !== '0 mm') })).toContain('lintel.bearing-length has no example of margin zero')
  })

  test('find an edition that was left out, unless a note tells of it', () => {
    const later = rule.limits.filter(({ editions }) => !editions.includes('2012'))
    expect(editionGaps({ ...rule, limits: later })).toEqual(['lintel.bearing-length says nothing of IRC 2012'])
    expect(editionGaps({ ...rule, limits: later.map((limit) => ({ ...limit, note: 'The 2012 edition has no such limit.' })) })).toEqual([])
  })

  test.each([
    [['2018'], 'R703.7.3', 1], [['2012'], 'R703.8.3', 1], [['2012'], 'Table R703.8.4', 1], [['2012', '2015'], 'R703.4', 1],
    [['2012'], 'R703.8, item 3', 0], [['2012'], 'R703.7.3', 0], [['2015', '2018'], 'R703.8.3', 0],
  ])('judge that IRC %j at %s has so many wrong numbers: %i', (editions, locator, slips) => {
    expect(renumberingSlips({ publication: 'irc', editions, locator })).toHaveLength(slips)
  })

  test.each([
    ['rules/weep/size.yaml', { rule: 'lintel.size' }], ['tables/a.yaml', { table: 'b.c' }], ['cautions/loosebrick.yaml', { caution: 'looseBrick' }],
    ['jurisdictions/us-xa/amendments/rule-1.yaml', { amendment: 'us-xb/rule-1' }], ['notes/a.yaml', { note: 'a' }],
  ])('find that %s is misplaced', (path, content) => expect(misplaced(path, content)).toHaveLength(1))

  test('find what is unused, used though listed, gone though listed, and listed without a reason', () => {
    expect(unexplained(['a', 'b', 'c'], new Set(['b']), { b: 'It was not used before this week.', c: 'none', d: 'It was there before this week.' })).toEqual([
      'a is not used', 'b is used now: take it off the list', 'd no longer exists: take it off the list', 'c is kept without a reason',
    ])
  })

  test.each([
    [`const least = limit('weep.spacng')`, ['weep.spacng']],
    [`import { a } from './weep.spacing.ts'`, []],
    [`const least = limit('weep.spacing')`, []],
    [`const note = 'Rake out, clean, relay.'`, []],
  ])('find names that nothing has in: %s', (source, names) => expect(unknownNames(source, new Set(['weep.spacing']))).toEqual(names))

  test.each([
    [`const note = 'at least 4 in of bearing'`, 1], [`const note = 'under 40 psf'`, 1], ['const note = `of 3/16" wire, ${n}`', 1], [`const note = 'at 98 mm'`, 1], [`const note = 'falls 15°'`, 1],
    ['const bearing = 101_600_000', 1], ['const slope = 15', 1], ['const ratio = 0.7', 1],
    ['const half = span / 2', 0], ['const turn = (angle * Math.PI) / 180', 0], [`const note = 'W L³ / (60 E I)'`, 0], [`const source = { locator: 'p. 260, 4 in of bearing' }`, 0],
    [`const source = lintelTextbook('p. 231', 231)`, 0], [`const note = 'every 2 inside corners'`, 0],
  ])('count the figures in: %s', (source, figures) => expect(figuresIn(source)).toHaveLength(figures))
})

function list(name: string): unknown {
  return parse(readFileSync(join(root, 'tests', name), 'utf8'))
}
