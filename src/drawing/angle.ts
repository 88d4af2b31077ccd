import { sizesOf } from '../quantities/angle-sizes.ts'
import { millimetres } from '../units/length.ts'
import type { Known } from './known.ts'

/** A steel angle as it stands: lengths in millimeters. */
export interface AngleSizes {
  readonly vertical: number
  readonly horizontal: number
  readonly thickness: number
}

export const angleKinds: readonly string[] = ['looseSteelAngle', 'shelfAngle', 'angleFixedToFraming']

/** The legs of the angle the way they are said to stand; as they are written where that is not said. */
export function angleOf(known: Known): AngleSizes | undefined {
  const section = known.choice('head.support.section')
  const sizes = section === undefined ? undefined : sizesOf(section)
  if (!sizes) return undefined
  const [first, second, thickness] = [sizes.verticalLeg, sizes.horizontalLeg, sizes.thickness].map(millimetres) as [number, number, number]
  const longLeg = known.choice('head.support.longLeg')
  const [long, short] = [Math.max(first, second), Math.min(first, second)]
  if (longLeg === 'vertical') return { vertical: long, horizontal: short, thickness }
  if (longLeg === 'horizontal') return { vertical: short, horizontal: long, thickness }
  return { vertical: first, horizontal: second, thickness }
}
