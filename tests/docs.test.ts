import { existsSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import { buildApp } from '../src/app.ts'
import { realCatalog } from './catalog/real-catalog.ts'
import { layers } from './layer-checks.ts'
import { root } from './read-sources.ts'
import { shellWords } from './shell-words.ts'
import { serviceOf } from './api/service.ts'

const pages = ['README.md', 'DEVELOPERS.md', 'openapi/README.md'].map((name) => ({ name, text: readFileSync(join(root, name), 'utf8') }))
const [readme = { name: '', text: '' }, developers = { name: '', text: '' }] = pages
const { scripts, dependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { scripts: Readonly<Record<string, string>>; dependencies: Readonly<Record<string, string>> }

describe.each(pages)('$name', ({ name, text }) => {
  test('names scripts that exist', () => {
    const named = scriptsIn(text)
    if (name !== 'openapi/README.md') expect(named.length).toBeGreaterThan(3)
    expect(named.filter((script) => !Object.hasOwn(scripts, script))).toEqual([])
  })

  test('names files and folders that exist', () => {
    const named = pathsIn(text)
    expect(named.length).toBeGreaterThan(3)
    expect(named.filter((path) => !exists(path) && !Object.hasOwn(dependencies, path))).toEqual([])
  })

  test('keeps to its length', () => expect(text.split('\n').length).toBeLessThanOrEqual(name === 'DEVELOPERS.md' ? 265 : 250))
})

describe('the calls of the README', async () => {
  const app = await buildApp({ deps: await serviceOf({ catalog: await realCatalog(), now: () => new Date(), newId: () => 'id' }), publicUrl: 'http://127.0.0.1:8080', mostLag: 0 })
  afterAll(() => app.close())
  const calls = curlsIn(readme.text)

  test('are several, some with a body', () => {
    expect(calls.length).toBeGreaterThan(3)
    expect(calls.filter(({ body }) => body !== undefined).length).toBeGreaterThan(1)
  })

  test.each(calls)('$url answers as it says', async ({ url, type, body }) => {
    const response = await (body === undefined ? app.inject(url) : app.inject({ method: 'POST', url, headers: { 'content-type': type }, payload: body }))
    expect(response.statusCode, response.body).toBe(200)
    if (type === 'application/json') expect(response.json()).not.toHaveProperty('errors')
    else for (const line of response.body.trim().split('\n')) expect(JSON.parse(line)).toMatchObject({ code: null })
  })
})

test('the list of layers in DEVELOPERS.md has every layer', () => {
  const list = /## Layers[\s\S]*?```text\n([\s\S]*?)```/.exec(developers.text)?.[1] ?? ''
  expect(layers.filter(({ name }) => !new RegExp(`(?:^| )${name}(?:/| |$)`, 'm').test(list)).map(({ name }) => name)).toEqual([])
})

test('what the README says tests the project is what .ci/run does', () => {
  const command = /^(npm ci && npm test)\b/m.exec(readme.text)?.[1]
  expect(command).toBeDefined()
  expect(readFileSync(join(root, '.ci/run'), 'utf8').trimEnd().split('\n').at(-1)).toBe(command)
  expect(statSync(join(root, '.ci/run')).mode & 0o111).not.toBe(0)
})

describe('the checks themselves', () => {
  test('find scripts, wherever they stand', () => {
    expect(scriptsIn('`npm run wythe -- explain x`, npm start, `npm test`; npm ci && npm run a:b')).toEqual(['wythe', 'a:b', 'start', 'test'])
  })

  test('find paths, up to what is left to the reader', () => {
    expect(pathsIn('See `src/no-such.ts`, `catalog/rules/<topic>/<name>.yaml` and tests/fixtures/. Not /v1/rules or x/src/y.')).toEqual(['src/no-such.ts', 'catalog/rules/', 'tests/fixtures/'])
    expect(exists('src/no-such.ts')).toBe(false)
    expect(exists('tests/fixtures/')).toBe(true)
  })

  test('find the address and body of a call', () => {
    const text = "```sh\ncurl -s 'http://127.0.0.1:8080/a?b=1'\ncurl http://127.0.0.1:8080/c -H 'Content-Type: application/x-ndjson' -d '{\n  \"height\": \"5'\\''-0\\\"\" }'\n```"
    expect(curlsIn(text)).toEqual([{ url: '/a?b=1', type: 'application/json', body: undefined }, { url: '/c', type: 'application/x-ndjson', body: '{\n  "height": "5\'-0\\"" }' }])
  })
})

function scriptsIn(text: string): readonly string[] {
  const run = [...text.matchAll(/npm run ([a-z][\w:-]*)/g)].map(([, script = '']) => script)
  const short = [...text.matchAll(/npm (start|test)\b/g)].map(([, script = '']) => script)
  return [...new Set([...run, ...short])]
}

/** Paths that start in a folder of the repository, and files at its root. */
function pathsIn(text: string): readonly string[] {
  const below = [...text.matchAll(/(?<![\w/.-])(?:src|tests|catalog|docker|openapi|\.ci)\/[\w./-]*/g)].map(([path]) => path)
  const atRoot = [...text.matchAll(/`([\w.-]+\.(?:md|js|json|yaml))`/g)].map(([, path = '']) => path)
  return [...new Set([...below, ...atRoot].map((path) => path.replace(/\.$/, '')))]
}

function exists(path: string): boolean {
  return existsSync(join(root, path))
}

interface Call {
  readonly url: string
  readonly type: string
  readonly body: string | undefined
}

/** Calls that need a token are made in tests/api/amendments.test.ts, with the file that the README sends. */
function curlsIn(text: string): readonly Call[] {
  const blocks = [...text.matchAll(/^```sh\n([\s\S]*?)^```/gm)].map(([, block = '']) => block)
  const calls = blocks.flatMap((block) => shellWords(block)).filter(([command]) => command === 'curl').filter((words) => !words.some((word) => /^authorization:/i.test(word)))
  return calls.map((words) => {
    const url = words.find((word) => word.startsWith('http'))
    const at = words.findIndex((word) => word === '-d' || word === '--data')
    if (url === undefined) throw new Error(`a call without an address: ${words.join(' ')}`)
    const [, type = 'application/json'] = words.map((word) => /^content-type: (.*)$/i.exec(word)).find((found) => found) ?? []
    return { url: url.replace(/^https?:\/\/[^/]+/, ''), type, body: at === -1 ? undefined : words[at + 1] }
  })
}
