/** The kinds of physical quantity the service compares, and the one unit each is kept in. */
export const baseUnits = {
  length: 'nm',
  angle: 'deg',
  area: 'mm2',
  sectionModulus: 'mm3',
  momentOfInertia: 'mm4',
  arealLoad: 'Pa',
  stress: 'Pa',
  force: 'N',
  lineLoad: 'N/m',
  moment: 'N.m',
  linearMass: 'kg/m',
  speed: 'm/s',
  mass: 'kg',
  volume: 'L',
  duration: 'h',
  temperatureDifference: 'K',
  thermalExpansion: '/K',
  rainRate: 'mm/h',
  rainDepth: 'L/m2',
  flow: 'L/h',
  openArea: 'mm2/m',
  unitsPerArea: '/m2',
  count: '1',
  ratio: '1',
} as const

export type Dimension = keyof typeof baseUnits
export type UnitSystem = 'inchPound' | 'si'

interface Unit {
  readonly dimension: Dimension
  /** How many base units one of these is. Lengths are whole numbers of nanometres. */
  readonly factor: number
}

const inch_mm = 25.4
const foot_m = 0.3048
const poundForce_N = 4.4482216152605
const pound_kg = 0.45359237
const gallon_L = 3.785411784
const cubicFoot_L = (foot_m * 10) ** 3

/**
 * UCUM codes, and beside them the abbreviations the trade writes.
 * Inch, foot, pound, pound-force and gallon are exact by definition (NIST SP 811, appendix B).
 * UCUM has no code for a thousand pounds-force, and none for one part in a degree; those two are the trade's own.
 */
const units: Readonly<Record<string, Unit>> = {
  'nm': { dimension: 'length', factor: 1 },
  'um': { dimension: 'length', factor: 1_000 },
  'mm': { dimension: 'length', factor: 1_000_000 },
  'cm': { dimension: 'length', factor: 10_000_000 },
  'm': { dimension: 'length', factor: 1_000_000_000 },
  'km': { dimension: 'length', factor: 1_000_000_000_000 },
  '[in_i]': { dimension: 'length', factor: 25_400_000 },
  '[ft_i]': { dimension: 'length', factor: 304_800_000 },
  '[mil_i]': { dimension: 'length', factor: 25_400 },
  'deg': { dimension: 'angle', factor: 1 },
  'mm2': { dimension: 'area', factor: 1 },
  'm2': { dimension: 'area', factor: 1e6 },
  '[in_i]2': { dimension: 'area', factor: inch_mm ** 2 },
  '[ft_i]2': { dimension: 'area', factor: (foot_m * 1_000) ** 2 },
  'mm3': { dimension: 'sectionModulus', factor: 1 },
  'cm3': { dimension: 'sectionModulus', factor: 1e3 },
  '[in_i]3': { dimension: 'sectionModulus', factor: inch_mm ** 3 },
  'mm4': { dimension: 'momentOfInertia', factor: 1 },
  'cm4': { dimension: 'momentOfInertia', factor: 1e4 },
  '[in_i]4': { dimension: 'momentOfInertia', factor: inch_mm ** 4 },
  '[lbf_av]/[ft_i]2': { dimension: 'arealLoad', factor: poundForce_N / foot_m ** 2 },
  'kPa': { dimension: 'arealLoad', factor: 1_000 },
  'kN/m2': { dimension: 'arealLoad', factor: 1_000 },
  'Pa': { dimension: 'arealLoad', factor: 1 },
  '[psi]': { dimension: 'stress', factor: poundForce_N / (inch_mm / 1_000) ** 2 },
  'ksi': { dimension: 'stress', factor: (1_000 * poundForce_N) / (inch_mm / 1_000) ** 2 },
  'MPa': { dimension: 'stress', factor: 1e6 },
  'GPa': { dimension: 'stress', factor: 1e9 },
  '[lbf_av]': { dimension: 'force', factor: poundForce_N },
  'N': { dimension: 'force', factor: 1 },
  'kip': { dimension: 'force', factor: 1_000 * poundForce_N },
  'kN': { dimension: 'force', factor: 1_000 },
  '[lbf_av]/[ft_i]': { dimension: 'lineLoad', factor: poundForce_N / foot_m },
  'N/m': { dimension: 'lineLoad', factor: 1 },
  'kN/m': { dimension: 'lineLoad', factor: 1_000 },
  '[lbf_av].[ft_i]': { dimension: 'moment', factor: poundForce_N * foot_m },
  '[lbf_av].[in_i]': { dimension: 'moment', factor: (poundForce_N * inch_mm) / 1_000 },
  'N.m': { dimension: 'moment', factor: 1 },
  'kN.m': { dimension: 'moment', factor: 1_000 },
  '[lb_av]/[ft_i]': { dimension: 'linearMass', factor: pound_kg / foot_m },
  'kg/m': { dimension: 'linearMass', factor: 1 },
  '[mi_i]/h': { dimension: 'speed', factor: 0.44704 },
  'm/s': { dimension: 'speed', factor: 1 },
  'km/h': { dimension: 'speed', factor: 1 / 3.6 },
  'kg': { dimension: 'mass', factor: 1 },
  '[lb_av]': { dimension: 'mass', factor: pound_kg },
  'L': { dimension: 'volume', factor: 1 },
  'mL': { dimension: 'volume', factor: 0.001 },
  'm3': { dimension: 'volume', factor: 1_000 },
  '[cft_i]': { dimension: 'volume', factor: cubicFoot_L },
  '[gal_us]': { dimension: 'volume', factor: gallon_L },
  'h': { dimension: 'duration', factor: 1 },
  'min': { dimension: 'duration', factor: 1 / 60 },
  's': { dimension: 'duration', factor: 1 / 3_600 },
  'd': { dimension: 'duration', factor: 24 },
  'K': { dimension: 'temperatureDifference', factor: 1 },
  'Cel': { dimension: 'temperatureDifference', factor: 1 },
  '[degF]': { dimension: 'temperatureDifference', factor: 5 / 9 },
  '/K': { dimension: 'thermalExpansion', factor: 1 },
  '/[degF]': { dimension: 'thermalExpansion', factor: 9 / 5 },
  'mm/h': { dimension: 'rainRate', factor: 1 },
  '[in_i]/h': { dimension: 'rainRate', factor: inch_mm },
  'L/(m2.h)': { dimension: 'rainRate', factor: 1 },
  'L/(m2.min)': { dimension: 'rainRate', factor: 60 },
  '[gal_us]/([ft_i]2.h)': { dimension: 'rainRate', factor: gallon_L / foot_m ** 2 },
  'L/m2': { dimension: 'rainDepth', factor: 1 },
  '[gal_us]/[ft_i]2': { dimension: 'rainDepth', factor: gallon_L / foot_m ** 2 },
  'L/h': { dimension: 'flow', factor: 1 },
  'L/min': { dimension: 'flow', factor: 60 },
  'mL/min': { dimension: 'flow', factor: 0.06 },
  '[gal_us]/h': { dimension: 'flow', factor: gallon_L },
  'mm2/m': { dimension: 'openArea', factor: 1 },
  '[in_i]2/[ft_i]': { dimension: 'openArea', factor: inch_mm ** 2 / foot_m },
  '/m2': { dimension: 'unitsPerArea', factor: 1 },
  '/[ft_i]2': { dimension: 'unitsPerArea', factor: 1 / foot_m ** 2 },
  '%': { dimension: 'ratio', factor: 0.01 },
  '1': { dimension: 'count', factor: 1 },
}

const abbreviations: Readonly<Record<string, string>> = {
  'in': '[in_i]', 'in.': '[in_i]', 'inch': '[in_i]', 'inches': '[in_i]', '"': '[in_i]',
  'ft': '[ft_i]', 'ft.': '[ft_i]', 'foot': '[ft_i]', 'feet': '[ft_i]', "'": '[ft_i]',
  'mil': '[mil_i]', 'mils': '[mil_i]', 'µm': 'um', 'μm': 'um', 'MM': 'mm', 'CM': 'cm',
  '°': 'deg', 'º': 'deg', 'deg.': 'deg', 'degree': 'deg', 'degrees': 'deg',
  'sq in': '[in_i]2', 'sq. in.': '[in_i]2', 'in2': '[in_i]2', 'sq ft': '[ft_i]2', 'sq. ft.': '[ft_i]2', 'ft2': '[ft_i]2',
  'in3': '[in_i]3', 'in4': '[in_i]4',
  'psf': '[lbf_av]/[ft_i]2', 'lb/ft2': '[lbf_av]/[ft_i]2', 'lbf/ft2': '[lbf_av]/[ft_i]2', 'psi': '[psi]',
  'lbf': '[lbf_av]', 'lb': '[lbf_av]', 'plf': '[lbf_av]/[ft_i]', 'lbf/ft': '[lbf_av]/[ft_i]',
  'lbf ft': '[lbf_av].[ft_i]', 'N m': 'N.m', 'lb/ft': '[lb_av]/[ft_i]', 'mph': '[mi_i]/h',
  '°f': '[degF]', 'deg f': '[degF]', 'degf': '[degF]', '°c': 'Cel', 'deg c': 'Cel', 'degc': 'Cel', '/°c': '/K', '/°f': '/[degF]', 'per °f': '/[degF]', 'per °c': '/K',
  'in/h': '[in_i]/h', 'in/hr': '[in_i]/h', 'mm/hr': 'mm/h', 'l/m2h': 'L/(m2.h)', 'l/m2.h': 'L/(m2.h)', 'l/m2 h': 'L/(m2.h)', 'gal/ft2h': '[gal_us]/([ft_i]2.h)', 'gal/ft2.h': '[gal_us]/([ft_i]2.h)',
  'gal/ft2': '[gal_us]/[ft_i]2', 'l/m2': 'L/m2', 'l': 'L', 'liter': 'L', 'liters': 'L', 'ft3': '[cft_i]', 'cu ft': '[cft_i]', 'gal': '[gal_us]', 'ml': 'mL', 'l/h': 'L/h', 'l/min': 'L/min', 'ml/min': 'mL/min', 'gal/h': '[gal_us]/h',
  '/ft2': '/[ft_i]2', 'lbm': '[lb_av]', 'hour': 'h', 'hours': 'h', 'minutes': 'min', 'day': 'd', 'days': 'd', 'percent': '%', 'in2/ft': '[in_i]2/[ft_i]',
}

/**
 * Looks a unit up by its UCUM code or trade abbreviation. Codes are case-sensitive, as UCUM has them;
 * the trade's abbreviations may stand in capitals, as drawings are lettered.
 */
export function findUnit(code: string): Unit | undefined {
  const typed = code.replace('²', '2').replace('³', '3').replace('⁴', '4').replaceAll('·', '.')
  if (Object.hasOwn(units, typed)) return units[typed]
  const abbreviation = [typed, typed.toLowerCase()].find((spelling) => Object.hasOwn(abbreviations, spelling))
  return abbreviation === undefined ? undefined : units[abbreviations[abbreviation] ?? '']
}

/** Every spelling that `findUnit` takes for units of one dimension; abbreviations in small letters may stand in any case. */
export function spellingsOf(dimension: Dimension): readonly { readonly text: string; readonly anyCase: boolean }[] {
  const codes = Object.keys(units).filter((code) => units[code]?.dimension === dimension)
  const short = Object.keys(abbreviations).filter((one) => codes.includes(abbreviations[one] ?? ''))
  return [...codes.map((text) => ({ text, anyCase: false })), ...short.map((text) => ({ text, anyCase: text === text.toLowerCase() }))]
}
