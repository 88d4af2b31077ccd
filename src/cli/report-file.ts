import { randomUUID } from 'node:crypto'
import { writeFile } from 'node:fs/promises'
import type { Catalog } from '../catalog/catalog.ts'
import { drawings } from '../drawing/index.ts'
import { evaluateAs, stamped, unread } from '../operations/evaluate-opening.ts'
import { papers, type Paper } from '../report/document.ts'
import { openingPage } from '../report/opening-page.ts'
import type { EvaluateOptions } from './evaluate-file.ts'
import { readOpeningFile } from './opening-file.ts'
import { failureText, type CommandResult } from './output.ts'
import { printPdf } from './print-pdf.ts'

export interface ReportOptions extends Omit<EvaluateOptions, 'json'> {
  readonly out?: string | undefined
  readonly paper?: string | undefined
}

/** Where the service is by default; the report names it for whoever wants to reproduce it. */
const publicUrl = 'http://127.0.0.1:8080'

/** Reports on one opening from a YAML or JSON file, as HTML or as PDF by the name of the file to write. Ends with 1 when a mandatory rule is not met. */
export async function reportFile(file: string, { out, paper, ...around }: ReportOptions, catalog: Catalog): Promise<CommandResult> {
  if (out === undefined || !/\.(html|pdf)$/i.test(out)) return { text: '--out must name a file that ends with .html or .pdf\n', exitCode: 2 }
  const sheet = papers.find((one) => one === paper?.toLowerCase())
  if (paper !== undefined && sheet === undefined) return { text: `--paper must be one of: ${papers.join(', ')}\n`, exitCode: 2 }
  const read = await readOpeningFile(file)
  if (!read.ok) return { text: read.text, exitCode: 2 }
  const request = { ...around, opening: read.opening }
  const deps = { catalog, now: () => new Date(), newId: randomUUID }
  const evaluated = evaluateAs(unread, deps, request)
  if (!evaluated.ok) return { text: failureText(evaluated), exitCode: 2 }
  const { opening, full } = evaluated.value
  const evaluation = stamped(deps, full)
  const page = (on: Paper | null) => openingPage({ evaluation, drawings: drawings(opening, full), withoutDrawings: null, origin: { publicUrl, path: null, request: { ...request, asOf: evaluation.asOf } }, paper: on })
  if (/\.html$/i.test(out)) await writeFile(out, page(sheet ?? null))
  else {
    const printed = await printPdf(page(sheet ?? (evaluation.subject.unitSystem === 'si' ? 'a4' : 'letter')), out, process.env['CHROMIUM'])
    if (!printed.ok) return { text: printed.mend, exitCode: 2 }
  }
  return { text: `${out}: ${evaluation.subject.reference ?? 'opening'}, ${evaluation.summary.verdict}\n`, exitCode: evaluation.summary.verdict === 'fail' ? 1 : 0 }
}
