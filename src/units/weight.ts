/** Standard gravity in m/s², exact by definition (3rd General Conference on Weights and Measures, 1901). */
const standardGravity = 9.80665

/** The weight in newtons of a mass in kilograms, so that one pound weighs one pound-force. */
export function weightOf(kilograms: number): number {
  return kilograms * standardGravity
}
