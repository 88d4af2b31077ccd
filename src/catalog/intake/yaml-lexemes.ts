import { CST, Lexer } from 'yaml'
import { barredKey, IntakeFault, intakeLimits, isBarredKey, tooDeep, tooManyMembers, type IntakeCode } from './limits.ts'

/**
 * Goes over the lexemes of a YAML text before anything is built from them, and throws at the first that is not taken in:
 * an anchor, an alias, a tag, a second document, a key that is not one text, or brackets too deep or too full.
 */
export function scanLexemes(text: string): void {
  const scan = new LexemeScan()
  for (const lexeme of new Lexer().lex(text)) scan.take(lexeme)
}

const grows = 'since a short text could grow without bounds by them. Write out what it stands for.'
const refused: Partial<Readonly<Record<CST.TokenType, readonly [IntakeCode, string]>>> = {
  'anchor': ['aliasRefused', `anchors are not taken in, ${grows}`],
  'alias': ['aliasRefused', `aliases are not taken in, ${grows}`],
  'tag': ['tagRefused', 'tags are not taken in. Leave it out; put a text in quotes.'],
  'directive-line': ['tagRefused', 'directives are not taken in. Leave the line out.'],
  'explicit-key-ind': ['unreadable', 'a key is one text with a colon behind it. Leave out the question mark, or put the text in quotes.'],
}

class LexemeScan {
  private line = 1
  private keyInLine = false
  private begun = false
  private scalarIsNext = false
  private lastScalar: string | undefined
  /** How many members the lists and objects in brackets have, from the outermost inward. */
  private readonly flows: number[] = []

  private readonly marks: Partial<Readonly<Record<CST.TokenType, (lexeme: string) => void>>> = {
    'scalar': () => { this.scalarIsNext = true },
    'flow-error-end': () => { this.flows.length = 0 },
    'doc-start': () => this.document(),
    'seq-item-ind': () => { this.begun = true },
    'map-value-ind': () => this.key(),
    'flow-map-start': () => this.open(),
    'flow-seq-start': () => this.open(),
    'flow-map-end': (bracket) => this.close(bracket),
    'flow-seq-end': (bracket) => this.close(bracket),
    'comma': () => this.comma(),
    'single-quoted-scalar': (text) => this.scalar(text),
    'double-quoted-scalar': (text) => this.scalar(text),
  }

  take(lexeme: string): void {
    if (this.scalarIsNext) this.scalar(lexeme)
    else this.mark(CST.tokenType(lexeme), lexeme)
    if (!lexeme.includes('\n')) return
    this.line += lexeme.split('\n').length - 1
    this.keyInLine = false
  }

  private mark(type: CST.TokenType | null, lexeme: string): void {
    if (type === null) return
    const refusal = refused[type]
    if (refusal) throw this.fault(...refusal)
    if (type === 'doc-mode' && this.begun) this.document()
    this.marks[type]?.(lexeme)
  }

  private scalar(text: string): void {
    this.scalarIsNext = false
    this.begun = true
    this.lastScalar = text
  }

  private document(): void {
    if (this.begun) throw this.fault('severalDocuments', 'a second document begins here. Send one amendment at a time.')
    this.begun = true
  }

  /** A colon: what stands before it is a key. */
  private key(): void {
    const key = unquoted(this.lastScalar)
    this.lastScalar = undefined
    if (key === undefined) throw this.fault('unreadable', 'a colon has no key before it. Put a text with a colon in quotes.')
    if (isBarredKey(key)) throw barredKey(key, this.line)
    if (this.flows.length > 0) return
    if (this.keyInLine) throw this.fault('unreadable', 'there are two keys in one line. Put a text with a colon in quotes.')
    this.keyInLine = true
  }

  private open(): void {
    this.begun = true
    this.lastScalar = undefined
    if (this.flows.length >= intakeLimits.depth) throw tooDeep(this.line)
    this.flows.push(0)
  }

  private close(bracket: string): void {
    this.lastScalar = undefined
    if (this.flows.pop() === undefined) throw this.fault('unreadable', `"${bracket}" closes what nobody opened.`)
  }

  private comma(): void {
    const members = (this.flows.pop() ?? 0) + 1
    if (members >= intakeLimits.members) throw tooManyMembers(this.line)
    this.flows.push(members)
  }

  private fault(code: IntakeCode, detail: string): IntakeFault {
    return new IntakeFault(code, `Line ${this.line}: ${detail}`)
  }
}

function unquoted(scalar: string | undefined): string | undefined {
  return scalar?.replace(/^(["'])(.*)\1$/, '$2')
}
