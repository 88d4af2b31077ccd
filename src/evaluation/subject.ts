import { lastingPart } from '../catalog/canonical.ts'
import { digestOf } from '../catalog/digest.ts'
import { onceFor } from '../opening/once-for.ts'
import type { Opening, Reading, Readings } from '../opening/opening.ts'
import { recent, type Recall } from '../opening/recent.ts'
import { quantityText } from '../units/quantity-text.ts'
import type { Assessment } from './document.ts'

type Subject = Assessment['subject']
type SubjectFact = Subject['facts'][number]

/** The facts as they were judged, each end by itself; the same at every place and date at which an opening is evaluated. */
export const subjectOf = onceFor(({ reference, basis, unitSystem, facts }: Opening): Subject => {
  const entries = [...facts].flatMap(([fact, readings]) => recallFor(fact)([readings], () => entriesOf(fact, readings)))
  return { reference: reference ?? null, basis: basis ?? null, unitSystem, digest: digestOf(entries), facts: entries }
})

const recallByFact = new Map<string, Recall<readonly SubjectFact[]>>()

/** The same readings of a fact are told in the same words, whose text is worth keeping the second time. */
function recallFor(fact: string): Recall<readonly SubjectFact[]> {
  const known = recallByFact.get(fact) ?? recent<readonly SubjectFact[]>({ again: (entries) => entries.forEach(lastingPart) })
  recallByFact.set(fact, known)
  return known
}

function entriesOf(fact: string, readings: Readings): readonly SubjectFact[] {
  return readings.flatMap((reading, index) => (reading ? [entry(fact, reading, readings.length === 2 ? ends[index] : null)] : []))
}

const ends = ['left', 'right'] as const

function entry(fact: string, { value, text, derivedFrom = [], conflictsWith = [] }: Reading, member: (typeof ends)[number] | null = null): SubjectFact {
  const settled = typeof value === 'object' ? quantityText(value, 'si') : String(value)
  return { fact, member, given: text, settled, derivedFrom: [...derivedFrom], conflictsWith: [...conflictsWith] }
}
