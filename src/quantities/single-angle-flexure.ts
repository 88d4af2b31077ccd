import type { Table } from '../catalog/reference.ts'
import { metres } from '../units/length.ts'

/** The figures of the equations of AISC 360, F10, by the names of the table that holds them. */
const names = [
  'yieldFactor', 'unrestrainedShare', 'inelasticStart', 'inelasticSlope', 'elasticStart', 'elasticSlope', 'bucklingFactor', 'torsionFactor', 'momentGradient',
  'compactLeg', 'slenderLeg', 'noncompactStart', 'noncompactSlope', 'slenderFactor', 'safetyFactor',
] as const
export type FlexureCoefficients = Readonly<Record<(typeof names)[number], number>>

/** A coefficient that the table lacks is a fault of the catalog. */
export function flexureCoefficients({ rows }: Table): FlexureCoefficients {
  const valueOf = (name: string) => {
    const value = rows.find(({ coefficient }) => coefficient === name)?.['value']
    if (typeof value !== 'number') throw new Error(`table of coefficients for single angles: no figure for ${name}`)
    return value
  }
  return Object.fromEntries(names.map((name) => [name, valueOf(name)])) as FlexureCoefficients
}

/** One angle, standing leg up, bent so that the tip of that leg is in compression. Lengths in nm, section modulus in mm³, stresses in Pa. */
export interface BentAngle {
  readonly verticalLeg: number
  readonly thickness: number
  readonly sectionModulus: number
  readonly yieldStress: number
  readonly modulus: number
}

/** Nominal moments of one angle in N·m, each by itself; those that the angle cannot reach are left out. */
export interface NominalMoments {
  readonly yielding: number
  readonly legBuckling?: number
  readonly sidewaysBuckling?: number
}

/** F10.1 and F10.3, for an angle that brick or concrete holds along its length. */
export function restrainedMoments(angle: BentAngle, by: FlexureCoefficients): NominalMoments {
  return { yielding: by.yieldFactor * yieldMoment(angle), ...legBuckling(angle, by, yieldMoment(angle)) }
}

/** F10.1, F10.2 and F10.3, for an angle of equal legs that is held at its ends alone, this far apart. */
export function unrestrainedMoments(angle: BentAngle, span: number, by: FlexureCoefficients): NominalMoments {
  const reduced = by.unrestrainedShare * yieldMoment(angle)
  return { yielding: by.yieldFactor * yieldMoment(angle), sidewaysBuckling: sidewaysBuckling(reduced, elasticBuckling(angle, span, by), by), ...legBuckling(angle, by, reduced) }
}

/** The least of the nominal moments. */
export function governing({ yielding, legBuckling = yielding, sidewaysBuckling = yielding }: NominalMoments): number {
  return Math.min(yielding, legBuckling, sidewaysBuckling)
}

/** F10-5a: the moment at which an angle of equal legs twists sideways, its tip in compression, if it did not yield before. In N·m. */
export function elasticBuckling({ verticalLeg, thickness, modulus }: BentAngle, span: number, by: FlexureCoefficients): number {
  const [b, t, length] = [metres(verticalLeg), metres(thickness), metres(span)]
  return ((by.bucklingFactor * modulus * b ** 4 * t * by.momentGradient) / length ** 2) * (Math.sqrt(1 + by.torsionFactor * ((length * t) / b ** 2) ** 2) - 1)
}

/** F10-2 where it yields before it twists, F10-3 where it twists before. */
function sidewaysBuckling(yieldMoment: number, elastic: number, by: FlexureCoefficients): number {
  if (yieldMoment > elastic) return (by.elasticStart - (by.elasticSlope * elastic) / yieldMoment) * elastic
  return Math.min((by.inelasticStart - by.inelasticSlope * Math.sqrt(yieldMoment / elastic)) * yieldMoment, by.yieldFactor * yieldMoment)
}

/** F10-6 to F10-8: none for a compact leg, which yields before it buckles. */
function legBuckling({ verticalLeg, thickness, yieldStress, modulus }: BentAngle, by: FlexureCoefficients, yieldMoment: number): Pick<NominalMoments, 'legBuckling'> {
  const slenderness = verticalLeg / thickness
  const yieldStrain = yieldStress / modulus
  if (slenderness <= by.compactLeg / Math.sqrt(yieldStrain)) return {}
  if (slenderness <= by.slenderLeg / Math.sqrt(yieldStrain)) return { legBuckling: yieldMoment * (by.noncompactStart - by.noncompactSlope * slenderness * Math.sqrt(yieldStrain)) }
  return { legBuckling: (yieldMoment * by.slenderFactor) / (slenderness ** 2 * yieldStrain) }
}

/** Yield stress on the section modulus, in N·m. */
function yieldMoment({ sectionModulus, yieldStress }: BentAngle): number {
  return sectionModulus * yieldStress * 1e-9
}
