import { corner, minus, rectangle, type Below, type SectionPart } from './section-part.ts'

/** The outline of an angle, standing leg first, in any one unit of length. Radii of 0 are square corners. */
export interface AngleOutline {
  readonly verticalLeg: number
  readonly horizontalLeg: number
  readonly thickness: number
  /** Of the fillet between the legs. */
  readonly rootRadius: number
  /** Of the rounding at the inside of the end of each leg. */
  readonly toeRadius: number
}

/** What follows from an outline, in the same unit. "Flat" and "standing" name the leg to which the axis is parallel. */
export interface AngleProperties {
  readonly area: number
  /** From the back of the flat leg, and from the back of the standing leg. */
  readonly centroidHeight: number
  readonly centroidWidth: number
  /** About the axis parallel to the flat leg, which is for bending in the plane of the wall. */
  readonly momentOfInertia: number
  readonly momentOfInertiaWeak: number
  /** To the tip of the standing leg, and to the tip of the flat one. */
  readonly sectionModulus: number
  readonly sectionModulusWeak: number
  readonly plasticModulus: number
  /** Negative: the legs run up on the left and out at the bottom. */
  readonly productOfInertia: number
  /** From the flat leg to the axis about which the angle is stiffest, in degrees. */
  readonly principalAngle: number
  readonly minorPrincipalInertia: number
  readonly radiusLeast: number
}

/** The properties of the outline, exact: two rectangles, a fillet added, two toes taken away. */
export function angleProperties(outline: AngleOutline): AngleProperties {
  const { verticalLeg, horizontalLeg } = outline
  const parts = partsOf(outline)
  const sum = (of: (part: SectionPart) => number) => parts.reduce((total, part) => total + of(part), 0)
  const area = sum((part) => part.area)
  const centroidHeight = sum((part) => part.momentOfHeight) / area
  const centroidWidth = sum((part) => part.momentOfWidth) / area
  const momentOfInertia = sum((part) => part.secondOfHeight) - area * centroidHeight ** 2
  const momentOfInertiaWeak = sum((part) => part.secondOfWidth) - area * centroidWidth ** 2
  const productOfInertia = sum((part) => part.product) - area * centroidHeight * centroidWidth
  const { principalAngle, minorPrincipalInertia } = principalAxes(momentOfInertia, momentOfInertiaWeak, productOfInertia)
  return {
    area, centroidHeight, centroidWidth, momentOfInertia, momentOfInertiaWeak, productOfInertia, principalAngle, minorPrincipalInertia,
    sectionModulus: momentOfInertia / (verticalLeg - centroidHeight),
    sectionModulusWeak: momentOfInertiaWeak / (horizontalLeg - centroidWidth),
    plasticModulus: plasticModulusOf(parts, verticalLeg),
    radiusLeast: Math.sqrt(minorPrincipalInertia / area),
  }
}

/** Coefficients of the torsion constant, which is no exact property of an outline. */
export interface TorsionCoefficients {
  readonly cornerStart: number
  readonly cornerSlope: number
  readonly ends: number
}

/** Saint-Venant torsion constant: two thin legs, the thicker corner, less the two ends. */
export function torsionConstant({ verticalLeg, horizontalLeg, thickness: t, rootRadius }: AngleOutline, { cornerStart, cornerSlope, ends }: TorsionCoefficients): number {
  const circle = 2 * (3 * rootRadius + 2 * t - Math.SQRT2 * (2 * rootRadius + t))
  return (t ** 3 * (verticalLeg + horizontalLeg - t)) / 3 + (cornerStart + (cornerSlope * rootRadius) / t) * circle ** 4 - ends * t ** 4
}

function partsOf({ verticalLeg, horizontalLeg, thickness, rootRadius, toeRadius }: AngleOutline): readonly SectionPart[] {
  return [
    rectangle({ left: 0, base: 0, width: horizontalLeg, height: thickness }),
    rectangle({ left: 0, base: thickness, width: thickness, height: verticalLeg - thickness }),
    corner({ x: thickness, y: thickness, toX: 1, toY: 1, radius: rootRadius }),
    minus(corner({ x: horizontalLeg, y: thickness, toX: -1, toY: -1, radius: toeRadius })),
    minus(corner({ x: thickness, y: verticalLeg, toX: -1, toY: -1, radius: toeRadius })),
  ]
}

function principalAxes(inertia: number, inertiaWeak: number, product: number): Pick<AngleProperties, 'principalAngle' | 'minorPrincipalInertia'> {
  const difference = inertia - inertiaWeak
  return {
    principalAngle: (Math.atan2(-2 * product, difference) * 180) / Math.PI / 2,
    minorPrincipalInertia: (inertia + inertiaWeak - Math.hypot(difference, 2 * product)) / 2,
  }
}

/** First moment of the section about the height that halves its area, found by halving the interval until it no longer moves. */
function plasticModulusOf(parts: readonly SectionPart[], depth: number): number {
  const below = (height: number): Below => parts.map((part) => part.below(height)).reduce((total, part) => ({ area: total.area + part.area, momentOfHeight: total.momentOfHeight + part.momentOfHeight }))
  const whole = below(depth)
  let [low, high] = [0, depth]
  for (let middle = depth / 2; middle > low && middle < high; middle = (low + high) / 2) {
    if (below(middle).area < whole.area / 2) low = middle
    else high = middle
  }
  return whole.momentOfHeight - 2 * below(low).momentOfHeight
}
