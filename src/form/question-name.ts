import { facts } from '../opening/facts.ts'

/** What one question asks: one fact, at one end where it has two. */
export interface Asked {
  readonly fact: string
  /** Seen from outside; null where the fact has no ends. */
  readonly member: 'left' | 'right' | null
}

/** The name of a question in a form: the path of its fact and its end, joined so that no form library takes a point for a step. */
export function questionName({ fact, member }: Asked): string {
  return [...fact.split('.'), ...(member ? [member] : [])].join('_')
}

export function askedAbout(fact: string): readonly Asked[] {
  const members = facts.get(fact)?.perEnd === true ? (['left', 'right'] as const) : ([null] as const)
  return members.map((member) => ({ fact, member }))
}

/** Every question that a form may hold, by its name, in the order of the description. */
export const everyQuestion: ReadonlyMap<string, Asked> = new Map([...facts.keys()].flatMap(askedAbout).map((asked) => [questionName(asked), asked]))
