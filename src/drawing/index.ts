import type { FullEvaluation } from '../evaluation/evaluate.ts'
import { notice } from '../evaluation/notice.ts'
import { verdictWords } from '../evaluation/words.ts'
import { choiceWords } from '../opening/choice-words.ts'
import { factTitle } from '../opening/facts.ts'
import { valueOf, type Opening } from '../opening/opening.ts'
import { drawingKinds, type Drawing, type DrawingKind } from './drawing.ts'
import { elevation } from './elevation.ts'
import { flashingPattern } from './flashing-sheet.ts'
import { layout } from './layout.ts'
import type { CalledOut } from './callouts.ts'
import { section } from './section.ts'
import { sheet, sheetWidth, type SheetContent } from './sheet.ts'
import { svgOf } from './write-svg.ts'

export { drawingKinds, type Drawing, type DrawingKind, type Callout } from './drawing.ts'

type Drawer = (opening: Opening, evaluation: FullEvaluation) => Omit<SheetContent, 'title' | 'subtitle'> | undefined

const drawers: Readonly<Record<DrawingKind, { readonly title: string; readonly draw: Drawer }>> = {
  elevation: { title: 'Front elevation', draw: elevation },
  section: { title: 'Vertical section', draw: section },
  flashingPattern: { title: 'Flashing blanks', draw: flashingPattern },
  weepsAndTies: { title: 'Layout of weeps and ties', draw: layout },
}

/** Draws one kind of drawing of an opening as it was evaluated. Pure; what is not known is drawn dashed or left out, and said. */
export function draw(kind: DrawingKind, opening: Opening, evaluation: FullEvaluation): Drawing {
  const { title: name, draw: drawn } = drawers[kind]
  const content = drawn(opening, evaluation) ?? nothingToDraw
  const title = `${name}: ${opening.reference ?? `${kindOf(opening)} opening`}`
  const { jurisdiction, asOf, summary, subject } = evaluation.assessment
  const subtitle = `${subtitleOf(opening)}${jurisdiction === null ? 'published texts' : jurisdiction}, ${asOf}; verdict: ${verdictWords[summary.verdict].toLowerCase()}`
  const description = descriptionOf(name, content)
  const { height, shapes } = sheet({ ...content, title, subtitle })
  const id = `${kind}-${subject.digest.replaceAll(/[^0-9a-z]/gi, '').slice(-12)}`
  const svg = svgOf({ id, width: sheetWidth, height, title, description, data: { kind }, shapes })
  return { kind, title, description, svg, unknown: content.unknown, callouts: content.calledOut.groups.flatMap(({ callouts }) => callouts) }
}

export function drawings(opening: Opening, evaluation: FullEvaluation): readonly Drawing[] {
  return drawingKinds.map((kind) => draw(kind, opening, evaluation))
}

const noCallouts: CalledOut = { groups: [], elsewhere: 0 }
const nothingToDraw: Omit<SheetContent, 'title' | 'subtitle'> = { view: { height: 0, shapes: [] }, scale: 'Not to scale', calledOut: noCallouts, unknown: [], notes: ['There is nothing to draw.'], key: [] }

function kindOf(opening: Opening): string {
  const kind = valueOf(opening, 'opening.kind')
  return typeof kind === 'string' ? choiceWords(kind).toLowerCase() : 'window'
}

function subtitleOf({ basis }: Opening): string {
  if (basis === undefined) return ''
  return basis === 'asBuilt' ? 'as built; ' : 'as designed; '
}

/** For whoever does not see the drawing: what it shows, what is numbered in it, what is not known. */
function descriptionOf(name: string, { calledOut, unknown, notes, scale }: Omit<SheetContent, 'title' | 'subtitle'>): string {
  const callouts = calledOut.groups.flatMap(({ callouts }) => callouts).map(({ number, outcome, text }) => `${number}, ${outcome === 'fail' ? 'fails' : 'not determined'}: ${text}.`)
  const missing = unknown.map(factTitle)
  return [
    `${name}.`, scale, ...(callouts.length > 0 ? [`Numbered: ${callouts.join(' ')}`] : ['No finding is numbered.']),
    ...(missing.length > 0 ? [`Not known: ${missing.join('; ')}.`] : []), ...notes, `Not to be built from by itself. ${notice}`,
  ].join(' ')
}
