import { xmlCharacters } from './plain-text.ts'

/** An element of XML: attributes, and either text or elements. What is undefined is left out. */
export interface Element {
  readonly name: string
  readonly attributes: Readonly<Record<string, string | undefined>>
  readonly content: string | readonly (Element | undefined)[]
}

export function element(name: string, content: Element['content'] = [], attributes: Element['attributes'] = {}): Element {
  return { name, attributes, content }
}

export function xmlDocument(root: Element): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${written(root, '')}\n`
}

function written({ name, attributes, content }: Element, indent: string): string {
  const given = Object.entries(attributes).flatMap(([key, value]) => (value === undefined ? [] : [` ${key}="${escaped(value)}"`])).join('')
  if (typeof content === 'string') return `${indent}<${name}${given}>${escaped(content)}</${name}>`
  const inside = content.filter((one) => one !== undefined).map((one) => written(one, `${indent}  `))
  return inside.length === 0 ? `${indent}<${name}${given}/>` : `${indent}<${name}${given}>\n${inside.join('\n')}\n${indent}</${name}>`
}

const references: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&apos;', '\r': '&#xD;' }

function escaped(text: string): string {
  return xmlCharacters(text).replaceAll(/[&<>"'\r]/g, (character) => references[character] ?? character)
}
