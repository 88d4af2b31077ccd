import type { Reason } from '../catalog/rule.ts'
import type { Dimension } from '../units/dimension.ts'
import type { Source } from './source.ts'

export type Part = 'head' | 'sill' | 'jambs' | 'wall' | 'ties' | 'barrier' | 'base'

/** The least and the greatest that an indicative method allows for, in the base unit of the quantity's dimension. */
export interface Band {
  readonly least: number
  readonly greatest: number
}

/** An amount in the base unit of the quantity's dimension, a list of them, a band, or a text such as a section. */
export type QuantityValue = number | string | readonly number[] | Band

/** What a quantity shows beside its value: positions, pieces, a comparison. A cell is an amount in the base unit of its column, a text, or nothing. */
export interface QuantityTable {
  readonly title: string
  readonly columns: readonly { readonly title: string; readonly dimension: Dimension | null }[]
  readonly rows: readonly (readonly (number | string | null)[])[]
}

export function isBand(value: QuantityValue | null): value is Band {
  return typeof value === 'object' && value !== null && 'least' in value
}

/** One input as it was used, so that a person can follow the arithmetic. */
export interface UsedInput {
  readonly name: string
  readonly from: string
  readonly text: string
}

/** One computed quantity as it stands in an evaluation. */
export interface QuantityResult {
  readonly id: string
  readonly title: string
  readonly part: Part
  readonly dimension: Dimension | null
  readonly status: 'computed' | 'notDetermined' | 'notApplicable'
  readonly value: QuantityValue | null
  readonly text: string
  readonly formula: string
  readonly inputs: readonly UsedInput[]
  readonly steps: readonly string[]
  readonly tables: readonly QuantityTable[]
  readonly notes: readonly string[]
  readonly assumptions: readonly string[]
  readonly sources: readonly Source[]
  readonly missing: readonly string[]
  readonly reason: Reason | null
  readonly why: string | null
}
