import { randomBytes } from 'node:crypto'
import { Webhook } from 'standardwebhooks'
import { describe, expect, test } from 'vitest'
import { publicKeyOf } from '../../src/webhooks/key-pair.ts'
import { isEncrypted, newSigningSecret, sealerBy, signatures } from '../../src/webhooks/secret.ts'
import { isSignedBy } from './public-key.ts'

const now = Math.floor(Date.now() / 1_000)
const text = '{"type":"wythe.ping","note":"3½″"}'
const signed = { id: '0199a000-0000-7000-8000-000000000001', timestamp: now, text }
const headersOf = (secrets: readonly string[], change: Record<string, string> = {}) => ({ 'webhook-id': signed.id, 'webhook-timestamp': String(now), 'webhook-signature': signatures(signed, secrets), ...change })

describe('a signature', () => {
  const secret = newSigningSecret('hmac')
  const receiver = new Webhook(secret)
  const pair = newSigningSecret('ed25519')

  test('is taken by a receiver of another make', () => {
    expect(receiver.verify(text, headersOf([secret]))).toEqual({ type: 'wythe.ping', note: '3½″' })
    expect(signatures(signed, [secret])).toBe(receiver.sign(signed.id, new Date(now * 1_000), text))
  })

  test('is that of the worked example of Standard Webhooks', () => {
    // The test vector of the published libraries, as the package standardwebhooks computes it too
    const example = { id: 'msg_p5jXN8AQM9LWM0D4loKWxJek', timestamp: 1_614_265_330, text: '{"test": 2432232314}' }
    expect(signatures(example, ['whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw'])).toBe('v1,g0hM9SsE+OTPJTGt/tmIKtSyZlE3uFJELVlNIOLJ1OE=')
  })

  test.each([
    ['another body', `${text} `, {}],
    ['another id', text, { 'webhook-id': 'other' }],
    ['another moment', text, { 'webhook-timestamp': String(now - 1) }],
    ['no signature', text, { 'webhook-signature': '' }],
  ])('does not fit %s', (_, body, change) => expect(() => receiver.verify(body, headersOf([secret], change))).toThrow())

  test('of another secret is refused; of two, one that fits is enough', () => {
    const old = newSigningSecret('hmac')
    expect(() => receiver.verify(text, headersOf([old]))).toThrow()
    expect(headersOf([secret, old])['webhook-signature'].split(' ')).toHaveLength(2)
    for (const one of [secret, old]) expect(new Webhook(one).verify(text, headersOf([secret, old]))).toBeDefined()
  })

  test('by a private key is that of the worked example of Standard Webhooks, over the same content', () => {
    // The test vector of the Go library that the specification comes with, which calls the 32 bytes of RFC 8032 the private key
    const example = { id: 'msg_p5jXN8AQM9LWM0D4loKWxJek', timestamp: 1_614_265_330, text: '{"test": 2432232314}' }
    expect(signatures(example, ['whsk_VEVTVFNJR05JTkdLRVlET05PVFVTRVRISVNGT1JBTlk='])).toBe('v1a,tQ9V2XOqn7jL/DQenEFpqIugdBVtiMmER5mhSkXBNwM0mkATuDe6KYYUuxqtaiHeYGb7KaaBRdM5WqyeFiL8Ag==')
  })

  test.each([
    ['what was signed', text, {}, true],
    ['another body', `${text} `, {}, false],
    ['another id', text, { 'webhook-id': 'other' }, false],
    ['another moment', text, { 'webhook-timestamp': String(now - 1) }, false],
    ['no signature', text, { 'webhook-signature': '' }, false],
    ['the signature under the name of the other kind', text, { 'webhook-signature': signatures(signed, [pair]).replace('v1a', 'v1') }, false],
  ])('by a private key fits, or does not: %s', (_, body, change, fits) => expect(isSignedBy(publicKeyOf(pair), headersOf([pair], change), body)).toBe(fits))

  test('of each kind may stand side by side, and each receiver finds its own', () => {
    const both = headersOf([pair, secret])
    expect(both['webhook-signature']).toMatch(/^v1a,\S+ v1,\S+$/)
    expect(receiver.verify(text, both)).toBeDefined()
    expect(isSignedBy(publicKeyOf(pair), both, text)).toBe(true)
  })

  test('needs a secret of the right make', () => expect(() => signatures(signed, ['secret'])).toThrow('whsec_'))
})

test('a secret is 256 random bits, never the same', () => {
  const secrets = Array.from({ length: 50 }, () => newSigningSecret('hmac'))
  for (const secret of secrets) expect(Buffer.from(secret.replace('whsec_', ''), 'base64')).toHaveLength(32)
  expect(new Set(secrets).size).toBe(50)
})

describe('a sealed secret', () => {
  const key = randomBytes(32)
  const sealer = sealerBy(key)

  test('can be read with the key, and not found in what is kept', () => {
    const sealed = sealer.seal('whsec_secret', 'w-1')
    expect(sealer.open(sealed, 'w-1')).toBe('whsec_secret')
    expect(isEncrypted(sealed)).toBe(true)
    expect(Buffer.from(sealed.slice(sealed.indexOf(':') + 1), 'base64').toString('latin1')).not.toContain('secret')
    expect(sealer.seal('whsec_secret', 'w-1')).not.toBe(sealed)
  })

  test.each<[string, () => string]>([
    ['for another webhook', () => sealer.open(sealer.seal('s', 'w-1'), 'w-2')],
    ['with another key', () => sealerBy(randomBytes(32)).open(sealer.seal('s', 'w-1'), 'w-1')],
    ['without a key', () => sealerBy(undefined).open(sealer.seal('s', 'w-1'), 'w-1')],
    ['when it was altered', () => sealer.open(sealer.seal('secret', 'w-1').replace(/.{4}$/, 'AAAA'), 'w-1')],
  ])('cannot be read %s', (_, open) => expect(open).toThrow('signing secret'))

  test('is in the clear without a key, says so, and is read when there is one', () => {
    const open = sealerBy(undefined)
    expect([open.encrypts, sealer.encrypts]).toEqual([false, true])
    const kept = open.seal('whsec_secret', 'w-1')
    expect(isEncrypted(kept)).toBe(false)
    expect([open.open(kept, 'w-1'), sealer.open(kept, 'w-1')]).toEqual(['whsec_secret', 'whsec_secret'])
  })
})
