import { findUnit } from '../units/dimension.ts'

const squareMillimetre = 1e-12 // square millimeters, as areas are kept, in a square nanometer

/** Sides in nanometers, area in square millimeters. */
export function rectangleArea(width: number, height: number): number {
  return width * height * squareMillimetre
}

export function circleArea(diameter: number): number {
  return ((Math.PI * diameter ** 2) / 4) * squareMillimetre
}

/** "0.844 in2 (544.4 mm2)": square feet and square meters, in which walls are measured, do not suit a weep. */
export function smallAreaText(area: number): string {
  const squareInch = findUnit('[in_i]2')?.factor ?? 1
  return `${shown(area / squareInch)} in2 (${shown(area)} mm2)`
}

function shown(value: number): number {
  return Number(value.toPrecision(4))
}
