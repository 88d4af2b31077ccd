import fc from 'fast-check'
import type { FactDefinition } from '../../src/opening/fact.ts'
import { facts } from '../../src/opening/facts.ts'
import type { Dimension } from '../../src/units/dimension.ts'
import { readQuantity } from '../../src/units/quantity.ts'

/** The facts of an opening by path, as they would be written down. */
export type WrittenFacts = Readonly<Record<string, unknown>>

export const required: readonly string[] = ['opening.kind', 'opening.width', 'opening.height']

/** What a person would measure in: the step, exact in binary, and its unit. */
const steps: Partial<Readonly<Record<Dimension, readonly [step: number, unit: string]>>> = {
  length: [1 / 16, ' in'], angle: [1, ' deg'], area: [1 / 4, ' sq ft'], arealLoad: [1, ' psf'], speed: [1, ' mph'],
  stress: [50, ' psi'], force: [10, ' lbf'], lineLoad: [1, ' lbf/ft'], moment: [10, ' lbf ft'], momentOfInertia: [1 / 4, ' in4'],
  temperatureDifference: [1, ' K'], rainRate: [1, ' mm/h'], rainDepth: [1, ' L/m2'], ratio: [1, ' %'],
}

/** Openings with any of the known facts, each with any believable value, known at both ends, at one or at none. */
export const anyFacts: fc.Arbitrary<WrittenFacts> = fc.record(
  Object.fromEntries([...facts].map(([path, definition]) => [path, ofFact(definition)])),
  { requiredKeys: [...required] },
)

/** Any believable value of one fact, at one end where it has two. */
export function believable(fact: string): fc.Arbitrary<unknown> {
  const definition = facts.get(fact)
  if (!definition) throw new Error(`there is no fact ${fact}`)
  return valueOf(definition)
}

function ofFact(definition: FactDefinition): fc.Arbitrary<unknown> {
  const value = valueOf(definition)
  return definition.perEnd ? fc.oneof(value, fc.tuple(fc.option(value), fc.option(value))) : value
}

function valueOf(definition: FactDefinition): fc.Arbitrary<unknown> {
  if (definition.kind === 'boolean') return fc.boolean()
  if (definition.choices) return fc.constantFrom(...definition.choices)
  if (definition.kind === 'section') return fc.constantFrom('L4x3x1/4', 'L5x3-1/2x5/16', '2L6x3-1/2x5/16')
  return amountOf(definition)
}

/** Whole steps within what is believable, and no more than some hundreds of them, so that values near limits are common. */
function amountOf({ dimension = 'count', between = ['0', '400'] }: FactDefinition): fc.Arbitrary<unknown> {
  const [step, unit] = steps[dimension] ?? [1, '']
  const [least, greatest] = between.map((bound) => amountIn(bound) / amountIn(`${step}${unit}`))
  const count = fc.integer({ min: Math.ceil(least ?? 0), max: Math.min(Math.floor(greatest ?? 0), Math.ceil(least ?? 0) + 800) })
  return unit === '' ? count : count.map((many) => `${many * step}${unit}`)
}

function amountIn(text: string): number {
  const quantity = readQuantity(text)
  if (!quantity) throw new Error(`"${text}" is not an amount`)
  return quantity.amount
}
