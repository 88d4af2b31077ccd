import ts from 'typescript'
import type { Catalog } from '../src/catalog/catalog.ts'
import type { Limit } from '../src/catalog/limit.ts'
import type { Rule } from '../src/catalog/rule.ts'
import { factsIn } from '../src/evaluation/condition.ts'

/** Names with the reason for which each is kept. */
export type Explained = Readonly<Record<string, string>>

/** What is neither used nor explained, and what is explained though it is used, or no longer there. */
export function unexplained(all: readonly string[], used: ReadonlySet<string>, explained: Explained): readonly string[] {
  return [
    ...all.filter((name) => !used.has(name) && !Object.hasOwn(explained, name)).map((name) => `${name} is not used`),
    ...Object.keys(explained).filter((name) => used.has(name)).map((name) => `${name} is used now: take it off the list`),
    ...Object.keys(explained).filter((name) => !all.includes(name)).map((name) => `${name} no longer exists: take it off the list`),
    ...Object.entries(explained).filter(([, why]) => why.length < 20).map(([name]) => `${name} is kept without a reason`),
  ]
}

/** The rules of the catalog and those that amendments insert. */
export function everyRule({ rules, amendments }: Pick<Catalog, 'rules' | 'amendments'>): readonly Rule[] {
  return [...rules.values(), ...amendments.flatMap(({ modifications }) => modifications.flatMap((one) => (one.kind === 'insertion' ? [one.new] : [])))]
}

export function sourceGaps({ rule, limits }: Rule): readonly string[] {
  return limits.flatMap(({ locator, evidence, lastReviewed, readIn }) => [
    ...(locator.trim() === '' ? [`${rule} has a limit without a locator`] : []),
    ...(evidence !== 'memory' && !readIn ? [`${rule}, ${locator}: ${evidence} evidence, but not where it was read`] : []),
    ...(/^\d{4}-\d\d-\d\d$/.test(lastReviewed) ? [] : [`${rule}, ${locator}: never reviewed`]),
  ])
}

export function exampleGaps({ rule, appliesWhen, limits, examples }: Rule): readonly string[] {
  const outcomes = ['pass', 'fail', 'notDetermined', ...(appliesWhen ? ['notApplicable'] : [])]
  const without = outcomes.filter((wanted) => !examples.some(({ outcome }) => outcome === wanted))
  const onTheLimit = !limits.some((limit) => 'inchPound' in limit) || examples.some(({ margin }) => margin !== undefined && /^0\b/.test(margin))
  return [...without, ...(onTheLimit ? [] : ['margin zero'])].map((wanted) => `${rule} has no example of ${wanted}`)
}

/** Where each kind of document belongs, by its id. */
const places: Readonly<Record<string, (id: string) => string>> = {
  rule: (id) => `rules/${id.replace('.', '/')}.yaml`,
  publication: (id) => `publications/${id}.yaml`,
  parameter: (id) => `parameters/${id}.yaml`,
  table: (id) => `tables/${id}.yaml`,
  caution: (id) => `cautions/${id.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}.yaml`,
  building: (id) => `buildings/${id}.yaml`,
  jurisdiction: (id) => `jurisdictions/${id}/jurisdiction.yaml`,
  adoptions: (id) => `jurisdictions/${id}/adoptions.yaml`,
  amendment: (id) => `jurisdictions/${id.replace('/', '/amendments/')}.yaml`,
  release: () => 'release.yaml',
}

/** A document whose path is not its id. A publication of a jurisdiction stands with the jurisdiction. */
export function misplaced(path: string, content: unknown): readonly string[] {
  const [kind = '', id] = Object.entries(content as Record<string, unknown>)[0] ?? []
  const expected = places[kind]?.(String(id))
  const besideJurisdiction = kind === 'publication' && /^jurisdictions\/[^/]+\/publication\.yaml$/.test(path)
  return expected === path || besideJurisdiction ? [] : [`${path} holds ${kind} ${String(id)}, which belongs in ${expected ?? 'no place'}`]
}

/** Facts that rules, their limits and the tables of those ask for. */
export function factsOfRules(catalog: Pick<Catalog, 'rules' | 'amendments' | 'tables'>): ReadonlySet<string> {
  const ofRules = everyRule(catalog).flatMap(({ check, appliesWhen, limits }) => [
    ...('fact' in check ? [check.fact] : []),
    ...(appliesWhen ? factsIn(appliesWhen) : []),
    ...limits.flatMap((limit) => ('of' in limit ? [limit.of] : [])),
  ])
  const ofTables = [...catalog.tables.values()].flatMap(({ lookup }) => (lookup?.keys ?? []).map(({ fact }) => fact))
  return new Set([...ofRules, ...ofTables])
}

/** Every edition that a limit, a figure, an adoption, an amendment or another edition refers to, as "irc 2021". */
export function editionsCited(catalog: Catalog): ReadonlySet<string> {
  const { parameters, tables, adoptions, amendments, publications } = catalog
  const named = [
    ...everyRule(catalog).flatMap(({ limits }) => limits.flatMap(({ publication, editions }) => editions.map((edition) => ({ publication, edition })))),
    ...parameters.values(),
    ...tables.values(),
    ...[...adoptions.values()].flat(),
    ...amendments.flatMap(({ amends: { publication, editions } }) => editions.map((edition) => ({ publication, edition }))),
    ...[...publications.values()].flatMap(({ editions }) => editions.flatMap(({ references = [] }) => references)),
  ]
  return new Set(named.map(({ publication, edition }) => `${publication} ${edition}`))
}

/** The texts in code, each piece of a template by itself, with whether it cites a source. */
interface Literal {
  readonly text: string
  readonly isCitation: boolean
}

export function textsIn(source: string): readonly Literal[] {
  return nodesOf(source).flatMap((node) => (ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node) ? [{ text: node.text, isCitation: isCitation(node) }] : []))
}

function nodesOf(source: string): readonly ts.Node[] {
  const nodes: ts.Node[] = []
  const walk = (node: ts.Node) => { nodes.push(node); node.forEachChild(walk) }
  walk(ts.createSourceFile('source.ts', source, ts.ScriptTarget.Latest, true))
  return nodes
}

/** `locator`, `readIn` and the arguments of `lintelTextbook` say where a formula stands; they are no figures of ours. */
function isCitation(node: ts.Node): boolean {
  for (let { parent } = node; !ts.isSourceFile(parent); { parent } = parent) {
    if (ts.isPropertyAssignment(parent)) return ['locator', 'readIn', 'title'].includes(parent.name.getText())
    if (ts.isCallExpression(parent)) return parent.expression.getText() === 'lintelTextbook'
  }
  return false
}

/** Dotted names, "lintel.bearing-length", that name no rule, figure, quantity or fact: they would be unknown for ever. */
export function unknownNames(source: string, known: ReadonlySet<string>): readonly string[] {
  return textsIn(source).map(({ text }) => text).filter((text) => /^[a-z][a-zA-Z0-9-]*(\.[a-zA-Z0-9-]+)+$/.test(text) && !known.has(text))
}

/** Numbers that arithmetic needs: counts, halves, twelfths, parts of a circle, beam coefficients, decimal steps between units. */
const plainNumbers: readonly number[] = [0, 1, 2, 3, 4, 5, 6, 8, 12, 24, 48, 60, 180, 384, 1e3, 1e6, 1e9, 1e-9, 1e-12]

const withUnit = /(?<![\w.])\d+(?:[./ ]\d+)*\s?(?:in|ft|mm|cm|m|mil|psf|psi|lbf?|k?Pa|MPa|deg|mph|percent|°|%|"|')(?![a-z])/

/** Figures of the trade in code: a number with a unit in a text, or a number that plain arithmetic does not need. */
export function figuresIn(source: string): readonly string[] {
  const numbers = nodesOf(source).filter(ts.isNumericLiteral).filter((node) => !plainNumbers.includes(Number(node.text)) && !isCitation(node))
  const texts = textsIn(source).filter(({ text, isCitation }) => !isCitation && withUnit.test(text))
  return [...numbers.map(({ text }) => text), ...texts.map(({ text }) => text)]
}

const residentialEditions: readonly string[] = ['2012', '2015', '2018', '2021', '2024']

/** Editions of the residential code that a rule leaves out without a word about them in a note, a locator or a disagreement. */
export function editionGaps({ rule, limits, disagreements = [] }: Pick<Rule, 'rule' | 'limits' | 'disagreements'>): readonly string[] {
  const residential = limits.filter(({ publication }) => publication === 'irc')
  if (residential.length === 0) return []
  const told = [...residential.flatMap(({ note = '', locator }) => [note, locator]), ...disagreements.flatMap(({ source, states, note = '' }) => [source, states, note])].join(' ')
  const covered = residential.flatMap(({ editions }) => editions)
  return residentialEditions.filter((edition) => !covered.includes(edition) && !told.includes(edition)).map((edition) => `${rule} says nothing of IRC ${edition}`)
}

/** In 2015 the veneer sections moved from R703.7 to R703.8, and flashing from R703.8 to R703.4. */
export function renumberingSlips({ publication, editions, locator }: Pick<Limit, 'publication' | 'editions' | 'locator'>): readonly string[] {
  if (publication !== 'irc') return []
  const later = editions.some((edition) => Number(edition) >= 2015)
  return [
    ...(later && /R703\.7\b/.test(locator) ? [`IRC ${editions.join(', ')} cites ${locator}, a number of 2012`] : []),
    ...(editions.includes('2012') && /R703\.8\.\d|Table R703\.8|R703\.4\b/.test(locator) ? [`IRC 2012 cites ${locator}, a number of 2015`] : []),
  ]
}
