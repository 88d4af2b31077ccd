import { z } from 'zod'
import { instrument } from '../catalog/jurisdiction.ts'
import { comparator, evidence, unitSystem } from '../catalog/limit.ts'
import { force, outcome, part, reason } from '../catalog/rule.ts'
import { chainStep } from '../catalog/rule-set.ts'
import { holdPointId } from '../opening/hold-points.ts'

const text = z.string()
const counted = z.int().min(0).max(1_000_000)
const member = z.enum(['left', 'right']).meta({ id: 'Member', description: 'Which end, seen from outside.' })

const measured = z
  .strictObject({
    text: text.meta({ description: 'As it was given, or as it was worked out.' }),
    inchPound: text.nullable(),
    si: text.nullable(),
    nanometres: z.number().nullable().meta({ description: 'Lengths only.' }),
  })
  .meta({ id: 'Measured' })

const required = z
  .strictObject({
    text: text.meta({ description: 'The limit in a few words.' }),
    governing: unitSystem.nullable().meta({ description: 'Which of the two figures is compared.' }),
    inchPound: text.nullable(),
    si: text.nullable(),
    values: z.array(text).meta({ description: 'Allowed or barred values, where the limit is not an amount.' }),
  })
  .meta({ id: 'Required' })

export const margin = z
  .strictObject({ inchPound: text, si: text })
  .meta({ id: 'Margin', description: 'Spare when positive, short when negative, for every comparator.' })

const memberFinding = z
  .strictObject({ member: member.nullable(), outcome, measured: measured.nullable(), margin: margin.nullable() })
  .meta({ id: 'MemberFinding' })

export const remedy = z.strictObject({ beforeCoverUp: text, afterCoverUp: text }).meta({ id: 'Remedy' })

export const disagreement = z
  .strictObject({ source: text, states: text, evidence, note: text.nullable() })
  .meta({ id: 'Disagreement', description: 'Another source that says otherwise.' })

export const finding = z
  .strictObject({
    rule: text,
    revision: counted,
    title: text,
    statement: text,
    part,
    holdPoint: holdPointId,
    force,
    outcome,
    reason: reason.nullable(),
    nextStep: text.nullable().meta({ description: 'What to do about an outcome that is not determined.' }),
    fact: text.nullable(),
    quantity: text.nullable(),
    member: member.nullable().meta({ description: 'The end that decided, where there are two.' }),
    measured: measured.nullable(),
    comparator,
    required,
    margin: margin.nullable(),
    members: z.array(memberFinding),
    withinResolution: z.boolean().meta({ description: 'The tape cannot tell on which side of the limit the measurement lies.' }),
    differsByUnit: z.boolean().meta({ description: 'The figure in the other unit system would decide otherwise.' }),
    missing: z.array(text).meta({ description: 'Facts that would have to be known.' }),
    decidedBy: z.array(text).meta({ description: 'Facts that made the rule not applicable.' }),
    derivedFrom: z.array(text).meta({ description: 'Facts from which the checked one was worked out.' }),
    remedy: remedy.nullable(),
    cautions: z.array(text),
    evidence,
    lastReviewed: text,
    printedConflict: text.nullable().meta({ description: 'What to know where the adopted text prints two figures that contradict each other. It decides only where both agree.' }),
    disagreements: z.array(disagreement),
    chain: z.array(chainStep),
  })
  .meta({ id: 'Finding' })
export type Finding = z.infer<typeof finding>

const usedInput = z.strictObject({ name: text, from: text, text }).meta({ id: 'UsedInput' })
const source = z.strictObject({ title: text, locator: text, evidence, readIn: text.nullable() }).meta({ id: 'Source' })

const band = z.strictObject({ least: z.number(), greatest: z.number() }).meta({ id: 'Band', description: 'Between which bounds the value lies, in `unit`.' })

const quantityTable = z
  .strictObject({
    title: text,
    columns: z.array(z.strictObject({ title: text, unit: text.nullable().meta({ description: 'UCUM code of the amounts in this column.' }) }).meta({ id: 'QuantityColumn' })),
    rows: z.array(z.strictObject({ cells: z.array(z.strictObject({ text, amount: z.number().nullable() }).meta({ id: 'QuantityCell' })) }).meta({ id: 'QuantityRow' })),
  })
  .meta({ id: 'QuantityTable', description: 'Positions, pieces or a comparison beside the value.' })

export const computedQuantity = z
  .strictObject({
    id: text,
    title: text,
    part,
    status: z.enum(['computed', 'notDetermined', 'notApplicable']).meta({ id: 'QuantityStatus', description: 'An evaluation leaves out what does not apply.' }),
    value: text.nullable(),
    inchPound: text.nullable(),
    si: text.nullable(),
    amount: z.number().nullable().meta({ description: 'In `unit`; null for a text or a list.' }),
    unit: text.nullable().meta({ description: 'UCUM code of `amount` and `amounts`.' }),
    amounts: z.array(z.number()),
    band: band.nullable().meta({ description: 'For a value that is known only between bounds.' }),
    formula: text,
    inputs: z.array(usedInput),
    steps: z.array(text),
    tables: z.array(quantityTable),
    notes: z.array(text),
    assumptions: z.array(text),
    sources: z.array(source),
    missing: z.array(text),
    reason: reason.nullable(),
    why: text.nullable(),
    indicative: z.boolean().meta({ description: 'Only orders or compares; not a figure to build by.' }),
    needsLicensedProfessional: z.boolean(),
  })
  .meta({ id: 'ComputedQuantity' })
export type ComputedQuantity = z.infer<typeof computedQuantity>

export const toMeasure = z
  .strictObject({
    fact: text,
    title: text,
    help: text,
    holdPoint: holdPointId,
    hiddenBy: holdPointId.nullable(),
    decides: z.array(text).meta({ description: 'Rules that this fact alone would settle.' }),
    contributesTo: z.array(text).meta({ description: 'Rules that need it and something else.' }),
  })
  .meta({ id: 'FactToMeasure' })
export type FactToMeasure = z.infer<typeof toMeasure>

const subjectFact = z
  .strictObject({ fact: text, member: member.nullable(), given: text, settled: text, derivedFrom: z.array(text), conflictsWith: z.array(text) })
  .meta({ id: 'SubjectFact' })

export const verdict = z.enum(['pass', 'attention', 'incomplete', 'fail']).meta({ id: 'Verdict' })
export type Verdict = z.infer<typeof verdict>

const summary = z
  .strictObject({
    pass: counted,
    fail: counted,
    notDetermined: counted,
    notApplicable: counted,
    mandatoryFailures: counted,
    mandatoryNotDetermined: counted,
    fromMemory: counted.meta({ description: 'Decided findings whose limit is not confirmed in a text.' }),
    verdict,
  })
  .meta({ id: 'Summary' })
export type Summary = z.infer<typeof summary>

const repealed = z
  .strictObject({ rule: text, title: text, reason: text, document: text.nullable(), modification: text.nullable(), instrument: instrument.nullable(), chain: z.array(chainStep) })
  .meta({ id: 'RepealedRule' })

/** What the core answers: everything that the digest covers. */
export const assessment = z.strictObject({
  method: text.meta({ description: 'Rises when arithmetic or logic changes.' }),
  catalog: z.strictObject({ release: text, digest: text }).meta({ id: 'CatalogStamp' }),
  jurisdiction: text.nullable(),
  resolvedAt: text.nullable(),
  asOf: text,
  adoption: text.nullable(),
  editions: z.array(text),
  holdPoint: holdPointId.nullable(),
  inPart: z.boolean().meta({ description: 'The catalog holds only some requirements of the code in force, so no verdict is better than incomplete.' }),
  subject: z
    .strictObject({ reference: text.nullable(), basis: z.enum(['asDesigned', 'asBuilt']).nullable(), unitSystem: unitSystem.meta({ description: 'The system in which the opening was described; values lead with it.' }), digest: text, facts: z.array(subjectFact) })
    .meta({ id: 'Subject' }),
  summary,
  findings: z.array(finding),
  quantities: z.array(computedQuantity),
  nextToMeasure: z.array(toMeasure),
  repealed: z.array(repealed),
  notice: text,
})
export type Assessment = z.infer<typeof assessment>

/** The evaluation document of the wire. */
export const evaluation = z
  .strictObject({ id: text, evaluatedAt: text, ...assessment.shape, digest: text.meta({ description: 'SHA-256 over RFC 8785 canonical JSON of all but id and evaluatedAt.' }) })
  .meta({ id: 'Evaluation', title: 'Evaluation of one opening' })
export type Evaluation = z.infer<typeof evaluation>
