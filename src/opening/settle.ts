import { quantityExamples, readQuantity, type Quantity } from '../units/quantity.ts'
import { plainDigits } from '../units/number-text.ts'
import { lengthAdvice, readLength, type LengthUnit } from '../units/length-text.ts'
import { inchText, millimetreText, quantityText } from '../units/quantity-text.ts'
import type { FactDefinition } from './fact.ts'
import { onceFor } from './once-for.ts'
import type { Reading } from './opening.ts'
import { pointerOf, type Checked, type Problem } from './problem.ts'
import { readSection } from './section-text.ts'

export type SettleCode = 'unreadable' | 'unitMissing' | 'ambiguous' | 'decimalComma' | 'outOfRange' | 'notBelievable'

/** What a document says once for all its lengths. */
export interface Defaults {
  readonly lengthUnit?: LengthUnit
  readonly resolution?: number
}

type Path = readonly (string | number)[]
type Settled = Checked<Reading, SettleCode>
type LengthWire = string | number | { value: number | string; unit: string; resolution?: number }

/** One value as it came over the wire, already of the right shape, turned into base units. */
export function settleValue(definition: FactDefinition, wire: unknown, path: Path, defaults: Defaults): Settled {
  if (definition.kind === 'boolean') return reading({ value: wire === true, text: String(wire) })
  if (definition.kind === 'choice') return reading({ value: String(wire), text: String(wire) })
  if (definition.kind === 'section') return settleSection(String(wire), path)
  if (definition.dimension === 'length') return settleLength(definition, wire as LengthWire, path, defaults)
  return settleQuantity(definition, wire as string | number, path)
}

function settleSection(text: string, path: Path): Settled {
  const section = readSection(text)
  return section === undefined ? refusal('unreadable', path, `"${text}" is not an angle section. Write the legs and the thickness: L5x3-1/2x5/16`) : reading({ value: section, text: text.trim() })
}

function settleLength(definition: FactDefinition, wire: LengthWire, path: Path, defaults: Defaults): Settled {
  const written = (typeof wire === 'object' ? `${digits(wire.value)} ${wire.unit}` : digits(wire)).trim()
  const length = readLength(written, defaults.lengthUnit)
  if (!length.ok) return refusal(length.reason, path, `"${written}" ${lengthAdvice(length)}`)
  const bare = defaults.lengthUnit !== undefined && !readLength(written).ok
  const text = bare ? `${written} ${defaults.lengthUnit ?? ''}` : written
  const tape = resolutionOf(wire) ?? defaults.resolution
  const value = { dimension: 'length', amount: length.nanometres } as const
  const advice = bare ? ` A bare number takes the lengthUnit of the document, here ${defaults.lengthUnit ?? ''}.` : ' Check the number and its unit.'
  return believable(definition, value, text, path, advice) ?? reading({ value, text, ...(tape === undefined ? {} : { resolution: tape }) })
}

function resolutionOf(wire: LengthWire): number | undefined {
  if (typeof wire !== 'object' || wire.resolution === undefined) return undefined
  const tape = readLength(`${digits(wire.resolution)} ${wire.unit}`)
  return tape.ok ? tape.nanometres : undefined
}

function digits(value: string | number): string {
  return typeof value === 'number' ? plainDigits(value) : value
}

function settleQuantity(definition: FactDefinition, wire: string | number, path: Path): Settled {
  const text = String(wire)
  const dimension = definition.dimension ?? 'count'
  const value = asRatio(readQuantity(text), dimension)
  if (value?.dimension !== dimension) {
    const bare = value?.dimension === 'count'
    return refusal(bare ? 'unitMissing' : 'unreadable', path, `"${text}" ${bare ? 'has no unit' : 'cannot be read here'}. Write it like ${quantityExamples[dimension]}`)
  }
  return believable(definition, value, text, path, '') ?? reading({ value, text })
}

/** A ratio may be written as a plain number: 0.25 is 25 %. */
function asRatio(value: Quantity | undefined, dimension: Quantity['dimension']): Quantity | undefined {
  return value?.dimension === 'count' && dimension === 'ratio' ? { ...value, dimension } : value
}

/** Refuses what no wall has, so that inches read as millimetres do not pass for a tiny window. */
function believable(definition: FactDefinition, value: Quantity, text: string, path: Path, advice: string): Settled | undefined {
  const [least, greatest] = boundsOf(definition)
  if (least === undefined || greatest === undefined || (value.amount >= least && value.amount <= greatest)) return undefined
  const shown = value.dimension === 'length' ? `${inchText(value.amount)} (${millimetreText(value.amount)})` : quantityText(value, 'inchPound')
  return refusal('notBelievable', path, `"${text}" is ${shown}, outside ${definition.between?.join(' to ') ?? ''} for ${definition.title.toLowerCase()}.${advice}`)
}

const boundsOf = onceFor(({ between }: FactDefinition) => (between ?? []).map((bound) => readQuantity(bound)?.amount))

function reading(value: Reading): Settled {
  return { ok: true, value }
}

function refusal(code: SettleCode, path: Path, detail: string): { ok: false; problems: readonly Problem<SettleCode>[] } {
  return { ok: false, problems: [{ code, pointer: pointerOf(path), detail }] }
}
