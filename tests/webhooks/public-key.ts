import { createPublicKey, verify } from 'node:crypto'

/** Whether one of the `v1a` signatures of a delivery fits a public key, as a receiver checks who has nothing but that key and the specification. */
export function isSignedBy(publicKey: string, headers: Readonly<Record<string, string>>, text: string): boolean {
  const x = Buffer.from(publicKey.replace(/^whpk_/, ''), 'base64').toString('base64url')
  const key = createPublicKey({ key: { kty: 'OKP', crv: 'Ed25519', x }, format: 'jwk' })
  const content = Buffer.from(`${headers['webhook-id']}.${headers['webhook-timestamp']}.${text}`)
  return (headers['webhook-signature'] ?? '').split(' ').some((one) => {
    const [version, signature = ''] = one.split(',')
    return version === 'v1a' && verify(null, content, key, Buffer.from(signature, 'base64'))
  })
}
