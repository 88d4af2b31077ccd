import { execFile } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { posix } from 'node:path'
import { promisify } from 'node:util'
import ts from 'typescript'
import { describe, expect, test } from 'vitest'
import { compiled } from './cli/compiled.ts'
import type { Sources } from './layer-checks.ts'
import { readTexts, root } from './read-sources.ts'

/** What a start does not wait for: loaded with the first request, or by the settings, that ask for it. */
const late = ['mercurius', 'graphql', 'graphql-query-complexity', '@fastify/static', '@fastify/swagger', '@fastify/swagger-ui', 'yaml', 'jose', 'pg', 'prom-client', 'rate-limiter-flexible', 'csv-stringify', 'fflate']

describe('a start loads nothing that it does not need', () => {
  const sources = readTexts('src', '.ts')

  test('and all of it is loaded by something', () => {
    const everywhere = [...sources.values()].flatMap((text) => ts.preProcessFile(text).importedFiles.map(({ fileName }) => packageOf(fileName)))
    expect(late.filter((name) => !everywhere.includes(name))).toEqual([])
  })

  test('from the service down', () => {
    expect([...loadedAtOnce(sources, 'server.ts')].filter((name) => late.includes(name))).toEqual([])
  })

  test('nor by the embedded store', () => {
    expect([...loadedAtOnce(sources, 'store/sql/open-sqlite.ts')].filter((name) => late.includes(name))).toEqual([])
  })

  test.each([
    ['an import', "import { x } from './b.ts'", true],
    ['an export', "export { x } from './b.ts'", true],
    ['a type among values', "import { type X, y } from './b.ts'", true],
    ['an import of types', "import type { X } from './b.ts'", false],
    ['an import for later', "export const x = async () => (await import('./b.ts')).x", false],
  ])('%s counts as it should', (_, text, counts) => {
    const found = loadedAtOnce(new Map([['a.ts', text], ['b.ts', "import yaml from 'yaml'"]]), 'a.ts')
    expect(found.has('yaml')).toBe(counts)
  })
})

test('and finds what it needs in the files of the build, but for the database, which is no script', () => {
  const bundle = readTexts('dist/bundle', '.js')
  const packages = ['server.js', 'line-worker.js', 'open-sqlite.js'].flatMap((file) => [...loadedAtOnce(bundle, file)]).filter((name) => !name.startsWith('node:'))
  expect(packages).toEqual(['libsql'])
})

test('the build leaves the catalog as it is delivered, proved', async () => {
  const script = `
    const { filesIn } = await import(${JSON.stringify(compiled('store/catalog-files.js'))})
    const { preparedCatalog } = await import(${JSON.stringify(compiled('store/prepared-catalog.js'))})
    process.stdout.write(preparedCatalog(filesIn('catalog'))?.release ?? 'nothing is prepared')`
  const { stdout } = await promisify(execFile)(process.execPath, ['--input-type=module', '-e', script], { cwd: root })
  expect(readFileSync(`${root}/catalog/release.yaml`, 'utf8')).toContain(`release: ${stdout}\n`)
})

/** The packages that are loaded with a file, and with all that it imports as values. */
function loadedAtOnce(sources: Sources, start: string): ReadonlySet<string> {
  const [packages, files, open] = [new Set<string>(), new Set<string>(), [start]]
  for (let path = open.pop(); path !== undefined; path = open.pop()) {
    if (files.has(path)) continue
    files.add(path)
    for (const name of valueImports(path, sources.get(path) ?? '')) {
      if (name.startsWith('.')) open.push(posix.join(posix.dirname(path), name))
      else packages.add(packageOf(name))
    }
  }
  return packages
}

function valueImports(path: string, text: string): readonly string[] {
  return ts.createSourceFile(path, text, ts.ScriptTarget.Latest).statements.flatMap((statement) => {
    if (ts.isImportDeclaration(statement)) return statement.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword ? [] : [specifierOf(statement.moduleSpecifier)]
    if (ts.isExportDeclaration(statement)) return statement.isTypeOnly || !statement.moduleSpecifier ? [] : [specifierOf(statement.moduleSpecifier)]
    return []
  })
}

function specifierOf(node: ts.Expression): string {
  return ts.isStringLiteral(node) ? node.text : ''
}

function packageOf(name: string): string {
  return name.split('/').slice(0, name.startsWith('@') ? 2 : 1).join('/')
}
