import type { Catalog } from '../catalog/catalog.ts'
import { conditionText } from '../catalog/condition-text.ts'
import { limitText } from '../catalog/limit-text.ts'
import { citation } from '../catalog/limit.ts'
import { pathTo, resolveRules, type Place } from '../catalog/resolve.ts'
import type { Force } from '../catalog/rule.ts'
import type { ChainStep, ResolvedRule, RuleSet } from '../catalog/rule-set.ts'
import type { HoldPoint } from '../opening/hold-points.ts'

/** A rule as it stands by one catalog, in the words that matter for comparing. */
export interface RuleState {
  readonly required: string
  readonly appliesWhen: string | null
  readonly force: Force
  readonly holdPoint: HoldPoint
  readonly statement: string
  /** The last step of the chain: who said so. */
  readonly by: ChainStep | null
}

/** How one rule differs between two catalogs, on the dates on which it differs so. */
export interface RuleChange {
  readonly rule: string
  readonly title: string
  readonly change: 'added' | 'removed' | 'changed'
  /** False where only the source, or the words, are others. */
  readonly requirementChanged: boolean
  readonly dates: readonly string[]
  readonly before: RuleState | null
  readonly after: RuleState | null
}

/** The same rule by two catalogs; absent where one has none. */
interface Difference {
  readonly before: ResolvedRule | undefined
  readonly after: ResolvedRule | undefined
}

/** The rules that differ in any way. Rules come sorted by id in both sets. */
export function differences(before: RuleSet, after: RuleSet): readonly Difference[] {
  const [was, is] = [before, after].map(({ rules }) => new Map(rules.map((one) => [one.rule.rule, one])))
  const ids = [...new Set([...before.rules, ...after.rules].map(({ rule }) => rule.rule))].toSorted()
  return ids.map((id) => ({ before: was?.get(id), after: is?.get(id) })).filter((one) => !isSame(one.before, one.after))
}

/** Most rules come from the same file by both catalogs and are not even looked into. */
function isSame(a: ResolvedRule | undefined, b: ResolvedRule | undefined): boolean {
  if (!a || !b) return false
  const untouched = a.rule === b.rule && a.limit === b.limit && a.comparator === b.comparator
  return untouched ? JSON.stringify(a.chain) === JSON.stringify(b.chain) : JSON.stringify(a) === JSON.stringify(b)
}

/** What of a limit tells where it stands and how well it is known, and decides nothing; its comparator stands beside it. */
const citing: ReadonlySet<string> = new Set([...Object.keys(citation), 'comparator'])

/** Whether an opening may be judged otherwise. */
export function requirementDiffers({ before, after }: Difference): boolean {
  return !before || !after || decidingPart(before) !== decidingPart(after)
}

function decidingPart({ rule, limit, comparator }: ResolvedRule): string {
  const amount = Object.entries(limit).filter(([key]) => !citing.has(key)).toSorted(([a], [b]) => (a < b ? -1 : 1))
  return JSON.stringify([rule.check, rule.appliesWhen, rule.force, comparator, amount])
}

/** What changes in a place between two catalogs, on some dates. Where several codes are adopted, by any of them. */
export function ruleChanges(before: Catalog, after: Catalog, place: Omit<Place, 'asOf'>, dates: readonly string[]): readonly RuleChange[] {
  const found = new Map<string, RuleChange>()
  for (const asOf of dates) {
    const sets = publicationsAt(after, place).flatMap((publication) => {
      const [was, is] = [before, after].map((catalog) => resolveRules(catalog, { ...place, publication, asOf }))
      return was?.ok && is?.ok ? differences(was.value, is.value) : []
    })
    for (const one of sets.map((difference) => changeOf(difference, asOf))) {
      const key = JSON.stringify({ ...one, dates: [] })
      const known = found.get(key)?.dates ?? []
      found.set(key, { ...one, dates: [...new Set([...known, asOf])] })
    }
  }
  return [...found.values()].toSorted((a, b) => (a.rule === b.rule ? 0 : a.rule < b.rule ? -1 : 1))
}

/** The code that is meant, or each that is adopted in one of the layers. */
function publicationsAt({ adoptions, jurisdictions }: Catalog, { jurisdiction, publication, edition }: Omit<Place, 'asOf'>): readonly (string | undefined)[] {
  if (publication !== undefined || edition !== undefined) return [publication]
  const adopted = (pathTo({ jurisdictions }, jurisdiction) ?? []).flatMap((layer) => adoptions.get(layer) ?? [])
  const codes = [...new Set(adopted.map((one) => one.publication))]
  return codes.length > 1 ? codes : [undefined]
}

function changeOf(difference: Difference, asOf: string): RuleChange {
  const { before, after } = difference
  const { rule, title } = (after ?? before)?.rule ?? { rule: '', title: '' }
  return {
    rule, title, change: before && after ? 'changed' : after ? 'added' : 'removed', requirementChanged: requirementDiffers(difference), dates: [asOf],
    before: before ? stateOf(before) : null, after: after ? stateOf(after) : null,
  }
}

function stateOf({ rule, limit, comparator, chain }: ResolvedRule): RuleState {
  const { appliesWhen, force, holdPoint, statement } = rule
  return { required: limitText(limit, comparator), appliesWhen: appliesWhen ? conditionText(appliesWhen) : null, force, holdPoint, statement, by: chain.at(-1) ?? null }
}
