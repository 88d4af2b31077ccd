import { describe, expect, test } from 'vitest'
import { jurisdictionService } from '../jurisdiction.ts'
import { askers, decisionOn, decisionOnField, decisions, project } from './decisions.ts'
import { fieldsOf, overGraphql, overRest, routesOf } from './doors.ts'

const open = await jurisdictionService()
const closed = await jurisdictionService({ doorkeeping: { anonymous: 'none' } })
const routes = await routesOf(open.app)
const fields = fieldsOf()

/** What a caller gets who may not ask at all. */
const refusalOf = (scopes: unknown) => (scopes === null ? { status: 401, code: 'unauthenticated' } : { status: 403, code: 'forbidden' })

describe('it is decided who may ask', () => {
  test('every route, and nothing that is no route', () => {
    expect(routes.map(({ operation }) => operation).toSorted()).toEqual(Object.values(decisions).flatMap((some) => Object.keys(some)).toSorted())
  })

  test('every field, and nothing that is no field', () => {
    expect(fields.map(({ name }) => name).toSorted()).toEqual(Object.values(decisions).flatMap((some) => Object.values(some).flatMap((names) => names.split(' '))).toSorted())
  })

  test.each(routes)('$method $path says so in the contract', ({ operation, described }) => {
    const decision = decisionOn(operation)
    const scope = decision === 'recordAll' ? 'record' : decision
    expect(described.security).toEqual(decision === 'evaluate' ? [{}, { token: ['wythe:evaluate'] }] : [{ token: [`wythe:${scope ?? ''}`] }])
  })
})

describe.each([['where anyone may evaluate', open, ['evaluate']], ['where nobody may ask without a token', closed, []]] as const)('%s', (_, service, always) => {
  describe.each(askers)('$name', async ({ scopes, may }) => {
    const token = scopes && (await service.tokenFor(...scopes))
    const admitted = [...may, ...always]

    test.each(routes)('$method $path', async (route) => {
      const { status, code, headers } = await overRest(service.app, route, { project }, token)
      const admits = admitted.some((one) => one === decisionOn(route.operation))
      expect([401, 403].includes(status), `${status} ${code}`).toBe(!admits)
      if (admits) return
      expect({ status, code }).toEqual(refusalOf(scopes))
      expect(headers['www-authenticate']).toMatch(scopes === null ? /^Bearer realm="wythe"$/ : /^Bearer realm="wythe", error="insufficient_scope"/)
    })

    test.each(fields)('$root $name', async (field) => {
      const { status, code } = await overGraphql(service.app, field, { project }, token)
      const admits = admitted.some((one) => one === decisionOnField(field.name))
      expect(['unauthenticated', 'forbidden'].includes(code), `${status} ${code}`).toBe(!admits)
      if (admits) return
      expect(code).toBe(refusalOf(scopes).code)
      expect(status).toBe(scopes === null && always.length === 0 ? 401 : 200)
    })
  })
})

describe('where nobody may ask without a token', () => {
  test.each(['/v1/rules', '/v1/none', '/graphql?query={__typename}'])('%s tells nothing', async (url) => {
    expect([401, 404]).toContain((await closed.app.inject(url)).statusCode)
  })

  test.each(['/livez', '/readyz', '/problems/unauthenticated'])('%s is for anyone', async (url) => {
    expect((await closed.app.inject(url)).statusCode).toBe(200)
  })
})
