import { z } from 'zod'
import { choice, count, flag, flagPerEnd, length, quantity } from '../fact.ts'

const veneer = z
  .strictObject({
    kind: choice('Kind of veneer', ['anchoredBrick', 'anchoredStone', 'adheredMasonry', 'solidMasonry'], {
      help: 'Anchored veneer is tied to a backing across an air space. Solid masonry is not veneer.', from: 'detailReview',
    }),
    unit: choice('Brick', [
      'modular', 'standard', 'engineerModular', 'engineerStandard', 'closureModular', 'closureStandard', 'roman', 'norman', 'engineerNorman', 'utility', 'king', 'queen',
      'britishStandard', 'germanNormal', 'germanThin', 'australianStandard',
    ], { help: 'The standard name of the brick; it sets the coursing.', from: 'detailReview' }),
    unitHeight: length('Brick height', { help: 'Height of one brick as laid, without its joint. Goes before the size of the standard name.', from: 'submittalsAndMockUp', between: ['1 in', '12 in'] }),
    unitLength: length('Brick length', { help: 'Length of one brick along the face, without its joint. Goes before the size of the standard name.', from: 'submittalsAndMockUp', between: ['2 in', '24 in'] }),
    jointThickness: length('Mortar joint', { help: 'Thickness of bed and head joints.', from: 'submittalsAndMockUp', between: ['1/16 in', '1 in'] }),
    compressiveStrength: quantity('stress', 'Strength of the masonry', { help: "Specified compressive strength of the masonry, f'm.", from: 'submittalsAndMockUp', between: ['200 psi', '15000 psi'] }),
    thickness: length('Brick thickness', { help: 'Actual thickness of the wythe, not nominal.', from: 'submittalsAndMockUp', between: ['1 in', '12 in'] }),
    bond: choice('Bond', ['running', 'thirdRunning', 'flemish', 'english', 'stack'], { help: 'Only overlapping bonds can arch over an opening.', from: 'detailReview' }),
    weight: quantity('arealLoad', 'Veneer weight', { help: 'Installed weight of the wythe.', from: 'submittalsAndMockUp', between: ['5 psf', '200 psf'] }),
    headCourse: choice('Course over the head', ['stretcher', 'rowlock', 'soldier', 'stone', 'archRing'], { help: 'How the first course on the support is laid.', from: 'detailReview' }),
  })
  .meta({ id: 'VeneerInput', title: 'Veneer' })

export const wall = z
  .strictObject({
    veneer: veneer.nullish(),
    airSpace: length('Clear air space', {
      help: 'Least clear distance between the back of the brick and the sheathing or insulation.', from: 'jambRise', hiddenBy: 'wallAbove', between: ['0 in', '24 in'],
    }),
    backing: choice('Backing', ['woodStud', 'steelStud', 'concreteMasonry', 'concrete'], { help: 'What the ties are fixed to.', from: 'backingReady', hiddenBy: 'barrierAndPan' }),
    studSpacing: length('Stud spacing', { help: 'Center to center.', from: 'backingReady', hiddenBy: 'barrierAndPan', between: ['6 in', '6 ft'] }),
    sheathing: choice('Sheathing', ['orientedStrandBoard', 'plywood', 'gypsum', 'fiberboard', 'foamPlastic', 'none'], {
      help: 'Ties and barrier are fixed through it.', from: 'backingReady', hiddenBy: 'barrierAndPan',
    }),
    insulationThickness: length('Insulation outside the sheathing', { help: '0 when there is none.', from: 'barrierAndPan', hiddenBy: 'jambRise', between: ['0 in', '24 in'] }),
    heightAboveHead: length('Brick above the head', { help: 'From the head support up to the top of the brick or the next support.', from: 'detailReview', between: ['0 in', '300 ft'] }),
    storiesAbove: count('Stories of brick above', { help: 'Whole stories of veneer that stand on this support.', from: 'detailReview', between: ['0', '60'] }),
    movementJointAtJamb: flagPerEnd('Movement joint at the jamb', { help: 'A vertical joint that runs up at the edge of the opening; it stops arching.', from: 'detailReview' }),
    veneerHeight: length('Height of the veneer', { help: 'From its noncombustible support to the top of the veneer, gable left out.', from: 'detailReview', between: ['0 in', '1000 ft'] }),
    length: length('Length of the wall', { help: 'Along the face, from corner to corner or from joint to joint.', from: 'detailReview', between: ['1 ft', '3000 ft'] }),
    movementJointSpacing: length('Movement joint spacing', { help: 'Distance between two vertical movement joints in this wall.', from: 'detailReview', between: ['1 ft', '1000 ft'] }),
    movementJointWidth: length('Movement joint width', { help: 'Width of the vertical movement joint as built or drawn.', from: 'detailReview', between: ['0 in', '4 in'] }),
    storyHeight: length('Height of veneer on one support', { help: 'From one shelf angle or ledge up to the next.', from: 'detailReview', between: ['1 ft', '100 ft'] }),
    imposedLoad: quantity('lineLoad', 'Floor or roof load on the wall', { help: 'Evenly along the wall, at its level above the lintel.', from: 'detailReview', between: ['0 lbf/ft', '20000 lbf/ft'] }),
    imposedLoadHeight: length('Floor or roof load above the lintel', { help: 'From the lintel up to the level at which the load comes on.', from: 'detailReview', between: ['0 in', '100 ft'] }),
    pointLoad: quantity('force', 'Point load on the wall', { help: 'A beam or post that rests on the brick above.', from: 'detailReview', between: ['0 lbf', '100000 lbf'] }),
    pointLoadHeight: length('Point load above the lintel', { help: 'From the lintel up to the bearing of the beam or post.', from: 'detailReview', between: ['0 in', '100 ft'] }),
    pointLoadFromJamb: length('Point load from the left jamb', { help: 'From the left jamb to the middle of the load, seen from outside; negative when it stands left of the opening.', from: 'detailReview', between: ['-40 ft', '80 ft'] }),
    pointLoadPlate: length('Plate under the point load', { help: 'Length of the bearing plate along the wall; 0 for a knife edge.', from: 'detailReview', between: ['0 in', '10 ft'] }),
    loadAbove: flag('Floor, roof or point load on the brick above', { help: 'True when anything but the brick itself rests on it.', from: 'detailReview' }),
    cavityCondition: choice('State of the air space', ['clean', 'droppings', 'bridged', 'filled'], {
      help: 'Mortar droppings at the bottom, mortar bridges, or a space filled with grout or mortar.', from: 'jambRise', hiddenBy: 'wallAbove',
    }),
  })
  .meta({ id: 'WallInput', title: 'Wall' })
