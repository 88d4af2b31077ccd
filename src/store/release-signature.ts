import { createHash, createPrivateKey, createPublicKey, sign, verify, type KeyObject } from 'node:crypto'
import { readdir, readFile, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { z } from 'zod'

/** A key that somebody trusts to sign releases. The id is the SHA-256 of the key itself. */
export interface PublicKey {
  readonly id: string
  readonly key: KeyObject
}

const signatureFile = z.strictObject({ algorithm: z.literal('Ed25519'), key: z.string().max(100), signature: z.base64().max(200) })

export type SignatureCheck =
  | { readonly ok: true; readonly key: string }
  | { readonly ok: false; readonly code: 'unsignedRelease' | 'unknownKey' | 'alteredRelease'; readonly detail: string }

/** What manifest.sig holds. The signature is over the bytes of manifest.json, as any Ed25519 tool makes and checks it. */
export function signatureOf(manifest: Buffer, privateKey: string): string {
  const key = createPrivateKey(privateKey)
  const { id } = ed25519(createPublicKey(key))
  return `${JSON.stringify({ algorithm: 'Ed25519', key: id, signature: sign(null, manifest, key).toString('base64') }, null, 2)}\n`
}

/** Whether one of the trusted keys signed these bytes; without a signature, or by any other key, nobody has vouched for them. */
export function checkSignature(manifest: Buffer, signature: string | undefined, trusted: readonly PublicKey[]): SignatureCheck {
  if (signature === undefined) return { ok: false, code: 'unsignedRelease', detail: 'There is no signature, and one is demanded.' }
  const parsed = signatureFile.safeParse(json(signature))
  if (!parsed.success) return { ok: false, code: 'unsignedRelease', detail: 'This is not a signature of a release.' }
  const signer = trusted.find(({ id }) => id === parsed.data.key)
  if (!signer) return { ok: false, code: 'unknownKey', detail: `It is signed by the key ${parsed.data.key}, which is not trusted here.` }
  return verify(null, manifest, signer.key, Buffer.from(parsed.data.signature, 'base64'))
    ? { ok: true, key: signer.id }
    : { ok: false, code: 'alteredRelease', detail: 'The signature does not fit the manifest: one of the two was altered.' }
}

/** Trusted keys from one PEM file, or from every .pem file of a folder. Throws where there is none, or one of another kind. */
export async function readPublicKeys(path: string): Promise<readonly PublicKey[]> {
  const isFolder = (await stat(path)).isDirectory()
  const files = isFolder ? (await readdir(path)).filter((name) => name.endsWith('.pem')).toSorted().map((name) => join(path, name)) : [path]
  const texts = await Promise.all(files.map((file) => readFile(file, 'utf8')))
  return publicKeysIn(texts.join('\n'))
}

/** Trusted keys from text, one PEM block after another. A private key is none: it does not belong where releases are checked. */
export function publicKeysIn(text: string): readonly PublicKey[] {
  const blocks = text.match(/-----BEGIN PUBLIC KEY-----[\s\S]*?-----END PUBLIC KEY-----/g) ?? []
  if (text.includes('PRIVATE KEY')) throw new Error('a private key is given where a public key is asked for; keep it where releases are signed')
  if (blocks.length === 0) throw new Error('there is no public key in PEM form to check releases with')
  return blocks.map((block) => ed25519(createPublicKey(block)))
}

function ed25519(key: KeyObject): PublicKey {
  if (key.asymmetricKeyType !== 'ed25519') throw new Error(`the key is of type ${key.asymmetricKeyType ?? 'unknown'}; releases are signed with Ed25519`)
  return { key, id: `sha256:${createHash('sha256').update(key.export({ type: 'spki', format: 'der' })).digest('hex')}` }
}

function json(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
