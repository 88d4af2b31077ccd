import type { Amendment } from '../catalog/amendment.ts'
import type { Filed } from '../catalog/assemble.ts'
import type { Catalog, CatalogDocument, CatalogProblem } from '../catalog/catalog.ts'
import { keyOf, resolutionProblems } from '../catalog/checks/amendments.ts'
import { checkPlaces } from '../catalog/checks/jurisdictions.ts'
import { checkModifications } from '../catalog/checks/modifications.ts'
import { isInForce } from '../catalog/in-force.ts'
import { knownRules } from '../catalog/known-rules.ts'
import { problemIn, targetsOf, type ModificationProblem } from '../catalog/placed-modification.ts'
import { readAmendment } from '../catalog/read-amendment.ts'
import { pathTo } from '../catalog/resolve.ts'
import { reviewNeeded, type ReviewNeeded } from '../catalog/review.ts'
import { checkExamples, checkPlaceExamples } from './check-examples.ts'
import { checkQuantities } from './check-quantities.ts'

/** What stands in the way of new amendments. They may be adopted when both lists of problems are empty. */
export interface AmendmentReport {
  /** Those that could be read. */
  readonly amendments: readonly Amendment[]
  /** Of the new amendments; the path is that of the document. */
  readonly problems: readonly CatalogProblem[]
  /** Of amendments in force that would go stale, compete or show something else by their examples; the path is the id of the amendment. */
  readonly affected: readonly CatalogProblem[]
  readonly reviewNeeded: readonly ReviewNeeded[]
}

/**
 * Checks new amendments against a catalog that is sound. It looks at nothing that they cannot change, and comes to the same
 * as loading the whole catalog with them.
 */
export function validateAmendment(catalog: Catalog, documents: readonly CatalogDocument[]): AmendmentReport {
  const read = documents.map(({ path, content }) => ({ path, answer: readAmendment(content) }))
  const shape = read.flatMap(({ path, answer }) => (answer.ok ? [] : answer.problems.map(({ pointer, detail }): CatalogProblem => ({ code: 'shape', path, pointer, detail }))))
  const { fresh, duplicates } = newIn(catalog, read.flatMap(({ path, answer }) => (answer.ok ? [{ path, entry: answer.value }] : [])))
  const amendments = fresh.map(({ entry }) => entry)
  const candidate = { ...catalog, amendments: [...catalog.amendments, ...amendments] }
  const found = [...resolved(fresh, candidate), ...ofThemselves(fresh, candidate)]
  const problems = [...shape, ...duplicates, ...found.filter(({ isNew }) => isNew).map(({ problem }) => problem)]
  const affected = found.filter(({ isNew }) => !isNew).map(({ problem }) => problem)
  const review = reviewNeeded(candidate, amendments)
  if (problems.length + affected.length > 0) return { amendments, problems: shortened(problems), affected: shortened(affected), reviewNeeded: review }
  const failing = checkExamples({ rule: [], amendment: fresh }, candidate)
  return { amendments, problems: shortened(failing), affected: shortened(failingExamples(amendments, catalog, candidate)), reviewNeeded: review }
}

/** So that the answer stays shorter than the question. */
const mostProblems = 1_000

type FiledAmendment = Filed<'amendment'>

function newIn({ amendments }: Catalog, filed: readonly FiledAmendment[]): { readonly fresh: readonly FiledAmendment[]; readonly duplicates: readonly CatalogProblem[] } {
  const taken = new Set(amendments.map(({ amendment }) => amendment))
  const isTaken = filed.map(({ entry: { amendment } }) => {
    const known = taken.has(amendment)
    taken.add(amendment)
    return known
  })
  const detail = (id: string) => `amendment "${id}" is there already, and what is adopted is never changed. Give this one an id of its own and let it supersede the other.`
  return {
    fresh: filed.filter((_, index) => !isTaken[index]),
    duplicates: filed.filter((_, index) => isTaken[index]).map(({ path, entry }) => ({ code: 'duplicate', path, pointer: '/amendment', detail: detail(entry.amendment) })),
  }
}

interface Found {
  readonly problem: CatalogProblem
  readonly isNew: boolean
}

function ofThemselves(fresh: readonly FiledAmendment[], candidate: Catalog): readonly Found[] {
  const problems = [...checkPlaces(fresh, candidate), ...checkModifications(fresh, candidate), ...checkQuantities({ rule: [], amendment: fresh }, knownRules(candidate))]
  return problems.map((problem) => ({ problem, isNew: true }))
}

/** What goes wrong when the amended rules are resolved, those of amendments in force included. */
function resolved(fresh: readonly FiledAmendment[], candidate: Catalog): readonly Found[] {
  const fileOf = new Map(fresh.map(({ path, entry }) => [entry.amendment, path]))
  const amendments = fresh.map(({ entry }) => entry)
  const problems = [
    ...amendments.flatMap((amendment) => resolutionProblems(amendment, candidate)),
    ...concerned(amendments, candidate).flatMap(({ amendment, ...narrowed }) => resolutionProblems(amendment, candidate, narrowed)),
  ]
  const found = problems.flatMap((problem) => [...mirrored(problem, fileOf), problem]).map(({ code, path, pointer, detail }): Found => {
    const file = fileOf.get(path)
    return { problem: { code, path: file ?? path, pointer, detail }, isNew: file !== undefined }
  })
  return [...new Map(found.map((one) => [keyOf(one.problem), one])).values()]
}

/** A contest is told of the new amendment too, where it is the one in force that comes later. */
function mirrored({ against, code, path, detail }: ModificationProblem, fileOf: ReadonlyMap<string, string>): readonly CatalogProblem[] {
  return against && fileOf.has(against.amendment.amendment) && !fileOf.has(path) ? [problemIn(against, code, detail)] : []
}

interface Concerned {
  readonly amendment: Amendment
  /** Those of its rules that the new amendments change, or that they leave as they were by superseding another. */
  readonly rules: ReadonlySet<string>
  /** While one of them is in force; before and after, nothing changes. */
  readonly on: (date: string) => boolean
}

/** The amendments in force that lie where the new ones reach, and change the same rules. */
function concerned(amendments: readonly Amendment[], candidate: Catalog): readonly Concerned[] {
  const reaches = reachesOf(amendments, candidate)
  return candidate.amendments.flatMap((amendment) => {
    if (amendments.includes(amendment)) return []
    const near = reachingTo(amendment, reaches, candidate)
    const rules = new Set([...targetsOf(amendment)].filter((id) => near.some((reach) => reach.rules.has(id))))
    return rules.size > 0 ? [{ amendment, rules, on: (date: string) => near.some(({ one }) => isInForce(one, date)) }] : []
  })
}

interface Reach {
  readonly one: Amendment
  /** The rules that it changes, or that come back by what it supersedes. */
  readonly rules: ReadonlySet<string>
}

function reachesOf(amendments: readonly Amendment[], candidate: Catalog): readonly Reach[] {
  return amendments.map((one) => {
    const superseded = candidate.amendments.filter(({ amendment: id }) => one.supersedes.includes(id))
    return { one, rules: new Set([one, ...superseded].flatMap((each) => [...targetsOf(each)])) }
  })
}

/** Of the new amendments, those in the same layer as an amendment in force, or in one that it lies in. */
function reachingTo({ jurisdiction }: Amendment, reaches: readonly Reach[], candidate: Catalog): readonly Reach[] {
  const path = pathTo(candidate, jurisdiction) ?? []
  return reaches.filter(({ one }) => path.includes(one.jurisdiction))
}

/** Examples of amendments in force that would come out otherwise. */
function failingExamples(amendments: readonly Amendment[], catalog: Catalog, candidate: Catalog): readonly CatalogProblem[] {
  const reaches = reachesOf(amendments, candidate)
  return catalog.amendments.flatMap((entry) => {
    const near = reachingTo(entry, reaches, candidate)
    if (near.length === 0) return []
    return checkPlaceExamples({ path: entry.amendment, entry }, candidate, ({ rule, asOf }) => near.some(({ one, rules }) => rules.has(rule) && isInForce(one, asOf)))
  })
}

function shortened(problems: readonly CatalogProblem[]): readonly CatalogProblem[] {
  const [first] = problems
  if (!first || problems.length <= mostProblems) return problems
  return [...problems.slice(0, mostProblems), { ...first, pointer: '', detail: `There are ${problems.length - mostProblems} more problems. Mend these first.` }]
}
