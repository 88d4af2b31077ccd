import { readFileSync } from 'node:fs'
import { HtmlValidate } from 'html-validate'
import { parse } from 'yaml'
import { drawings } from '../../src/drawing/index.ts'
import type { Evaluation } from '../../src/evaluation/document.ts'
import type { FullEvaluation } from '../../src/evaluation/evaluate.ts'
import type { Opening } from '../../src/opening/opening.ts'
import { evaluateAs, stamped, unread } from '../../src/operations/evaluate-opening.ts'
import { openingPage, type ReportedOpening } from '../../src/report/opening-page.ts'
import { realCatalog } from '../catalog/real-catalog.ts'

const catalog = await realCatalog()
const around = { jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01', holdPoint: 'headFlashing' }

export interface EvaluatedOpening {
  readonly opening: Opening
  readonly full: FullEvaluation
  readonly evaluation: Evaluation
}

function described(fixture: string): object {
  return parse(readFileSync(`tests/fixtures/openings/${fixture}.yaml`, 'utf8')) as object
}

/** A fixture as it is evaluated at the invented city, with something changed. */
export function evaluated(fixture: string, change: object = {}): EvaluatedOpening {
  const opening = { ...described(fixture), ...change }
  const deps = { catalog, now: () => new Date('2026-03-01T12:00:00Z'), newId: () => 'id-1' }
  const answered = evaluateAs(unread, deps, { ...around, opening })
  if (!answered.ok) throw new Error(JSON.stringify(answered.problems))
  const { opening: read, full } = answered.value
  return { opening: read, full, evaluation: stamped(deps, full) }
}

export function reported({ opening, full, evaluation }: EvaluatedOpening, change: Partial<ReportedOpening> = {}): string {
  return openingPage({ evaluation, drawings: drawings(opening, full), withoutDrawings: null, origin: { publicUrl: 'https://wythe.example', path: null, request: { ...around, opening: {} } }, ...change })
}

/** The report on a fixture with everything in it, the whole request too. */
export function reportedInFull(fixture: string): string {
  return reported(evaluated(fixture), { origin: { publicUrl: 'https://wythe.example', path: null, request: { ...around, opening: described(fixture) } } })
}

const validator = new HtmlValidate({
  extends: ['html-validate:standard', 'html-validate:document', 'html-validate:a11y'],
  rules: {
    // How it is written, not whether it is valid.
    'no-trailing-whitespace': 'off', 'attribute-boolean-style': 'off', 'long-title': 'off',
    // Texts of titles go into regions as they are, and a region that is moved by itself has to be reached by keys.
    'prefer-native-element': 'off', 'text-content': 'off', 'no-redundant-role': 'off', 'svg-focusable': 'off',
    'valid-id': ['error', { relaxed: true }],
  },
})

/** What html-validate has against a page, by the content models and the accessibility rules of HTML. */
export async function complaintsAbout(page: string): Promise<readonly string[]> {
  const { results } = await validator.validateString(page)
  return results.flatMap(({ messages }) => messages.map(({ ruleId, message, line, column }) => `${ruleId} ${line}:${column} ${message}`))
}
