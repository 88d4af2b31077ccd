import { greatestMoment, greatestSag, reactionsOf, type Greatest, type PartLoad, type SpanLoad } from './simple-span.ts'

/** What a lintel carries: a load that rises to a peak at midspan, one spread evenly over the span, and one over a part of it; each in newtons in all. */
export interface BeamLoad {
  readonly triangle: number
  readonly uniform: number
  readonly part?: PartLoad
}

/** Stiffness of the member: modulus in Pa, moment of inertia in mm⁴. */
export interface Stiffness {
  readonly modulus: number
  readonly momentOfInertia: number
}

/** Largest moment on a simple span, in N·m: W L/6 for the triangle, W L/8 for the even load; with a load on a part of it, where the shear changes its sign. */
export function momentOf(load: BeamLoad, span_m: number): number {
  return load.part ? greatestMoment(spanLoads(load, span_m), span_m).amount : (load.triangle * span_m) / 6 + (load.uniform * span_m) / 8
}

/** Where along the span the moment is greatest, in meters from the left support. */
export function placeOfMoment(load: BeamLoad, span_m: number): number {
  return load.part ? greatestMoment(spanLoads(load, span_m), span_m).at : span_m / 2
}

/** Greatest deflection, in meters: W L³/(60 E I) for the triangle, 5 W L³/(384 E I) for the even load; both at midspan. */
export function deflectionOf(load: BeamLoad, span_m: number, { modulus, momentOfInertia }: Stiffness): number {
  return sagOf(load, span_m).amount / (modulus * momentOfInertia * quarticMetre_mm4)
}

/** Where along the span the deflection is greatest, in meters from the left support. */
export function placeOfDeflection(load: BeamLoad, span_m: number): number {
  return sagOf(load, span_m).at
}

/** What the two ends of the lintel carry, in newtons. */
export function endsOf(load: BeamLoad, span_m: number): readonly [left: number, right: number] {
  return reactionsOf(spanLoads(load, span_m), span_m)
}

/** Bending stress in Pa, for a moment in N·m on a section modulus in mm³. */
export function bendingStressOf(moment: number, sectionModulus: number): number {
  return moment / (sectionModulus * cubicMetre_mm3)
}

/** The section modulus in mm³ that keeps a moment in N·m within a stress in Pa. */
export function sectionModulusFor(moment: number, allowable: number): number {
  return moment / allowable / cubicMetre_mm3
}

function sagOf(load: BeamLoad, span_m: number): Greatest {
  return load.part ? greatestSag(spanLoads(load, span_m), span_m) : { amount: (load.triangle / 60 + (5 * load.uniform) / 384) * span_m ** 3, at: span_m / 2 }
}

function spanLoads({ triangle, uniform, part }: BeamLoad, span_m: number): readonly SpanLoad[] {
  return [{ shape: 'triangle', total: triangle }, { shape: 'part', total: uniform, from: 0, to: span_m }, ...(part ? [part] : [])]
}

const cubicMetre_mm3 = 1e-9
const quarticMetre_mm4 = 1e-12
