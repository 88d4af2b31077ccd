import { z } from 'zod'
import { date, editionName, factPath, publicationId, ruleId } from './identifier.ts'

export const comparator = z
  .enum(['notLessThan', 'notMoreThan', 'lessThan', 'moreThan', 'equalTo', 'oneOf', 'noneOf'])
  .meta({ id: 'Comparator', description: '"Less than 33 in" and "at most 33 in" differ, so each has its own comparator.' })
export type Comparator = z.infer<typeof comparator>

export const evidence = z.enum(['primary', 'secondary', 'memory']).meta({
  id: 'Evidence',
  description: 'primary: the text itself was read. secondary: a text that states the figure was read. memory: not confirmed in a text.',
})
export type Evidence = z.infer<typeof evidence>

/** Where a figure comes from. `readIn` is the address at which it was read, required unless it is from memory. */
export const citation = {
  publication: publicationId,
  editions: z.array(editionName).min(1),
  locator: z.string().min(1).max(200),
  evidence,
  lastReviewed: date,
  readIn: z.string().max(400).optional(),
  note: z.string().max(600).optional(),
}

export const unitSystem = z.enum(['inchPound', 'si']).meta({ id: 'UnitSystem' })

/** An amount in both unit systems as printed, and the one that governs: 4 in is 101.6 mm, so it fails a bare 102 mm. */
export const bothSystems = {
  governing: unitSystem,
  inchPound: z.string().max(40),
  si: z.string().max(40),
  /** The step to which the other figure was rounded, where its own digits do not tell: "10 mm" for 6 in printed as 150 mm. */
  roundedTo: z.string().max(40).optional(),
}

/** A pair as an instrument prints it, which may contradict itself. */
export const printedPair = {
  ...bothSystems,
  /** Says so where the two figures are printed as different amounts: they load as they are, and decide only where both agree. */
  printedConflict: z.string().min(1).max(600).optional(),
}

const quantityLimit = z.strictObject({ ...citation, comparator: comparator.optional(), ...printedPair })
const valueLimit = z.strictObject({ ...citation, comparator: comparator.optional(), value: z.union([z.boolean(), z.string().max(60)]) })
const valuesLimit = z.strictObject({ ...citation, comparator: comparator.optional(), values: z.array(z.string().max(60)).min(1) })
const proportionLimit = z.strictObject({
  ...citation,
  comparator: comparator.optional(),
  /** Such a part of another fact: "1/3" of wall.veneer.thickness. */
  proportion: z.string().regex(/^\d{1,4}\/\d{1,4}$/),
  of: factPath,
})
const tableLimit = z.strictObject({ ...citation, comparator: comparator.optional(), table: ruleId })

/** What one or more editions of one publication require. */
export const limit = z.union([quantityLimit, valueLimit, valuesLimit, proportionLimit, tableLimit])
export type Limit = z.infer<typeof limit>
export type QuantityLimit = z.infer<typeof quantityLimit>
