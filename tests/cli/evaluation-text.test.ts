import { describe, expect, test } from 'vitest'
import { cautionsText, evaluationText, wrapped } from '../../src/cli/evaluation-text.ts'
import type { Evaluation } from '../../src/evaluation/document.ts'
import { evaluateOpening } from '../../src/operations/evaluate-opening.ts'
import { dependencies } from '../api/client.ts'
import { cases } from '../conformance/cases.ts'

const deps = await dependencies()
const evaluations = cases
  .filter(({ operation, expect: expected, catalog }) => operation === 'evaluateOpening' && typeof expected !== 'string' && catalog === undefined)
  .map(({ input }, index) => [`${index + 1}`, answered(input)] as const)

function answered(input: object): Evaluation {
  const answer = evaluateOpening.run(deps, input)
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems))
  return answer.value
}

describe.each(evaluations)('the page of evaluation %s', (_, evaluation) => {
  const text = evaluationText(evaluation)
  const plain = squashed(text)
  const { findings, summary, quantities, nextToMeasure } = evaluation
  const failures = findings.filter(({ outcome }) => outcome === 'fail')

  test('begins with the verdict, the counts, the place and the release', () => {
    const [first, counts, place] = text.split('\n')
    expect(first).toBe(`${evaluation.subject.reference ?? 'Opening'}: ${summary.verdict.toUpperCase()}`)
    expect(counts).toBe(`${summary.pass} met, ${summary.fail} not met (${summary.mandatoryFailures} mandatory), ${summary.notDetermined} not determined (${summary.mandatoryNotDetermined} mandatory), ${summary.notApplicable} not applicable`)
    for (const part of [evaluation.jurisdiction ?? 'published text', evaluation.asOf, evaluation.catalog.release]) expect(place).toContain(part)
  })

  test('tells every failure once, the mandatory ones first, with limit, source and remedy', () => {
    const marked = text.split('\n').filter((line) => line.startsWith('  ✗ '))
    expect(marked).toHaveLength(failures.length)
    const forces = marked.map((line) => /\[(\w+)/.exec(line)?.[1] ?? '')
    expect(forces).toEqual(forces.toSorted((a, b) => ['mandatory', 'recommended', 'informative'].indexOf(a) - ['mandatory', 'recommended', 'informative'].indexOf(b)))
    for (const { rule, required, measured, margin, remedy, chain } of failures) {
      const parts = [rule, required.text, measured?.text, margin?.si, remedy?.beforeCoverUp, remedy?.afterCoverUp, chain[0]?.locator]
      for (const part of parts) if (part) expect(plain).toContain(squashed(part))
    }
  })

  test('tells every computed quantity, and how many are not', () => {
    for (const { title, value } of quantities.filter(({ status }) => status === 'computed')) expect(plain).toContain(squashed(`${title} ${value ?? ''}`))
    const open = quantities.filter(({ status }) => status !== 'computed').length
    expect(/(\d+) more need facts/.exec(text)?.[1] ?? '0').toBe(String(open))
  })

  test('leads to the next facts, and says whether there are more', () => {
    const shown = text.split('\n').filter((line) => /^ {2}\d+\. /.test(line))
    expect(shown).toHaveLength(Math.min(8, nextToMeasure.length))
    expect(text.includes('more\n')).toBe(nextToMeasure.length > 8)
    for (const { fact } of nextToMeasure.slice(0, 8)) expect(text).toContain(`(${fact})`)
  })
})

describe('the cautions of several evaluations', () => {
  const several = evaluations.map(([, evaluation]) => evaluation)
  const failures = several.flatMap(({ findings }) => findings.filter(({ outcome }) => outcome === 'fail'))
  const plain = squashed(cautionsText(several))

  test('are each told once, and none is left out', () => {
    const cautions = new Set(failures.flatMap((failure) => failure.cautions))
    expect(cautions.size).toBeGreaterThan(2)
    for (const caution of cautions) expect(plain.split(squashed(`! ${caution}`)), caution).toHaveLength(2)
    expect(plain.split('! ')).toHaveLength(cautions.size + 1)
  })

  test('end with the notice, told once', () => {
    const notice = squashed(several[0]?.notice ?? '')
    expect(plain.endsWith(notice)).toBe(true)
    expect(plain.split(notice)).toHaveLength(2)
  })

  test('are not announced where nothing fails', () => {
    const unknown = several.filter(({ findings }) => findings.every(({ outcome }) => outcome !== 'fail'))
    expect(unknown).not.toHaveLength(0)
    expect(cautionsText(unknown)).not.toContain('CAUTIONS')
  })
})

describe('a paragraph', () => {
  test('is broken at spaces, the following lines under the first', () => {
    const words = 'word '.repeat(60).trim()
    const lines = wrapped(words, '  ').split('\n')
    expect(lines.map((line) => line.length).every((length) => length <= 112)).toBe(true)
    expect(lines[0]).toMatch(/^ {2}word/)
    expect(lines[1]).toMatch(/^ {4}word/)
    expect(lines.join(' ').replace(/\s+/g, ' ').trim()).toBe(words)
  })

  test('keeps a word that is longer than a line', () => {
    expect(wrapped(`a ${'b'.repeat(200)} c`, '')).toBe(`a\n  ${'b'.repeat(200)}\n  c`)
  })

  test('that is short stays a line', () => {
    expect(wrapped('short', '    ')).toBe('    short')
  })
})

function squashed(text: string): string {
  return text.replace(/\s+/g, ' ').trim()
}
