import type { ComputedQuantity, Evaluation, Finding } from '../evaluation/document.ts'
import { endOf, inBoth, sourceText } from '../evaluation/words.ts'

/** An evaluation as a page of text for a terminal: what fails first, then what is open, then the quantities. */
export function evaluationText(evaluation: Evaluation): string {
  const { findings, summary } = evaluation
  const failures = findings.filter(({ outcome }) => outcome === 'fail').toSorted((a, b) => rank(a) - rank(b))
  const paragraphs = [
    headText(evaluation),
    ...(failures.length > 0 ? [`NOT MET\n${failures.map((finding) => failureText(finding, evaluation)).join('\n')}`] : []),
    ...openText(evaluation),
    quantitiesText(evaluation),
    ...repealedText(evaluation),
    ...(summary.fromMemory > 0 ? [wrapped(`${summary.fromMemory} of the decided findings rest on a limit that is from memory and not confirmed in a published text; they are marked "from memory".`, '')] : []),
  ]
  return `${paragraphs.join('\n\n')}\n`
}

/** The cautions that go with the remedies of some evaluations, each once, and the notice that goes with all. */
export function cautionsText(evaluations: readonly Evaluation[]): string {
  const cautions = [...new Set(evaluations.flatMap(({ findings }) => findings.flatMap((finding) => finding.cautions)))]
  const notices = [...new Set(evaluations.map(({ notice }) => notice))].map((notice) => wrapped(notice, ''))
  const list = cautions.length === 0 ? [] : [`CAUTIONS for mending the above\n${cautions.map((caution) => wrapped(`! ${caution}`, '  ')).join('\n')}`]
  return `${[...list, ...notices].join('\n\n')}\n`
}

function rank({ force }: Finding): number {
  return ['mandatory', 'recommended', 'informative'].indexOf(force)
}

function headText({ subject, jurisdiction, resolvedAt, asOf, editions, adoption, summary, catalog, inPart }: Evaluation): string {
  const place = jurisdiction === null ? 'published text alone' : resolvedAt === jurisdiction ? jurisdiction : `${jurisdiction}, resolved at ${resolvedAt ?? ''}`
  const law = adoption === null ? editions.join(' with ') || 'no code adopted' : `${editions.join(' with ')} by ${adoption}`
  const counts = `${summary.pass} met, ${summary.fail} not met (${summary.mandatoryFailures} mandatory), ${summary.notDetermined} not determined (${summary.mandatoryNotDetermined} mandatory), ${summary.notApplicable} not applicable`
  const part = inPart ? '\nOnly some requirements of this code are in the catalog; what is not here was not checked.' : ''
  return `${subject.reference ?? 'Opening'}: ${summary.verdict.toUpperCase()}\n${counts}\n${place} on ${asOf}: ${law}; catalog ${catalog.release}${part}`
}

function failureText(finding: Finding, { subject }: Evaluation): string {
  const { title, force, rule, member, measured, required, margin, remedy, evidence } = finding
  const shortfall = margin === null ? '' : `; off by ${inBoth(margin, subject.unitSystem)}`
  const marks = [force, ...(evidence === 'memory' ? ['from memory'] : []), ...(finding.withinResolution ? ['closer to the limit than the tape can tell'] : []), ...(finding.differsByUnit ? ['the other unit system would decide otherwise'] : [])]
  return [
    `  ✗ ${title}${endOf(member)} [${marks.join(', ')}]`,
    `    ${measured === null ? '' : `found ${measured.text}, `}required ${required.text}${shortfall}`,
    `    ${rule}, ${sourceText(finding.chain)}`,
    ...(remedy === null ? [] : [wrapped(`Before cover-up: ${remedy.beforeCoverUp}`, '    '), wrapped(`After: ${remedy.afterCoverUp}`, '    ')]),
  ].join('\n')
}

const shownToMeasure = 8

function openText({ findings, nextToMeasure }: Evaluation): string[] {
  const engineered = findings.filter(({ reason }) => reason === 'outsidePrescriptive' || reason === 'covered' || reason === 'conflictingEvidence' || reason === 'ruleUndecided')
  const unusual = engineered.map(({ title, reason, nextStep }) => wrapped(`? ${title}: ${nextStep ?? reason ?? ''}`, '  '))
  const next = nextToMeasure.slice(0, shownToMeasure).map(({ title, fact, decides, contributesTo, hiddenBy }, index) => {
    const hidden = hiddenBy === null ? '' : `; hidden from "${hiddenBy}" on`
    return `  ${index + 1}. ${title} (${fact}): settles ${decides.length}, helps with ${contributesTo.length}${hidden}`
  })
  const more = nextToMeasure.length > shownToMeasure ? [`  … and ${nextToMeasure.length - shownToMeasure} more`] : []
  return [...(unusual.length > 0 ? [`OPEN\n${unusual.join('\n')}`] : []), ...(next.length > 0 ? [`LOOK AT NEXT\n${[...next, ...more].join('\n')}`] : [])]
}

function quantitiesText({ quantities, subject }: Evaluation): string {
  const computed = quantities.filter(({ status }) => status === 'computed')
  const width = Math.max(0, ...computed.map(({ title }) => title.length))
  const rows = computed.map((quantity) => `  ${quantity.title.padEnd(width)}  ${amountText(quantity, subject.unitSystem)}${quantity.needsLicensedProfessional ? '  *' : ''}${quantity.indicative ? '  ~' : ''}`)
  const starred = computed.some(({ needsLicensedProfessional }) => needsLicensedProfessional) ? ['  * to be confirmed by a licensed professional'] : []
  const compared = computed.some(({ indicative }) => indicative) ? ['  ~ only orders or compares; not a figure to build by'] : []
  const open = quantities.length - computed.length
  return ['QUANTITIES', ...rows, ...starred, ...compared, ...(open > 0 ? [`  ${open} more need facts that are not known`] : [])].join('\n')
}

function amountText({ value, inchPound, si }: ComputedQuantity, first: Evaluation['subject']['unitSystem']): string {
  return inchPound === null || si === null ? (value ?? '') : inBoth({ inchPound, si }, first)
}

function repealedText({ repealed }: Evaluation): string[] {
  return repealed.length === 0 ? [] : [`REPEALED HERE\n${repealed.map(({ rule, reason, document }) => `  ${rule} by ${document ?? ''}: ${reason}`).join('\n')}`]
}

const lineWidth = 110

/** Breaks a paragraph at spaces; the following lines stand under the first. */
export function wrapped(text: string, indent: string): string {
  const lines = text.split(' ').reduce<string[]>((done, word) => {
    const last = done.at(-1)
    if (last !== undefined && indent.length + last.length + 1 + word.length <= lineWidth) return [...done.slice(0, -1), `${last} ${word}`]
    return [...done, word]
  }, [])
  return lines.map((line, index) => `${indent}${index === 0 ? '' : '  '}${line}`).join('\n')
}
