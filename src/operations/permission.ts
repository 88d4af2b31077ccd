import type { Catalog } from '../catalog/catalog.ts'
import { pathTo } from '../catalog/resolve.ts'
import type { Caller } from './caller.ts'
import { failure, type Failure } from './operation.ts'

/** Refuses a caller without a scope; an amend scope reaches its jurisdiction and everything within it, nothing beside or above. */
export function refuseUnless(caller: Caller, kind: 'record' | 'administer'): Failure | undefined {
  return caller.scopes.some((scope) => scope.kind === kind) ? undefined : refusal(caller, `the scope "${kind}"`)
}

export function refuseUnlessAmends(caller: Caller, jurisdiction: string, catalog: Catalog): Failure | undefined {
  const layers = catalog.jurisdictions.has(jurisdiction) ? (pathTo(catalog, jurisdiction) ?? []) : []
  const reaches = caller.scopes.some((scope) => scope.kind === 'amend' && layers.includes(scope.jurisdiction))
  return reaches ? undefined : refusal(caller, jurisdiction === '' ? 'the scope "amend"' : `the scope "amend" for ${jurisdiction} or a jurisdiction it lies in`)
}

/** The jurisdictions a caller may amend; none without a token. */
export function amendable(caller: Caller, catalog: Catalog): readonly string[] {
  return [...catalog.jurisdictions.keys()].filter((jurisdiction) => refuseUnlessAmends(caller, jurisdiction, catalog) === undefined)
}

function refusal({ token }: Caller, wanted: string): Failure {
  return token === null
    ? failure('unauthenticated', [{ code: 'unauthenticated', pointer: '', detail: `This needs a token with ${wanted}. Send it as "Authorization: Bearer …".` }])
    : failure('forbidden', [{ code: 'forbidden', pointer: '', detail: `The token lacks ${wanted}.` }])
}
