const millimetre_nm = 1_000_000
const metre_nm = 1_000_000_000

/** Millimetres in so many nanometres. */
export function millimetres(nanometres: number): number {
  return nanometres / millimetre_nm
}

/** Metres in so many nanometres. */
export function metres(nanometres: number): number {
  return nanometres / metre_nm
}

/** The whole number of nanometres nearest to so many metres. */
export function nanometresOf(metres: number): number {
  return Math.round(metres * metre_nm)
}

/** An area in mm², from two lengths in nanometres. */
export function areaOf(length: number, width: number): number {
  return millimetres(length) * millimetres(width)
}
