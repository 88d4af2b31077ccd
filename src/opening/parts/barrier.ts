import { z } from 'zod'
import { choice, count, flag, length } from '../fact.ts'

const onWall = { from: 'barrierAndPan', hiddenBy: 'jambRise' } as const

export const barrier = z
  .strictObject({
    kind: choice('Water-resistive barrier', ['no15Felt', 'buildingPaper', 'buildingWrap', 'fluidApplied', 'coatedSheathing', 'foamSheathing', 'none'], { help: 'What sheds the water behind the air space.', ...onWall }),
    layers: count('Layers of barrier', { help: '0 when there is none.', ...onWall, between: ['0', '10'] }),
    horizontalLap: length('Upper sheet over lower', { help: 'Lap at horizontal joints, upper over lower.', ...onWall, between: ['0 in', '4 ft'] }),
    verticalLap: length('Lap at vertical joints', { help: 'Lap where two sheets meet end to end.', ...onWall, between: ['0 in', '4 ft'] }),
    rollWidth: length('Width of the roll', { help: 'Of the sheet as delivered.', from: 'submittalsAndMockUp', between: ['4 in', '20 ft'] }),
    rollLength: length('Length of the roll', { help: 'Of the sheet as delivered.', from: 'submittalsAndMockUp', between: ['5 ft', '1000 ft'] }),
    shingled: flag('Upper sheets over lower ones', { help: 'False when any lap faces up.', ...onWall }),
    headFlap: choice('Barrier at the head flashing', ['overFlashing', 'behindFlashing', 'tapedToFace', 'cutFlush'], { help: 'Over the flashing sheds water; behind it leads water in.', from: 'unitSet', hiddenBy: 'headFirstCourse' }),
    continuousToTop: flag('Barrier to the top of the wall', { help: 'Ends at the top in a way that keeps water out.', ...onWall }),
    intact: flag('Barrier without tears', { help: 'Looked at before the brick goes on.', ...onWall }),
  })
  .meta({ id: 'BarrierInput', title: 'Water-resistive barrier' })
