import type { FactDefinition } from '../opening/fact.ts'
import type { LengthUnit } from '../units/length-text.ts'
import { quantityExamples, readQuantity } from '../units/quantity.ts'
import { amountPattern, lengthPattern } from '../units/written-pattern.ts'
import { choiceWords, yesNo } from '../opening/choice-words.ts'

export type JsonSchema = Readonly<Record<string, unknown>>

/** What an answer may be. Texts of one kind are described once, in $defs. */
export interface ValueSchema {
  readonly schema: JsonSchema
  readonly definitions: Readonly<Record<string, JsonSchema>>
  /** How to write it, where that does not go without saying. */
  readonly howToWrite: string | null
  /** The same in a few words, where so many questions would repeat it that the form says it once at its head. */
  readonly inShort?: string
}

export function valueSchema(definition: FactDefinition, lengthUnit: LengthUnit | undefined): ValueSchema {
  const { kind, dimension = 'count', choices = [] } = definition
  if (kind === 'boolean') return choice(yesNo, [true, false])
  if (kind === 'choice') return choice(choices.map(choiceWords), choices)
  if (kind === 'section') return named('section', { type: 'string', maxLength: 60, examples: ['L5x3-1/2x5/16', '2L6x3-1/2x5/16', 'L127x89x7.9'] }, 'Write it like L5x3-1/2x5/16 or L127x89x7.9.')
  if (dimension === 'count') return count(definition)
  const signed = (readQuantity(definition.between?.[0] ?? '0')?.amount ?? 0) < 0
  if (dimension === 'length') return length(signed, lengthUnit)
  const examples = quantityExamples[dimension]
  const written = { type: 'string', maxLength: 60, pattern: amountPattern(dimension, { signed }), examples: examples.split(/,? or (?:as a slope )?/) }
  return named(signed ? `${dimension}OrNegative` : dimension, written, `Write it like ${examples}.`)
}

/**
 * A list of words, also for yes and no. A box that is not ticked could mean "no" or "not looked at", and form libraries
 * fill in the first of several constants by themselves; of a plain list of words they take none until somebody chooses.
 */
function choice(words: readonly string[], values: readonly unknown[]): ValueSchema {
  return { schema: { type: 'string', enum: [...words], 'x-values': [...values] }, definitions: {}, howToWrite: null }
}

function count({ between = ['0', '10000'] }: FactDefinition): ValueSchema {
  const [minimum, maximum] = between.map(Number)
  return { schema: { type: 'integer', minimum, maximum }, definitions: {}, howToWrite: 'A whole number.', inShort: '' }
}

export function howToWriteLengths(lengthUnit: LengthUnit | undefined): string {
  const bare = lengthUnit === undefined ? '' : ` A number alone is in ${lengthUnit === 'in' ? 'inches' : 'millimeters'}.`
  return `Write it like 3 7/8 in, 4'-6 1/2" or 98 mm.${bare}`
}

function length(signed: boolean, lengthUnit: LengthUnit | undefined): ValueSchema {
  const examples = lengthUnit === 'mm' ? ['98 mm', '3 7/8 in'] : ['3 7/8 in', '98 mm']
  const schema = { type: 'string', maxLength: 60, pattern: lengthPattern({ signed, lengthUnit }), examples }
  const inShort = lengthUnit === undefined ? `With its unit, like ${examples[0] ?? ''}.` : `In ${lengthUnit === 'in' ? 'inches' : 'millimeters'}, or with its unit.`
  return { ...named(signed ? 'lengthOrNegative' : 'length', schema, howToWriteLengths(lengthUnit)), inShort }
}

function named(name: string, definition: JsonSchema, howToWrite: string): ValueSchema {
  return { schema: { $ref: `#/$defs/${name}` }, definitions: { [name]: definition }, howToWrite }
}
