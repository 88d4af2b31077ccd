import { combined, parameter, type Need } from './need.ts'

/** Water at 20 °C and the pull of the earth, in kg/m³, Pa·s, N/m and m/s². */
export interface Water {
  readonly density: number
  readonly viscosity: number
  readonly surfaceTension: number
  readonly gravity: number
}

export const water: Need<Water> = combined(
  { density: parameter('water.density'), viscosity: parameter('water.viscosity'), surfaceTension: parameter('water.surface-tension'), gravity: parameter('physics.gravity') },
  (given) => given,
)

/** Height of water, in m, that presses with so many Pa. */
export function headOf({ density, gravity }: Water, pressure: number): number {
  return pressure / (density * gravity)
}

/** Thickness, in m, of a film that runs down a slope by its own weight; flow in L/h over each meter of width. */
export function filmThickness({ density, viscosity, gravity }: Water, flow: number, slope_deg: number): number {
  const flow_m2s = flow / 1e3 / (60 * 60)
  return Math.cbrt((3 * viscosity * flow_m2s) / (density * gravity * Math.sin((slope_deg * Math.PI) / 180)))
}

/** Depth of water, in m, that surface tension holds back at a round hole of so many m. */
export function heldAtHole({ density, surfaceTension, gravity }: Water, diameter: number): number {
  return (4 * surfaceTension) / (density * gravity * diameter)
}

/** Depth of water, in m, that surface tension holds back at an upright slot of so many m. */
export function heldAtSlot({ density, surfaceTension, gravity }: Water, width: number): number {
  return (2 * surfaceTension) / (density * gravity * width)
}
