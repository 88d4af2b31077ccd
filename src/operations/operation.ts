import { z } from 'zod'
import type { Catalog } from '../catalog/catalog.ts'
import type { ResolutionCode } from '../catalog/resolve.ts'
import type { Evaluation } from '../evaluation/document.ts'
import type { Checked, Problem } from '../opening/problem.ts'
import { shapeProblems } from '../opening/shape-problems.ts'
import type { ActiveCatalog } from '../store/active-catalog.ts'
import type { Records } from '../store/records.ts'
import type { Sealer } from '../webhooks/secret.ts'
import type { TargetPolicy } from '../webhooks/target.ts'
import type { Caller } from './caller.ts'
import { cursorsFor, isPaged } from './cursor.ts'

/** What operations need from outside. The clock and the ids come in here, so that everything below stays pure. */
export interface Dependencies {
  readonly catalog: Catalog
  readonly now: () => Date
  readonly newId: () => string
}

/** Told of what was answered, for whoever counts it. */
export interface Tally {
  readonly evaluated: (evaluation: Pick<Evaluation, 'resolvedAt' | 'summary'>) => void
}

/** What operations on records need beside. */
export interface RecordDependencies extends Dependencies {
  readonly records: Records
  readonly active: ActiveCatalog
  readonly caller: Caller
  /** Makes a secret that cannot be guessed. */
  readonly newSecret: () => string
  /** Where the service is reached from outside, without a slash at the end. */
  readonly publicUrl: string
  readonly webhooks: WebhookMeans
  /** Lets other requests have their turn in long work. */
  readonly giveWay: () => Promise<void>
  readonly tally?: Tally
  /** The W3C trace context of the request, for what happens because of it. */
  readonly traceparent?: string | undefined
  /** Stands around the work of an operation, for whoever follows it. */
  readonly follow?: Follow
}

export type Follow = (operation: string, work: () => Promise<Answer<unknown>>) => Promise<Answer<unknown>>

/** How signing secrets are kept, and where deliveries may go. */
export interface WebhookMeans {
  readonly sealer: Sealer
  readonly targets: TargetPolicy
}

export type FailureCode =
  | 'invalidInput' | 'idTaken' | 'placeMissing' | 'notFound' | 'unauthenticated' | 'forbidden'
  | 'versionMissing' | 'versionStale' | 'recordBusy' | 'amendmentRefused' | 'alreadyAdopted' | 'catalogGone' | 'webhookDisabled' | ResolutionCode

/** Why an operation did not answer: one code, and every single problem behind it. */
export interface Failure {
  readonly ok: false
  readonly code: FailureCode
  readonly problems: readonly Problem[]
  /** The word of the scope that would have done, where one was lacking. */
  readonly scope?: string
}

export type Answer<T> = { readonly ok: true; readonly value: T } | Failure

/** What an operation costs, in units of one small read: so much, or so much for each member of a list that is sent. */
export interface Cost {
  readonly units: number
  readonly each?: string
}

/** That an operation is to be used no more, and what to read about it. Dates are days like "2027-01-31". */
export interface Deprecation {
  readonly since: string
  /** The day from which it may be gone. */
  readonly sunset?: string
  /** An address that tells what to use instead. */
  readonly link: string
}

/** One thing the service does. Both doors, REST and GraphQL, take their types and their validation from it. */
export interface Operation<I extends z.ZodObject = z.ZodObject, O extends z.ZodType = z.ZodType> {
  readonly name: string
  readonly summary: string
  readonly description: string
  /** One unit when left out. */
  readonly cost?: Cost
  /** It makes something, so that twice sent could be twice made. */
  readonly makes?: boolean
  readonly deprecated?: Deprecation
  readonly input: I
  readonly output: O
  /** Of what is answered page by page: the cursors of its members, each to go on after it. */
  readonly cursorsOf?: CursorsOf | undefined
  readonly run: (deps: Dependencies, raw: unknown) => Answer<z.output<O>>
}

type CursorsOf = (deps: Dependencies, raw: unknown, items: readonly unknown[]) => readonly string[]

/** By what a page goes on after one of its members: the key that the list is sorted by. */
interface Keyed<O extends z.ZodType> {
  readonly keyOf?: (item: MemberOf<O>) => string
}

type MemberOf<O extends z.ZodType> = z.output<O> extends { readonly items: readonly (infer T)[] } ? T : never

/** An operation on what is remembered: it waits for the store and knows its caller. */
export interface RecordOperation<I extends z.ZodObject = z.ZodObject, O extends z.ZodType = z.ZodType> extends Omit<Operation<I, O>, 'run'> {
  readonly run: (deps: RecordDependencies, raw: unknown) => Promise<Answer<z.output<O>>>
}

/** What a door needs to know of an operation. */
export type AnyOperation = Operation | RecordOperation

interface RecordDefinition<I extends z.ZodObject, O extends z.ZodType> extends Omit<RecordOperation<I, O>, 'run' | 'cursorsOf'>, Keyed<O> {
  readonly answer: (deps: RecordDependencies, input: z.output<I>) => Promise<Answer<z.output<O>>>
}

/** The units that a request is charged, whether or not its input will be refused. */
export function unitsOf({ cost = { units: 1 } }: AnyOperation, raw: unknown): number {
  const list: unknown = cost.each === undefined || typeof raw !== 'object' || raw === null ? undefined : (raw as Readonly<Record<string, unknown>>)[cost.each]
  return cost.units * Math.max(1, Array.isArray(list) ? list.length : 1)
}

/** Pins the catalog at the start, so that an adoption in the middle does not change what is being answered. */
export function defineRecordOperation<I extends z.ZodObject, O extends z.ZodType>({ answer, keyOf, ...definition }: RecordDefinition<I, O>): RecordOperation<I, O> {
  return {
    ...definition,
    cursorsOf: cursorsBy(keyOf, definition, () => null),
    run: async (deps, raw) => {
      const parsed = parseInput(definition.input, raw)
      if (!parsed.ok) return parsed
      const pages = paging(definition, parsed.value, null)
      const pinned = { ...deps, catalog: deps.active.state.catalog }
      return pages.ok ? pages.sealed(await answer(pinned, pages.input)) : pages
    },
  }
}

interface Definition<I extends z.ZodObject, O extends z.ZodType> extends Omit<Operation<I, O>, 'run' | 'cursorsOf'>, Keyed<O> {
  readonly answer: (deps: Dependencies, input: z.output<I>) => Answer<z.output<O>>
}

/** An operation whose input needs no more than its schema. */
export function defineOperation<I extends z.ZodObject, O extends z.ZodType>({ answer, keyOf, ...definition }: Definition<I, O>): Operation<I, O> {
  return {
    ...definition,
    cursorsOf: cursorsBy(keyOf, definition, ({ catalog }) => catalog.release),
    run: (deps, raw) => {
      const parsed = parseInput(definition.input, raw)
      if (!parsed.ok) return parsed
      const pages = paging(definition, parsed.value, deps.catalog)
      return pages.ok ? pages.sealed(answer(deps, pages.input)) : pages
    },
  }
}

function cursorsBy<I extends z.ZodObject, O extends z.ZodType>(keyOf: Keyed<O>['keyOf'], definition: Omit<Operation<I, O>, 'run'>, releaseOf: (deps: Dependencies) => string | null): CursorsOf | undefined {
  if (isPaged(definition) !== (keyOf !== undefined)) throw new Error(`${definition.name}: what is answered page by page needs a key, and nothing else does`)
  return keyOf && ((deps, raw, items) => {
    const { seal } = cursorsFor(definition, definition.input.parse(raw), releaseOf(deps))
    return items.map((item) => seal(keyOf(item as MemberOf<O>)))
  })
}

type Paging<I, T> = Failure | { readonly ok: true; readonly input: I; readonly sealed: (answer: Answer<T>) => Answer<T> }

/** Cursors are opened before an operation sees them and sealed after it, so that operations only know keys. A list of records outlives releases. */
function paging<I extends z.ZodObject, O extends z.ZodType>(definition: Omit<Operation<I, O>, 'run'>, input: z.output<I>, catalog: Catalog | null): Paging<z.output<I>, z.output<O>> {
  if (!isPaged(definition)) return { ok: true, input, sealed: (answer) => answer }
  const { open, seal } = cursorsFor(definition, input, catalog && catalog.release)
  const { after } = input as { readonly after?: string | null }
  const key = after === null || after === undefined ? undefined : open(after)
  if (typeof after === 'string' && key === undefined) return failure('invalidInput', [{ code: 'notAllowed', pointer: '/after', detail: 'is not a cursor of this list with these filters and this release of the catalog. Start again without it.' }])
  const sealed = (answer: Answer<z.output<O>>): Answer<z.output<O>> => {
    if (!answer.ok) return answer
    const page = answer.value as { readonly nextCursor: string | null }
    return { ok: true, value: { ...page, nextCursor: page.nextCursor === null ? null : seal(page.nextCursor) } as z.output<O> }
  }
  return { ok: true, input: { ...input, after: key }, sealed }
}

export function parseInput<I extends z.ZodType>(schema: I, raw: unknown): Answer<z.output<I>> {
  const parsed = schema.safeParse(raw ?? {}, { reportInput: true })
  return parsed.success ? { ok: true, value: parsed.data } : failure('invalidInput', shapeProblems(schema, parsed.error))
}

export function failure(code: FailureCode, problems: readonly Problem[]): Failure {
  return { ok: false, code, problems }
}

/** Carries a core answer over, naming the failure after its first problem. */
export function orFailure<T>(checked: Checked<T, FailureCode>): Answer<T> {
  return checked.ok ? checked : failure(checked.problems[0]?.code ?? 'invalidInput', checked.problems)
}

export function notFound(what: string, id: string): Failure {
  return failure('notFound', [{ code: 'notFound', pointer: '', detail: `There is no ${what} "${id}".` }])
}
