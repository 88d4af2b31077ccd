import { describe, expect, test } from 'vitest'
import { problemDocument } from '../../src/api/problem-document.ts'
import { codeOfFailure, problemTypes, type ProblemCode } from '../../src/api/problems.ts'
import type { Catalog } from '../../src/catalog/catalog.ts'
import { otherCatalogs } from '../conformance/cases.ts'
import { client, dependencies, publicUrl } from './client.ts'
import { servedDocument } from './served-document.ts'

const deps = await dependencies()
const { app, http } = await client({ deps })
const inTwoCodes = await client({ deps: { ...deps, catalog: otherCatalogs.twoCodesAdopted(deps.catalog) } })
const contradictory = await client({ deps: { ...deps, catalog: otherCatalogs.amendedTwice(deps.catalog) } })
const broken = await client({ deps: { ...deps, catalog: new Proxy({} as Catalog, { get: () => { throw new Error('gone') } }) } })

const somewhere = '/v1/rules?jurisdiction=us-xa-101-2400000'

/** `unavailable` takes a busy service, in stopping.test.ts, `identityProviderSilent` a provider, in identity-provider.test.ts; those about keys, quotas and headers are in habits.test.ts and bounds.test.ts; the others take records and a caller, and are asked for where those are tested. */
type ElsewhereCode = 'keyReused' | 'stillRunning' | 'quotaExceeded' | 'headersTooLarge' | 'tooSlow' | 'unavailable' | 'identityProviderSilent' | 'idTaken' | 'unauthenticated' | 'forbidden' | 'versionMissing' | 'versionStale' | 'recordBusy' | 'amendmentRefused' | 'alreadyAdopted' | 'catalogGone' | 'webhookDisabled'

/** A request that is answered with each code. A new code does not compile here until there is one. */
const requests: Readonly<Record<Exclude<ProblemCode, ElsewhereCode>, () => PromiseLike<{ status: number; headers: unknown; body: unknown }>>> = {
  invalidInput: () => http.get('/v1/rules?first=many'),
  placeMissing: () => http.get('/v1/rules?asOf=2026-03-01'),
  unknownJurisdiction: () => http.get('/v1/rules?jurisdiction=nowhere'),
  unknownEdition: () => http.get('/v1/rules?edition=irc-1066'),
  severalCodesAdopted: () => inTwoCodes.http.get(somewhere),
  catalogFault: () => contradictory.http.get(somewhere),
  notFound: () => http.get('/v1/rules/none'),
  malformed: () => http.post('/v1/evaluations').set('content-type', 'application/json').send('{'),
  methodNotAllowed: () => http.delete('/v1/rules'),
  notAcceptable: () => http.post('/graphql').set('accept', 'text/csv').send({ query: '{ __typename }' }),
  unsupportedMediaType: () => http.post('/v1/evaluations').type('text/plain').send('one window'),
  tooLarge: () => http.post('/v1/evaluations').send({ opening: 'x'.repeat(1_100_000) }),
  addressTooLong: () => http.get(`/v1/rules?after=${'x'.repeat(9_000)}`),
  internal: () => broken.http.get('/v1/facts'),
}

describe.each(Object.entries(requests))('%s', (code, ask) => {
  const { status, title } = problemTypes[code as ProblemCode]

  test('is answered with its status, its title and the address of its page', async () => {
    const response = await ask()
    expect(response.status).toBe(status)
    expect(problemDocument.parse(response.body)).toMatchObject({ code, status, title, type: `${publicUrl}/problems/${code}` })
  })
})

describe.each(Object.entries(problemTypes))('the page of %s', (code, { status, title, mend }) => {
  test('explains it', async () => {
    const { text } = await http.get(`/problems/${code}`).expect(200).expect('content-type', 'text/html; charset=utf-8')
    for (const part of [title, code, String(status), mend]) expect(text).toContain(part)
  })
})

describe('the table of problems', () => {
  test('has a row for every failure of an operation', () => {
    for (const code of Object.values(codeOfFailure)) expect(problemTypes).toHaveProperty(code)
  })

  test('has a status of its own kind in every row: what the caller can mend is a 4xx', () => {
    expect(Object.entries(problemTypes).filter(([, { status }]) => status >= 500).map(([code]) => code).toSorted()).toEqual(['catalogFault', 'identityProviderSilent', 'internal', 'unavailable'])
    expect(Object.values(problemTypes).filter(({ status }) => status < 400)).toEqual([])
  })

  test('is told in full by the OpenAPI document', async () => {
    const { components } = (await servedDocument(app)) as { components?: { schemas?: Record<string, { enum?: readonly string[] }> } }
    expect(components?.schemas?.['ProblemCode']?.enum).toEqual(Object.keys(problemTypes))
  })

  test('has no page for a code that is not in it', async () => {
    for (const code of ['none', 'toString', '__proto__']) await http.get(`/problems/${code}`).expect(404).expect('content-type', 'application/problem+json; charset=utf-8')
  })
})
