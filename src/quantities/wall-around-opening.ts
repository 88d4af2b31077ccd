import { exactLengthText } from '../units/quantity-text.ts'
import { defineQuantity } from './define.ts'
import { wallPanel } from './wall-panel.ts'

/** The brick around the opening to which a layout of ties belongs: where it ends, measured from the opening. */
export const wallAroundOpening = defineQuantity({
  id: 'wall.around-opening',
  title: 'Wall around the opening',
  part: 'wall',
  dimension: null,
  onRequest: true,
  formula: 'from the left jamb to the left end and to the right end, from the sill to the foot and to the top',
  needs: { wall: wallPanel },
  compute: ({ wall: { panel, opening } }) => ({
    value: `${exactLengthText(panel.right)} by ${exactLengthText(panel.top)}`,
    tables: [{
      title: 'Ends of the wall; left of the left jamb and below the sill is negative',
      columns: [
        { title: 'Left end from the left jamb', dimension: 'length' }, { title: 'Right end from the left jamb', dimension: 'length' },
        { title: 'Foot from the sill', dimension: 'length' }, { title: 'Top from the sill', dimension: 'length' },
      ],
      rows: [[-opening.left, panel.right - opening.left, -opening.bottom, panel.top - opening.bottom]],
    }],
  }),
})
