import { z } from 'zod'
import { draw, drawingKinds, type Drawing } from '../drawing/index.ts'
import { openingSchema } from '../opening/schema.ts'
import { around, evaluateAs } from './evaluate-opening.ts'
import type { Operation } from './operation.ts'

const text = z.string()

export const drawingKind = z
  .enum(drawingKinds)
  .meta({ id: 'DrawingKind', description: 'elevation: the front of the wall. section: head, sill and base cut through. flashingPattern: the blanks of the flashings. weepsAndTies: where each weep and tie goes.' })

const callout = z
  .strictObject({
    number: z.int().min(1).max(1000).meta({ description: 'As it stands in the drawing; findings of one part may share it.' }),
    rule: text,
    outcome: z.enum(['fail', 'notDetermined']).meta({ id: 'DrawnOutcome' }),
    text,
  })
  .meta({ id: 'Callout', description: 'A finding that is numbered in the drawing.' })

/** A drawing on the wire. */
export const drawing = z
  .strictObject({
    kind: drawingKind,
    title: text,
    description: text.meta({ description: 'What is to be seen, for whoever does not see it.' }),
    svg: text.meta({ description: 'The whole document, in millimeters of paper.' }),
    unknown: z.array(text).meta({ description: 'Facts that are drawn dashed or left out because they are not known.' }),
    callouts: z.array(callout),
  })
  .meta({ id: 'Drawing' })

const kind = { kind: drawingKind }
const input = z.strictObject({ opening: openingSchema, ...around, ...kind })
/** The opening is read by its own parser, as it is for an evaluation. */
const unread = z.strictObject({ opening: z.unknown().optional(), ...around, ...kind })

export const drawOpening: Operation<typeof input, typeof drawing> = {
  name: 'drawOpening',
  summary: 'Draw one opening',
  description: 'Evaluates an opening and draws it: to scale, with measures, and a number at each part of which a finding fails or is not determined. What is not known is drawn dashed or left out, and said. Nothing is kept.',
  input,
  output: drawing,
  run: (deps, raw) => {
    const evaluated = evaluateAs(unread, deps, raw)
    if (!evaluated.ok) return evaluated
    const { request, opening, full } = evaluated.value
    return { ok: true, value: onTheWire(draw(request.kind, opening, full)) }
  },
}

export function onTheWire({ unknown, callouts, ...rest }: Drawing): z.infer<typeof drawing> {
  return { ...rest, unknown: [...unknown], callouts: callouts.map((one) => ({ ...one })) }
}
