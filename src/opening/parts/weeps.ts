import { z } from 'zod'
import { choice, count, flag, length, lengthPerEnd } from '../fact.ts'
import type { HoldPoint } from '../hold-points.ts'

/** Weeps are asked for in the same words at the head, the sill and the base; only the time differs. */
export function weeps(id: string, place: string, from: HoldPoint) {
  return z
    .strictObject({
      kind: choice(`Kind of weep at the ${place}`, ['openHeadJoint', 'cellVent', 'mesh', 'tube', 'wick', 'rope', 'none'], {
        help: 'A rope that is pulled out leaves a tube; a rope left in place is a wick.', from,
      }),
      spacing: length(`Weep spacing at the ${place}`, { help: 'Greatest distance between two weeps, center to center.', from, between: ['1 in', '40 ft'] }),
      diameter: length(`Weep size at the ${place}`, { help: 'Least clear diameter or joint width.', from, between: ['0 in', '4 in'] }),
      openHeight: length(`Height of an open weep at the ${place}`, { help: 'Of an open head joint or vent; the whole course when left out.', from, between: ['0 in', '24 in'] }),
      count: count(`Number of weeps at the ${place}`, { help: 'Counted over this opening.', from, between: ['0', '400'] }),
      onFlashing: flag(`Weeps on the flashing at the ${place}`, { help: 'True when the weep sits directly on the flashing, not a course above.', from }),
      open: flag(`Weeps open at the ${place}`, { help: 'False when mortar, paint or sealant closes any of them.', from }),
      endWeepToDam: lengthPerEnd(`End weep to end dam at the ${place}`, { help: 'From the last weep to the end of the flashing.', from, between: ['0 in', '20 ft'] }),
    })
    .meta({ id, title: `Weeps at the ${place}` })
}
