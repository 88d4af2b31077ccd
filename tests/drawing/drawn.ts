import { evaluateInFull, type FullEvaluation } from '../../src/evaluation/evaluate.ts'
import { draw, type Drawing, type DrawingKind } from '../../src/drawing/index.ts'
import type { Opening } from '../../src/opening/opening.ts'
import { realCatalog, resolved } from '../catalog/real-catalog.ts'
import { described, documentOf } from '../opening/openings.ts'
import { readSvg, type Element } from './read-svg.ts'

const catalog = await realCatalog()
const ruleSet = resolved(catalog, { jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' })

export { catalog }

export function evaluated(opening: Opening): FullEvaluation {
  return evaluateInFull(opening, ruleSet, catalog, null)
}

export interface Shown {
  readonly opening: Opening
  readonly full: FullEvaluation
  readonly drawing: Drawing
  readonly svg: Element
}

export function shown(kind: DrawingKind, document: unknown): Shown {
  const opening = described(document)
  const full = evaluated(opening)
  const drawing = draw(kind, opening, full)
  return { opening, full, drawing, svg: readSvg(drawing.svg) }
}

export function shownFile(kind: DrawingKind, file: string): Shown {
  return shown(kind, documentOf(file))
}
