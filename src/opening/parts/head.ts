import { z } from 'zod'
import { choice, choicePerEnd, count, flag, flagPerEnd, length, lengthPerEnd, quantity, section } from '../fact.ts'
import { flashingMaterial } from './materials.ts'
import { weeps } from './weeps.ts'

const lintel = { from: 'lintelSet', hiddenBy: 'headFlashing' } as const
const pan = { from: 'headFlashing', hiddenBy: 'headFirstCourse' } as const

const support = z
  .strictObject({
    kind: choice('What carries the brick', [
      'looseSteelAngle', 'shelfAngle', 'angleFixedToFraming', 'precastLintel', 'reinforcedMasonryLintel', 'masonryArch', 'woodMember', 'none',
    ], { help: 'None when the brick rests on the frame.', from: 'detailReview' }),
    section: section('Angle', { help: 'Vertical leg, horizontal leg, thickness; put a 2 before a pair.', ...lintel }),
    longLeg: choice('Long leg', ['vertical', 'horizontal'], { help: 'Which way the longer leg stands.', ...lintel }),
    lateralRestraint: choice('Side restraint of the lintel', ['continuous', 'none'], { help: 'Continuous where brick or concrete holds the steel along its length.', ...lintel }),
    yieldStress: quantity('stress', 'Yield stress of the steel', { help: 'Least yield stress of the grade; 36 ksi for A36.', from: 'submittalsAndMockUp', between: ['20000 psi', '120000 psi'] }),
    length: length('Lintel length', { help: 'Cut length of the steel.', ...lintel, between: ['4 in', '60 ft'] }),
    bearing: lengthPerEnd('Bearing on the masonry', { help: 'Length of lintel that rests on the brick beside the opening.', ...lintel, between: ['0 in', '10 ft'] }),
    bearingSeat: choicePerEnd('Seat of the bearing', ['solidMasonry', 'coredUnit', 'mortarBed', 'slipPlane', 'frame'], { help: 'What the end of the lintel rests on.', ...lintel }),
    endGap: lengthPerEnd('Gap at the lintel end', { help: 'Space between the end of the steel and the next brick.', ...lintel, between: ['0 in', '6 in'] }),
    protection: choice('Corrosion protection of the steel', ['none', 'shopPrimed', 'hotDipGalvanized', 'stainlessSteel', 'weatheringSteel'], { help: 'As delivered; cut ends are coated the same way.', ...lintel }),
    veneerOverhang: length('Brick past the support', {
      help: 'How far the brick stands out in front of the leg it rests on.', from: 'headFirstCourse', between: ['-6 in', '12 in'],
    }),
    gapToFrame: length('Lintel to frame', { help: 'Between the underside of the lintel and the frame head.', from: 'lintelSet', between: ['0 in', '12 in'] }),
    shoringDays: count('Days shored', { help: 'How long the lintel was propped after the brick was laid.', from: 'wallAbove', between: ['0', '365'] }),
    jointReinforcementCourses: count('Reinforced bed joints above', { help: 'Bed joints over the opening with joint reinforcement; 0 when none.', from: 'headFirstCourse', hiddenBy: 'wallAbove', between: ['0', '40'] }),
  })
  .meta({ id: 'HeadSupportInput', title: 'Head support' })

const flashing = z
  .strictObject({
    present: flag('Head flashing present', { help: 'A flashing of its own; the steel angle is not a flashing.', ...pan }),
    overSupport: flag('Flashing runs over the support', { help: 'True when it lies on the angle or lintel, not on a course above.', ...pan }),
    material: flashingMaterial('Head flashing material', pan),
    thickness: length('Head flashing thickness', { help: 'Of the membrane or sheet; 40 mil for example.', ...pan, between: ['0 in', '1 in'] }),
    extensionPastJamb: lengthPerEnd('Flashing past the jamb', { help: 'From the edge of the masonry opening to the end of the pan.', ...pan, between: ['-4 ft', '40 ft'] }),
    extensionPastSupport: lengthPerEnd('Flashing past the lintel end', { help: 'Negative when it stops short of the end of the steel.', ...pan, between: ['-4 ft', '40 ft'] }),
    endDamPresent: flagPerEnd('End dam', { help: 'The end of the flashing is turned up into a head joint.', ...pan }),
    endDamHeight: lengthPerEnd('End dam height', { help: '0 when there is no dam.', ...pan, between: ['0 in', '12 in'] }),
    endDamSealed: flagPerEnd('End dam corners sealed', { help: 'Folds or bonded corners are watertight.', ...pan }),
    upstand: length('Upstand on the backing', { help: 'How far the flashing runs up behind the brick.', ...pan, between: ['0 in', '4 ft'] }),
    barrierLap: length('Barrier over the flashing', { help: 'How far the water-resistive barrier comes down over the upstand.', ...pan, between: ['0 in', '4 ft'] }),
    topEdge: choice('Top edge of the flashing', ['behindBarrier', 'terminationBar', 'reglet', 'bedJoint', 'sealantOnly', 'nailedOnly', 'loose'], { help: 'How the top edge is held and kept tight.', ...pan }),
    frontEdge: choice('Front edge of the flashing', ['pastFace', 'flushWithFace', 'shortOfFace'], { help: 'Where the front edge ends against the brick face.', from: 'headFlashing' }),
    projection: length('Drip past the face', { help: 'How far the flashing or its drip stands out; negative when it stops short.', from: 'headFlashing', between: ['-12 in', '12 in'] }),
    dripAngle: quantity('angle', 'Drip turned down', { help: 'From the horizontal.', from: 'headFlashing', between: ['0 deg', '90 deg'] }),
    exposedToSun: flag('Flashing edge in the sun', { help: 'True when the membrane itself, not a metal drip, is seen from outside.', from: 'headFlashing' }),
    slopesOut: flag('Pan slopes to the outside', { help: 'False when level or sloping back.', ...pan }),
    splices: count('Splices in the head flashing', { help: '0 when it is one piece.', ...pan, between: ['0', '40'] }),
    spliceLap: length('Lap at splices', { help: 'Least lap where two pieces meet.', ...pan, between: ['0 in', '4 ft'] }),
    spliceSealed: flag('Splices sealed', { help: 'All laps bonded or sealed over their full width.', ...pan }),
    toeBedded: flagPerEnd('Toe bedded past the opening', { help: 'Sealant under the front edge where the flashing runs on over brick.', ...pan }),
    continuousPastOpening: flag('Flashing runs on past the opening', { help: 'True for a shelf angle or band course; then the end dams are elsewhere.', from: 'detailReview' }),
    intact: flag('Flashing without holes or tears', { help: 'Looked at just before the brick goes on.', ...pan }),
  })
  .meta({ id: 'HeadFlashingInput', title: 'Head flashing' })

export const head = z
  .strictObject({
    support: support.nullish(),
    flashing: flashing.nullish(),
    weeps: weeps('HeadWeepsInput', 'head', 'headFirstCourse').nullish(),
  })
  .meta({ id: 'HeadInput', title: 'Head' })
