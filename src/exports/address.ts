import type { ExportedBuilding } from './exported-building.ts'

/** The name, in SARIF, of the address to which paths are relative. */
export const serviceBase = 'SERVICE'

/** Where the record of an opening is read, below the service. */
export function openingPath({ project }: Pick<ExportedBuilding, 'project'>, opening: string): string {
  return `v1/projects/${encodeURIComponent(project.id)}/openings/${encodeURIComponent(opening)}`
}

/** Where a rule is explained as it holds for the building. */
export function ruleAddress({ project, publicUrl }: Pick<ExportedBuilding, 'project' | 'publicUrl'>, rule: string): string {
  const { jurisdiction, asOf, edition, publication } = project
  const place = Object.entries({ jurisdiction, asOf, edition, publication }).flatMap(([key, value]) => (value === null ? [] : [`${key}=${encodeURIComponent(value)}`]))
  return `${publicUrl}/v1/rules/${encodeURIComponent(rule)}?${place.join('&')}`
}

/**
 * An address as RFC 3986 writes it. What browsers read is more: brackets and bars in a path, a second "#".
 * @param link an absolute address that the URL standard reads
 */
export function uriOf(link: string): string {
  const { href } = new URL(link)
  const [, before = '', authority = '', rest = '', fragment] = /^([^:]+:)(\/\/[^/?#]*)?([^#]*)(?:#(.*))?$/s.exec(href) ?? []
  return `${before}${authority.replaceAll(/[^\w.~:@![\]$&'()*+,;=%/-]/gu, escaped)}${escapedIn(rest)}${fragment === undefined ? '' : `#${escapedIn(fragment)}`}`
}

function escapedIn(text: string): string {
  return text.replaceAll(/[^\w.~:/?@!$&'()*+,;=%-]/gu, escaped).replaceAll(/%(?![0-9a-f]{2})/gi, '%25')
}

function escaped(character: string): string {
  return encodeURIComponent(character)
}
