import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import { compiled } from '../cli/compiled.ts'
import { client } from './client.ts'

const { http } = await client({ explorerDir: compiled('explorer') })
const bare = await client()

const pages = ['/', '/about', '/reference', '/reference/', '/explorer/', '/problems/invalidInput']

describe.each(pages)('the page %s', (page) => {
  test('is HTML and is shown', async () => {
    const { text } = await http.get(page).expect(200).expect('content-type', 'text/html; charset=utf-8')
    expect(text).toMatch(/<!doctype html>/i)
    expect(text).toMatch(/<title>[^<]+<\/title>/)
  })

  test('takes nothing from another place, and what it takes is there', async () => {
    const { text } = await http.get(page)
    for (const asset of assetsIn(text)) {
      const address = new URL(asset, `http://here.example${page}`)
      expect(address.origin, asset).toBe('http://here.example')
      await http.get(address.pathname).expect(200)
    }
  })
})

test('the explorer and the reference have scripts and styles of their own', async () => {
  for (const page of ['/reference', '/explorer/']) {
    const assets = assetsIn((await http.get(page)).text)
    expect(assets.filter((asset) => asset.endsWith('.js')).length).toBeGreaterThan(1)
    expect(assets.filter((asset) => asset.endsWith('.css')).length).toBeGreaterThan(0)
  }
})

test('the explorer without its slash leads to the one with it', () => http.get('/explorer').expect(302).expect('location', '/explorer/').then(() => undefined))

test('the query that the explorer starts with is answered', async () => {
  const { text } = await http.get('/explorer/explorer.js').expect(200)
  const [, quoted] = /defaultQuery: ("(?:[^"\\]|\\.)*")/.exec(text) ?? []
  const response = await http.post('/graphql').send({ query: JSON.parse(quoted ?? '""') as string }).expect(200)
  expect(response.body).not.toHaveProperty('errors')
  expect(response.body).toMatchObject({ data: { evaluation: { summary: { verdict: 'fail' } } } })
})

test('without its files there is no explorer, and the front page does not lead to one', async () => {
  await bare.http.get('/explorer/').expect(404)
  expect((await bare.http.get('/')).text).not.toContain('/explorer')
  expect((await http.get('/')).text).toContain('/explorer/')
})

test('every address on the front page is there', async () => {
  const { text } = await http.get('/')
  const addresses = [...text.matchAll(/href="([^"]+)"/g)].map(([, address]) => address ?? '')
  expect(addresses).toContain('/v1/rules')
  for (const address of addresses) await http.get(address).expect(200)
})

test('the page to try the service brings the openings of the demonstration, each of which is evaluated', async () => {
  const { openings } = (await http.get('/page/openings.json').expect(200)).body as { openings: readonly { title: string; request: { opening: { reference: string } } }[] }
  expect(openings.map(({ request }) => request.opening.reference)).toEqual(expect.arrayContaining(['W-101', 'W-104', 'W-203']))
  for (const { request } of openings) await http.post('/v1/evaluations').send(request).expect(200)
})

describe('a folder of files shows nothing beside it', () => {
  const folder = mkdtempSync(join(tmpdir(), 'explorer-'))
  writeFileSync(join(folder, 'index.html'), '<!doctype html><title>x</title>')
  writeFileSync(`${folder}.txt`, 'beside')
  afterAll(() => { rmSync(folder, { recursive: true }); rmSync(`${folder}.txt`) })
  const name = folder.split('/').at(-1) ?? ''

  test.each([`/explorer/../${name}.txt`, `/explorer/%2e%2e/${name}.txt`, `/explorer/..%2f${name}.txt`])('%s', async (path) => {
    const { app } = await small
    const response = await app.inject(path)
    expect(response.statusCode).toBeGreaterThanOrEqual(400)
    expect(response.body).not.toContain('beside')
  })

  const small = client({ explorerDir: folder })
})

describe('the headers that keep a browser from doing harm', () => {
  test.each([...pages, '/v1/rules', '/v1/rules/none', '/nowhere', '/livez', '/graphql?query={holdPoints{items{id}}}'])('%s', async (path) => {
    const { headers } = await http.get(path)
    expect(headers).toMatchObject({ 'x-content-type-options': 'nosniff', 'x-frame-options': 'SAMEORIGIN', 'referrer-policy': 'no-referrer', 'cross-origin-resource-policy': 'same-origin' })
    expect(headers).not.toHaveProperty('x-powered-by')
    expect(headers).not.toHaveProperty('access-control-allow-origin')
    const policy = String(headers['content-security-policy'])
    expect(policy).toContain("default-src 'self'")
    expect(policy).toContain("script-src 'self'")
    expect(policy).not.toMatch(/https?:|\*|unsafe-eval|upgrade-insecure-requests/)
  })
})

function assetsIn(html: string): readonly string[] {
  return [...html.matchAll(/<(?:script|link|img)\b[^>]*\b(?:src|href)="([^"]+)"/g)].flatMap(([, asset]) => asset ?? [])
}
