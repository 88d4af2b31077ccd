import { line } from './plain-text.ts'
import { stableId } from './stable-id.ts'

/** The names of properties that are ours and not NIST's. */
export const namespace = 'urn:wythe:oscal'

export interface Property {
  readonly name: string
  readonly ns: string
  readonly value: string
}

/** Properties of what is known; what is null is left out. */
export function propertiesOf(values: Readonly<Record<string, string | number | null>>): readonly Property[] {
  return Object.entries(values).flatMap(([name, value]) => (value === null ? [] : [{ name, ns: namespace, value: line(String(value)) }]))
}

/** OSCAL has no empty lists: a list without members is left out with its name. */
export function ifAny<K extends string, T>(name: K, list: readonly T[]): Partial<Record<K, readonly T[]>> {
  return list.length === 0 ? {} : ({ [name]: list } as Record<K, readonly T[]>)
}

/** The objective of a rule within the document; a rule is a control. */
export function objectiveOf(rule: string): string {
  return `${rule}_obj`
}

export const ids = {
  party: (project: string, by: string) => stableId('party', project, by),
  opening: (project: string, opening: string) => stableId('opening', project, opening),
  observation: (entry: string) => stableId('observation', entry),
  risk: (finding: string) => stableId('risk', finding),
  platform: stableId('assessment platform'),
  noPlan: stableId('no assessment plan'),
} as const
