import { facts } from '../opening/facts.ts'
import type { Opening, Reading } from '../opening/opening.ts'
import { choiceWords } from '../opening/choice-words.ts'
import { askedAbout, questionName, type Asked } from './question-name.ts'
import type { Known } from './question-schema.ts'

/** A reading on record, in the words of a form. */
export type Read = Asked & NonNullable<Known['lastRead']>

/** What is on record, by the names of questions: as drawn, and as read last. */
export function knownOf(designed: Opening | undefined, read: readonly Read[]): ReadonlyMap<string, Known> {
  const drawn = new Map([...(designed?.facts ?? [])].flatMap(([fact, readings]) =>
    askedAbout(fact).flatMap((asked, index) => {
      const reading = readings[index]
      return reading && !reading.derivedFrom ? [[questionName(asked), wordsOf(fact, reading)] as const] : []
    }),
  ))
  const last = new Map(read.map(({ fact, member, ...reading }) => [questionName({ fact, member }), reading] as const))
  return new Map([...new Set([...drawn.keys(), ...last.keys()])].map((name) => [name, { drawn: drawn.get(name) ?? null, lastRead: last.get(name) ?? null }]))
}

/** As an answer would say it. */
export function wordsOf(fact: string, { value, text }: Pick<Reading, 'value' | 'text'>): string {
  if (typeof value === 'boolean') return value ? 'Yes' : 'No'
  return facts.get(fact)?.kind === 'choice' ? choiceWords(text) : text
}
