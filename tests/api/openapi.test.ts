import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Ajv2020 } from 'ajv/dist/2020.js'
import formats from 'ajv-formats'
import type { OpenAPIV3_1 } from 'openapi-types'
import { beforeAll, describe, expect, test } from 'vitest'
import { evaluationExample } from '../../src/api/rest/examples.ts'
import { contract } from '../../src/cli/contract.ts'
import { cases, nameOf } from '../conformance/cases.ts'
import { operationNames, overRest } from '../conformance/doors.ts'
import { client, publicUrl } from './client.ts'
import { servedDocument } from './served-document.ts'

type Document = OpenAPIV3_1.Document
type Node = Readonly<Record<string, unknown>>

const service = await client()
const committed = (name: string) => readFileSync(join(import.meta.dirname, '../../openapi', name), 'utf8')
const document = await servedDocument(service.app)
const operations = Object.entries(document.paths ?? {}).flatMap(([path, methods]) =>
  (['get', 'post', 'put', 'patch', 'delete'] as const).flatMap((method) => {
    const operation = methods?.[method]
    return operation ? [{ path, method, operation }] : []
  }),
)

describe('the committed contract', () => {
  test.each(['openapi.json', 'schema.graphql'])('%s is what the code describes; else run npm run generate', async (name) => {
    const generated = await contract()
    expect(committed(name)).toBe(generated[name])
  })

  test('is shown by the service under its own address', async () => {
    const { body } = await service.http.get('/reference/json').expect(200) as { body: Document }
    expect(body).toEqual({ ...document, servers: [{ url: publicUrl, 'x-internal': false }] })
  })
})

describe('the document', () => {
  test('is OpenAPI 3.1 with what every document must hold', () => {
    expect(document.openapi).toMatch(/^3\.1\.\d+$/)
    expect(document.info).toMatchObject({ title: 'Wythe', version: expect.any(String) as string, description: expect.stringContaining('Not a substitute') as string })
    expect(document.servers).toEqual([{ url: expect.stringMatching(/^http/) as string, 'x-internal': false }])
  })

  test('leads every reference somewhere, with nothing beside it', () => {
    const references = nodesIn(document).filter(({ node }) => '$ref' in node)
    for (const { at, node } of references) {
      expect(Object.keys(node), at).toEqual(['$ref'])
      expect(resolve(String(node['$ref'])), `${at} refers to ${String(node['$ref'])}`).toBeTypeOf('object')
    }
    expect(references.length).toBeGreaterThan(50)
  })

  test('uses every named schema, and describes no object twice', () => {
    const used = new Set(nodesIn(document).map(({ node }) => node['$ref']).filter((reference) => reference !== undefined))
    const names = Object.keys(document.components?.schemas ?? {})
    expect(names.filter((name) => !used.has(`#/components/schemas/${name}`))).toEqual([])
    const inline = nodesIn(document).filter(({ at, node }) => node['type'] === 'object' && 'properties' in node && !/^\/components\/schemas\/[^/]+$/.test(at))
    expect(inline.map(({ at }) => at)).toEqual(['/components/schemas/LengthInput/anyOf/2'])
  })

  test('gives a date its format and not the page of its pattern', () => {
    const dates = nodesIn(document).filter(({ node }) => node['format'] === 'date')
    expect(dates.length).toBeGreaterThan(0)
    expect(dates.filter(({ node }) => 'pattern' in node)).toEqual([])
  })

  test('names every operation once', () => {
    const ids = operations.map(({ operation }) => operation.operationId)
    expect(new Set(ids).size).toBe(ids.length)
    expect(ids).not.toContain(undefined)
  })

  test('tells of routes that the service has, and of every operation that anyone may ask', () => {
    for (const { path, method } of operations) expect(service.app.hasRoute({ method, url: path.replace(/\{(\w+)\}/g, ':$1') }), `${method} ${path}`).toBe(true)
    expect(operations.map(({ operation }) => operation.operationId)).toEqual(expect.arrayContaining(operationNames))
  })
})

describe.each(operations)('$method $path', ({ path, operation }) => {
  test('is described', () => {
    expect(operation).toMatchObject({ operationId: expect.stringMatching(/^[a-z][A-Za-z]+$/) as string, summary: expect.any(String) as string, description: expect.any(String) as string, tags: [expect.any(String)] })
    expect(document.tags?.map(({ name }) => name)).toContain(operation.tags?.[0])
  })

  test('has an answer and, behind /v1, its refusals', () => {
    expect(Object.keys(operation.responses).some((status) => status.startsWith('2'))).toBe(true)
    if (!path.startsWith('/v1')) return
    const problem = { content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } } }
    expect(operation.responses).toMatchObject({ '4XX': problem, '5XX': problem })
  })

  test('describes each of its parameters, and has one for each place in its address', () => {
    const parameters = (operation.parameters ?? []) as OpenAPIV3_1.ParameterObject[]
    for (const parameter of parameters) expect(parameter, parameter.name).toMatchObject({ description: expect.any(String) as string, schema: expect.any(Object) as object })
    const inPath = parameters.filter((parameter) => parameter.in === 'path')
    expect(inPath.map(({ name }) => `{${name}}`)).toEqual(path.match(/\{\w+\}/g) ?? [])
    expect(inPath.every(({ required }) => required)).toBe(true)
  })
})

describe('what the document says holds', () => {
  const ajv = new Ajv2020({ strict: true, allowUnionTypes: true, strictTypes: false, strictRequired: false })
  beforeAll(() => {
    formats.default(ajv)
    ajv.addVocabulary(['components', 'example', 'openapi', 'info', 'paths', 'servers', 'tags'])
    ajv.addSchema(document, 'document')
  })
  const validate = (name: string, value: unknown) => {
    const check = ajv.getSchema(`document#/components/schemas/${name}`)
    if (!check) throw new Error(`no schema ${name}`)
    return check(value) === true ? [] : (check.errors ?? [])
  }

  test.each(Object.keys(document.components?.schemas ?? {}))('%s is a JSON Schema', (name) => {
    expect(ajv.getSchema(`document#/components/schemas/${name}`)).toBeTypeOf('function')
  })

  test('of its example, which is answered', async () => {
    const body = document.paths?.['/v1/evaluations']?.post?.requestBody as OpenAPIV3_1.RequestBodyObject
    const example = body.content['application/json']?.example as unknown
    expect(example).toEqual(evaluationExample)
    expect(validate('EvaluationRequest', example)).toEqual([])
    const response = await service.http.post('/v1/evaluations').send(example as object).expect(200)
    expect(response.body).toMatchObject({ subject: { reference: 'W-104' }, summary: { verdict: 'fail' } })
  })

  test('of the example of a problem, and of each place in an address', async () => {
    const [example] = (document.components?.schemas?.['Problem']?.examples ?? []) as unknown[]
    expect(validate('Problem', example)).toEqual([])
    for (const { path, operation } of operations.filter((one) => operationNames.some((name) => name === one.operation.operationId))) {
      const parameters = (operation.parameters ?? []) as OpenAPIV3_1.ParameterObject[]
      const address = parameters.reduce((filled, { name, example: value }) => filled.replace(`{${name}}`, String(value)), path)
      if (path.includes('{') && operation.security?.some((one) => Object.keys(one).length === 0)) await service.http.get(address).expect(200)
    }
  })

  const named = cases.filter(({ catalog }) => catalog === undefined).map((one, index) => [nameOf(one, index), one] as const)

  test.each(named)('of %s', async (_, { operation, input, expect: expected }) => {
    const response = await overRest(service, operation, input)
    const schema = typeof expected === 'string' ? 'Problem' : answerSchema(operation)
    expect(validate(schema, response.body)).toEqual([])
  })

  test('of what is asked: it takes every evaluation that the service takes', () => {
    const taken = cases.filter(({ operation, expect: expected }) => operation === 'evaluateOpening' && typeof expected !== 'string')
    for (const { input } of taken) expect(validate('EvaluationRequest', JSON.parse(JSON.stringify(input)))).toEqual([])
    expect(validate('EvaluationRequest', { opening: { hed: {} } })).not.toEqual([])
  })
})

function answerSchema(id: string): string {
  const operation = operations.find((one) => one.operation.operationId === id)?.operation
  const response = operation?.responses['200'] as OpenAPIV3_1.ResponseObject
  const { schema } = response.content?.['application/json'] ?? {}
  const answer = schema as OpenAPIV3_1.ReferenceObject
  return answer.$ref.replace('#/components/schemas/', '')
}

function nodesIn(value: unknown, at = ''): readonly { readonly at: string; readonly node: Node }[] {
  if (typeof value !== 'object' || value === null) return []
  const below = Object.entries(value).filter(([key]) => key !== 'example').flatMap(([key, member]) => nodesIn(member, `${at}/${key}`))
  return Array.isArray(value) ? below : [{ at, node: value as Node }, ...below]
}

function resolve(reference: string): unknown {
  return reference.split('/').slice(1).reduce<unknown>((node, key) => (node as Node | undefined)?.[key], document)
}
