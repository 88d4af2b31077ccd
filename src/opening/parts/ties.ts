import { z } from 'zod'
import { choice, flag, length, quantity } from '../fact.ts'

const rising = { from: 'jambRise', hiddenBy: 'wallAbove' } as const

export const ties = z
  .strictObject({
    kind: choice('Kind of tie', ['corrugated', 'sheetMetal', 'wire', 'adjustableTwoPiece', 'jointReinforcement', 'drip'], { help: 'How the brick is anchored to the backing.', ...rising }),
    wireDiameter: length('Tie wire diameter', { help: 'Of the part that lies in the bed joint.', ...rising, between: ['0.02 in', '1 in'] }),
    sheetThickness: length('Tie sheet thickness', { help: 'Of corrugated or sheet-metal ties.', ...rising, between: ['0.005 in', '0.5 in'] }),
    sheetWidth: length('Tie sheet width', { help: 'Of corrugated or sheet-metal ties.', ...rising, between: ['0.1 in', '6 in'] }),
    horizontalSpacing: length('Tie spacing, horizontal', { help: 'Greatest distance between ties along a course.', ...rising, between: ['1 in', '20 ft'] }),
    verticalSpacing: length('Tie spacing, vertical', { help: 'Greatest distance between courses with ties.', ...rising, between: ['1 in', '20 ft'] }),
    areaPerTie: quantity('area', 'Wall area per tie', { help: 'Greatest area that one tie serves; worked out from the spacings when left out.', ...rising, between: ['0.05 ft2', '100 ft2'] }),
    distanceFromOpening: length('Ties from the opening', { help: 'Greatest distance from the edge of the opening to the ties beside it.', ...rising, between: ['0 in', '20 ft'] }),
    perimeterSpacing: length('Tie spacing around the opening', { help: 'Greatest distance between the ties that go round the opening.', ...rising, between: ['1 in', '20 ft'] }),
    capacity: quantity('force', 'Allowable load of one tie', { help: 'In and out of the wall, as its maker states it or as tested, with the safety factor taken off.', from: 'submittalsAndMockUp', between: ['1 lbf', '5000 lbf'] }),
    embedment: length('Tie embedment', { help: 'Length of tie in the bed joint.', ...rising, between: ['0 in', '12 in'] }),
    faceCover: length('Mortar cover at the face', { help: 'From the end of the tie to the outside face.', ...rising, between: ['0 in', '12 in'] }),
    fastenerFromBend: length('Fastener from the bend', { help: 'Of corrugated and sheet-metal ties.', ...rising, between: ['0 in', '6 in'] }),
    fastener: choice('Tie fastener', ['ringShankNail', 'commonNail', 'screw', 'roofingNail', 'other'], { help: 'What holds the tie to the backing.', ...rising }),
    misalignment: length('Offset of two-piece ties', { help: 'Vertical distance between the two parts.', ...rising, between: ['0 in', '6 in'] }),
    slopesToBacking: flag('Ties slope down to the backing', { help: 'True leads water across the air space.', ...rising }),
    protection: choice('Corrosion protection of ties', ['none', 'millGalvanized', 'hotDipGalvanized', 'stainlessSteel'], { help: 'As delivered.', from: 'submittalsAndMockUp' }),
  })
  .meta({ id: 'TiesInput', title: 'Ties' })
