import type { QuantityDefinition } from './define.ts'
import { quantities } from './index.ts'

const byId = new Map(quantities.map((definition) => [definition.id, definition]))

/** What a quantity and those it builds on may ask for, in the words of `from`. */
export function askedBy(definition: QuantityDefinition): ReadonlySet<string> {
  return gathered(definition, new Set())
}

/** The same by id; of an unknown id, nothing. */
export function askedById(id: string): ReadonlySet<string> {
  const definition = byId.get(id)
  return definition ? askedBy(definition) : new Set()
}

function gathered({ asks }: QuantityDefinition, seen: Set<string>): ReadonlySet<string> {
  for (const from of asks.filter((one) => !seen.has(one))) {
    seen.add(from)
    const inner = from.startsWith('quantity ') ? byId.get(from.slice('quantity '.length)) : undefined
    if (inner) gathered(inner, seen)
  }
  return seen
}
