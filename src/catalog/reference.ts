import { z } from 'zod'
import { date, editionName, factPath, publicationId, ruleId } from './identifier.ts'
import { bothSystems, evidence } from './limit.ts'

const source = {
  publication: publicationId,
  edition: editionName,
  locator: z.string().min(1).max(200),
  evidence,
  lastReviewed: date,
  readIn: z.string().max(400).optional(),
  note: z.string().max(600).optional(),
}

/** A figure that quantities compute with: the modulus of steel, the cover an arch needs. */
export const parameter = z.strictObject({
  parameter: ruleId,
  title: z.string().min(1).max(160),
  ...bothSystems,
  ...source,
  disagreements: z.array(z.strictObject({ source: z.string().max(300), states: z.string().max(300), evidence })).optional(),
})
export type Parameter = z.infer<typeof parameter>

const cell = z.union([z.string(), z.number(), z.boolean(), z.null(), z.strictObject({ inchPound: z.string(), si: z.string() })])

/** A cell in words; of a figure in both systems the inch-pound one, as published. */
export function cellText(value: z.infer<typeof cell> | undefined): string {
  return typeof value === 'object' && value !== null ? value.inchPound : String(value)
}

/** Rows of a published table. With `lookup`, a rule may take its limit from the row whose keys equal the opening's facts. */
export const table = z.strictObject({
  table: ruleId,
  title: z.string().min(1).max(160),
  ...source,
  lookup: z
    .strictObject({
      keys: z.array(z.strictObject({ column: z.string(), fact: factPath })).min(1),
      gives: z.string(),
      governing: bothSystems.governing,
    })
    .optional(),
  columns: z.record(z.string(), z.string()).meta({ description: 'What each column holds, with its unit.' }),
  rows: z.array(z.record(z.string(), cell)).min(1),
})
export type Table = z.infer<typeof table>

/** A reminder of a danger that comes with a remedy. */
export const caution = z.strictObject({
  caution: z.string().regex(/^[a-z][A-Za-z]*$/),
  title: z.string().min(1).max(120),
  text: z.string().min(1).max(600),
  source: z.string().min(1).max(300),
  evidence,
})
export type Caution = z.infer<typeof caution>
