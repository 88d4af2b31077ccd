import { z } from 'zod'
import { factPath, ruleId } from '../catalog/identifier.ts'
import { instrument } from '../catalog/jurisdiction.ts'
import { lengthWire } from '../opening/fact.ts'
import { holdPointId } from '../opening/hold-points.ts'
import { openingSchema } from '../opening/schema.ts'

const text = z.string()
const instant = z.iso.datetime({ offset: true, error: 'must be a time with its offset, like "2026-03-02T09:30:00Z"' }).max(40)
const member = z.enum(['left', 'right']).nullish().meta({ description: 'Which end, seen from outside; both when left out.' })

export const entryId = z.uuid('must be a UUID; version 7 keeps the order in which they were made').meta({ description: 'Made by the client, so that the same thing sent twice is one.' })
export const openingId = text.regex(/^[\w.~-]{1,100}$/, 'must be 1 to 100 letters, digits, or any of . _ ~ -').meta({ description: "The client's own id of the opening within the project.", maxLength: 100 })

/** A value as it was read: what a form or a phone sends. */
export const factValue = z
  .union([z.boolean(), lengthWire], { error: 'a text with its unit, a number, a choice, true or false, or { value, unit, resolution }' })
  .meta({ id: 'FactValue', title: 'Fact value', description: 'A text with its unit, a number, a choice, true or false, or { value, unit, resolution }.' })

const evidenceLink = z
  .strictObject({
    link: z.url('must be an address').max(2_000),
    sha256: text.regex(/^[0-9a-f]{64}$/, 'must be a SHA-256 in 64 lower-case hexadecimal digits').meta({ maxLength: 64 }),
    takenAt: instant.nullish(),
  })
  .meta({ id: 'EvidenceLink', description: 'A picture or a paper that is kept elsewhere, pinned by its SHA-256.' })

export const observationMethod = z.enum(['examine', 'interview', 'test']).meta({ id: 'ObservationMethod', description: 'Looked at or measured; told by somebody; tried out.' })

const observation = z
  .strictObject({
    fact: factPath.meta({ description: 'The path of the fact: "head.support.bearing".' }),
    member,
    value: factValue,
    lengthUnit: z.enum(['in', 'mm']).nullish().meta({ description: 'The unit of a length that is written without one.' }),
    method: observationMethod,
    holdPoint: holdPointId.meta({ description: 'Where the work stood when it was seen.' }),
  })
  .meta({ id: 'ObservationInput' })

const design = z
  .strictObject({
    description: openingSchema,
    replaces: text.max(100).nullish().meta({ description: 'The version of the design that this one replaces, so that nobody overwrites what another has drawn. Left out for the first.' }),
  })
  .meta({ id: 'DesignInput' })

const correction = z
  .strictObject({ entry: entryId, reason: text.min(1).max(2_000) })
  .meta({ id: 'CorrectionInput', description: 'Takes another entry out of account: a reading that was a mistake, a sign-off or a waiver that is withdrawn. It stays on record and is shown with the reason.' })

const signOff = z
  .strictObject({ holdPoint: holdPointId, reason: text.min(1).max(2_000).nullish().meta({ description: 'Why it is signed off although something mandatory is open or not met.' }) })
  .meta({ id: 'SignOffInput' })

const waiver = z
  .strictObject({
    rule: ruleId,
    kind: z.enum(['waiver', 'modification']).meta({ id: 'WaiverKind', description: 'Freed from the rule, or allowed to meet it in another way.' }),
    instrument: instrument.meta({ id: 'InstrumentInput' }),
    grantedBy: text.min(1).max(120).meta({ description: 'The office that granted it.' }),
    expires: z.iso.date('must be a date like "2027-03-01"').nullish(),
    conditions: text.max(2_000).nullish(),
  })
  .meta({ id: 'WaiverInput', description: 'What the building official granted for one rule at one opening.' })

const verification = z
  .strictObject({ rule: ruleId, member, result: z.enum(['mended', 'notMended']).meta({ id: 'VerificationResult' }), holdPoint: holdPointId })
  .meta({ id: 'VerificationInput', description: 'Somebody looked at how a miss was put right.' })

const remedy = z
  .strictObject({ rule: ruleId, member, work: text.min(1).max(2_000).meta({ description: 'What is to be done.' }), due: z.iso.date('must be a date like "2027-03-01"').nullish() })
  .meta({ id: 'RemedyInput', description: 'How a miss is to be put right.' })

/** What an entry may hold; exactly one of these. */
export const entryKinds = { design, observation, correction, signOff, waiver, remedy, verification } as const
export type EntryKind = keyof typeof entryKinds

const around = {
  id: entryId,
  opening: openingId,
  at: instant.meta({ description: 'When it was collected or decided, by the clock of the device.' }),
  by: text.min(1).max(120).meta({ description: 'A role or an opaque id, never the name of a person: "inspector", "crew-7".' }),
  note: text.max(2_000).nullish(),
  evidence: z.array(evidenceLink).max(20).nullish(),
}

const nullishKinds = {
  design: design.nullish(), observation: observation.nullish(), correction: correction.nullish(), signOff: signOff.nullish(), waiver: waiver.nullish(), remedy: remedy.nullish(), verification: verification.nullish(),
}

/** One thing to put on record. */
export const entryInput = z
  .strictObject({ ...around, ...nullishKinds })
  .meta({ id: 'EntryInput', description: 'One thing to put on record: exactly one of design, observation, correction, signOff, waiver, remedy and verification.' })
export type EntryInput = z.output<typeof entryInput>

/** The same before the description of a design is read, which has a parser of its own. */
export const unreadEntry = z.strictObject({ ...around, ...nullishKinds, design: design.extend({ description: z.unknown() }).nullish() })
export type UnreadEntry = z.output<typeof unreadEntry>

/** The one kind that an entry is of; undefined where there is none, or more than one. */
export function kindOf(entry: UnreadEntry): EntryKind | undefined {
  const given = (Object.keys(entryKinds) as EntryKind[]).filter((kind) => (entry[kind] ?? null) !== null)
  return given.length === 1 ? given[0] : undefined
}
