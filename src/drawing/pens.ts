export type PenName =
  | 'cut' | 'outline' | 'visible' | 'joint' | 'hatch' | 'hidden' | 'unknown' | 'dimension' | 'leader' | 'sheetMetal'
  | 'paper' | 'mask' | 'steel' | 'ink' | 'glass' | 'fail' | 'advice' | 'undetermined' | 'frame' | 'weep' | 'fold' | 'tie' | 'barrier' | 'membrane' | 'wanted' | 'edge' | 'lap' | 'movementJoint'

/** How a line or a field is drawn: widths and dashes in millimeters of paper. */
export interface Pen {
  readonly width: number
  readonly dash?: readonly number[]
  readonly fill: 'none' | 'white' | 'black' | 'lightgray'
}

/** Heavier the nearer and the more cut through; nothing depends on a color. */
export const pens: Readonly<Record<PenName, Pen>> = {
  cut: { width: 0.5, fill: 'none' },
  outline: { width: 0.5, fill: 'white' },
  visible: { width: 0.25, fill: 'white' },
  joint: { width: 0.12, fill: 'none' },
  hatch: { width: 0.12, fill: 'none' },
  hidden: { width: 0.3, dash: [1.8, 0.9], fill: 'none' },
  unknown: { width: 0.35, dash: [0.5, 0.8], fill: 'none' },
  dimension: { width: 0.15, fill: 'none' },
  leader: { width: 0.15, fill: 'none' },
  sheetMetal: { width: 0.8, fill: 'none' },
  paper: { width: 0, fill: 'white' },
  mask: { width: 0, fill: 'white' },
  steel: { width: 0.25, fill: 'black' },
  ink: { width: 0.2, fill: 'black' },
  glass: { width: 0.12, fill: 'none' },
  fail: { width: 0.4, fill: 'black' },
  advice: { width: 0.8, fill: 'white' },
  undetermined: { width: 0.35, dash: [0.9, 0.6], fill: 'white' },
  frame: { width: 0.5, fill: 'none' },
  weep: { width: 0.3, fill: 'black' },
  wanted: { width: 0.25, dash: [1, 0.5], fill: 'white' },
  membrane: { width: 0.6, fill: 'none' },
  edge: { width: 0.25, fill: 'none' },
  barrier: { width: 0.35, fill: 'none' },
  tie: { width: 0.25, dash: [0.7, 0.5], fill: 'white' },
  lap: { width: 0.2, fill: 'lightgray' },
  movementJoint: { width: 0.2, fill: 'lightgray' },
  fold: { width: 0.3, dash: [3, 0.8, 0.6, 0.8], fill: 'none' },
}
