import type { Evidence } from '../catalog/limit.ts'
import type { ChainStep } from '../catalog/rule-set.ts'
import type { Finding } from '../evaluation/document.ts'
import { facts } from '../opening/facts.ts'
import { html, joined, type Markup, type Part } from './markup.ts'

export type UnitSystem = 'inchPound' | 'si'

/** One figure in both systems, the one of the papers first. */
export function inBoth({ inchPound, si }: { readonly inchPound: string; readonly si: string }, first: UnitSystem): string {
  const [lead, other] = first === 'si' ? [si, inchPound] : [inchPound, si]
  return lead === other ? lead : `${lead} (${other})`
}

/** The same for a margin that is told as spare or short, so that it needs no sign. */
export function unsigned({ inchPound, si }: { readonly inchPound: string; readonly si: string }, first: UnitSystem): string {
  return inBoth({ inchPound: inchPound.replace(/^-/, ''), si: si.replace(/^-/, '') }, first)
}

/** "6 rules", "1 rule". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`
}

export function factTitle(path: string): string {
  return facts.get(path)?.title ?? path
}

export function factTitles(paths: readonly string[]): string {
  return paths.map(factTitle).join('; ')
}

const evidenceWords: Readonly<Record<Evidence, string>> = { primary: 'text read', secondary: 'read in another text', memory: 'from memory' }

/** How a figure is known. What is from memory is set apart. */
export function evidenceMark(evidence: Evidence): Markup {
  return html`<span class="evidence ${evidence}">${evidenceWords[evidence]}</span>`
}

/** Where a requirement comes from: the publication with its place in it, then everyone who acted on it; and how the figure is known. The adoption that the head of the report names is not said again. */
export function sourceLine({ chain, evidence }: Pick<Finding, 'chain' | 'evidence'>, adoption: string | null): Markup {
  const steps = chain.filter(({ action, document }) => action !== 'adoption' || document !== adoption)
  return html`<span class="source">${joined(steps.map(chainStep), ' › ')}; ${evidenceMark(evidence)}</span>`
}

function chainStep({ action, layer, publication, edition, locator, readIn, document, modification, instrument }: ChainStep): Part {
  if (action !== 'published') return linked(`${action} ${document ?? layer}${modification === null ? '' : `#${modification}`}`, instrument?.href ?? null)
  return linked([publication, edition, locator].filter((word) => word !== null).join(' '), readIn)
}

/** A text that leads to an address, where it is one of the web. */
export function linked(text: string, address: string | null): Part {
  return address !== null && /^https?:\/\//.test(address) ? html`<a href="${address}">${text}</a>` : text
}

const forceWords: Readonly<Record<Finding['force'], string>> = { mandatory: 'mandatory', recommended: 'recommended', informative: 'informative' }

export function forceMark(force: Finding['force']): Markup {
  return html`<span class="force ${force}">${forceWords[force]}</span>`
}

/** ", right end", where there are two. */
export function endOf(member: Finding['member']): string {
  return member === null ? '' : `, ${member} end`
}
