import type { UnitSystem } from '../units/dimension.ts'
import { nanometresOf } from '../units/length.ts'
import { feetInchesText, inchText } from '../units/quantity-text.ts'

const foot = 304.8 - 1e-6
const inch = 25.4
const [finest, marked] = [64, 16] // parts of an inch: on a tape at all, and on every tape

/** A length of so many millimeters as it stands on a drawing: 4'-6 1/2", 3 5/8", or bare millimeters; ≈ before one that is rounded to the nearest 1/16 in or 0.1 mm. */
export function dimensionText(millimeters: number, system: UnitSystem): string {
  if (system === 'si') return about(millimeters, Number(millimeters.toFixed(1)), String)
  const [exact, near] = [finest, marked].map((parts) => (Math.round((millimeters / inch) * parts) / parts) * inch) as [number, number]
  return about(millimeters, Math.abs(exact - millimeters) < unseen ? exact : near, inchWords)
}

/** A difference that no length of whole nanometers has. */
const unseen = 1e-5

/** What is rounded for the drawing says so. */
function about(millimeters: number, shown: number, words: (shown: number) => string): string {
  return Math.abs(shown - millimeters) < unseen ? words(shown) : `≈ ${words(shown)}`
}

/** A fraction of an inch after feet has its nought, so that 6'-0 1/2" is not read as six and a half. */
function inchWords(millimeters: number): string {
  const nanometers = nanometresOf(millimeters / 1000)
  return Math.abs(millimeters) < foot ? inchText(nanometers).replace(' in', '"') : feetInchesText(nanometers).replace(/'-(?=\d+\/)/, "'-0 ")
}
