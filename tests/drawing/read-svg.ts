import { XMLParser } from 'fast-xml-parser'

export type Point = readonly [x: number, y: number]

/** An element of a drawing as a general XML parser reads it. */
export interface Element {
  readonly name: string
  readonly attributes: Readonly<Record<string, string>>
  readonly children: readonly Element[]
  readonly text: string
}

type Parsed = Readonly<Record<string, unknown>> & { readonly ':@'?: Readonly<Record<string, string>>; readonly '#text'?: string }

const parser = new XMLParser({ preserveOrder: true, ignoreAttributes: false, attributeNamePrefix: '', parseTagValue: false, parseAttributeValue: false, trimValues: false })

export function readSvg(svg: string): Element {
  const root = (parser.parse(svg, true) as readonly Parsed[]).map(elementOf).find(({ name }) => name === 'svg')
  if (!root) throw new Error('there is no svg element')
  return root
}

function elementOf(parsed: Parsed): Element {
  const name = Object.keys(parsed).find((key) => key !== ':@') ?? ''
  const inside = name === '#text' ? [] : (parsed[name] as readonly Parsed[])
  return { name, attributes: parsed[':@'] ?? {}, children: inside.filter((one) => !('#text' in one)).map(elementOf), text: inside.map((one) => one['#text'] ?? '').join('') }
}

/** The element and all within it. */
export function allIn(element: Element): readonly Element[] {
  return [element, ...element.children.flatMap(allIn)]
}

/** Elements with these data attributes, in the order in which they are drawn. */
export function partsIn(element: Element, data: Readonly<Record<string, string>>): readonly Element[] {
  return allIn(element).filter(({ attributes }) => Object.entries(data).every(([key, value]) => attributes[`data-${key}`] === value))
}

export function partIn(element: Element, data: Readonly<Record<string, string>>): Element {
  const [found] = partsIn(element, data)
  if (!found) throw new Error(`nothing has ${JSON.stringify(data)}`)
  return found
}

/** The lines of a path, each as its points. */
export function linesOf({ attributes }: Element): readonly (readonly Point[])[] {
  const path = attributes['d'] ?? ''
  return path.split('M').filter((line) => line !== '').map((line) => line.replace('Z', '').split('L').map((pair): Point => { const [x = NaN, y = NaN] = pair.split(' ').map(Number); return [x, y] }))
}

/** Every line that is drawn in an element. */
export function linesIn(element: Element): readonly (readonly Point[])[] {
  return allIn(element).filter(({ name }) => name === 'path').flatMap(linesOf)
}

export interface Box {
  readonly what: string
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

export function boundsOf(points: readonly Point[], what = ''): Box {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
  return { what, left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) }
}
