import type { CatalogCode } from '../catalog.ts'
import type { Dimension } from '../../units/dimension.ts'
import { readQuantity } from '../../units/quantity.ts'

interface Pair {
  readonly governing: 'inchPound' | 'si'
  readonly inchPound: string
  readonly si: string
  readonly roundedTo?: string | undefined
  readonly printedConflict?: string | undefined
}

interface PairDefect {
  readonly code: CatalogCode
  readonly detail: string
}

/**
 * The two figures of a limit must be readable, of one dimension (the expected one where it is known), and agree within the
 * rounding of the figure that does not govern: half of its last printed digit, or half of `roundedTo`. A limit that says that
 * its text contradicts itself is taken as it is printed, and must do so.
 */
export function checkPair(pair: Pair, expected: Dimension | undefined): PairDefect | undefined {
  const inchPound = readQuantity(pair.inchPound)
  const si = readQuantity(pair.si)
  if (!inchPound || !si) return { code: 'unitMismatch', detail: `"${inchPound ? pair.si : pair.inchPound}" cannot be read. Write a number and a UCUM unit: "4 [in_i]", "102 mm"` }
  if (inchPound.dimension !== si.dimension) return { code: 'unitMismatch', detail: `"${pair.inchPound}" is a ${inchPound.dimension} and "${pair.si}" a ${si.dimension}` }
  if (expected !== undefined && inchPound.dimension !== expected) return { code: 'unitMismatch', detail: `"${pair.inchPound}" is a ${inchPound.dimension}, but what is checked is a ${expected}` }
  const agree = Math.abs(inchPound.amount - si.amount) <= roundingOf(pair, si.dimension)
  return agree === (pair.printedConflict === undefined) ? undefined : disagreement(pair, agree)
}

function roundingOf(pair: Pair, dimension: Dimension): number {
  const step = readQuantity(pair.roundedTo ?? lastDigit(pair.governing === 'inchPound' ? pair.si : pair.inchPound))
  return step?.dimension === dimension ? (step.amount / 2) * 1.000001 : 0
}

function disagreement({ inchPound, si }: Pair, agree: boolean): PairDefect {
  return agree
    ? { code: 'printedConflictUnneeded', detail: `"${inchPound}" and "${si}" agree within rounding. Leave "printedConflict" out` }
    : { code: 'pairMismatch', detail: `"${inchPound}" and "${si}" differ by more than rounding. Correct one, state "roundedTo" if the publication rounds further, or "printedConflict" if it prints them so` }
}

/** One step of the last printed digit: 1 mm for "102 mm", 0.1 mm for "4.8 mm", 1/16 in for "2 3/16 [in_i]". */
function lastDigit(text: string): string {
  const [number = '', unit = ''] = text.split(/ (?=[^ ]+$)/)
  const denominator = /\/(\d+)$/.exec(number)?.[1]
  const decimals = /\.(\d+)$/.exec(number)?.[1]?.length
  return `${denominator ? `1/${denominator}` : decimals ? `0.${'1'.padStart(decimals, '0')}` : '1'} ${unit}`
}
