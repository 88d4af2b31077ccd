/** Widths in parts of the size of the text, at the upper end of what common sans-serif fonts need. */
const narrow = 0.34
const slim = 0.43
const digit = 0.64
const lower = 0.63
const upper = 0.74
const broad = 1.0
const foreign = 1.1

/** How wide a text may become, in millimeters. Never too little for a font that is put in place of another. */
export function textWidth(text: string, size: number, weight: 'normal' | 'bold' = 'normal'): number {
  const plain = charactersOf(text).reduce((sum, character) => sum + widthOf(character), 0) * size
  return weight === 'bold' ? plain * 1.12 : plain
}

/** Whole code points, so that none is cut in two. */
function charactersOf(text: string): readonly string[] {
  return Array.from(text)
}

function widthOf(character: string): number {
  if (/[ ijlI.,;:'!|]/.test(character)) return narrow
  if (/[tfr()[\]/-]/.test(character)) return slim
  if (/[0-9"?½¼¾⅓⅔⅛⅜⅝⅞×]/.test(character)) return digit
  if (/[mwMW@%&—]/.test(character)) return broad
  if (/[a-z–]/.test(character)) return lower
  if (/[A-Z]/.test(character)) return upper
  return /[ -~]/.test(character) ? 0.85 : foreign
}

/** What fits into a width, with an ellipsis where something is left out. */
export function fitted(text: string, width: number, size: number, weight: 'normal' | 'bold' = 'normal'): string {
  if (textWidth(text, size, weight) <= width) return text
  const characters = [...charactersOf(text)]
  while (characters.length > 0 && textWidth(`${characters.join('')}…`, size, weight) > width) characters.pop()
  return `${characters.join('').trimEnd()}…`
}

/** Lines that fit into a width; the last of `most` ends in an ellipsis where something is left out. */
export function wrapped(text: string, width: number, size: number, most = Infinity): readonly string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`
    if (textWidth(longer, size) <= width) { line = longer; continue }
    if (line !== '') lines.push(line)
    line = textWidth(word, size) <= width ? word : fitted(word, width, size)
  }
  lines.push(line)
  if (lines.length <= most) return lines
  const kept = lines.slice(0, most)
  return [...kept.slice(0, -1), fitted(`${kept.at(-1) ?? ''} …`, width, size)]
}
