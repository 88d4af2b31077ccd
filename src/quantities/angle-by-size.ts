import { millimetres } from '../units/length.ts'
import { angleProperties } from './angle-geometry.ts'
import type { Angle, Sizes } from './angle-sizes.ts'

/** Said wherever such an angle is computed with. */
export const computedBySize = 'The angle is in no table of sections; its strength is computed from its sizes, without a fillet and with toes rounded to the full thickness, which errs on the safe side.'

/**
 * An angle that no table holds, or several side by side. No rolled angle of the tables has less strength than this barest outline;
 * square corners would promise up to 2.6 % more than a rolled angle has. The mass is of square corners. `barMass` is of 1000 mm², in kg/m.
 */
export function angleBySize(section: string, count: number, { verticalLeg, horizontalLeg, thickness }: Sizes, barMass: number): Angle {
  const legs = { verticalLeg: millimetres(verticalLeg), horizontalLeg: millimetres(horizontalLeg), thickness: millimetres(thickness), rootRadius: 0 }
  const { momentOfInertia, sectionModulus } = angleProperties({ ...legs, toeRadius: legs.thickness })
  const { area } = angleProperties({ ...legs, toeRadius: 0 })
  return {
    section, count, verticalLeg, horizontalLeg, thickness,
    mass: (count * barMass * area) / 1_000,
    momentOfInertia: count * momentOfInertia,
    sectionModulus: count * sectionModulus,
  }
}

/** How many times its thickness the longer leg is. */
export function slendernessOf({ verticalLeg, horizontalLeg, thickness }: Sizes): number {
  return Math.max(verticalLeg, horizontalLeg) / thickness
}
