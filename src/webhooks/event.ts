import { z } from 'zod'
import { outcome } from '../catalog/rule.ts'
import { verdict } from '../evaluation/document.ts'
import { holdPointId } from '../opening/hold-points.ts'
import { entryKinds, type EntryKind } from '../record/entry.ts'
import type { NewEvent } from '../store/outbox.ts'

const text = z.string()
const href = text.meta({ description: 'Where it can be read, with a token.' })
const project = text.meta({ description: 'The id of the project.' })
const place = {
  jurisdiction: text.nullable(), asOf: text.meta({ description: 'The permit application date.' }), edition: text.nullable(), publication: text.nullable(),
  version: text.meta({ description: 'Of the content; the ETag of the project.' }),
}

const outcomeChange = z.strictObject({ rule: text, member: z.enum(['left', 'right']).nullable(), before: outcome.nullable().meta({ description: 'Null where it was not judged before.' }), after: outcome })

const recorded = z.strictObject({ id: text, kind: z.enum(Object.keys(entryKinds) as [EntryKind, ...EntryKind[]]), sequence: z.int().meta({ description: 'Its number in the journal of the project.' }) })

/** What each event tells: ids, what changed and where to read more. No names, no free text, no readings. */
export const eventData = {
  openingRecorded: z
    .strictObject({
      project, opening: text, entries: z.array(recorded), verdict: verdict.nullable().meta({ description: 'Null while it is not described far enough.' }),
      verdictAsGranted: verdict.nullable().meta({ description: 'With waivers and modifications in force counted in.' }),
      changed: z.array(outcomeChange).meta({ description: 'What comes out otherwise than before; of a first look, what is met and what is not.' }),
      moreChanged: z.int().meta({ description: 'How many changes are not listed because there are too many.' }), href,
    })
    .meta({ description: 'Things were put on record of an opening.' }),
  holdPointSignedOff: z
    .strictObject({
      project, opening: text, holdPoint: holdPointId, entry: text,
      ready: z.boolean().nullable().meta({ description: 'Whether all that is mandatory there was met or waived; null when it could not be evaluated.' }),
      withReason: z.boolean().meta({ description: 'Whether a reason was given for signing off all the same.' }), href,
    })
    .meta({ description: 'A hold point was signed off at an opening.' }),
  projectCreated: z.strictObject({ project, ...place, href }).meta({ description: 'The record of a building was opened.' }),
  projectChanged: z.strictObject({ project, ...place, href }).meta({ description: 'The title, the place or the date of a project was corrected. What is on record is judged by the new ones from now on.' }),
  amendmentAdopted: z
    .strictObject({ amendment: text, jurisdiction: text, sequence: z.int(), digest: text, effectiveFrom: text, effectiveUntil: text.nullable(), href })
    .meta({ description: 'A jurisdiction adopted an amendment through this service.' }),
  evaluationKept: z.strictObject({ evaluation: text, jurisdiction: text.nullable(), verdict, release: text, digest: text, href }).meta({ description: 'An evaluation was kept.' }),
  ping: z.strictObject({ webhook: text, href }).meta({ description: 'Somebody tried whether a webhook is reached.' }),
} as const

export type EventName = keyof typeof eventData
export type EventData<N extends EventName> = z.input<(typeof eventData)[N]>

/** What one can listen for; a ping comes when it is asked for. */
export const eventNames = Object.keys(eventData).filter((name) => name !== 'ping') as [Exclude<EventName, 'ping'>, ...Exclude<EventName, 'ping'>[]]

export function typeOf(name: EventName): `wythe.${EventName}` {
  return `wythe.${name}`
}

/** As many digits as make numbers sort as text, which the sequence extension of CloudEvents asks for. */
const digits = 10

/** The whole body, a CloudEvent in JSON (CloudEvents 1.0.2, structured mode). */
export function envelopeOf<N extends EventName>(name: N) {
  return z
    .strictObject({
      specversion: z.literal('1.0'),
      id: text.meta({ description: 'The same however often it is delivered: what was seen already can be passed over. Also in `webhook-id`.' }),
      source: text.meta({ description: 'The address of what it happened to.' }),
      type: z.literal(typeOf(name)),
      subject: text.meta({ description: 'What it happened to within the source.' }),
      time: z.iso.datetime().meta({ description: 'When it happened.' }),
      datacontenttype: z.literal('application/json'),
      sequence: text.regex(new RegExp(`^\\d{${digits}}$`)).meta({ description: 'Its place among the events told of this source; the higher is the later. Deliveries may arrive in another order.' }),
      traceparent: text.optional().meta({ description: 'The W3C trace context of the request in which it happened, where there is one (CloudEvents distributed tracing extension).' }),
      data: eventData[name],
    })
    .meta({ description: eventData[name].meta()?.description })
}

interface Happening<N extends EventName> {
  readonly id: string
  readonly name: N
  readonly project?: string
  readonly source: string
  readonly subject: string
  readonly at: string
  readonly traceparent?: string | undefined
  readonly data: EventData<N>
}

/** An event as the outbox takes it. Data of another shape than is published is a fault of ours. */
export function newEvent<N extends EventName>({ id, name, project: of, source, subject, at, traceparent, data }: Happening<N>): NewEvent {
  const type = typeOf(name)
  const told: unknown = eventData[name].parse(data)
  return {
    id, type: name, project: of ?? null, source, at,
    text: (sequence) => JSON.stringify({ specversion: '1.0', id, source, type, subject, time: at, datacontenttype: 'application/json', sequence: String(sequence).padStart(digits, '0'), ...(traceparent === undefined ? {} : { traceparent }), data: told }),
  }
}
