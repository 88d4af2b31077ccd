import { serverAudits } from 'graphql-http'
import { describe, expect, test } from 'vitest'
import { client } from './client.ts'

const { app } = await client()
const address = await app.listen({ host: '127.0.0.1', port: 0 })

/** Audit suite of graphql-http for the GraphQL over HTTP specification (graphql/graphql-over-http). */
const audits = serverAudits({ url: `${address}/graphql`, fetchFn: fetch })

describe('GraphQL over HTTP', () => {
  test.each(audits.map((audit) => [`${audit.id} ${audit.name}`, audit] as const))('%s', async (_, audit) => {
    const result = await audit.fn()
    expect(result.status, 'reason' in result ? result.reason : '').toBe('ok')
  })

  test('is audited in full', () => expect(audits.length).toBeGreaterThanOrEqual(61))
})
