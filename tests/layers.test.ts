import { describe, expect, test } from 'vitest'
import { circles, doorWordsInOperations, drawersIn, impurities, layers, pureFolders, wrongSteps, type Sources } from './layer-checks.ts'
import { readTexts } from './read-sources.ts'

const sources = readTexts('src', '.ts')

describe('the source', () => {
  test('imports only from lower layers', () => expect(wrongSteps(sources)).toEqual([]))

  test('has no circle of imports', () => expect(circles(sources)).toEqual([]))

  test('is pure from units to evaluation', () => expect(impurities(sources)).toEqual([]))

  test('has operations that know neither HTTP nor GraphQL', () => expect(doorWordsInOperations(sources)).toEqual([]))

  test.each(['src', 'tests', 'catalog'])('has no drawer for the homeless in %s', (folder) => expect(drawersIn(readTexts(folder, '').keys())).toEqual([]))

  test('has files in every layer', () => {
    expect(layers.filter(({ holds }) => ![...sources.keys()].some(holds)).map(({ name }) => name)).toEqual([])
  })
})

describe('the check of layers', () => {
  test('finds a step up', () => {
    expect(wrongSteps(invented({ 'units/length.ts': `import { facts } from '../opening/facts.ts'`, 'opening/facts.ts': '' }))).toEqual([
      'units/length.ts imports opening/facts.ts: units may not know opening',
    ])
  })

  test.each([
    ['a type import', `import type { A } from '../evaluation/a.ts'`],
    ['an inline type import', `import { type A } from '../evaluation/a.ts'`],
    ['a re-export', `export { a } from '../evaluation/a.ts'`],
    ['a re-export of all', `export * from '../evaluation/a.ts'`],
    ['a dynamic import', `const a = await import('../evaluation/a.ts')`],
    ['an import type expression', `type A = import('../evaluation/a.ts').A`],
  ])('counts %s', (_, text) => {
    expect(wrongSteps(invented({ 'catalog/a.ts': text, 'evaluation/a.ts': '' }))).toEqual(['catalog/a.ts imports evaluation/a.ts: catalog may not know evaluation'])
  })

  test('keeps the two doors apart, both ways', () => {
    const both = { 'api/rest/a.ts': `import { b } from '../graphql/b.ts'`, 'api/graphql/b.ts': `import { a } from '../rest/a.ts'` }
    expect(wrongSteps(invented(both))).toHaveLength(2)
  })

  test('lets a layer skip downward and stay within itself', () => {
    const fine = { 'store/a.ts': `import { b } from '../units/b.ts'\nimport { c } from './c.ts'`, 'store/c.ts': '', 'units/b.ts': '' }
    expect(wrongSteps(invented(fine))).toEqual([])
  })

  test('keeps what the doors have in common below them', () => {
    const problems = { 'api/problems.ts': `import { a } from './rest/a.ts'`, 'api/rest/a.ts': '' }
    expect(wrongSteps(invented(problems))).toEqual(['api/problems.ts imports api/rest/a.ts: api may not know api/rest'])
  })

  test('finds a file without a layer and an import of nothing', () => {
    expect(wrongSteps(invented({ 'loose.ts': '', 'units/a.ts': `import { b } from './b.ts'` }))).toEqual(['loose.ts belongs to no layer', 'units/a.ts imports units/b.ts, which does not exist'])
  })
})

describe('the check of circles', () => {
  test('finds a circle of two, made of types alone', () => {
    const two = { 'units/a.ts': `import type { B } from './b.ts'`, 'units/b.ts': `import type { A } from './a.ts'` }
    expect(circles(invented(two))).toEqual(['units/b.ts > units/a.ts > units/b.ts'])
  })

  test('finds a long circle once, and one inside it', () => {
    const three = { 'units/a.ts': `import './b.ts'`, 'units/b.ts': `import './c.ts'\nimport './d.ts'`, 'units/c.ts': `import './a.ts'`, 'units/d.ts': `import './b.ts'` }
    expect(circles(invented(three))).toHaveLength(2)
  })

  test('takes a file that imports itself for a circle', () => {
    expect(circles(invented({ 'units/a.ts': `import './a.ts'` }))).toEqual(['units/a.ts > units/a.ts'])
  })

  test('takes two ways to one place for none', () => {
    expect(circles(invented({ 'units/a.ts': `import './b.ts'\nimport './c.ts'`, 'units/b.ts': `import './c.ts'`, 'units/c.ts': '' }))).toEqual([])
  })
})

describe('the check of purity', () => {
  test.each(pureFolders)('looks into %s', (folder) => {
    expect(impurities(invented({ [`${folder}/a.ts`]: `import { readFileSync } from 'node:fs'` }))).toEqual([`${folder}/a.ts imports node:fs`])
  })

  test.each([
    ['imports pino', `import { pino } from 'pino'`],
    ['imports fastify', `import type { FastifyInstance } from 'fastify'`],
    ['imports @fastify/static', `import a from '@fastify/static'`],
    ['uses Date.now', 'const at = Date.now()'],
    ['uses new Date()', 'const at = new Date()'],
    ['uses new Date()', 'const at = new Date'],
    ['uses Date()', 'const at = Date()'],
    ['uses Math.random', 'const dice = Math.random()'],
    ['uses process', `const port = process.env['PORT']`],
    ['uses globalThis', 'const all = globalThis'],
    ['uses async', 'export const a = async () => 1'],
    ['uses async', 'export async function a() { return 1 }'],
    ['uses await', 'const a = await b'],
    ['uses await', 'for await (const a of b) {}'],
    ['uses Promise', 'const a = Promise.resolve(1)'],
    ['uses fetch', `const a = fetch('x')`],
  ])('finds that code %s: %#', (told, text) => {
    expect(impurities(invented({ 'evaluation/a.ts': text }))).toEqual([`evaluation/a.ts ${told}`])
  })

  test.each([
    ['a date that is given', `const day = new Date('2026-03-01')`],
    ['words in comments and texts', `// never Date.now or await\nconst a = 'process'`],
    ['a member of that name', 'const a = opening.process'],
    ['its own packages', `import { z } from 'zod'\nimport { sha256 } from '@noble/hashes/sha2.js'`],
  ])('lets %s stand', (_, text) => expect(impurities(invented({ 'evaluation/a.ts': text }))).toEqual([]))

  test('leaves the shell alone', () => expect(impurities(invented({ 'store/a.ts': `import 'node:fs'\nconst at = Date.now()` }))).toEqual([]))
})

describe('the check of operations', () => {
  test.each([
    ['fastify', `import type { FastifyReply } from 'fastify'`],
    ['@fastify/static', `import a from '@fastify/static'`],
    ['graphql', `import { GraphQLError as E } from 'graphql'`],
    ['statusCode', 'const a = { statusCode: 422 }'],
    ['status: 404', 'const a = { status: 404 }'],
  ])('finds %s', (word, text) => expect(doorWordsInOperations(invented({ 'operations/a.ts': text }))).toContain(`operations/a.ts knows ${word}`))

  test('lets the doors speak HTTP and a rule have its status', () => {
    expect(doorWordsInOperations(invented({ 'api/rest/a.ts': `import 'fastify'`, 'operations/a.ts': `const a = { status: rule.status, most: 200 }` }))).toEqual([])
  })
})

test('a drawer is found at any depth, and a file of that name is none', () => {
  expect(drawersIn(['units/length.ts', 'catalog/utils/a.ts', 'a/shared/b/c.ts', 'units/types.ts'])).toEqual(['catalog/utils', 'a/shared/b'])
})

function invented(files: Readonly<Record<string, string>>): Sources {
  return new Map(Object.entries(files))
}
