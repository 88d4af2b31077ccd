import type { FactDefinition } from '../opening/fact.ts'
import { holdPointTitle, type HoldPoint } from '../opening/hold-points.ts'
import { isMandatory, type Question } from './asked-here.ts'
import type { JsonSchema, ValueSchema } from './value-schema.ts'

/** What is on record about a question already. */
export interface Known {
  /** As it was drawn. */
  readonly drawn: string | null
  /** As it was read last, when and at which hold point. */
  readonly lastRead: { readonly value: string; readonly at: string; readonly holdPoint: HoldPoint; readonly contradicted: boolean } | null
}

/** One question as a property of the form. Nothing is filled in beforehand: what is on record stands beside it as an annotation. */
export function questionSchema(question: Question, definition: FactDefinition, value: ValueSchema, known: Known | undefined): JsonSchema {
  const { reasons, fact, member } = question
  const { hiddenBy, between } = definition
  return {
    title: member ? `${definition.title}, ${member}` : definition.title,
    description: descriptionOf(question, definition, value),
    ...value.schema,
    'x-fact': fact,
    ...(member ? { 'x-member': member } : {}),
    'x-mandatory': isMandatory(reasons),
    'x-why': reasons.rules.map(({ rule }) => rule.rule),
    'x-computes': reasons.quantities.map(({ id }) => id),
    'x-seenFrom': definition.from,
    ...(hiddenBy ? { 'x-hiddenBy': hiddenBy } : {}),
    ...(value.howToWrite ? { 'x-howToWrite': value.howToWrite } : {}),
    ...(between ? { 'x-between': [...between] } : {}),
    ...(known?.drawn ? { 'x-drawn': known.drawn } : {}),
    ...(known?.lastRead ? { 'x-lastRead': known.lastRead } : {}),
  }
}

function descriptionOf({ section, member, reasons }: Question, { help, hiddenBy }: FactDefinition, { howToWrite, inShort }: ValueSchema): string {
  const end = member ? `${member === 'left' ? 'Left' : 'Right'}, seen from outside. ` : ''
  const writing = [inShort ?? howToWrite ?? ''].filter((words) => words !== '').map((words) => ` ${words}`).join('')
  const before = hiddenBy && section !== 'lastChance' ? ` Hidden from "${holdPointTitle(hiddenBy)}" on.` : ''
  return `${end}${askingWords(help)}${writing}${before} ${reasonWords(reasons)}`
}

/** Help as an inspector answers it: "True when …" of a description is "Yes when …" here. */
function askingWords(help: string): string {
  const words: Readonly<Record<string, string>> = { True: 'Yes', False: 'No', true: 'yes', false: 'no' }
  return help.replace(/\b(?:True|False|true|false)\b/g, (word) => words[word] ?? word)
}

function reasonWords({ rules, quantities }: Question['reasons']): string {
  const [first] = rules
  const more = rules.length > 1 ? ` and ${rules.length - 1} more` : ''
  if (first) return `Why: ${first.rule.title} (${first.rule.force})${more}.`
  return `Why: for computing ${quantities[0]?.title.toLowerCase() ?? ''}${quantities.length > 1 ? ` and ${quantities.length - 1} more` : ''}.`
}
