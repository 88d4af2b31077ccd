import { posix } from 'node:path'
import ts from 'typescript'

/** Files under src/ by their path below it, with their text. */
export type Sources = ReadonlyMap<string, string>

interface Layer {
  readonly name: string
  /** Layers of one rank never import each other. */
  readonly rank: number
  readonly holds: (path: string) => boolean
}

const folder = (name: string, rank: number): Layer => ({ name, rank, holds: (path) => path.startsWith(`${name}/`) })
const file = (name: string, rank: number): Layer => ({ name, rank, holds: (path) => path === name })

/** Lowest first. An import points to a lower rank, or stays in its own layer. */
export const layers: readonly Layer[] = [
  folder('client', 0),
  folder('units', 1),
  folder('opening', 2),
  folder('catalog', 3),
  folder('quantities', 4),
  folder('evaluation', 5),
  folder('drawing', 6),
  folder('record', 6),
  folder('form', 6),
  folder('exports', 7),
  folder('store', 7),
  folder('webhooks', 7.5),
  folder('report', 7.5),
  folder('operations', 8),
  folder('api/rest', 10),
  folder('api/graphql', 10),
  folder('api', 9),
  file('config.ts', 12),
  file('app.ts', 12),
  file('service.ts', 13),
  folder('cli', 14),
  file('server.ts', 14),
]

/** Folders whose code gives the same answer for the same input, always. */
export const pureFolders: readonly string[] = ['units', 'opening', 'catalog', 'quantities', 'evaluation', 'drawing', 'record', 'form', 'exports', 'report']

/** What pure code may take from outside: schemas, spelling distance, a hash, canonical JSON, the reading of YAML text and the packing of a zip, none of which does I/O. */
const purePackages: readonly string[] = ['zod', 'fastest-levenshtein', '@noble/hashes', 'canonicalize', 'yaml', 'fflate']

const doorPackages: readonly string[] = ['fastify', 'mercurius', 'graphql']

const drawers: readonly string[] = ['utils', 'util', 'helpers', 'helper', 'common', 'shared', 'types', 'lib', 'misc']

/** Every step that points up the list of layers, or between two doors; type imports count. */
export function wrongSteps(sources: Sources): readonly string[] {
  return [...sources.keys()].flatMap((from) => {
    const own = layerOf(from)
    if (!own) return [`${from} belongs to no layer`]
    return localImports(sources, from).flatMap((to) => {
      const other = layerOf(to)
      if (!sources.has(to)) return [`${from} imports ${to}, which does not exist`]
      return other && (other === own || other.rank < own.rank) ? [] : [`${from} imports ${to}: ${own.name} may not know ${other?.name ?? to}`]
    })
  })
}

/** Every circle of imports, told once, as a way round. */
export function circles(sources: Sources): readonly string[] {
  const found = new Map<string, string>()
  for (const start of sources.keys()) {
    const round = wayBack(sources, start)
    if (round) found.set(round.toSorted().join(), [...round, start].join(' > '))
  }
  return [...found.values()]
}

/** The shortest way from a file back to itself. */
function wayBack(sources: Sources, start: string): readonly string[] | undefined {
  const seen = new Set<string>()
  let ways: readonly (readonly string[])[] = [[start]]
  while (ways.length > 0) {
    const further = ways.flatMap((way) => localImports(sources, way.at(-1) ?? start).map((next) => [...way, next]))
    const back = further.find((way) => way.at(-1) === start)
    if (back) return back.slice(0, -1)
    const next = new Map(further.map((way) => [way.at(-1) ?? '', way] as const).filter(([at]) => !seen.has(at)))
    for (const at of next.keys()) seen.add(at)
    ways = [...next.values()]
  }
  return undefined
}

/** What pure folders may not hold: packages that do I/O, a clock, chance, the environment, anything asynchronous. */
export function impurities(sources: Sources): readonly string[] {
  return [...sources].flatMap(([path, text]) => {
    if (!pureFolders.includes(path.split('/')[0] ?? '')) return []
    const packages = outsideImports(text).filter((name) => !purePackages.includes(packageOf(name)))
    return [...packages.map((name) => `${path} imports ${name}`), ...forbiddenIn(parsed(path, text)).map((what) => `${path} uses ${what}`)]
  })
}

/** Operations answer in words of the trade; the doors turn them into HTTP and GraphQL. */
export function doorWordsInOperations(sources: Sources): readonly string[] {
  return [...sources].flatMap(([path, text]) => {
    if (!path.startsWith('operations/')) return []
    const packages = outsideImports(text).filter((name) => doorPackages.some((door) => packageOf(name) === door || name.startsWith(`@${door}/`)))
    const words = withoutComments(text).match(/\bstatusCode\b|\bstatus: ?[1-5]\d\d\b|\.code\([1-5]\d\d\)|\bHTTP\b|\bGraphQL\w*|\breply\b/g) ?? []
    return [...packages, ...words].map((word) => `${path} knows ${word}`)
  })
}

/** Folders that invite whatever has no home. */
export function drawersIn(paths: Iterable<string>): readonly string[] {
  const folders = new Set([...paths].map((path) => posix.dirname(path)))
  return [...folders].filter((path) => path.split('/').some((name) => drawers.includes(name)))
}

function layerOf(path: string): Layer | undefined {
  return layers.find(({ holds }) => holds(path))
}

function packageOf(name: string): string {
  return name.split('/').slice(0, name.startsWith('@') ? 2 : 1).join('/')
}

function localImports(sources: Sources, path: string): readonly string[] {
  return importsOf(sources.get(path) ?? '').filter((name) => name.startsWith('.')).map((name) => posix.join(posix.dirname(path), name))
}

function outsideImports(text: string): readonly string[] {
  return importsOf(text).filter((name) => !name.startsWith('.'))
}

const imports = new Map<string, readonly string[]>()

/** Static, type-only, re-exporting and dynamic imports alike. */
function importsOf(text: string): readonly string[] {
  const known = imports.get(text) ?? ts.preProcessFile(text).importedFiles.map(({ fileName }) => fileName)
  imports.set(text, known)
  return known
}

function withoutComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\/|(?<=^|\s)\/\/.*$/gm, '')
}

function parsed(path: string, text: string): ts.SourceFile {
  return ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true)
}

const surroundings: readonly string[] = [
  'process', 'globalThis', 'console', 'fetch', 'performance', 'crypto', 'Buffer', 'setTimeout', 'setInterval', 'setImmediate', 'queueMicrotask', 'Promise', 'require',
]

const forbidden: Readonly<Record<string, (node: ts.Node) => boolean>> = {
  'await': (node) => ts.isAwaitExpression(node) || (ts.isForOfStatement(node) && node.awaitModifier !== undefined),
  'async': (node) => node.kind === ts.SyntaxKind.AsyncKeyword,
  'new Date()': (node) => ts.isNewExpression(node) && isNamed(node.expression, 'Date') && (node.arguments ?? []).length === 0,
  'Date()': (node) => ts.isCallExpression(node) && isNamed(node.expression, 'Date'),
  'Date.now': (node) => ts.isPropertyAccessExpression(node) && isNamed(node.expression, 'Date') && node.name.text === 'now',
  'Math.random': (node) => ts.isPropertyAccessExpression(node) && isNamed(node.expression, 'Math') && node.name.text === 'random',
  ...Object.fromEntries(surroundings.map((name) => [name, (node: ts.Node) => isNamed(node, name) && !isMember(node)])),
}

function forbiddenIn(node: ts.Node): readonly string[] {
  const found = Object.keys(forbidden).filter((what) => forbidden[what]?.(node))
  node.forEachChild((child) => { found.push(...forbiddenIn(child)) })
  return found
}

function isNamed(node: ts.Node, name: string): node is ts.Identifier {
  return ts.isIdentifier(node) && node.text === name
}

/** `opening.process` or `{ process: 1 }` name a member, not the environment. */
function isMember(node: ts.Identifier): boolean {
  const { parent } = node
  return (ts.isPropertyAccessExpression(parent) && parent.name === node) || ((ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent)) && parent.name === node)
}
