import type { Comparator } from '../catalog/limit.ts'
import type { Parameter, Table } from '../catalog/reference.ts'
import type { Readings } from '../opening/opening.ts'
import type { Quantity } from '../units/quantity.ts'
import type { QuantityResult } from './result.ts'
import type { Source } from './source.ts'

/** A limit as it stands in the resolved rule set: an amendment that changes the rule changes this. */
export interface LimitInForce {
  readonly rule: string
  readonly comparator: Comparator
  readonly quantity: Quantity
  readonly text: string
  readonly source: Source
}

/** Where a quantity may take its inputs from. Undefined means not known; it never becomes 0. */
export interface Inputs {
  fact(path: string): Readings | undefined
  limit(rule: string): LimitInForce | undefined
  parameter(id: string): { readonly parameter: Parameter; readonly quantity: Quantity; readonly source: Source } | undefined
  table(id: string): { readonly table: Table; readonly source: Source } | undefined
  quantity(id: string): QuantityResult | undefined
  /** Room for what was found already: inputs do not change, and many quantities need the same. */
  readonly found?: unknown[]
}
