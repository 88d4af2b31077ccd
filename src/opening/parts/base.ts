import { z } from 'zod'
import { flag, length } from '../fact.ts'
import { flashingMaterial } from './materials.ts'
import { weeps } from './weeps.ts'

const under = { from: 'baseFlashing', hiddenBy: 'jambRise' } as const

const flashing = z
  .strictObject({
    present: flag('Base flashing present', { help: 'Under the first course above grade.', ...under }),
    material: flashingMaterial('Base flashing material', under),
    upstand: length('Base flashing up the backing', { help: 'How far it runs up behind the brick.', ...under, between: ['0 in', '6 ft'] }),
    reachesFace: flag('Base flashing reaches the face', { help: 'False when it stops inside the brick.', from: 'baseFlashing' }),
    barrierOver: flag('Barrier laps over the base flashing', { help: 'True when the barrier comes down over the upstand.', ...under }),
    aboveGrade: length('Base flashing above finished grade', { help: 'Negative when the grade is higher.', from: 'baseFlashing', between: ['-20 ft', '100 ft'] }),
  })
  .meta({ id: 'BaseFlashingInput', title: 'Base flashing' })

export const base = z
  .strictObject({
    flashing: flashing.nullish(),
    weeps: weeps('BaseWeepsInput', 'base', 'baseFlashing').nullish(),
    weepsAboveGrade: length('Base weeps above finished grade', { help: 'Negative when buried.', from: 'baseFlashing', between: ['-20 ft', '100 ft'] }),
    ledgeRecess: length('Ledge below the floor', { help: 'How far the brick ledge lies below the top of the foundation.', from: 'backingReady', hiddenBy: 'baseFlashing', between: ['0 in', '10 ft'] }),
    ledgeOverhang: length('Brick past the ledge', { help: 'How far the brick stands out in front of its ledge.', from: 'baseFlashing', between: ['-6 in', '12 in'] }),
    spaceFilledBelowFlashing: flag('Space filled below the flashing', { help: 'Mortar or grout fills the space up to the base flashing.', ...under }),
    foundationAboveGrade: length('Foundation above finished grade', { help: 'Top of the foundation wall.', from: 'backingReady', between: ['-20 ft', '100 ft'] }),
  })
  .meta({ id: 'BaseInput', title: 'Base of the wall' })
