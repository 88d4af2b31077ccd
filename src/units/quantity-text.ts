import { findUnit, type Dimension, type UnitSystem } from './dimension.ts'
import type { Quantity } from './quantity.ts'

const inch_nm = 25_400_000
const sixtyFourth_nm = inch_nm / 64
const thousandth_nm = inch_nm / 1000

/** A length so that reading it back gives the same nanometres: inches when a tape shows it, else millimetres. */
export function exactLengthText(nanometres: number): string {
  return nanometres % sixtyFourth_nm === 0 ? inchText(nanometres) : millimetreText(nanometres)
}

/** "3 7/8 in", "-1/2 in"; a length between the 64ths is given to a thousandth of an inch. */
export function inchText(nanometres: number): string {
  if (nanometres % sixtyFourth_nm !== 0) return `${trimmed(nanometres / inch_nm, 3)} in`
  const sixtyFourths = Math.abs(nanometres) / sixtyFourth_nm
  const sign = nanometres < 0 ? '-' : ''
  return `${sign}${mixedNumber(Math.floor(sixtyFourths / 64), sixtyFourths % 64)} in`
}

function mixedNumber(whole: number, sixtyFourths: number): string {
  if (sixtyFourths === 0) return String(whole)
  const shared = greatestCommonDivisor(sixtyFourths, 64)
  const fraction = `${sixtyFourths / shared}/${64 / shared}`
  return whole === 0 ? fraction : `${whole} ${fraction}`
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b)
}

/** Millimetres, exact: a nanometre is the sixth decimal. */
export function millimetreText(nanometres: number): string {
  return `${trimmed(nanometres / 1_000_000, 6)} mm`
}

/** A whole number of feet and inches, as drawings give openings and lintels: 4'-6 1/2". */
export function feetInchesText(nanometres: number): string {
  const size = Math.abs(nanometres)
  const shown = size % sixtyFourth_nm === 0 ? size : Math.round(size / thousandth_nm) * thousandth_nm
  const feet = Math.floor(shown / (12 * inch_nm))
  const inches = shown - feet * 12 * inch_nm
  return `${nanometres < 0 ? '-' : ''}${feet}'-${inchText(inches).replace(' in', '"')}`
}

const shownIn: Readonly<Record<Exclude<Dimension, 'length'>, Readonly<Record<UnitSystem, readonly [ucum: string, shown: string]>>>> = {
  angle: { inchPound: ['deg', 'deg'], si: ['deg', 'deg'] },
  area: { inchPound: ['[ft_i]2', 'ft2'], si: ['m2', 'm2'] },
  sectionModulus: { inchPound: ['[in_i]3', 'in3'], si: ['cm3', 'cm3'] },
  momentOfInertia: { inchPound: ['[in_i]4', 'in4'], si: ['cm4', 'cm4'] },
  arealLoad: { inchPound: ['[lbf_av]/[ft_i]2', 'psf'], si: ['kPa', 'kPa'] },
  stress: { inchPound: ['[psi]', 'psi'], si: ['MPa', 'MPa'] },
  force: { inchPound: ['[lbf_av]', 'lbf'], si: ['N', 'N'] },
  lineLoad: { inchPound: ['[lbf_av]/[ft_i]', 'lbf/ft'], si: ['kN/m', 'kN/m'] },
  moment: { inchPound: ['[lbf_av].[ft_i]', 'lbf ft'], si: ['N.m', 'N m'] },
  linearMass: { inchPound: ['[lb_av]/[ft_i]', 'lb/ft'], si: ['kg/m', 'kg/m'] },
  speed: { inchPound: ['[mi_i]/h', 'mph'], si: ['m/s', 'm/s'] },
  mass: { inchPound: ['[lb_av]', 'lbm'], si: ['kg', 'kg'] },
  volume: { inchPound: ['[cft_i]', 'ft3'], si: ['L', 'L'] },
  duration: { inchPound: ['h', 'h'], si: ['h', 'h'] },
  temperatureDifference: { inchPound: ['[degF]', '°F'], si: ['K', 'K'] },
  thermalExpansion: { inchPound: ['/[degF]', '/°F'], si: ['/K', '/K'] },
  rainRate: { inchPound: ['[in_i]/h', 'in/h'], si: ['mm/h', 'mm/h'] },
  rainDepth: { inchPound: ['[gal_us]/[ft_i]2', 'gal/ft2'], si: ['L/m2', 'L/m2'] },
  flow: { inchPound: ['[gal_us]/h', 'gal/h'], si: ['L/h', 'L/h'] },
  openArea: { inchPound: ['[in_i]2/[ft_i]', 'in2/ft'], si: ['mm2/m', 'mm2/m'] },
  unitsPerArea: { inchPound: ['/[ft_i]2', '/ft2'], si: ['/m2', '/m2'] },
  count: { inchPound: ['1', ''], si: ['1', ''] },
  ratio: { inchPound: ['1', ''], si: ['1', ''] },
}

interface ShownUnit {
  readonly factor: number
  /** What follows the number: a space and the unit, or nothing. */
  readonly after: string
}

const units = new Map(Object.entries(shownIn).map(([dimension, { inchPound, si }]) => [dimension, { inchPound: shownUnit(inchPound), si: shownUnit(si) }] as const))

function shownUnit([ucum, shown]: readonly [ucum: string, shown: string]): ShownUnit {
  return { factor: findUnit(ucum)?.factor ?? 1, after: shown === '' ? '' : ` ${shown}` }
}

/** The quantity in one unit system, for people. Lengths as a tape shows them, the rest to four figures. */
export function quantityText({ dimension, amount }: Quantity, system: UnitSystem): string {
  if (dimension === 'length') return system === 'inchPound' ? inchText(amount) : millimetreText(amount)
  const { factor, after } = units.get(dimension)?.[system] ?? shownUnit(shownIn[dimension][system])
  return `${fourFigures(amount / factor)}${after}`
}

/** A computed length: on the tape where it falls on a 64th, else to a ten-thousandth of an inch or a micrometre. */
export function computedLengthText(nanometres: number, system: UnitSystem): string {
  if (system === 'si') return `${trimmed(nanometres / 1_000_000, 3)} mm`
  return nanometres % sixtyFourth_nm === 0 ? inchText(nanometres) : `${trimmed(nanometres / inch_nm, 4)} in`
}

function fourFigures(value: number): string {
  if (Number.isInteger(value) || Math.abs(value) >= 10_000) return String(Math.round(value))
  return trimmed(value, Math.min(20, Math.max(0, 3 - Math.floor(Math.log10(Math.abs(value))))))
}

/** So many decimals, without the zeros at the end. */
function trimmed(value: number, decimals: number): string {
  if (Number.isSafeInteger(value)) return String(value)
  const text = value.toFixed(decimals)
  const short = text.includes('.') ? withoutZeros(text) : text
  return short === '-0' ? '0' : short
}

function withoutZeros(text: string): string {
  let end = text.length
  while (text[end - 1] === '0') end -= 1
  return text.slice(0, text[end - 1] === '.' ? end - 1 : end)
}
