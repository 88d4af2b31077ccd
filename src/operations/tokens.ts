import { z } from 'zod'
import type { Catalog } from '../catalog/catalog.ts'
import { digestOfText } from '../catalog/digest.ts'
import { jurisdictionId } from '../catalog/identifier.ts'
import type { Problem } from '../opening/problem.ts'
import type { Records, Scope, Token } from '../store/records.ts'
import { defineRecordOperation, failure, notFound } from './operation.ts'
import { projectId } from './projects.ts'

const text = z.string()
const instant = z.iso.datetime('must be a time like "2027-01-01T00:00:00Z"').max(40)

const scopes = {
  evaluate: z.boolean().nullish().meta({ description: 'May read the catalog and evaluate, and nothing else. Every other scope takes this in.' }),
  record: z.boolean().nullish().meta({ description: 'May open projects, record in all of them and keep evaluations.' }),
  projects: z.array(projectId).max(50).nullish().meta({ description: 'May record in these projects alone, and sees no other.' }),
  amend: z.array(jurisdictionId).max(50).nullish().meta({ description: 'May draft and adopt amendments of these jurisdictions and all within them.' }),
  administer: z.boolean().nullish().meta({ description: 'May make and revoke tokens.' }),
}

const view = z
  .strictObject({ id: text, title: text, evaluate: z.boolean(), record: z.boolean().meta({ description: 'In all projects.' }), projects: z.array(text), amend: z.array(text), administer: z.boolean(), createdAt: text, expiresAt: text.nullable(), revokedAt: text.nullable() })
  .meta({ id: 'Token' })

const created = z.strictObject({ token: view, secret: text.meta({ description: 'Shown this once; only its hash is kept.' }) }).meta({ id: 'CreatedToken' })

export const createToken = defineRecordOperation({
  name: 'createToken',
  makes: true,
  summary: 'Make a token',
  description: 'Makes a token with some scopes. Its secret is shown once.',
  input: z.strictObject({ title: text.min(1).max(120), ...scopes, expiresAt: instant.nullish() }).meta({ id: 'TokenRequest' }),
  output: created,
  answer: async ({ records, catalog, now, newId, newSecret }, { title, expiresAt, ...wanted }) => {
    const problems = [...unknownJurisdictions(catalog, wanted.amend ?? []), ...(await projectProblems(records, wanted))]
    const [first] = problems
    if (first) return failure(first.code, problems)
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
  answer: async ({ records }) => {
    return { ok: true, value: { items: (await records.listTokens()).map(viewOf) } }
  },
})

export const revokeToken = defineRecordOperation({
  name: 'revokeToken',
  summary: 'Revoke a token',
  description: 'Ends a token at once. What it did stays on record under its id.',
  input: z.strictObject({ token: text.max(100).meta({ description: 'The id of the token.' }) }),
  output: z.strictObject({ token: text, revokedAt: text }).meta({ id: 'RevokedToken' }),
  answer: async ({ records, now }, { token }) => {
    const revokedAt = now().toISOString()
    return (await records.revokeToken(token, revokedAt)) ? { ok: true, value: { token, revokedAt } } : notFound('token', token)
  },
})

type Wanted = z.output<z.ZodObject<typeof scopes>>
type ScopeProblem = Problem<'unknownJurisdiction' | 'invalidInput'>

function unknownJurisdictions(catalog: Catalog, amend: readonly string[]): readonly ScopeProblem[] {
  return amend.flatMap((jurisdiction, index) => (catalog.jurisdictions.has(jurisdiction) ? [] : [{ code: 'unknownJurisdiction', pointer: `/amend/${index}`, detail: `"${jurisdiction}" is not in the catalog.` }]))
}

/** A token for some projects that may record in all would be taken for less than it is. */
async function projectProblems(records: Records, { record, projects }: Wanted): Promise<readonly ScopeProblem[]> {
  const ids = projects ?? []
  const there = await Promise.all(ids.map((id) => records.readProject(id)))
  const absent = ids.flatMap((id, index) => (there[index] ? [] : [{ code: 'invalidInput' as const, pointer: `/projects/${index}`, detail: `There is no project "${id}". Open it first, then make the token.` }]))
  return record && ids.length > 0 ? [{ code: 'invalidInput', pointer: '/record', detail: 'takes in every project: leave it out, or leave out "projects"' }, ...absent] : absent
}

function scopesOf({ evaluate, record, projects, amend, administer }: Wanted): readonly Scope[] {
  return [
    ...(evaluate ? [{ kind: 'evaluate' } as const] : []),
    ...(record ? [{ kind: 'record' } as const] : []),
    ...(projects ?? []).map((project) => ({ kind: 'record', project }) as const),
    ...(amend ?? []).map((jurisdiction) => ({ kind: 'amend', jurisdiction }) as const),
    ...(administer ? [{ kind: 'administer' } as const] : []),
  ]
}

function viewOf({ id, title, scopes, createdAt, expiresAt, revokedAt }: Token): z.infer<typeof view> {
  const has = (kind: Scope['kind']) => scopes.some((scope) => scope.kind === kind)
  const amend = scopes.flatMap((scope) => (scope.kind === 'amend' ? [scope.jurisdiction] : []))
  const projects = scopes.flatMap((scope) => (scope.kind === 'record' && scope.project !== undefined ? [scope.project] : []))
  const record = scopes.some((scope) => scope.kind === 'record' && scope.project === undefined)
  return { id, title, evaluate: has('evaluate'), record, projects, amend, administer: has('administer'), createdAt, expiresAt, revokedAt }
}
