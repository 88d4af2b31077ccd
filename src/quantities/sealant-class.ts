import { cellText } from '../catalog/reference.ts'
import { readQuantity } from '../units/quantity.ts'
import { combined, fact, table, type Need } from './need.ts'

/** How far a sealant of this class lets its joint move either way, as a part of the width: the lesser of opening and closing. */
export const sealantMovement: Need<number> = combined({ classes: table('movement.sealant-classes'), name: fact.choice('jambs.sealantClass') }, ({ classes, name }) => {
  const row = classes.rows.find((one) => one['class'] === name)
  const [opens, closes] = [row?.['extension'], row?.['compression']].map((cell) => readQuantity(cellText(cell))?.amount)
  if (opens === undefined || closes === undefined) throw new Error(`table ${classes.table} has no movement for ${name}`)
  return Math.min(opens, closes)
})
