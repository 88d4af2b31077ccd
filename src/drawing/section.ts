import type { FullEvaluation } from '../evaluation/evaluate.ts'
import type { Opening } from '../opening/opening.ts'
import type { SheetContent } from './sheet.ts'

/** Not drawn yet. */
export function section(opening: Opening, evaluation: FullEvaluation): Omit<SheetContent, 'title' | 'subtitle'> | undefined {
  void opening
  void evaluation
  return undefined
}
