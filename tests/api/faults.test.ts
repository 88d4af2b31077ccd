import { describe, expect, test } from 'vitest'
import { problemDocument } from '../../src/api/problem-document.ts'
import type { Catalog } from '../../src/catalog/catalog.ts'
import type { Dependencies } from '../../src/operations/operation.ts'
import { cases, otherCatalogs } from '../conformance/cases.ts'
import { fields, operationNames, overGraphql, overRest } from '../conformance/doors.ts'
import { client, dependencies } from './client.ts'
import { LogLines } from './log-lines.ts'

const secret = 'no route to the disk at /srv/secret'
const deps = await dependencies()
const log = new LogLines()
const logger = { level: 'info', stream: log.stream }

/** A catalog of which nothing can be read. */
const unreadable = new Proxy({} as Catalog, { get: () => { throw new Error(secret) } })
const withoutCatalog: Dependencies = { ...deps, catalog: unreadable }
const withoutClock: Dependencies = { ...deps, now: () => { throw new Error(secret) } }
const broken = await client({ deps: withoutCatalog, logger })
const clockless = await client({ deps: withoutClock, logger })

/** Those that look nothing up cannot be broken by a catalog. */
const selfContained: readonly string[] = ['listQuantities', 'planCuts']

describe.each(operationNames.filter((operation) => !selfContained.includes(operation)))('a fault inside %s', (operation) => {
  const input = cases.find((one) => one.operation === operation && typeof one.expect !== 'string')?.input ?? {}

  test('is a 500 over REST that tells nothing of its cause, which is logged', async () => {
    log.clear()
    const response = await overRest(broken, operation, input)
    expect(response.status).toBe(500)
    expect(problemDocument.parse(response.body)).toMatchObject({ code: 'internal', errors: [], detail: expect.stringContaining('not taken for a pass') as string })
    expect(response.text).not.toContain(secret)
    expectLogged(String((response.body as { instance: unknown }).instance).replace('urn:request:', ''))
  })

  test('is an error over GraphQL that tells nothing of its cause, which is logged', async () => {
    log.clear()
    const response = await overGraphql(broken, operation, input)
    expect(response.status).toBe(500)
    expect(response.body).toMatchObject({ data: { [fields[operation]]: null }, errors: [{ message: 'The service failed', path: [fields[operation]], extensions: { code: 'internal', errors: [] } }] })
    expect(response.text).not.toContain(secret)
    expectLogged(/./)
  })
})

const opening = '{ opening: { kind: window, width: "4 ft", height: "4 ft" } }'

test('a fault in one field of a query leaves the others standing', async () => {
  const response = await clockless.graphql(`{ evaluation(edition: "irc-2021", asOf: "2026-03-01", opening: ${opening}) { summary { verdict } } publication(publication: "irc") { publication } }`)
  expect(response.status).toBe(200)
  expect(response.body).toMatchObject({ data: { evaluation: null, publication: { publication: 'irc' } }, errors: [{ path: ['evaluation'], extensions: { code: 'internal' } }] })
  expect(response.text).not.toContain(secret)
})

test('a value that does not fit the schema is told as a fault, not by its value', async () => {
  const [rule] = deps.catalog.rules.values()
  const misfit = await client({ deps: { ...deps, catalog: { ...deps.catalog, rules: new Map([['odd', { ...rule, part: secret }]]) as never } } })
  const response = await misfit.graphql('{ rules { edges { node { part } } } }')
  expect(response.status).toBe(500)
  expect(response.body).toMatchObject({ data: { rules: null }, errors: [{ message: 'The service failed', extensions: { code: 'internal' } }] })
  expect(response.text).not.toContain(secret)
})

test('a catalog that contradicts itself is logged, over both doors', async () => {
  const contradictory = await client({ deps: { ...deps, catalog: otherCatalogs.amendedTwice(deps.catalog) }, logger })
  const input = { rule: 'lintel.bearing-length', jurisdiction: 'us-xa-101-2400000' }
  log.clear()
  expect((await overRest(contradictory, 'readRule', input)).status).toBe(500)
  expect(log.lines).toContainEqual(expect.objectContaining({ level: 50, msg: 'operation failed', code: 'catalogFault', reqId: expect.any(String) as string }))
  log.clear()
  expect((await overGraphql(contradictory, 'readRule', input)).status).toBe(500)
  expect(log.lines).toContainEqual(expect.objectContaining({ level: 50, msg: 'operation failed', reqId: expect.any(String) as string }))
})

function expectLogged(requestId: string | RegExp): void {
  const line = log.lines.find(({ level }) => level === 50)
  expect(line).toMatchObject({ reqId: expect.stringMatching(requestId) as string, err: { message: secret, stack: expect.any(String) as string } })
}
