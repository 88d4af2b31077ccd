import fc from 'fast-check'
import { hostile } from './hostile.ts'

/** As much of a JSON Schema as the contract uses. */
export interface Schema {
  readonly $ref?: string
  readonly type?: string | readonly string[]
  readonly enum?: readonly unknown[]
  readonly const?: unknown
  readonly anyOf?: readonly Schema[]
  readonly oneOf?: readonly Schema[]
  readonly allOf?: readonly Schema[]
  readonly properties?: Readonly<Record<string, Schema>>
  readonly required?: readonly string[]
  readonly items?: Schema
  readonly minItems?: number
  readonly minimum?: number
  readonly maximum?: number
  readonly format?: string
}

/** Words that mean something to the service, so that requests come further than the first check. */
const words = ['us-xa', 'us-xa-101', 'us-xa-101-2400000', 'irc', 'irc-2021', '2026.2.0', '2026-03-01', '2026-03-01T12:00:00Z', 'lintel.bearing-length', 'head.support.bearing', 'opening.width', 'window', 'w-1', 'inspector', '48 in', '3 7/8 in', '15 deg', '40 psf', 'L5x3-1/2x5/16', 'lintel.length']

/** Values that are mostly of a schema, and here and there are not. */
export class FromSchema {
  readonly #components: Readonly<Record<string, Schema>>
  readonly #ids: readonly string[]

  constructor(components: Readonly<Record<string, Schema>>, ids: readonly string[]) {
    this.#components = components
    this.#ids = ids
  }

  value(schema: Schema, depth = 0): fc.Arbitrary<unknown> {
    return fc.oneof({ weight: 12, arbitrary: this.#fitting(this.#resolved(schema), depth) }, { weight: 1, arbitrary: hostile })
  }

  #fitting(schema: Schema, depth: number): fc.Arbitrary<unknown> {
    if (depth > 8) return fc.constant(null)
    if (schema.const !== undefined) return fc.constant(schema.const)
    if (schema.enum) return fc.constantFrom(...schema.enum)
    const choices = schema.anyOf ?? schema.oneOf ?? schema.allOf
    return choices ? fc.oneof(...choices.map((choice) => this.value(choice, depth + 1))) : this.#ofType(schema, depth)
  }

  #ofType(schema: Schema, depth: number): fc.Arbitrary<unknown> {
    const type = Array.isArray(schema.type) ? (schema.type as readonly string[])[0] : schema.type
    switch (type) {
      case 'object': return this.#object(schema, depth)
      case 'array': return fc.array(this.value(schema.items ?? {}, depth + 1), { minLength: Math.min(schema.minItems ?? 0, 3), maxLength: 3 })
      case 'integer': return fc.integer({ min: Math.max(schema.minimum ?? -5, -1e9), max: Math.min(schema.maximum ?? 200, 1e9) })
      case 'number': return fc.double({ noNaN: true, noDefaultInfinity: true })
      case 'boolean': return fc.boolean()
      case 'string': return fc.oneof(fc.constantFrom(...words, ...this.#ids), fc.uuid(), fc.string({ maxLength: 20 }))
      default: return hostile
    }
  }

  /** What is demanded is there, and of the rest a little, so that bodies stay small. */
  #object({ properties = {}, required = [] }: Schema, depth: number): fc.Arbitrary<unknown> {
    const keys = Object.keys(properties)
    const some = fc.subarray(keys.filter((key) => !required.includes(key)), { maxLength: Math.min(4, keys.filter((key) => !required.includes(key)).length) })
    return some.chain((chosen) => {
      const members = [...required.filter((key) => properties[key]), ...chosen].map((key) => [key, this.value(properties[key] ?? {}, depth + 1)] as const)
      return fc.tuple(fc.record(Object.fromEntries(members)), fc.nat({ max: 30 })).map(([value, way]) => (way === 0 ? { ...value, unforeseen: 1 } : value))
    })
  }

  #resolved(schema: Schema): Schema {
    const name = schema.$ref?.split('/').at(-1)
    return name === undefined ? schema : (this.#components[name] ?? {})
  }
}
