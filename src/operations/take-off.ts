import { z } from 'zod'
import { quantityInputs } from '../evaluation/quantity-inputs.ts'
import { notice } from '../evaluation/notice.ts'
import { describeOpening } from '../opening/describe.ts'
import type { Opening } from '../opening/opening.ts'
import { valueOf } from '../opening/opening.ts'
import type { Problem } from '../opening/problem.ts'
import { openingSchema } from '../opening/schema.ts'
import { buildingTakeOff, type BuildingTakeOff } from '../quantities/building-take-off.ts'
import { computeQuantities } from '../quantities/compute.ts'
import { everydayQuantities } from '../quantities/index.ts'
import { baseUnits } from '../units/dimension.ts'
import { quantityText } from '../units/quantity-text.ts'
import type { RuleSet } from '../catalog/rule-set.ts'
import { cutListsOf, flashingCutLists, flashingPlace } from './flashing-cut-lists.ts'
import { lengthView, viewOfLength } from './lengths.ts'
import { failure, parseInput, type Dependencies, type Operation } from './operation.ts'
import { place, resolvePlace } from './place.ts'

const text = z.string()
const counted = z.int().min(0).max(100_000_000)

const around = { ...place }
const line = { count: z.int().min(1).max(100_000).nullish().meta({ description: 'How many openings are so; 1 when left out.' }) }
const input = z
  .strictObject({ ...around, openings: z.array(z.strictObject({ ...line, opening: openingSchema }).meta({ id: 'ScheduledOpeningInput' })).min(1).max(500) })
  .meta({ id: 'TakeOffRequest' })
/** Descriptions are read by their own parser, so that all problems are told at once. */
const unread = z.strictObject({ ...around, openings: z.array(z.strictObject({ ...line, opening: z.unknown() })).min(1).max(500) })

export const sectionChosen = z.enum(['described', 'lightest', 'notKnown']).meta({ id: 'SectionChosen' })

const lintelPiece = z
  .strictObject({ section: text.nullable(), chosen: sectionChosen, length: lengthView, count: counted, references: z.array(text) })
  .meta({ id: 'LintelPiece' })
export const flashingPiece = z
  .strictObject({ place: flashingPlace, length: lengthView, girth: lengthView.nullable(), count: counted, references: z.array(text) })
  .meta({ id: 'FlashingPiece' })
export const total = z
  .strictObject({
    quantity: text, title: text, unit: text.nullable(), amount: z.number(), inchPound: text, si: text,
    counted: z.array(text).meta({ description: 'Openings in the sum.' }),
    notApplicable: z.array(text), notKnown: z.array(text).meta({ description: 'Openings that are missing in the sum.' }),
  })
  .meta({ id: 'TakeOffTotal' })
export const gap = z.strictObject({ reference: text, count: counted, quantity: text, title: text, missing: z.array(text), why: text.nullable() }).meta({ id: 'TakeOffGap' })

const takeOffView = z
  .strictObject({
    jurisdiction: text.nullable(), asOf: text, editions: z.array(text),
    openings: counted,
    lintels: z.array(lintelPiece),
    flashing: z.array(flashingPiece),
    cutLists: z.array(flashingCutLists),
    totals: z.array(total),
    gaps: z.array(gap).meta({ description: 'What could not be computed; the totals are short of it.' }),
    notice: text,
  })
  .meta({ id: 'TakeOff' })

export const takeOff: Operation<typeof input, typeof takeOffView> = {
  name: 'takeOff',
  cost: { units: 5, each: 'openings' },
  summary: 'Take off a whole opening schedule',
  description: 'Lintels, flashing with its cutting lists, weeps, ties, brick and sealant of some openings together. What is not known is listed as a gap, never counted as nought.',
  input,
  output: takeOffView,
  run: (deps, raw) => {
    const request = parseInput(unread, raw)
    if (!request.ok) return request
    const described = request.value.openings.map(({ opening }) => describeOpening(opening))
    const problems = described.flatMap((opening, index) => (opening.ok ? [] : opening.problems.map((problem): Problem => ({ ...problem, pointer: `/openings/${index}/opening${problem.pointer}` }))))
    if (problems.length > 0) return failure('invalidInput', problems)
    const ruleSet = resolvePlace(deps, request.value)
    if (!ruleSet.ok) return ruleSet
    const openings = described.flatMap((opening, index) => (opening.ok ? [{ opening: opening.value, count: request.value.openings[index]?.count ?? 1 }] : []))
    return { ok: true, value: takenOff(openings, ruleSet.value, deps) }
  },
}

function takenOff(openings: readonly { readonly opening: Opening; readonly count: number }[], ruleSet: RuleSet, { catalog }: Dependencies): z.infer<typeof takeOffView> {
  const scheduled = openings.map(({ opening, count }, index) => {
    const section = valueOf(opening, 'head.support.section')
    const results = computeQuantities(everydayQuantities, quantityInputs(opening, ruleSet, catalog))
    return { reference: opening.reference ?? `opening ${index + 1}`, count, results, ...(typeof section === 'string' ? { section } : {}) }
  })
  const whole = buildingTakeOff(scheduled)
  return {
    jurisdiction: ruleSet.jurisdiction, asOf: ruleSet.asOf, editions: [...ruleSet.editions],
    openings: whole.openings,
    lintels: whole.lintels.map(({ length, references, ...piece }) => ({ ...piece, length: viewOfLength(length), references: [...references] })),
    flashing: whole.flashing.map(viewOfFlashing),
    cutLists: cutListsOf(scheduled),
    totals: whole.totals.map(viewOfTotal),
    gaps: whole.gaps.map(viewOfGap),
    notice,
  }
}

export function viewOfFlashing({ length, girth, references, ...piece }: BuildingTakeOff['flashing'][number]): z.infer<typeof flashingPiece> {
  return { ...piece, length: viewOfLength(length), girth: girth === null ? null : viewOfLength(girth), references: [...references] }
}

export function viewOfGap({ missing, ...one }: BuildingTakeOff['gaps'][number]): z.infer<typeof gap> {
  return { ...one, missing: [...missing] }
}

export function viewOfTotal({ quantity, title, dimension, total: amount, counted: known, notApplicable, notKnown }: BuildingTakeOff['totals'][number]): z.infer<typeof total> {
  const lists = { counted: [...known], notApplicable: [...notApplicable], notKnown: [...notKnown] }
  if (dimension === null) return { quantity, title, unit: null, amount, inchPound: String(amount), si: String(amount), ...lists }
  return { quantity, title, unit: baseUnits[dimension], amount, inchPound: quantityText({ dimension, amount }, 'inchPound'), si: quantityText({ dimension, amount }, 'si'), ...lists }
}
