import type { Catalog } from './catalog.ts'
import { digestOf } from './digest.ts'
import type { Parameter, Table } from './reference.ts'
import type { ReleaseDifferences } from './release.ts'
import type { Rule } from './rule.ts'

/** What tells, explains or proves, but decides nothing. A key that is not listed is taken to decide. */
const words: ReadonlySet<string> = new Set([
  'title', 'statement', 'note', 'name', 'text', 'topic', 'remedy', 'beforeCoverUp', 'afterCoverUp', 'cautions', 'related', 'replaces', 'examples', 'disagreements', 'columns', 'reason',
  'revision', 'digest', 'locator', 'evidence', 'lastReviewed', 'readIn', 'instrument',
])

type CatalogDifferences = Pick<ReleaseDifferences, 'rulesAdded' | 'rulesRemoved' | 'rulesChanged' | 'requirements'>

/** What differs between two catalogs before any opening is looked at. Where there was none before, all rules are added and nothing has changed. */
export function catalogDifferences(previous: Catalog | null, next: Catalog): CatalogDifferences {
  const rules = compared(previous ? rulesOf(previous) : new Map(), rulesOf(next), (value) => value)
  const requirements = previous ? Object.values(compared(entriesOf(previous), entriesOf(next), deciding)).flat() : []
  return { rulesAdded: rules.added, rulesRemoved: rules.removed, rulesChanged: rules.changed, requirements: requirements.toSorted() }
}

type Entries = ReadonlyMap<string, unknown>

function compared(before: Entries, after: Entries, part: (value: unknown) => unknown) {
  const digestIn = (entries: Entries, id: string) => digestOf(part(entries.get(id)))
  return {
    added: [...after.keys()].filter((id) => !before.has(id)).toSorted(),
    removed: [...before.keys()].filter((id) => !after.has(id)).toSorted(),
    changed: [...after.keys()].filter((id) => before.has(id) && digestIn(before, id) !== digestIn(after, id)).toSorted(),
  }
}

/** The rules in force, those that amendments insert among them; an amendment may insert one again for a later edition. */
function rulesOf({ rules, amendments }: Catalog): ReadonlyMap<string, readonly Rule[]> {
  const inserted = amendments.flatMap(({ modifications }) => modifications.flatMap((one) => (one.kind === 'insertion' ? [one.new] : [])))
  const grouped = new Map<string, Rule[]>()
  for (const rule of [...rules.values(), ...inserted]) {
    if (rule.status === 'inForce') grouped.set(rule.rule, [...(grouped.get(rule.rule) ?? []), rule])
  }
  return grouped
}

/** Everything that decides. A publication is only what it is cited from; whether one reaches an answer is for the openings to show. */
function entriesOf(catalog: Catalog): Entries {
  const { parameters, tables, jurisdictions, adoptions, amendments } = catalog
  const named = (kind: string, entries: Iterable<readonly [string, unknown]>) => [...entries].map(([id, entry]) => [`${kind} ${id}`, entry] as const)
  return new Map([
    ...named('rule', rulesOf(catalog)), ...named('parameter', figuresIn(parameters)), ...named('table', figuresIn(tables)), ...named('jurisdiction', jurisdictions),
    ...named('adoptions', adoptions), ...named('amendment', amendments.map((one) => [one.amendment, one] as const)),
  ])
}

/** For a rule the cited edition decides where it applies; for a figure it is only the source. */
function figuresIn<T extends Parameter | Table>(entries: ReadonlyMap<string, T>) {
  return [...entries].map(([id, entry]) => [id, Object.fromEntries(Object.entries(entry).filter(([key]) => key !== 'publication' && key !== 'edition'))] as const)
}

function deciding(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(deciding)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).flatMap(([key, inner]) => (words.has(key) ? [] : [[key, deciding(inner)]])))
}
