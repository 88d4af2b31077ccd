import type { Finding } from '../evaluation/document.ts'

export const drawingKinds = ['elevation', 'section', 'flashingPattern', 'weepsAndTies'] as const
export type DrawingKind = (typeof drawingKinds)[number]

/** A finding that is shown by a number in the drawing. Several findings of one part may share a number. */
export interface Callout {
  readonly number: number
  readonly rule: string
  readonly outcome: Extract<Finding['outcome'], 'fail' | 'notDetermined'>
  readonly text: string
}

export interface Drawing {
  readonly kind: DrawingKind
  readonly title: string
  /** What is to be seen, for whoever does not see it. */
  readonly description: string
  /** A whole SVG document in millimeters of paper. */
  readonly svg: string
  /** Facts, by their paths, that are drawn dashed or left out because nobody gave them. */
  readonly unknown: readonly string[]
  readonly callouts: readonly Callout[]
}
