import { z } from 'zod'
import type { Dimension } from '../units/dimension.ts'
import type { HoldPoint } from './hold-points.ts'

/** When a fact can be seen: from one hold point until the operation of another hides it. */
export interface Seen {
  readonly from: HoldPoint
  /** The hold point whose work hides the fact. Absent: it stays in sight. */
  readonly hiddenBy?: HoldPoint
}

/** What is known about one fact beside its value. */
export interface FactDefinition extends Seen {
  readonly title: string
  readonly help: string
  readonly kind: 'quantity' | 'boolean' | 'choice' | 'section'
  readonly dimension?: Dimension
  readonly choices?: readonly string[]
  /** Least and greatest believable value, as quantity texts; beyond them the entry is refused. */
  readonly between?: readonly [least: string, greatest: string]
  /** True when the fact has a left and a right, seen from outside. */
  readonly perEnd: boolean
}

/** The definitions, held beside the zod schema of each fact. */
export const factRegistry = z.registry<FactDefinition>()

export const lengthWire = z
  .union(
    [
      z.string().max(60),
      z.number(),
      z.strictObject({
        value: z.union([z.number(), z.string().max(60)]),
        unit: z.enum(['[in_i]', '[ft_i]', 'in', 'ft', 'mm', 'cm', 'm']),
        resolution: z.number().positive().optional().meta({ description: 'What the tape can tell, in the same unit.' }),
      }),
    ],
    { error: 'a length such as "3 7/8 in", "4 ft 6 in" or "98 mm"' },
  )
  .meta({
    id: 'LengthInput',
    title: 'Length',
    description: 'A length as people write it: "3 7/8 in", "4\'-6 1/2\\"", "98 mm", or { value, unit, resolution }. A bare number takes the document\'s lengthUnit.',
  })

const quantityWire = z
  .string({ error: 'a text with an amount and its unit, such as "15 deg", "3:12", "40 psf" or "115 mph"' })
  .max(60)
  .meta({ id: 'QuantityInput', title: 'Quantity', description: 'An amount with its unit: "15 deg", "3:12", "40 psf", "115 mph".' })

const sectionWire = z
  .string({ error: 'a text with legs and thickness, such as "L5x3-1/2x5/16"' })
  .max(60)
  .meta({ id: 'SectionInput', title: 'Angle section', description: 'Legs and thickness: "L5x3-1/2x5/16", "2L6x3-1/2x5/16", "L127x89x7.9".' })

type Described = Seen & { readonly help: string }
type Bounded = Described & { readonly between: readonly [string, string] }

export const length = (title: string, about: Bounded) =>
  define(lengthWire, { ...about, title, kind: 'quantity', dimension: 'length', perEnd: false })

export const quantity = (dimension: Dimension, title: string, about: Bounded) =>
  define(quantityWire, { ...about, title, kind: 'quantity', dimension, perEnd: false })

export const count = (title: string, about: Bounded) =>
  define(z.int().min(0).max(10_000), { ...about, title, kind: 'quantity', dimension: 'count', perEnd: false })

export const flag = (title: string, about: Described) => define(z.boolean(), { ...about, title, kind: 'boolean', perEnd: false })

export const choice = <const T extends readonly [string, ...string[]]>(title: string, choices: T, about: Described) =>
  define(z.enum(choices), { ...about, title, kind: 'choice', choices, perEnd: false })

export const section = (title: string, about: Described) => define(sectionWire, { ...about, title, kind: 'section', perEnd: false })

export const lengthPerEnd = (title: string, about: Bounded) =>
  defineEnds(lengthWire, { ...about, title, kind: 'quantity', dimension: 'length', perEnd: true })

export const flagPerEnd = (title: string, about: Described) =>
  defineEnds(z.boolean(), { ...about, title, kind: 'boolean', perEnd: true })

export const choicePerEnd = <const T extends readonly [string, ...string[]]>(title: string, choices: T, about: Described) =>
  defineEnds(z.enum(choices), { ...about, title, kind: 'choice', choices, perEnd: true })

/** The same fact, but one that every description must give. */
export function required<T extends z.ZodType>(fact: z.ZodOptional<z.ZodNullable<T>>): T {
  const definition = factRegistry.get(fact)
  if (!definition) throw new Error('only a fact can be required')
  const wire = fact.unwrap().unwrap()
  return named(wire.clone(), definition)
}

function define<T extends z.ZodType>(wire: T, definition: FactDefinition) {
  return named(wire.nullish(), definition)
}

/** A single value means both ends; a list is [left, right] seen from outside, null where an end is not known. */
function defineEnds<T extends z.ZodType>(wire: T, definition: FactDefinition) {
  return named(z.union([wire, z.array(wire.nullable()).min(1).max(2)]).nullish(), definition)
}

function named<T extends z.ZodType>(schema: T, definition: FactDefinition): T {
  const titled = schema.meta({ title: definition.title, description: definition.help })
  factRegistry.add(titled, definition)
  return titled
}
