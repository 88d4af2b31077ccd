import { z } from 'zod'
import { choice, flag, flagPerEnd, length, lengthPerEnd, quantity } from '../fact.ts'
import { flashingMaterial } from './materials.ts'
import { weeps } from './weeps.ts'

const under = { from: 'sillFlashing', hiddenBy: 'jambRise' } as const
const pan = { from: 'barrierAndPan', hiddenBy: 'unitSet' } as const

const flashing = z
  .strictObject({
    present: flag('Sill flashing present', { help: 'A flashing under the sill units.', ...under }),
    material: flashingMaterial('Sill flashing material', under),
    extensionPastJamb: lengthPerEnd('Sill flashing past the jamb', { help: 'From the edge of the opening to the end of the flashing.', ...under, between: ['-4 ft', '20 ft'] }),
    upstand: length('Sill flashing up the back', { help: 'How far it turns up behind the sill units.', ...under, between: ['0 in', '2 ft'] }),
    projection: length('Sill flashing past the face', { help: 'Negative when it stops inside the brick.', from: 'sillFlashing', between: ['-12 in', '12 in'] }),
    stockLength: length('Stock length of the sill flashing', { help: 'Length in which the flashing is delivered.', from: 'submittalsAndMockUp', between: ['1 ft', '200 ft'] }),
    endDamPresent: flagPerEnd('End dam at the sill', { help: 'The end of the flashing is turned up.', ...under }),
    endDamHeight: lengthPerEnd('End dam height at the sill', { help: '0 when there is no dam.', ...under, between: ['0 in', '12 in'] }),
    reachesFace: flag('Sill flashing reaches the face', { help: 'False when it stops inside the brick.', from: 'sillFlashing' }),
  })
  .meta({ id: 'SillFlashingInput', title: 'Sill flashing' })

export const sill = z
  .strictObject({
    kind: choice('Kind of sill', ['brickRowlock', 'brickHeader', 'precastConcrete', 'stone', 'metal', 'doorThreshold', 'none'], { help: 'What sheds the water at the foot of the opening.', from: 'detailReview' }),
    slope: quantity('angle', 'Slope of the sill', { help: 'Fall toward the outside: "15 deg" or "3:12"; negative when it falls back.', from: 'jambRise', between: ['-45 deg', '60 deg'] }),
    depth: length('Depth of the sill', { help: 'Horizontal distance over which the sill falls, front to back.', from: 'jambRise', between: ['0.5 in', '4 ft'] }),
    projection: length('Sill past the face', { help: 'From the brick face below out to the front of the sill.', from: 'jambRise', between: ['-6 in', '24 in'] }),
    dripPresent: flag('Drip under the sill', { help: 'A groove, or the front corner when the slope makes one.', from: 'jambRise' }),
    gapUnderFrame: length('Gap under the frame', { help: 'Room for movement between the sill and the frame.', from: 'jambRise', between: ['0 in', '6 in'] }),
    panPresent: flag('Sill pan in the rough opening', { help: 'A watertight tray under the window or door, open to the outside.', ...pan }),
    panDrains: flag('Sill pan drains', { help: 'Sloped or sealed so that water runs out to the face or onto the barrier.', ...pan }),
    panBackDamHeight: length('Back dam of the pan', { help: 'Height of the inner edge of the pan.', ...pan, between: ['0 in', '12 in'] }),
    flashing: flashing.nullish(),
    weeps: weeps('SillWeepsInput', 'sill', 'jambRise').nullish(),
  })
  .meta({ id: 'SillInput', title: 'Sill' })
