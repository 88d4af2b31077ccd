const squareMillimetre = 1e-12 // square millimeters, as areas are kept, in a square nanometer

/** Sides in nanometers, area in square millimeters. */
export function rectangleArea(width: number, height: number): number {
  return width * height * squareMillimetre
}

export function circleArea(diameter: number): number {
  return ((Math.PI * diameter ** 2) / 4) * squareMillimetre
}
