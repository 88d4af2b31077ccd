import type { Evidence } from '../catalog/limit.ts'
import type { ChainStep } from '../catalog/rule-set.ts'
import type { Finding } from '../evaluation/document.ts'
import { inBoth, stepText } from '../evaluation/words.ts'
import { factTitle } from '../opening/facts.ts'
import type { UnitSystem } from '../units/dimension.ts'
import { html, joined, type Markup, type Part } from './markup.ts'

/** The same for a margin that is told as spare or short, so that it needs no sign. */
export function unsigned({ inchPound, si }: Readonly<Record<UnitSystem, string>>, first: UnitSystem): string {
  return inBoth({ inchPound: inchPound.replace(/^-/, ''), si: si.replace(/^-/, '') }, first)
}

/** "6 rules", "1 rule". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`
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

function chainStep(step: ChainStep): Part {
  return linked(stepText(step), step.action === 'published' ? step.readIn : (step.instrument?.href ?? null))
}

/** What a reader has to know before he relies on a decided finding. */
export function notesOf({ withinResolution, differsByUnit, printedConflict, derivedFrom, outcome }: Finding): readonly string[] {
  if (outcome !== 'pass' && outcome !== 'fail') return []
  return [
    ...(withinResolution ? ['Closer to the limit than the tape can tell.'] : []),
    ...(differsByUnit ? ['The figure in the other unit system would decide otherwise.'] : []),
    ...(printedConflict === null ? [] : [printedConflict]),
    ...(derivedFrom.length > 0 ? [`Worked out from: ${factTitles(derivedFrom)}.`] : []),
  ]
}

/** The same in one line, for a finding that tells in short how many sources disagree. */
export function notesLine(finding: Finding): string {
  const { length } = finding.disagreements
  return [...notesOf(finding), ...(length > 0 ? [`${counted(length, 'source')} ${length === 1 ? 'says' : 'say'} otherwise.`] : [])].join(' ')
}

/** A text that leads to an address, where it is one of the web. */
export function linked(text: string, address: string | null): Part {
  return address !== null && /^https?:\/\//.test(address) ? html`<a href="${address}">${text}</a>` : text
}

const forceWords: Readonly<Record<Finding['force'], string>> = { mandatory: 'mandatory', recommended: 'recommended', informative: 'informative' }

export function forceMark(force: Finding['force']): Markup {
  return html`<span class="force ${force}">${forceWords[force]}</span>`
}
