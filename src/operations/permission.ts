import type { Catalog } from '../catalog/catalog.ts'
import { jurisdictionId } from '../catalog/identifier.ts'
import { pathTo } from '../catalog/resolve.ts'
import type { Scope } from '../store/records.ts'
import type { Caller } from './caller.ts'
import { failure, notFound, type Failure } from './operation.ts'
import { wordOf } from './scope-word.ts'

/** What an operation asks of its caller before it looks at anything. `record` and `amend` are met by a scope for any one object; the operation then looks at which. */
export type Access = 'evaluate' | 'record' | 'recordAll' | 'amend' | 'administer'

/** Every scope takes in `evaluate`: whoever may record or amend reads the catalog, too. */
const admits: Readonly<Record<Access, (scope: Scope) => boolean>> = {
  evaluate: () => true,
  record: ({ kind }) => kind === 'record',
  recordAll: isForAllProjects,
  amend: ({ kind }) => kind === 'amend',
  administer: ({ kind }) => kind === 'administer',
}

export function refuseUnlessAdmitted(caller: Caller, access: Access): Failure | undefined {
  return caller.scopes.some(admits[access]) ? undefined : refusal(caller, access)
}

/** A project of others is answered as if there were none. Who may record nothing is told so: an evaluation may be kept in a project, and anyone may evaluate. */
export function refuseUnlessRecords(caller: Caller, project: string): Failure | undefined {
  return mayRecord(caller, project) ? undefined : (refuseUnlessAdmitted(caller, 'record') ?? notFound('project', project))
}

export function mayRecord({ scopes }: Caller, project: string): boolean {
  return scopes.some((scope) => isForAllProjects(scope) || (scope.kind === 'record' && scope.project === project))
}

/** The projects a caller may record in; null for all. */
export function recordable({ scopes }: Caller): readonly string[] | null {
  if (scopes.some(isForAllProjects)) return null
  return [...new Set(scopes.flatMap((scope) => (scope.kind === 'record' && scope.project !== undefined ? [scope.project] : [])))]
}

/** An amend scope reaches its jurisdiction and everything within it, nothing beside or above. */
export function refuseUnlessAmends(caller: Caller, jurisdiction: string, catalog: Catalog): Failure | undefined {
  const layers = catalog.jurisdictions.has(jurisdiction) ? (pathTo(catalog, jurisdiction) ?? []) : []
  const reaches = caller.scopes.some((scope) => scope.kind === 'amend' && layers.includes(scope.jurisdiction))
  return reaches ? undefined : refusal(caller, 'amend', jurisdiction)
}

/** The jurisdictions a caller may amend; none without a token. */
export function amendable(caller: Caller, catalog: Catalog): readonly string[] {
  return [...catalog.jurisdictions.keys()].filter((jurisdiction) => refuseUnlessAmends(caller, jurisdiction, catalog) === undefined)
}

function isForAllProjects(scope: Scope): boolean {
  return scope.kind === 'record' && scope.project === undefined
}

function refusal({ token }: Caller, access: Access, jurisdiction = ''): Failure {
  const wanted = jurisdiction === '' ? scopeWanted[access] : `${scopeWanted[access]} for ${jurisdiction} or a jurisdiction it lies in`
  if (token === null) return failure('unauthenticated', [{ code: 'unauthenticated', pointer: '', detail: `This needs a token with ${wanted}. Send it as "Authorization: Bearer …".` }])
  return { ...failure('forbidden', [{ code: 'forbidden', pointer: '', detail: `The token lacks ${wanted}.` }]), ...scopeToName(access, jurisdiction) }
}

const scopeWanted: Readonly<Record<Access, string>> = {
  evaluate: 'the scope "evaluate"', record: 'the scope "record"', recordAll: 'the scope "record" for all projects', amend: 'the scope "amend"', administer: 'the scope "administer"',
}

/** The scope as a word, where one word says it. A document may name anything for its jurisdiction; only an id may go out in a header. */
function scopeToName(access: Access, jurisdiction: string): { readonly scope?: string } {
  if (access === 'amend') return jurisdictionId.safeParse(jurisdiction).success ? { scope: wordOf(access, jurisdiction) } : {}
  return { scope: wordOf(access === 'recordAll' ? 'record' : access) }
}
