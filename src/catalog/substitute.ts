import type { Amendment } from './amendment.ts'
import type { CatalogCode } from './catalog.ts'
import { changeOf, refuse, stale, stepOf, type Change } from './change.ts'
import { conditionText } from './condition-text.ts'
import { appliesAsWidely } from './condition-width.ts'
import { digestOf, digestOfText } from './digest.ts'
import { limitText } from './limit-text.ts'
import type { Limit } from './limit.ts'
import type { Placed } from './placed-modification.ts'
import type { ResolvedRule } from './rule-set.ts'
import { force, type Rule } from './rule.ts'
import { isAtLeastAsStrict } from './strictness.ts'
import type { Substitution, SubstitutedPart } from './substitution.ts'

/** What putting one part of a rule in the place of another comes to. */
interface Edit {
  /** The part as it is stated to be, and as it is; absent where they are the same. */
  readonly stale?: readonly [stated: string, inForce: string] | undefined
  readonly refused?: readonly [code: CatalogCode, detail: string] | undefined
  /** False where less would be asked for than before, or where that cannot be told. */
  readonly asStrict: boolean
  readonly old: string | null
  readonly new: string | null
  readonly apply: (resolved: ResolvedRule) => ResolvedRule
}

type EditOf<P extends SubstitutedPart> = (current: ResolvedRule, modification: Substitution<P>, amendment: Amendment) => Edit

export function substitute(current: ResolvedRule, placed: Placed, modification: Substitution, onlyMoreStringent: boolean): Change {
  const edit = (edits[modification.target.part] as EditOf<SubstitutedPart>)(current, modification, placed.amendment)
  if (edit.refused) return refuse(placed, ...edit.refused)
  if (edit.stale) return stale(placed, ...edit.stale)
  if (onlyMoreStringent && !edit.asStrict) {
    return refuse(placed, 'lessStringent', `An outer jurisdiction allows only stricter rules, and "${edit.new ?? 'no condition'}" is not shown to be as strict as "${edit.old ?? 'no condition'}".`)
  }
  return changeOf(current, stepOf(placed, { locator: modification.new.locator, part: modification.target.part, old: edit.old, new: edit.new }), edit.apply)
}

const edits: { readonly [P in SubstitutedPart]: EditOf<P> } = {
  limit: (current, { old, new: { comparator = current.comparator, ...amount } }, amendment) => {
    const differing = Object.entries(old).find(([key, value]) => !same(value, key === 'comparator' ? current.comparator : (current.limit as Record<string, unknown>)[key]))
    const stated = differing && ([`${differing[0]} ${JSON.stringify(differing[1])}`, limitText(current.limit, current.comparator)] as const)
    return { ...limitEdit(current, { ...citationOf(current.limit, amendment), ...amount }, comparator), stale: stated }
  },
  materials: (current, { old, new: { add = [], remove = [], locator } }, amendment) => {
    const { limit, comparator } = current
    if (!('values' in limit)) return { ...limitEdit(current, limit, comparator), refused: ['comparatorMismatch', `"${limitText(limit, comparator)}" is not a list. Substitute the limit instead.`] }
    const values = [...limit.values.filter((value) => !remove.includes(value)), ...add]
    const stated = same(old.values.toSorted(), limit.values.toSorted()) ? undefined : ([old.values.join(', '), limit.values.join(', ')] as const)
    return { ...limitEdit(current, { ...citationOf(limit, amendment), values, locator }, comparator), stale: stated }
  },
  statement: ({ rule }, { old, new: { text } }) => ruleEdit(rule.statement, text, digestEdit('statement', old.digest, digestOfText(rule.statement)), { statement: text }),
  remedy: ({ rule }, { old, new: { beforeCoverUp, afterCoverUp } }) => {
    const told = (one: Rule['remedy']) => `${one.beforeCoverUp} ${one.afterCoverUp}`
    return ruleEdit(told(rule.remedy), told({ beforeCoverUp, afterCoverUp }), digestEdit('remedy', old.digest, digestOf(rule.remedy)), { remedy: { beforeCoverUp, afterCoverUp } })
  },
  condition: ({ rule }, { old, new: { appliesWhen } }) => {
    const next = appliesWhen ?? undefined
    const [before, after] = [rule.appliesWhen, next].map((one) => (one ? conditionText(one) : null))
    return { ...ruleEdit(before ?? null, after ?? null, digestEdit('condition', old.digest, conditionDigest(rule)), { appliesWhen: next }), asStrict: appliesAsWidely(next, rule.appliesWhen) }
  },
  force: ({ rule }, { old, new: { force: next } }) => {
    const rank = (one: Rule['force']) => force.options.indexOf(one)
    return { ...ruleEdit(rule.force, next, stated(old.force, rule.force), { force: next }), asStrict: rank(next) <= rank(rule.force) }
  },
  holdPoint: ({ rule }, { old, new: { holdPoint } }) => ruleEdit(rule.holdPoint, holdPoint, stated(old.holdPoint, rule.holdPoint), { holdPoint }),
}

/** What an amendment of the condition states as the old one; null where the rule applies to every opening. */
export function conditionDigest({ appliesWhen }: Pick<Rule, 'appliesWhen'>): string | null {
  return appliesWhen ? digestOf(appliesWhen) : null
}

function limitEdit(current: ResolvedRule, limit: Limit, comparator: ResolvedRule['comparator']): Edit {
  return {
    asStrict: isAtLeastAsStrict({ limit, comparator }, current),
    old: limitText(current.limit, current.comparator),
    new: limitText(limit, comparator),
    apply: (resolved) => ({ ...resolved, limit, comparator }),
  }
}

function ruleEdit(old: string | null, next: string | null, staleness: Edit['stale'], part: Partial<Rule>): Edit {
  return { stale: staleness, asStrict: true, old, new: next, apply: (resolved) => ({ ...resolved, rule: { ...resolved.rule, ...part } }) }
}

function digestEdit(what: string, old: string | null, digest: string | null): Edit['stale'] {
  return old === digest ? undefined : [`${what} ${old ?? 'none'}`, `${what} ${digest ?? 'none'}`]
}

function stated(old: string, inForce: string): Edit['stale'] {
  return old === inForce ? undefined : [old, inForce]
}

/** The citation of the limit being replaced, without its amount, and how well the text of the amendment is known. */
function citationOf({ publication, editions, lastReviewed }: Limit, { evidence = 'primary', lastReviewed: reviewed = lastReviewed, readIn, note }: Amendment) {
  return { publication, editions, evidence, lastReviewed: reviewed, ...(readIn === undefined ? {} : { readIn }), ...(note === undefined ? {} : { note }) }
}

function same(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b)
}
