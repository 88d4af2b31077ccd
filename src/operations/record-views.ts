import { z } from 'zod'
import { instrument } from '../catalog/jurisdiction.ts'
import { force } from '../catalog/rule.ts'
import { holdPointId } from '../opening/hold-points.ts'
import { entryKinds, observationMethod, type EntryKind } from '../record/entry.ts'
import { nonConformanceStates, type NonConformance } from '../record/non-conformance.ts'
import type { Observed } from '../record/observed.ts'
import type { FactRecord } from '../record/as-built.ts'
import type { Recorded } from '../record/opening-record.ts'
import { signOffGround } from '../record/sign-off.ts'
import type { Grant } from '../record/waivers.ts'
import type { Entry } from '../store/journal.ts'

const text = z.string()
const end = z.enum(['left', 'right']).nullable()

const readingView = z
  .strictObject({ entry: text, value: text, method: observationMethod, holdPoint: holdPointId, at: text, by: text })
  .meta({ id: 'ReadingView' })

export const factRecordView = z
  .strictObject({ fact: text, member: end, governs: readingView, earlier: z.array(readingView), contradicted: z.boolean().meta({ description: 'An earlier reading says something else, beyond what the tapes can tell.' }) })
  .meta({ id: 'FactRecord' })

export const otherwiseView = z.strictObject({ fact: text, member: end, designed: text, built: text }).meta({ id: 'BuiltOtherwise' })

export const grantView = z
  .strictObject({
    entry: text, rule: text, kind: z.enum(['waiver', 'modification']).meta({ id: 'GrantKind' }), grantedBy: text, instrument,
    expires: text.nullable(), inForce: z.boolean(), conditions: text.nullable(),
  })
  .meta({ id: 'Grant', description: 'A waiver or a modification that the building official granted.' })

const remedyView = z.strictObject({ entry: text, at: text, by: text, work: text, due: text.nullable() }).meta({ id: 'ChosenRemedy' })
const verificationView = z.strictObject({ entry: text, at: text, by: text, result: z.enum(['mended', 'notMended']), holdPoint: holdPointId, note: text.nullable() }).meta({ id: 'VerificationView' })

export const nonConformanceView = z
  .strictObject({
    fingerprint: text.meta({ description: 'The same for the same rule at the same end of the same opening, however often it is looked at.' }),
    rule: text, title: text, member: end, force: force.nullable(),
    status: z.enum(['new', 'unchanged', 'reopened', 'open', 'settled']).meta({ id: 'MissStatus', description: 'Over all looks; open: it was missed, and whether it still is cannot be told.' }),
    state: z.enum(nonConformanceStates).meta({ id: 'NonConformanceState', description: 'On its way to being settled. Only a reading that meets the rule settles it; saidMended asks for that reading.' }),
    since: text, changed: text,
    measured: text.nullable(), required: text.nullable(),
    covered: z.boolean().meta({ description: 'Later work has hidden it.' }),
    remedy: text.nullable().meta({ description: 'How to put it right as the work stands now.' }),
    cautions: z.array(text),
    chosen: remedyView.nullable(), verification: verificationView.nullable(), grant: grantView.nullable(),
  })
  .meta({ id: 'NonConformance', description: 'A rule that was missed, with what was done about it.' })

export const signOffView = z
  .strictObject({
    entry: text, holdPoint: holdPointId, at: text, by: text, reason: text.nullable(),
    ground: signOffGround.nullable().meta({ description: 'Null when the opening could not be evaluated at that time.' }),
    ready: z.boolean().nullable().meta({ description: 'Whether it would be ready by all that is known now; null while it cannot be evaluated.' }),
  })
  .meta({ id: 'SignOffView' })

export const keptEntry = z
  .strictObject({ entry: text, kind: z.enum(Object.keys(entryKinds) as [EntryKind, ...EntryKind[]]).meta({ id: 'EntryKind' }), at: text, by: text, content: text.meta({ description: 'The entry as JSON text.' }) })
  .meta({ id: 'KeptEntry' })

export function factRecordOf({ fact, member, governs, earlier, contradicted }: FactRecord): z.infer<typeof factRecordView> {
  return { fact, member, governs: readingOf(governs), earlier: earlier.map(readingOf), contradicted }
}

export function grantOf({ entry, held, inForce }: Grant): z.infer<typeof grantView> {
  const { rule, kind, grantedBy, instrument: granted, expires, conditions } = held
  return { entry, rule, kind, grantedBy, instrument: granted, expires: expires ?? null, inForce, conditions: conditions ?? null }
}

export function nonConformanceOf({ chosen, verification, grant, cautions, ...miss }: NonConformance): z.infer<typeof nonConformanceView> {
  return {
    ...miss,
    cautions: [...cautions],
    chosen: chosen && { ...whoOf(chosen), work: chosen.held.work, due: chosen.held.due ?? null },
    verification: verification && { ...whoOf(verification), result: verification.held.result, holdPoint: verification.held.holdPoint, note: verification.note },
    grant: grant && grantOf(grant),
  }
}

export function signOffOf(signOff: Recorded<'signOff'>, ready: boolean | null): z.infer<typeof signOffView> {
  const { held, judged } = signOff
  return { ...whoOf(signOff), holdPoint: held.holdPoint, reason: held.reason ?? null, ground: judged === null ? null : signOffGround.parse(judged), ready }
}

export function keptOf({ id, kind, body }: Entry): z.infer<typeof keptEntry> {
  const { at, by } = body as { at: string; by: string }
  return { entry: id, kind: kind as EntryKind, at, by, content: JSON.stringify(body) }
}

function whoOf({ entry, at, by }: Pick<Recorded<'remedy'>, 'entry' | 'at' | 'by'>) {
  return { entry, at, by }
}

function readingOf({ entry, reading, method, holdPoint, at, by }: Observed): z.infer<typeof readingView> {
  return { entry, value: reading.text, method, holdPoint, at, by }
}
