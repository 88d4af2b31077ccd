import { z } from 'zod'
import { barrier } from './parts/barrier.ts'
import { base } from './parts/base.ts'
import { exposure } from './parts/exposure.ts'
import { geometry } from './parts/geometry.ts'
import { head } from './parts/head.ts'
import { jambs } from './parts/jambs.ts'
import { workProcess } from './parts/process.ts'
import { sill } from './parts/sill.ts'
import { ties } from './parts/ties.ts'
import { wall } from './parts/wall.ts'

/**
 * The description of one opening, as it comes over the wire. Everything but the opening's kind, width and height
 * may be left out: absent or null means not known; false and 0 are facts. Unknown keys are errors.
 */
export const openingSchema = z
  .strictObject({
    reference: z.string().max(200).nullish().meta({ description: "The caller's own mark for the opening." }),
    basis: z.enum(['asDesigned', 'asBuilt']).nullish().meta({ description: 'Whether the facts come from drawings or from the wall.' }),
    lengthUnit: z.enum(['in', 'mm']).nullish().meta({ description: 'The unit of every length that is written without one.' }),
    lengthResolution: z.string().max(60).nullish().meta({ description: 'What the tape can tell, for every measured length: "1/16 in".' }),
    opening: geometry,
    wall: wall.nullish(),
    head: head.nullish(),
    sill: sill.nullish(),
    jambs: jambs.nullish(),
    ties: ties.nullish(),
    barrier: barrier.nullish(),
    base: base.nullish(),
    exposure: exposure.nullish(),
    process: workProcess.nullish(),
  })
  .meta({ id: 'OpeningInput', title: 'Opening description' })

const { kind, width, height } = geometry.shape

/** As much of a description as one quantity needs: not even kind, width and height have to be given. */
export const partialOpeningSchema = openingSchema
  .extend({ opening: geometry.extend({ kind: kind.nullish(), width: width.nullish(), height: height.nullish() }).meta({ id: 'PartialGeometryInput', title: 'Opening' }).nullish() })
  .meta({ id: 'PartialOpeningInput', title: 'Part of an opening description' })

export type OpeningInput = z.input<typeof openingSchema>
