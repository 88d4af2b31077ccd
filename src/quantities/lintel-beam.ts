/** What a lintel carries: a load that rises to a peak at midspan, and one spread evenly; each in newtons over the whole span. */
export interface BeamLoad {
  readonly triangle: number
  readonly uniform: number
}

/** Stiffness of the member: modulus in Pa, moment of inertia in mm⁴. */
export interface Stiffness {
  readonly modulus: number
  readonly momentOfInertia: number
}

/** Largest moment on a simple span, in N·m: W L/6 for the triangle, W L/8 for the even load. */
export function momentOf({ triangle, uniform }: BeamLoad, span_m: number): number {
  return (triangle * span_m) / 6 + (uniform * span_m) / 8
}

/** Deflection at midspan, in meters: W L³/(60 E I) for the triangle, 5 W L³/(384 E I) for the even load. */
export function deflectionOf({ triangle, uniform }: BeamLoad, span_m: number, { modulus, momentOfInertia }: Stiffness): number {
  const stiffness = modulus * momentOfInertia * quarticMetre_mm4
  return ((triangle / 60 + (5 * uniform) / 384) * span_m ** 3) / stiffness
}

/** Bending stress in Pa, for a moment in N·m on a section modulus in mm³. */
export function bendingStressOf(moment: number, sectionModulus: number): number {
  return moment / (sectionModulus * cubicMetre_mm3)
}

/** The section modulus in mm³ that keeps a moment in N·m within a stress in Pa. */
export function sectionModulusFor(moment: number, allowable: number): number {
  return moment / allowable / cubicMetre_mm3
}

const cubicMetre_mm3 = 1e-9
const quarticMetre_mm4 = 1e-12
