import { loadCatalog } from '../../src/store/load-catalog.ts'
import type { Catalog } from '../../src/catalog/catalog.ts'
import { resolveRules } from '../../src/catalog/resolve.ts'
import type { RuleSet } from '../../src/catalog/rule-set.ts'
import type { Finding } from '../../src/evaluation/document.ts'
import { evaluate } from '../../src/evaluation/evaluate.ts'
import { judge, judgeOf, type Subject } from '../../src/evaluation/judge.ts'
import { quantityInputs } from '../../src/evaluation/quantity-inputs.ts'
import { describeOpening } from '../../src/opening/describe.ts'
import type { Opening } from '../../src/opening/opening.ts'
import { computeQuantities } from '../../src/quantities/compute.ts'
import { everydayQuantities } from '../../src/quantities/index.ts'
import { corpus, type Described } from '../corpus.ts'
import { root } from '../read-sources.ts'
import { compiledEngine, interpretedEngine, plainFacts, plainRule, type Outcomes, type PlainFacts } from './engines.ts'

export const place = { jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' } as const

/** The catalog as delivered, one place, and fully described windows that differ in one fact each. */
export interface Ground {
  readonly catalog: Catalog
  readonly ruleSet: RuleSet
  readonly windows: readonly Described[]
}

export async function ground(count: number): Promise<Ground> {
  const loaded = await loadCatalog(`${root}/catalog`)
  if (!loaded.ok) throw new Error(loaded.problems.map(({ path, detail }) => `${path}: ${detail}`).join('\n'))
  const ruleSet = resolveRules(loaded.catalog, place)
  if (!ruleSet.ok) throw new Error(ruleSet.problems.map(({ detail }) => detail).join('\n'))
  const varied = corpus(loaded.catalog).filter(({ name }) => name.startsWith('baseline'))
  const step = Math.max(1, Math.floor(varied.length / count))
  return { catalog: loaded.catalog, ruleSet: ruleSet.value, windows: varied.filter((_, index) => index % step === 0).slice(0, count) }
}

/** As many windows as wanted of which no two have a length in common: what each comes to has to be worked out for it alone. */
export function unlikeWindows({ windows: [model] }: Ground, count: number): readonly Described[] {
  if (!model) throw new Error('no window')
  const lengths = [...described(model).facts].flatMap(([path, [reading]]) => (typeof reading?.value === 'object' && reading.value.dimension === 'length' && !reading.derivedFrom ? [{ path, amount: reading.value.amount }] : []))
  const draw = drawn()
  const window = (): Described => ({ name: 'every length its own', description: lengths.reduce((description, { path, amount }) => withLength(description, path, Math.max(1, amount / 1e6 + draw() * 50)), structuredClone(model.description)) })
  const unlike: Described[] = []
  while (unlike.length < count) {
    const one = window()
    if (describeOpening(one.description).ok) unlike.push(one)
  }
  return unlike
}

/** Numbers from 0 to 1, the same in every run. */
function drawn(): () => number {
  let state = 1
  return () => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647
}

function withLength(description: unknown, path: string, millimetres: number): unknown {
  const keys = path.split('.')
  const last = keys.pop() ?? ''
  const part = keys.reduce<unknown>((inner, key) => (inner as Readonly<Record<string, unknown>>)[key], description) as Record<string, unknown>
  part[last] = `${millimetres.toFixed(2)} mm`
  return description
}

export function described({ description, name }: Described): Opening {
  const opening = describeOpening(description)
  if (!opening.ok) throw new Error(`${name}: ${opening.problems.map(({ pointer, detail }) => `${pointer} ${detail}`).join('; ')}`)
  return opening.value
}

export function subjectOf({ catalog, ruleSet }: Ground, opening: Opening): Subject {
  return { opening, quantities: computeQuantities(everydayQuantities, quantityInputs(opening, ruleSet, catalog)), catalog, adopted: ruleSet.adopted, holdPoint: null }
}

type Judging = Pick<Ground, 'catalog' | 'ruleSet'>

export function findingsOf({ catalog, ruleSet }: Judging, subject: Subject) {
  return ruleSet.rules.map((rule) => judgeOf(rule, catalog)(subject).finding)
}

/** Decided, and not put into words: what a general engine answers. */
export function outcomesBy({ catalog, ruleSet }: Judging): (subject: Subject) => Outcomes {
  const judges = ruleSet.rules.map((resolved) => ({ id: resolved.rule.rule, judge: judgeOf(resolved, catalog) }))
  return (subject) => new Map(judges.map(({ id, judge }) => [id, judge(subject).outcome]))
}

/** One question to all engines: the rules that each can express and that every one of the windows decides, over the same facts. */
export interface Contest {
  readonly rules: RuleSet['rules']
  readonly subjects: readonly Subject[]
  readonly facts: readonly PlainFacts[]
  readonly ours: (subject: Subject) => Outcomes
  readonly findings: (subject: Subject) => readonly Finding[]
  readonly interpreted: (facts: PlainFacts) => Promise<Outcomes>
  readonly compiled: (facts: PlainFacts) => Outcomes
}

export function contest(on: Ground): Contest {
  const subjects = on.windows.map((window) => subjectOf(on, described(window)))
  const isDecided = (rule: RuleSet['rules'][number]) => subjects.every((subject) => judge(rule, subject).outcome !== 'notDetermined')
  const rules = on.ruleSet.rules.filter((rule) => plainRule(rule) && isDecided(rule))
  const plain = rules.flatMap((rule) => plainRule(rule) ?? [])
  const judging: Judging = { catalog: on.catalog, ruleSet: { ...on.ruleSet, rules } }
  return {
    rules,
    subjects,
    facts: subjects.map(({ opening, quantities }) => plainFacts(opening, quantities)),
    ours: outcomesBy(judging),
    findings: (subject) => findingsOf(judging, subject),
    interpreted: interpretedEngine(plain),
    compiled: compiledEngine(plain),
  }
}

/** Where another engine answers otherwise than we do: "weep.spacing: pass, theirs fail". Anything here makes a comparison of speed void. */
export function disagreements(rules: RuleSet['rules'], ours: Outcomes, theirs: Outcomes): readonly string[] {
  return rules.map(({ rule: { rule } }) => ({ rule, us: ours.get(rule), them: theirs.get(rule) ?? 'notApplicable' })).filter(({ us, them }) => us !== them).map(({ rule, us, them }) => `${rule}: ${us ?? 'nothing'}, theirs ${them}`)
}

/** Equal in everything, and the same in nothing, so that nothing is known of it. */
export function stranger(opening: Opening): Opening {
  return { ...opening, facts: new Map([...opening.facts].map(([path, readings]) => [path, structuredClone(readings)])) }
}

/** As a request would come: the opening settled, but nothing known of it yet. */
export function fullEvaluation({ catalog, ruleSet }: Ground, opening: Opening) {
  return evaluate(opening, ruleSet, catalog, null)
}
