import { z } from 'zod'
import { choice, count, flag, length, lengthPerEnd, required } from '../fact.ts'

/** The opening itself. Kind, width and height are the only facts that must be given. */
export const geometry = z
  .strictObject({
    kind: required(choice('Kind of opening', ['window', 'door', 'slidingDoor', 'garageDoor', 'louver', 'vent', 'recess'], { help: 'What fills the opening.', from: 'detailReview' })),
    width: required(length('Masonry opening width', { help: 'Clear width between the brick jambs, not the frame or the rough opening.', from: 'detailReview', between: ['4 in', '40 ft'] })),
    height: required(length('Masonry opening height', { help: 'Clear height from the sill to the underside of the head support.', from: 'detailReview', between: ['4 in', '40 ft'] })),
    headShape: choice('Shape of the head', ['flat', 'jackArch', 'segmentalArch', 'semicircularArch', 'otherArch'], {
      help: 'Flat also for a soldier course carried by steel.', from: 'detailReview',
    }),
    headRise: length('Head rise', { help: 'Height of an arched head above its springing; leave out for a flat head.', from: 'detailReview', between: ['0 in', '20 ft'] }),
    gangedUnits: count('Units side by side', { help: 'How many windows share this one masonry opening.', from: 'detailReview', between: ['1', '40'] }),
    mullionWidth: length('Mullion width', { help: 'Width of the cover between two ganged units.', from: 'detailReview', between: ['0 in', '4 ft'] }),
    sillAboveGrade: length('Sill above finished grade', {
      help: 'From finished grade up to the top of the sill at the face; negative in a window well.', from: 'detailReview', between: ['-20 ft', '1000 ft'],
    }),
    frameSetback: length('Frame behind the brick face', { help: 'From the brick face back to the frame; 0 when flush.', from: 'unitSet', between: ['-6 in', '24 in'] }),
    pierWidth: lengthPerEnd('Masonry beside the opening', {
      help: 'Unbroken brick from the jamb to the next opening, corner or movement joint.', from: 'detailReview', between: ['0 in', '300 ft'],
    }),
    atCorner: flag('Opening runs round a corner', { help: 'True when a side of the opening has no masonry jamb.', from: 'detailReview' }),
    eaveOverhang: length('Eave overhang above', { help: 'How far the eave stands out over this opening; 0 when there is none.', from: 'detailReview', between: ['0 in', '40 ft'] }),
    headToEave: length('Head below the eave', { help: 'From the top of the opening up to the underside of the eave.', from: 'detailReview', between: ['0 in', '500 ft'] }),
  })
  .meta({ id: 'OpeningGeometryInput', title: 'Opening' })
