import { baseUnits, spellingsOf, type Dimension } from './dimension.ts'
import { denominators, type LengthUnit } from './length-text.ts'

/**
 * Regular expressions (ECMA-262 with the u flag, as JSON Schema has them) for texts that the readers of this folder take.
 * Whatever matches is read; the readers take a few odd spellings beside, such as 1/02 in.
 */
const space = String.raw`\s*`
const dash = '[-−–]'
const slash = '[/⁄]'

/** Signs that may be typed in more than one way. */
const variants: Readonly<Record<string, string>> = { '"': `(?:["″”“]|['′’‘]{2})`, "'": `['′’‘]`, ' ': String.raw`\s+`, '2': '[2²]', '3': '[3³]', '4': '[4⁴]', '.': '[.·]' }

const fraction = denominators.map((under) => `(?:${upTo(under - 1)})${slash}${under}`).join('|')
const separator = `(?:${space}${dash}${space}|\\s+)`
const decimal = String.raw`(?:\d{1,15}(?:\.\d{1,15})?|\.\d{1,15})`
const sign = '[½⅓⅔¼¾⅛⅜⅝⅞]'
/** Begins with a digit or a point: what may stand right after a minus. */
const plainNumber = String.raw`(?:(?:\d{1,15}${separator})?(?:${fraction})|\d{1,15}(?:${space}${dash})?${space}${sign}|${decimal})`
const number = `(?:${sign}|${plainNumber})`

const inchWord = `(?:${anyCase('in')}\\.?|${anyCase('inch')}|${anyCase('inches')})`
const inchSigns = `(?:["″”“]|['′’‘]{2})`
const footWord = `(?:${anyCase('ft')}\\.?|${anyCase('feet')}|${anyCase('foot')})`
/** A word is kept apart from the inches, so that "4 ft2" stays an area. */
const feet = String.raw`\d{1,6}${space}(?:['′’‘]${space}${dash}?${space}|${footWord}${separator})`
const belowTwelve = String.raw`(?:\d|1[01])`
const inches = String.raw`(?:(?:${belowTwelve}${separator})?(?:${fraction})|(?:${belowTwelve}(?:${space}${dash})?${space})?${sign}|${belowTwelve}(?:\.\d{1,15})?|\.\d{1,15})`
const feetAndInches = `${feet}${inches}${space}(?:${inchSigns}|${inchWord})?`

interface Written {
  /** Whether the amount may lie below zero. */
  readonly signed: boolean
}

/** A length with its unit; a bare number too, where there is a unit that it takes. */
export function lengthPattern({ signed, lengthUnit }: Written & { readonly lengthUnit?: LengthUnit | undefined }): string {
  const unit = lengthUnit === undefined ? unitsOf.length : `(?:${unitsOf.length})?`
  return whole(signed ? `(?:${dash}${space})?` : '', `${feetAndInches}|${number}${space}${unit}`)
}

/** Any other amount with its unit; an angle also as a fall over a run, a ratio also as a plain number. */
export function amountPattern(dimension: Exclude<Dimension, 'length'>, { signed }: Written): string {
  const minus = signed ? `${dash}?` : ''
  if (dimension === 'angle') return whole(minus, `${slope}|${plainNumber}${space}${unitsOf.angle}`)
  if (dimension === 'ratio') return whole(minus, `${plainNumber}${space}(?:%|${anyCase('percent')})?`)
  return whole(minus, `${plainNumber}${space}${unitsOf[dimension]}`)
}

/** Any unit of a dimension, as it may be typed. */
const unitsOf = Object.fromEntries((Object.keys(baseUnits) as Dimension[]).map((dimension) => [dimension, anyOf(spellingsOf(dimension).map(({ text, anyCase: any }) => spelling(text, any)))])) as Readonly<Record<Dimension, string>>

const run = String.raw`(?:[1-9]\d{0,14}(?:\.\d{1,15})?)`
const perFoot = `${plainNumber}${space}(?:${inchSigns}|${anyCase('in')}\\.?|${anyCase('inch')})${space}(?:${anyCase('per')}\\s+|/${space})(?:${anyCase('ft')}\\.?|${anyCase('foot')})`
const slope = `${plainNumber}(?:${space}:${space}|\\s+${anyCase('in')}\\s+)${run}|${perFoot}`

function whole(minus: string, inner: string): string {
  return `^${space}${minus}(?:${inner})${space}$`
}

function anyOf(written: readonly string[]): string {
  return `(?:${[...new Set(written)].join('|')})`
}

/** One unit as it may be typed. */
function spelling(text: string, any: boolean): string {
  return Array.from(text, (sign) => variants[sign] ?? (any && /[a-z]/.test(sign) ? `[${sign.toUpperCase()}${sign}]` : sign.replace(/[\\^$*+?()[\]{}|/]/, String.raw`\$&`))).join('')
}

function anyCase(word: string): string {
  return spelling(word, true)
}

/** The whole numbers from 1 to one below a hundred. */
function upTo(most: number): string {
  const [tens, ones] = [Math.floor(most / 10), most % 10]
  if (tens === 0) return ones === 1 ? '1' : `[1-${ones}]`
  return ['[1-9]', ...(tens > 1 ? [`[1-${tens - 1}]\\d`] : []), `${tens}[0-${ones}]`].join('|')
}
