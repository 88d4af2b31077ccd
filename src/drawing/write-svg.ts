import { pens, type PenName } from './pens.ts'
import type { Group, Point, Shape, Strokes, Words } from './shape.ts'

export interface Document {
  /** Begins every id in the document, so that several can stand in one page. */
  readonly id: string
  readonly width: number
  readonly height: number
  readonly title: string
  readonly description: string
  readonly data: Readonly<Record<string, string>>
  readonly shapes: readonly Shape[]
}

/** The only place where SVG is written: every text and every attribute is escaped here. No style sheet, no script, nothing from outside. */
export function svgOf({ id, width, height, title, description, data, shapes }: Document): string {
  const size = `width="${rounded(width)}mm" height="${rounded(height)}mm" viewBox="0 0 ${rounded(width)} ${rounded(height)}"`
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" ${size} role="img" aria-labelledby="${escaped(id)}-title ${escaped(id)}-description" font-family="Helvetica, Arial, 'Liberation Sans', sans-serif"${dataOf(data)}>`,
    `<title id="${escaped(id)}-title">${escaped(title)}</title>`,
    `<desc id="${escaped(id)}-description">${escaped(description)}</desc>`,
    ...shapes.map(written),
    '</svg>',
    '',
  ].join('\n')
}

function written(shape: Shape): string {
  switch (shape.kind) {
    case 'strokes': return strokesOf(shape)
    case 'round': return `<circle cx="${rounded(shape.center[0])}" cy="${rounded(shape.center[1])}" r="${rounded(shape.radius)}"${penOf(shape.pen)}/>`
    case 'words': return wordsOf(shape)
    case 'group': return groupOf(shape)
  }
}

function strokesOf({ lines, closed, pen }: Strokes): string {
  const path = lines.map((points) => `M${points.map(pointOf).join('L')}${closed ? 'Z' : ''}`).join('')
  return path === '' ? '' : `<path d="${path}"${penOf(pen)}/>`
}

function groupOf({ data, shapes }: Group): string {
  return `<g${dataOf(data)}>${shapes.map(written).join('')}</g>`
}

function wordsOf({ at: [x, y], text, size, anchor, weight, ink, turned }: Words): string {
  const place = turned ? `transform="translate(${rounded(x)} ${rounded(y)}) rotate(-90)"` : `x="${rounded(x)}" y="${rounded(y)}"`
  const more = `${anchor === 'start' ? '' : ` text-anchor="${anchor}"`}${weight === 'bold' ? ' font-weight="bold"' : ''}${ink === 'white' ? ' fill="white"' : ''}`
  return `<text ${place} font-size="${rounded(size)}"${more}>${escaped(text)}</text>`
}

function penOf(name: PenName): string {
  const { width, dash, fill } = pens[name]
  const stroke = width === 0 ? '' : ` stroke="black" stroke-width="${width}"${dash ? ` stroke-dasharray="${dash.join(' ')}"` : ''}`
  return ` fill="${fill}"${stroke}`
}

function dataOf(data: Readonly<Record<string, string>>): string {
  return Object.entries(data).map(([name, value]) => ` data-${name}="${escaped(value)}"`).join('')
}

function pointOf([x, y]: Point): string {
  return `${rounded(x)} ${rounded(y)}`
}

/** A thousandth of a millimeter of paper is finer than any printer. */
function rounded(value: number): string {
  const text = value.toFixed(3).replace(/\.?0+$/, '')
  return text === '-0' ? '0' : text
}

const references: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&apos;' }
/** What XML cannot write, line breaks and tabs, and marks that turn the direction of what follows. */
const unwritable = /[^\u{20}-\u{7E}\u{A0}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]|[\u200E\u200F\u202A-\u202E\u2066-\u2069\u2028\u2029]/gu

function escaped(text: string): string {
  return text.replaceAll(unwritable, ' ').replaceAll(/[&<>"']/g, (character) => references[character] ?? character)
}
