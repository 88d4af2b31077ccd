/** What no amendment needs more of. A text beyond is refused before anybody works on it. */
export const intakeLimits = {
  /** Characters of text. */
  length: 1_048_576,
  /** Lists and objects within one another. */
  depth: 64,
  /** Members of one list or one object, the modifications among them. */
  members: 2_000,
  /** Lines of YAML. */
  lines: 50_000,
  /** Colons, commas and brackets of YAML, each of which costs work. */
  marks: 150_000,
  /** Columns that a line of YAML is indented, each of which may be one more level. */
  indent: 200,
} as const

export type IntakeCode =
  | 'textTooLarge' | 'textTooDeep' | 'tooManyMembers' | 'duplicateKey' | 'keyRefused' | 'aliasRefused' | 'tagRefused' | 'severalDocuments' | 'unreadable'

/** Why a text is not taken in. Thrown within the intake alone, where it ends all work at once. */
export class IntakeFault extends Error {
  readonly code: IntakeCode

  constructor(code: IntakeCode, detail: string) {
    super(detail)
    this.code = code
  }
}

const barredKeys: readonly string[] = ['__proto__', 'constructor', 'prototype']

/** A key that reaches into the objects of the language. */
export function isBarredKey(key: string): boolean {
  return barredKeys.includes(key)
}

export function barredKey(key: string, line: number): IntakeFault {
  return new IntakeFault('keyRefused', `Line ${line}: "${key}" cannot be a key. Leave it out.`)
}

export function duplicateKey(key: string, line: number): IntakeFault {
  return new IntakeFault('duplicateKey', `Line ${line}: "${key.slice(0, 80)}" is there twice in one object, and only one could count. Keep one.`)
}

export function tooDeep(line: number): IntakeFault {
  return new IntakeFault('textTooDeep', `Line ${line}: lists and objects lie more than ${intakeLimits.depth} deep in one another. Put it more simply.`)
}

export function tooManyMembers(line: number): IntakeFault {
  return new IntakeFault('tooManyMembers', `Line ${line}: one list or object has more than ${intakeLimits.members} members. Split it into several amendments.`)
}
