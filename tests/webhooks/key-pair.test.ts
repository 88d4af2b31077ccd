import { createPublicKey, verify } from 'node:crypto'
import { describe, expect, test } from 'vitest'
import { isPrivateKey, newPrivateKey, publicKeyOf, signedBy } from '../../src/webhooks/key-pair.ts'

/** Private key, public key, message and signature, as https://www.rfc-editor.org/rfc/rfc8032#section-7.1 prints them. */
const published: readonly (readonly [string, string, string, string, string])[] = [
  ['TEST 1', '9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60', 'd75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a', '',
    'e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b'],
  ['TEST 2', '4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb', '3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c', '72',
    '92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00'],
  ['TEST 3', 'c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7', 'fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025', 'af82',
    '6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a'],
  ['TEST SHA(abc)', '833fe62409237b9d62ec77587520911e9a759cec1d19755b7da901b96dca3d42', 'ec172b93ad5e563bf4932c70e1245034c35467ef2efd4d64ebf819683467e2bf',
    'ddaf35a193617abacc417349ae20413112e6fa4e89a97ea20a9eeee64b55d39a2192992a274fc1a836ba3c23a3feebbd454d4423643ce80e2a9ac94fa54ca49f',
    'dc2a4459e7369633a52b1bf277839a00201009a3efbf3ecb69bea2186c26b58909351fc9ac90b3ecfdfbc7c66431e0303dca179c138ac17ad9bef1177331a704'],
]
const base64 = (hex: string) => Buffer.from(hex, 'hex').toString('base64')

test.each(published)('a pair of keys is that of RFC 8032, %s', (_, privateKey, publicKey, message, signature) => {
  const secret = `whsk_${base64(privateKey)}`
  expect(publicKeyOf(secret)).toBe(`whpk_${base64(publicKey)}`)
  expect(signedBy(secret, Buffer.from(message, 'hex')).toString('hex')).toBe(signature)
})

describe('a new private key', () => {
  test('is 256 random bits, never the same', () => {
    const keys = Array.from({ length: 50 }, newPrivateKey)
    for (const key of keys) expect(Buffer.from(key.replace('whsk_', ''), 'base64')).toHaveLength(32)
    expect(new Set(keys).size).toBe(50)
    expect(new Set(keys.map(publicKeyOf)).size).toBe(50)
  })

  test('signs what its public key checks, and no other', () => {
    const [mine, other] = [newPrivateKey(), newPrivateKey()]
    const message = Buffer.from('3½″')
    const fits = (publicKey: string) => verify(null, message, createPublicKey({ key: { kty: 'OKP', crv: 'Ed25519', x: Buffer.from(publicKey.replace('whpk_', ''), 'base64').toString('base64url') }, format: 'jwk' }), signedBy(mine, message))
    expect([fits(publicKeyOf(mine)), fits(publicKeyOf(other))]).toEqual([true, false])
  })
})

test.each([
  ['a shared secret', 'whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw'],
  ['a public key', `whpk_${base64(published[0]?.[2] ?? '')}`],
  ['too short', 'whsk_AAAA'],
  ['both halves in one', `whsk_${Buffer.alloc(64).toString('base64')}`],
])('%s is no private key', (_, secret) => {
  expect(() => publicKeyOf(secret)).toThrow('a private signing key is whsk_')
  expect(() => signedBy(secret, Buffer.alloc(1))).toThrow('a private signing key is whsk_')
})

test('a private key is known by its beginning', () => expect([isPrivateKey(newPrivateKey()), isPrivateKey('whsec_AAAA')]).toEqual([true, false]))
