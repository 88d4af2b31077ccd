import { digestOf } from '../catalog/digest.ts'
import type { Catalog } from '../catalog/catalog.ts'
import type { RuleSet } from '../catalog/rule-set.ts'
import { evaluate } from '../evaluation/evaluate.ts'
import { facts } from '../opening/facts.ts'
import { holdPoints, type HoldPoint } from '../opening/hold-points.ts'
import type { Opening } from '../opening/opening.ts'
import type { LengthUnit } from '../units/length-text.ts'
import { coveredAt, questionsAt, sectionNames, type Covered, type Question, type Standing } from './asked-here.ts'
import { formWords, sectionWords } from './form-words.ts'
import { nameBasedId } from './name-based-id.ts'
import { questionSchema, type Known } from './question-schema.ts'
import { reasonsByFact } from './reasons.ts'
import { ruleWords } from './rule-words.ts'
import { valueSchema, type JsonSchema } from './value-schema.ts'

/** For what a form is made. */
export interface Subject {
  readonly opening: Opening
  readonly holdPoint: HoldPoint
  /** The unit that a bare number is to take; without it every length needs its unit. */
  readonly lengthUnit?: LengthUnit | undefined
  /** What is on record, by the names of questions; null where the form is for no opening in particular. */
  readonly known: ReadonlyMap<string, Known> | null
  /** The words for what it is about: "window", or the opening's mark. */
  readonly about: string
}

export interface Form {
  readonly id: string
  readonly title: string
  readonly questions: number
  /** A JSON Schema document, 2020-12. */
  readonly schema: JsonSchema
}

/** A form for one hold point: what can be seen there and matters by the rules of a place and date, and why. */
export function makeForm(subject: Subject, ruleSet: RuleSet, catalog: Catalog): Form {
  const { holdPoint, known } = subject
  const assessment = evaluate(subject.opening, ruleSet, catalog, null)
  const reasonsOf = reasonsByFact(ruleSet, catalog, assessment)
  const standing = standingOf(known, subject.opening)
  const questions = questionsAt(holdPoint, reasonsOf, standing)
  const covered = coveredAt(holdPoint, reasonsOf, standing)
  const content = documentOf(subject, questions, covered, { ruleSet, catalog })
  const id = `urn:uuid:${nameBasedId(urlNamespace, digestOf(content))}`
  return { id, title: String(content['title']), questions: questions.length, schema: { $schema: 'https://json-schema.org/draft/2020-12/schema', $id: id, ...content } }
}

/** On record, what was read by somebody needs no answer; else, what the form was asked for with. */
function standingOf(known: Subject['known'], { facts: given }: Opening): Standing {
  if (known === null) return { onRecord: false, isOpen: ({ fact }) => !given.has(fact) }
  return { onRecord: true, isOpen: ({ name }) => known.get(name)?.lastRead?.contradicted ?? true }
}

/** RFC 9562, section 6.6: the namespace for names that are addresses. */
const urlNamespace = '6ba7b811-9dad-11d1-80b4-00c04fd430c8'

interface From {
  readonly ruleSet: RuleSet
  readonly catalog: Catalog
}

function documentOf(subject: Subject, questions: readonly Question[], covered: readonly Covered[], { ruleSet, catalog }: From): JsonSchema {
  const { holdPoint, lengthUnit, about } = subject
  const reasons = [...questions, ...covered].map((one) => one.reasons)
  const rules = distinct(reasons.flatMap((one) => one.rules).map((resolved) => [resolved.rule.rule, ruleWords(resolved, catalog)] as const))
  const filled = sectionNames.filter((section) => questions.some((question) => question.section === section))
  const sections = filled.map((section, order) => [section, { ...sectionOf(section, questions, subject), 'x-order': order }] as const)
  const note = { type: 'string', maxLength: 2_000, title: 'Note', description: 'What could not be seen and why, and whatever else is worth knowing. It is kept with every answer of this form.', 'x-order': sections.length }
  return {
    ...formWords({ holdPoint, about, lengthUnit, rules: Object.values(rules), covered: covered.length, questions: questions.length }),
    type: 'object',
    properties: { ...Object.fromEntries(sections), note },
    additionalProperties: false,
    $defs: distinct(questions.flatMap(({ fact }) => Object.entries(valueSchema(definitionOf(fact), lengthUnit).definitions))),
    'x-holdPoint': holdPointOf(holdPoint),
    'x-place': { jurisdiction: ruleSet.jurisdiction, resolvedAt: ruleSet.resolvedAt, asOf: ruleSet.asOf, adoption: ruleSet.adoption, editions: [...ruleSet.editions] },
    'x-catalog': { release: catalog.release, digest: catalog.digest },
    'x-lengthUnit': lengthUnit ?? null,
    'x-rules': rules,
    'x-quantities': distinct(reasons.flatMap((one) => one.quantities).map(({ id, title }) => [id, { title }] as const)),
    'x-covered': covered.map(coveredView),
  }
}

function sectionOf(section: Question['section'], questions: readonly Question[], { holdPoint, lengthUnit, known }: Subject): JsonSchema {
  const own = questions.filter((question) => question.section === section)
  const properties = own.map((question, order) => {
    const definition = definitionOf(question.fact)
    return [question.name, { ...questionSchema(question, definition, valueSchema(definition, lengthUnit), known?.get(question.name)), 'x-order': order }] as const
  })
  return { ...sectionWords(section, holdPoint), type: 'object', properties: Object.fromEntries(properties), additionalProperties: false }
}

function coveredView({ name, fact, member, hiddenBy, reasons }: Covered): JsonSchema {
  return { question: name, fact, member, title: definitionOf(fact).title, hiddenBy, why: reasons.rules.map(({ rule }) => rule.rule) }
}

function holdPointOf(id: HoldPoint): JsonSchema {
  const { title, kind, hides } = holdPoints.find((one) => one.id === id) ?? { title: id, kind: null, hides: null }
  return { id, title, kind, hides }
}

function definitionOf(fact: string) {
  const definition = facts.get(fact)
  if (!definition) throw new Error(`a form asks for an unknown fact: ${fact}`)
  return definition
}

function distinct<T>(pairs: readonly (readonly [string, T])[]): Readonly<Record<string, T>> {
  return Object.fromEntries(new Map(pairs.toSorted(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0))))
}
