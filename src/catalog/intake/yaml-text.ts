import { Composer, isMap, isScalar, isSeq, Parser, type Document, type Node } from 'yaml'
import { barredKey, duplicateKey, IntakeFault, intakeLimits, isBarredKey, tooDeep } from './limits.ts'
import { scanLexemes } from './yaml-lexemes.ts'
import { scanLines } from './yaml-lines.ts'

/** Reads one document of plain lists, objects, texts and numbers. Throws an intake fault for anything else. */
export function readYaml(text: string): unknown {
  scanLines(text)
  scanLexemes(text)
  const document = compose(text)
  if (!document?.contents) throw new IntakeFault('unreadable', 'The text holds nothing.')
  checkKeys(document.contents, 1, text)
  return document.toJS({ maxAliasCount: 0 })
}

type Place = number | readonly number[] | { readonly offset: number }

/** The composer gathers errors, and a text may be made so that each character is one; here the first ends its work. */
interface Stopping {
  onError: (place: Place, code: string, message: string) => void
}

function compose(text: string): Document.Parsed | undefined {
  // Uniqueness of keys is checked afterwards, since the composer compares each key with each other.
  const composer = new Composer({ uniqueKeys: false, prettyErrors: false })
  let first: IntakeFault | undefined
  const stopping = composer as unknown as Stopping
  stopping.onError = (place, _code, message) => {
    first ??= unreadable(text, offsetOf(place), message)
    throw first
  }
  for (const document of composer.compose(new Parser().parse(text), true, text.length)) {
    const [error] = document.errors
    if (error) throw unreadable(text, error.pos[0], error.message)
    return document
  }
  return undefined
}

function offsetOf(place: Place): number {
  if (typeof place === 'number') return place
  return 'offset' in place ? place.offset : (place[0] ?? 0)
}

function unreadable(text: string, offset: number, message: string): IntakeFault {
  return new IntakeFault('unreadable', `Line ${lineAt(text, offset)}: ${message.slice(0, 200)}.`)
}

/** Every key is a text, is there once, and is none that would reach into the objects of the language. */
function checkKeys(node: unknown, depth: number, text: string): void {
  if (!isMap(node) && !isSeq(node)) return
  if (depth > intakeLimits.depth) throw tooDeep(lineOf(node, text))
  if (isSeq(node)) {
    for (const item of node.items) checkKeys(item, depth + 1, text)
    return
  }
  const seen = new Set<string>()
  for (const { key, value } of node.items) {
    if (!isScalar(key)) throw unreadable(text, node.range?.[0] ?? 0, 'A key must be a text')
    const name = String(key.value)
    if (isBarredKey(name)) throw barredKey(name, lineOf(key, text))
    if (seen.has(name)) throw duplicateKey(name, lineOf(key, text))
    seen.add(name)
    checkKeys(value, depth + 1, text)
  }
}

function lineOf({ range }: Pick<Node, 'range'>, text: string): number {
  return lineAt(text, range?.[0] ?? 0)
}

function lineAt(text: string, offset: number): number {
  return text.slice(0, offset).split('\n').length
}
