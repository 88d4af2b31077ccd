import { expect, test } from 'vitest'
import { firstKey, hasUsableToken } from '../../../src/operations/first-key.ts'
import { clock, publicUrl } from '../client.ts'
import { jurisdictionService } from '../jurisdiction.ts'

const { app, http, records } = await jurisdictionService()
const at = (time: string) => ({ ...app.deps, publicUrl, now: () => new Date(time) })

test('a service that never had a token makes one key, which makes tokens for a day', async () => {
  expect(await hasUsableToken(at(clock))).toBe(false)
  const secret = await firstKey(at(clock))
  await http.post('/v1/tokens').set('authorization', `Bearer ${secret ?? ''}`).send({ title: 'inspector', record: true, expiresAt: '2026-03-03T00:00:00Z' }).expect(201)
  await http.get('/v1/projects').set('authorization', `Bearer ${secret ?? ''}`).expect(403)
  const [first] = await records.listTokens()
  expect(first).toMatchObject({ title: 'First key', scopes: [{ kind: 'administer' }], expiresAt: '2026-03-02T12:00:00.000Z' })
  expect(JSON.stringify(first)).not.toContain(secret)
})

test('it is made once, even when it can no longer be used', async () => {
  expect(await firstKey(at(clock))).toBeUndefined()
  expect(await firstKey(at('2027-01-01T00:00:00Z'))).toBeUndefined()
})

test('tokens that have ended or were revoked tell nobody from anybody', async () => {
  expect(await hasUsableToken(at('2026-03-02T12:00:00.000Z'))).toBe(true)
  expect(await hasUsableToken(at('2026-03-03T00:00:00.000Z'))).toBe(false)
  for (const { id } of await records.listTokens()) await records.revokeToken(id, clock)
  expect(await hasUsableToken(at(clock))).toBe(false)
})
