import { closest } from 'fastest-levenshtein'
import { facts } from '../opening/facts.ts'
import { pointerOf, type Problem } from '../opening/problem.ts'
import { choiceIn, choiceWords, flagIn, yesNo } from '../opening/choice-words.ts'
import { everyQuestion, type Asked } from './question-name.ts'

/** One answer of a filled form, with the place at which it stands; or what is wrong with it. */
export interface GivenAnswer extends Asked {
  readonly question: string
  readonly pointer: string
  readonly value: unknown
}
export interface WrongAnswer {
  readonly question: string
  readonly pointer: string
  readonly problems: readonly Problem[]
}

export interface FilledForm {
  readonly note: unknown
  readonly answers: readonly (GivenAnswer | WrongAnswer)[]
}

/** More than any form asks. */
export const mostAnswers = 500

/** The answers of a filled form, question by question, in whichever sections they stand. What is left blank is no answer. Undefined where there are too many to be those of a form. */
export function readAnswers(filled: Readonly<Record<string, unknown>>): FilledForm | undefined {
  const { note, ...sections } = filled
  const given = Object.entries(sections).flatMap(([key, inner]): Placed[] => {
    if (!isSection(inner) || everyQuestion.has(key)) return [{ path: [key], question: key, value: inner }]
    return Object.entries(inner).map(([question, value]) => ({ path: [key, question], question, value }))
  })
  const filledIn = given.filter(({ value }) => !isBlank(value))
  if (filledIn.length > mostAnswers) return undefined
  const answers = filledIn.map((one, index) => (filledIn.findIndex(({ question }) => question === one.question) === index ? answerAt(one) : saidTwice(one)))
  return { note: isBlank(note) ? null : note, answers }
}

interface Placed {
  readonly path: readonly string[]
  readonly question: string
  readonly value: unknown
}

function saidTwice({ path, question }: Placed): WrongAnswer {
  const pointer = pointerOf(path)
  return { question, pointer, problems: [{ code: 'saidTwice', pointer, detail: 'is answered in two sections of this form; the first is taken' }] }
}

function answerAt({ path, question, value }: Placed): GivenAnswer | WrongAnswer {
  const pointer = pointerOf(path)
  const asked = everyQuestion.get(question)
  if (!asked) return { question, pointer, problems: [{ code: 'unknownKey', pointer, detail: unknownWords(question) }] }
  const read = valueIn(asked.fact, value)
  return 'expected' in read ? { question, pointer, problems: [{ code: 'notAllowed', pointer, detail: `must be ${read.expected}; left out where it is not known` }] } : { ...asked, question, pointer, value: read.value }
}

/** The value behind the words of a choice; whatever else was written is read like every other observation. */
function valueIn(fact: string, answer: unknown): { readonly value: unknown } | { readonly expected: string } {
  const { kind, choices = [] } = facts.get(fact) ?? {}
  if (kind !== 'boolean' && kind !== 'choice') return { value: answer }
  const value = kind === 'boolean' ? flagIn(answer) : choiceIn(choices, answer)
  if (value !== undefined) return { value }
  return { expected: (kind === 'boolean' ? yesNo : choices.map(choiceWords)).map((words) => `"${words}"`).join(' or ') }
}

const longestName = 120

function unknownWords(name: string): string {
  if (name.length > longestName) return 'This is not a question of any form.'
  return `"${name}" is not a question of any form. Did you mean "${closest(name, [...everyQuestion.keys()])}"?`
}

function isSection(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

/** What form libraries leave behind in a field that was emptied. */
function isBlank(value: unknown): boolean {
  return value === null || value === undefined || value === ''
}
