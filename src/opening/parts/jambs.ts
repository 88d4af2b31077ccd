import { z } from 'zod'
import { choice, flag, flagPerEnd, length } from '../fact.ts'

export const jambs = z
  .strictObject({
    sealantWidth: length('Sealant joint width', { help: 'Between the frame and the brick.', from: 'sealantAndCleaning', between: ['0 in', '4 in'] }),
    sealantDepth: length('Sealant joint depth', { help: 'At the middle of the joint.', from: 'sealantAndCleaning', between: ['0 in', '4 in'] }),
    backerRod: flag('Backer rod', { help: 'Closed-cell rod or bond-breaker tape behind the sealant.', from: 'sealantAndCleaning' }),
    sealantClass: choice('Sealant movement class', ['class12_5', 'class25', 'class35', 'class50', 'class100_50'], { help: 'ASTM C920 class on the label.', from: 'submittalsAndMockUp' }),
    headJointLeftOpen: flag('Joint of brick to lintel left open', { help: 'False when sealant closes the line where the head drains.', from: 'sealantAndCleaning' }),
    membranePresent: flagPerEnd('Membrane on the jamb', { help: 'Flashing or membrane along the side of the rough opening.', from: 'unitSet', hiddenBy: 'jambRise' }),
    returnClear: flagPerEnd('Brick return clear of the backing', { help: 'False when a brick return or mortar touches the sheathing or the frame.', from: 'jambRise', hiddenBy: 'sealantAndCleaning' }),
  })
  .meta({ id: 'JambsInput', title: 'Jambs and sealant' })
