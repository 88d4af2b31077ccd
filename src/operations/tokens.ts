import { z } from 'zod'
import { digestOfText } from '../catalog/digest.ts'
import { jurisdictionId } from '../catalog/identifier.ts'
import type { Scope, Token } from '../store/records.ts'
import { refuseUnless } from './permission.ts'
import { defineRecordOperation, failure, notFound } from './operation.ts'

const text = z.string()
const instant = z.iso.datetime('must be a time like "2027-01-01T00:00:00Z"').max(40)

const scopes = {
  evaluate: z.boolean().nullish(),
  record: z.boolean().nullish().meta({ description: 'May keep evaluations.' }),
  amend: z.array(jurisdictionId).max(50).nullish().meta({ description: 'May draft and adopt amendments of these jurisdictions and all within them.' }),
  administer: z.boolean().nullish().meta({ description: 'May make and revoke tokens.' }),
}

const view = z
  .strictObject({ id: text, title: text, evaluate: z.boolean(), record: z.boolean(), amend: z.array(text), administer: z.boolean(), createdAt: text, expiresAt: text.nullable(), revokedAt: text.nullable() })
  .meta({ id: 'Token' })

const created = z.strictObject({ token: view, secret: text.meta({ description: 'Shown this once; only its hash is kept.' }) }).meta({ id: 'CreatedToken' })

export const createToken = defineRecordOperation({
  name: 'createToken',
  makes: true,
  summary: 'Make a token',
  description: 'Makes a token with some scopes. Its secret is shown once.',
  input: z.strictObject({ title: text.min(1).max(120), ...scopes, expiresAt: instant.nullish() }).meta({ id: 'TokenRequest' }),
  output: created,
  answer: async ({ records, caller, catalog, now, newId, newSecret }, { title, expiresAt, ...wanted }) => {
    const refused = refuseUnless(caller, 'administer')
    if (refused) return refused
    const unknown = (wanted.amend ?? []).filter((jurisdiction) => !catalog.jurisdictions.has(jurisdiction))
    if (unknown.length > 0) return failure('unknownJurisdiction', unknown.map((jurisdiction) => ({ code: 'unknownJurisdiction', pointer: '/amend', detail: `"${jurisdiction}" is not in the catalog.` })))
    const secret = newSecret()
    const token: Token = { id: newId(), title, secretHash: digestOfText(secret), scopes: scopesOf(wanted), createdAt: now().toISOString(), expiresAt: expiresAt ?? null, revokedAt: null }
    await records.createToken(token)
    return { ok: true, value: { token: viewOf(token), secret } }
  },
})

export const listTokens = defineRecordOperation({
  name: 'listTokens',
  summary: 'List tokens',
  description: 'Every token that was made, without its secret.',
  input: z.strictObject({}),
  output: z.strictObject({ items: z.array(view) }).meta({ id: 'TokenList' }),
  answer: async ({ records, caller }) => {
    const refused = refuseUnless(caller, 'administer')
    return refused ?? { ok: true, value: { items: (await records.listTokens()).map(viewOf) } }
  },
})

export const revokeToken = defineRecordOperation({
  name: 'revokeToken',
  summary: 'Revoke a token',
  description: 'Ends a token at once. What it did stays on record under its id.',
  input: z.strictObject({ token: text.max(100).meta({ description: 'The id of the token.' }) }),
  output: z.strictObject({ token: text, revokedAt: text }).meta({ id: 'RevokedToken' }),
  answer: async ({ records, caller, now }, { token }) => {
    const refused = refuseUnless(caller, 'administer')
    if (refused) return refused
    const revokedAt = now().toISOString()
    return (await records.revokeToken(token, revokedAt)) ? { ok: true, value: { token, revokedAt } } : notFound('token', token)
  },
})

function scopesOf({ evaluate, record, amend, administer }: z.output<z.ZodObject<typeof scopes>>): readonly Scope[] {
  return [
    ...(evaluate ? [{ kind: 'evaluate' } as const] : []),
    ...(record ? [{ kind: 'record' } as const] : []),
    ...(amend ?? []).map((jurisdiction) => ({ kind: 'amend', jurisdiction }) as const),
    ...(administer ? [{ kind: 'administer' } as const] : []),
  ]
}

function viewOf({ id, title, scopes, createdAt, expiresAt, revokedAt }: Token): z.infer<typeof view> {
  const has = (kind: Scope['kind']) => scopes.some((scope) => scope.kind === kind)
  const amend = scopes.flatMap((scope) => (scope.kind === 'amend' ? [scope.jurisdiction] : []))
  return { id, title, evaluate: has('evaluate'), record: has('record'), amend, administer: has('administer'), createdAt, expiresAt, revokedAt }
}
