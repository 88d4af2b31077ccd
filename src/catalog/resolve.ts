import { onceFor } from '../opening/once-for.ts'
import type { Checked, Problem } from '../opening/problem.ts'
import { amendRules } from './amend.ts'
import type { Catalog } from './catalog.ts'
import { isInForce } from './in-force.ts'
import { editionIdOf } from './identifier.ts'
import type { Adoption } from './jurisdiction.ts'
import { keepRules, keptRules, type SettledRules } from './kept-rules.ts'
import { limitText } from './limit-text.ts'
import type { Limit } from './limit.ts'
import type { Rule } from './rule.ts'
import { chainStepOf, type ChainStep, type ResolvedRule, type RuleSet } from './rule-set.ts'

export interface Place {
  /** Null asks for the published texts alone, without any adoption. */
  readonly jurisdiction: string | null
  readonly asOf: string
  /** "irc-2021": takes this edition whatever is adopted. */
  readonly edition?: string | undefined
  /** "irc": which of several adopted codes is meant. */
  readonly publication?: string | undefined
}

export type ResolutionCode = 'unknownJurisdiction' | 'unknownEdition' | 'severalCodesAdopted' | 'catalogFault'

interface Base {
  readonly adoption: { readonly layer: string; readonly adoption: Adoption } | undefined
  readonly editions: readonly { readonly publication: string; readonly edition: string }[]
}

/**
 * Settles which rules apply: the path of layers, the adopted edition, its limits, then the amendments from outside in.
 * With `only`, no more than the rules named is settled; they come out as they would among all.
 */
export function resolveRules(catalog: Catalog, place: Place, only?: ReadonlySet<string>): Checked<RuleSet, ResolutionCode> {
  const path = pathTo(catalog, place.jurisdiction)
  if (!path) return refusal('unknownJurisdiction', '/jurisdiction', `"${place.jurisdiction}" is not in the catalog, nor is a layer it lies in. The list of jurisdictions has those that are.`)
  const base = baseOf(catalog, path, place)
  if (!base.ok) return base
  const settled = settle(catalog, path, base.value, place.asOf, only)
  if (!settled.ok) return settled
  return {
    ok: true,
    value: {
      jurisdiction: place.jurisdiction,
      resolvedAt: path.at(-1) ?? null,
      asOf: place.asOf,
      adoption: base.value.adoption?.adoption.adoption ?? null,
      editions: base.value.editions.map(({ publication, edition }) => editionIdOf(publication, edition)),
      adopted: base.value.editions.length > 0,
      inPart: base.value.editions.some((edition) => isInPart(catalog, edition)),
      ...settled.value,
    },
  }
}

/** The rules of a base on a date; the same object for every date between two on which anything changes. */
function settle(catalog: Catalog, path: readonly string[], base: Base, asOf: string, only: ReadonlySet<string> | undefined): Checked<SettledRules, ResolutionCode> {
  const name = JSON.stringify([path.at(-1), base.adoption?.layer, base.adoption?.adoption.adoption, base.editions])
  const kept = only ? undefined : keptRules(catalog, name, asOf)
  if (kept) return { ok: true, value: kept }
  const published = publishedRules(onlyRules(catalog, only), base, asOf)
  const amended = amendRules(catalog, { path, editions: base.editions, asOf, only }, published)
  if (amended.problems.length > 0) return refusal('catalogFault', '/jurisdiction', amended.problems.map(({ detail }) => detail).join(' '))
  const settled = { rules: amended.rules.toSorted((a, b) => (a.rule.rule < b.rule.rule ? -1 : 1)), repealed: amended.repealed }
  if (!only) keepRules(catalog, name, asOf, settled)
  return { ok: true, value: settled }
}

function isInPart({ publications }: Catalog, { publication, edition }: Base['editions'][number]): boolean {
  return publications.get(publication)?.editions.find((one) => one.edition === edition)?.inPart ?? false
}

/** A catalog with no more than some of its published rules. */
export function onlyRules(catalog: Catalog, only: ReadonlySet<string> | undefined): Catalog {
  if (!only) return catalog
  return { ...catalog, rules: new Map([...only].flatMap((id) => { const rule = catalog.rules.get(id); return rule ? [[id, rule] as const] : [] })) }
}

/** From the outermost layer to the asked one; a place not in the catalog is resolved at the nearest layer that is. A circle has no path. */
export function pathTo(catalog: Pick<Catalog, 'jurisdictions'>, jurisdiction: string | null, below: readonly string[] = []): readonly string[] | undefined {
  if (jurisdiction === null) return []
  if (below.includes(jurisdiction)) return undefined
  const known = catalog.jurisdictions.get(jurisdiction)
  if (!known) {
    const outer = jurisdiction.slice(0, Math.max(0, jurisdiction.lastIndexOf('-')))
    return outer === '' ? undefined : pathTo(catalog, outer, below)
  }
  const above = pathTo(catalog, known.within, [...below, jurisdiction])
  return above && [...above, jurisdiction]
}

function baseOf(catalog: Catalog, path: readonly string[], place: Place): Checked<Base, ResolutionCode> {
  if (place.edition !== undefined) {
    const edition = editionsById(catalog).get(place.edition)
    return edition
      ? { ok: true, value: { adoption: undefined, editions: withReferences(catalog, edition) } }
      : refusal('unknownEdition', '/edition', `"${place.edition}" is not a code edition of the catalog. Known: ${[...editionsById(catalog).keys()].join(', ')}.`)
  }
  const adopted = adoptedIn(catalog, path, place)
  if (adopted.length > 1) {
    return refusal('severalCodesAdopted', '/publication', `${adopted[0]?.layer ?? ''} has adopted ${adopted.map(({ adoption }) => adoption.adoption).join(' and ')}. Say which code governs this building: "publication": "${adopted[0]?.adoption.publication ?? ''}"${adopted.slice(1).map(({ adoption }) => ` or "${adoption.publication}"`).join('')}.`)
  }
  const adoption = adopted[0]
  return { ok: true, value: { adoption, editions: adoption ? withReferences(catalog, adoption.adoption) : [] } }
}

/** The adoptions in force of the innermost layer that has any for the code that is meant. */
function adoptedIn(catalog: Catalog, path: readonly string[], { asOf, publication }: Place) {
  for (const layer of path.toReversed()) {
    const inForce = (catalog.adoptions.get(layer) ?? []).filter(
      (adoption) => isInForce(adoption, asOf) && (publication === undefined || adoption.publication === publication),
    )
    if (inForce.length > 0) return inForce.map((adoption) => ({ layer, adoption }))
  }
  return []
}

/** The editions that can govern a building: codes and standards, by edition id. */
export const editionsById = onceFor(({ publications }: Catalog) => {
  const codes = [...publications.values()].filter(({ kind }) => kind === 'modelCode' || kind === 'standard')
  return new Map(codes.flatMap(({ publication, editions }) => editions.map(({ edition }) => [editionIdOf(publication, edition), { publication, edition }] as const)))
})

export function withReferences(catalog: Catalog, { publication, edition }: { publication: string; edition: string }) {
  const references = catalog.publications.get(publication)?.editions.find((one) => one.edition === edition)?.references ?? []
  return [{ publication, edition }, ...references]
}

export function publishedRules(catalog: Catalog, base: Base, asOf: string): readonly ResolvedRule[] {
  return [...catalog.rules.values()].flatMap((rule) => {
    if (rule.status !== 'inForce') return []
    const issue = rule.force === 'mandatory' ? mandatoryLimit(rule, base) : newestLimit(catalog, rule, asOf)
    return issue ? [{ rule, limit: issue.limit, comparator: issue.limit.comparator ?? rule.check.comparator, chain: chainOf(catalog, rule, issue, base) }] : []
  })
}

/** A limit, and the one of its editions that counts. */
interface Issue {
  readonly limit: Limit
  readonly edition: string | null
}

/** The limit of the adopted edition or of a standard it brings. With nothing adopted the last one listed stands in, and is not judged. */
function mandatoryLimit(rule: Rule, { editions }: Base): Issue | undefined {
  const last = rule.limits.at(-1)
  if (editions.length === 0) return last && { limit: last, edition: last.editions.at(-1) ?? null }
  for (const { publication, edition } of editions) {
    const limit = rule.limits.find((one) => one.publication === publication && one.editions.includes(edition))
    if (limit) return { limit, edition }
  }
  return undefined
}

/** Trade notes and guides recommend from the day they are issued; the newest on the date counts. */
function newestLimit(catalog: Catalog, rule: Rule, asOf: string): Issue | undefined {
  const issues = rule.limits.flatMap((limit) => limit.editions.map((edition) => ({ limit, edition, issued: issuedOn(catalog, limit.publication, edition) })))
  return issues.filter(({ issued }) => issued <= asOf).toSorted((a, b) => b.issued.localeCompare(a.issued))[0]
}

function issuedOn(catalog: Catalog, publication: string, edition: string): string {
  return catalog.publications.get(publication)?.editions.find((one) => one.edition === edition)?.issued ?? '9999'
}

function chainOf(catalog: Catalog, rule: Rule, { limit, edition }: Issue, base: Base): readonly ChainStep[] {
  const kind = catalog.publications.get(limit.publication)?.kind
  const layer = rule.force !== 'mandatory' ? 'practice' : kind === 'standard' ? 'standard' : 'modelCode'
  const published = chainStepOf({ layer, action: 'published', publication: limit.publication, edition, locator: limit.locator, readIn: limit.readIn ?? null, new: limitText(limit, limit.comparator ?? rule.check.comparator) })
  if (!base.adoption || rule.force !== 'mandatory') return [published]
  const { adoption, instrument, effectiveFrom, publication, edition: adopted } = base.adoption.adoption
  return [published, chainStepOf({ layer: base.adoption.layer, action: 'adoption', document: adoption, publication, edition: adopted, instrument, effectiveFrom })]
}

function refusal(code: ResolutionCode, pointer: string, detail: string): { ok: false; problems: readonly Problem<ResolutionCode>[] } {
  return { ok: false, problems: [{ code, pointer, detail }] }
}
