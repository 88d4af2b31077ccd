import { textWidth } from '../../src/drawing/text-width.ts'
import { allIn, boundsOf, linesIn, partsIn, readSvg, type Box, type Element, type Point } from './read-svg.ts'

/** Texts and signs that lie on each other, and anything that leaves the frame; nothing in a drawing that can be read. */
export function faultsOf(svg: string): readonly string[] {
  const root = readSvg(svg)
  return [...overlapsOf(boxesOf(root)), ...outsideOf(root)]
}

/** Parts of letters that touch are no overlap to the eye. */
const touch = 0.15

export function overlapsOf(boxes: readonly Box[]): readonly string[] {
  const sorted = boxes.toSorted((a, b) => a.top - b.top)
  return sorted.flatMap((one, index) => {
    const found: string[] = []
    for (const other of sorted.slice(index + 1)) {
      if (other.top >= one.bottom - touch) break
      if (other.left < one.right - touch && one.left < other.right - touch && other.what !== one.what) found.push(`"${one.what}" and "${other.what}" overlap`)
    }
    return found
  })
}

/** The room of every text, as wide as any common font makes it, and of every numbered sign. */
export function boxesOf(root: Element): readonly Box[] {
  const texts = allIn(root).filter(({ name }) => name === 'text').map(boxOfText)
  const signs = partsIn(root, { part: 'mark' }).map((mark) => {
    const closed = allIn(mark).filter(({ name, attributes }) => name === 'path' && (attributes['d'] ?? '').endsWith('Z'))
    return { ...boundsOf(closed.flatMap((path) => linesIn(path).flat())), what: `sign ${mark.attributes['data-number'] ?? ''}` }
  })
  const within = signs.map((sign) => texts.find((text) => text.left >= sign.left - 1 && text.right <= sign.right + 1 && text.top >= sign.top && text.bottom <= sign.bottom))
  return [...texts.filter((text) => !within.includes(text)), ...signs]
}

export function boxOfText({ attributes, text }: Element): Box {
  const size = Number(attributes['font-size'])
  const width = textWidth(text, size, attributes['font-weight'] === 'bold' ? 'bold' : 'normal')
  const turned = /translate\(([-\d.]+) ([-\d.]+)\) rotate\(-90\)/.exec(attributes['transform'] ?? '')
  const [x, y] = turned ? [Number(turned[1]), Number(turned[2])] : [Number(attributes['x']), Number(attributes['y'])]
  const before = attributes['text-anchor'] === 'middle' ? width / 2 : attributes['text-anchor'] === 'end' ? width : 0
  const [up, down] = [size * 0.76, size * 0.22]
  if (turned) return { what: text, left: x - up, right: x + down, top: y - (width - before), bottom: y + before }
  return { what: text, left: x - before, right: x - before + width, top: y - up, bottom: y + down }
}

function outsideOf(root: Element): readonly string[] {
  const [, , width = 0, height = 0] = (root.attributes['viewBox'] ?? '').split(' ').map(Number)
  const inFrame = ({ left, right, top, bottom }: Box) => left >= 2 && right <= width - 2 && top >= 2 && bottom <= height - 2
  const drawn = root.children.filter(({ attributes }) => attributes['data-part'] !== 'frame' && attributes['data-part'] !== undefined)
  const points = drawn.flatMap((part) => linesIn(part).flat())
  const circles = allIn(root).filter(({ name }) => name === 'circle').map(({ attributes }): Point => [Number(attributes['cx']), Number(attributes['cy'])])
  const odd = [...points, ...circles].filter(([x, y]) => !Number.isFinite(x) || !Number.isFinite(y))
  return [
    ...boxesOf(root).filter((box) => !inFrame(box)).map(({ what }) => `"${what}" leaves the frame`),
    ...[...points, ...circles].filter(([x, y]) => !inFrame({ what: '', left: x, right: x, top: y, bottom: y })).slice(0, 3).map((point) => `a line at ${point.join(', ')} leaves the frame`),
    ...(odd.length > 0 ? ['a point is no number'] : []),
  ]
}
