import type { Drawn, Frame } from '../drawn.ts'
import { part, strokes, type Shape } from '../shape.ts'
import type { Detail } from './head-detail.ts'
import { cutField } from './hatch.ts'
import { choiceLabel, lengthLabel, type Label, type Layers } from './layers.ts'
import { backingWall, barrierLine, brickBelow, brickCourses } from './wall-layers.ts'

const unknownUpstand = 120
const belowGrade = 60
/** What lies lower is not drawn true. */
const deepest = -900

/** Levels from the base flashing, in millimeters. */
interface BaseLevels {
  readonly grade: number | undefined
  readonly ledge: number
  readonly foundation: number
  readonly known: boolean
  readonly bottom: number
}

export function hasBaseDetail({ known }: Pick<Frame, 'known'>): boolean {
  return known.flag('base.flashing.present') !== undefined || known.length('base.foundationAboveGrade') !== undefined
}

export function baseRange(frame: Frame, layers: Layers): readonly [number, number] {
  const upstand = frame.known.length('base.flashing.upstand') ?? unknownUpstand
  return [levelsOf(frame, layers).bottom, Math.max(upstand, layers.course) + 1.4 * layers.course]
}

export function baseDetail(frame: Frame, layers: Layers): Detail {
  const { at, known, system } = frame
  const [bottom, top] = baseRange(frame, layers)
  const levels = levelsOf(frame, layers)
  const flashing = baseFlashing(frame, layers)
  const isOver = known.flag('base.flashing.barrierOver')
  const lap = isOver === true ? flashing.top - 60 : flashing.top
  const shapes: Shape[] = [
    ...foundation(frame, layers, levels), backingWall(frame, layers, [levels.foundation, top], Math.max(levels.foundation, flashing.top)),
    brickCourses(frame, layers, [0, top]), ...(levels.ledge < -5 ? [brickBelow(frame, layers, [levels.ledge, 0])] : []), ...filled(frame, layers, levels),
    part('barrierOverBase', [barrierLine(frame, layers, [flashing.isThere ? Math.max(levels.foundation, lap) : levels.foundation, top], isOver === true && flashing.isThere ? flashing.top : undefined)], { over: String(isOver ?? 'unknown') }),
    ...flashing.shapes, ...weepAtBase(frame, layers), ...grade(frame, layers, { ...levels, top }),
  ]
  const labels: Label[] = [
    { text: isOver === undefined ? 'barrier over the base flashing: not known' : isOver ? 'barrier laps over the base flashing' : 'barrier does not lap over the base flashing', at: at(layers.backingFace, flashing.top - 8) },
    { text: flashing.isThere ? `base flashing: ${lengthLabel(known, system, 'upstand', 'base.flashing.upstand')}` : 'no base flashing', at: at(layers.backingFace, flashing.top * 0.5) },
    { text: weepText(frame), at: at(layers.thickness * 0.25, 10) },
    { text: lengthLabel(known, system, 'base flashing above grade', 'base.flashing.aboveGrade'), at: at(layers.thickness * 0.1, 0) },
    { text: lengthLabel(known, system, 'ledge below the foundation top', 'base.ledgeRecess'), at: at(layers.thickness * 0.8, levels.ledge) },
  ]
  return { name: 'base', title: 'Base', shapes, labels, notes: levels.known ? [] : ['Foundation and ledge are drawn without their heights.'], anchors: anchorsOf(frame, layers, levels, flashing.top, bottom) }
}

function anchorsOf({ at }: Frame, { thickness, backingFace }: Layers, { ledge }: BaseLevels, top: number, bottom: number): Drawn['anchors'] {
  return [['baseFlashing', at(thickness * 0.5, 0)], ['baseWeeps', at(0, 12)], ['base', at(thickness * 0.6, Math.max(bottom + 10, ledge))], ['barrier', at(backingFace, top + 5)]]
}

function levelsOf({ known }: Frame, { course }: Layers): BaseLevels {
  const [above, foundation, recess] = [known.length('base.flashing.aboveGrade'), known.length('base.foundationAboveGrade'), known.length('base.ledgeRecess')]
  const grade = above === undefined ? undefined : -above
  const top = grade === undefined || foundation === undefined ? 0 : Math.max(deepest / 2, Math.min(course, grade + foundation))
  const ledge = Math.max(deepest / 2, Math.min(0, recess === undefined ? top : top - recess))
  const lowest = Math.min(ledge, grade ?? 0) - belowGrade
  return { grade, foundation: top, ledge, known: foundation !== undefined && recess !== undefined && above !== undefined, bottom: Math.max(deepest, lowest) }
}

function foundation({ at, known }: Frame, { thickness, airSpace, inside }: Layers, { ledge, foundation, known: isKnown, bottom }: BaseLevels): readonly Shape[] {
  const overhang = known.length('base.ledgeOverhang') ?? 0
  const stem = thickness + airSpace * 0.6
  const body = cutField('concrete', [at(overhang, bottom), at(inside, bottom), at(inside, Math.max(bottom, ledge)), at(overhang, Math.max(bottom, ledge))], isKnown)
  const step = foundation > ledge + 1 ? [cutField('concrete', [at(stem, Math.max(bottom, ledge)), at(inside, Math.max(bottom, ledge)), at(inside, foundation), at(stem, foundation)], isKnown)] : []
  return [part('foundation', [body, ...step], { known: String(isKnown) })]
}

function baseFlashing({ at, known, scale }: Frame, { thickness, backingFace }: Layers): { readonly isThere: boolean; readonly top: number; readonly shapes: readonly Shape[] } {
  const isPresent = known.flag('base.flashing.present')
  if (isPresent === false) return { isThere: false, top: 60, shapes: [] }
  const [upstand, reaches] = [known.length('base.flashing.upstand'), known.flag('base.flashing.reachesFace')]
  const isKnown = isPresent === true && upstand !== undefined && reaches !== undefined
  const top = upstand ?? unknownUpstand
  const back = backingFace - 0.8 / scale
  return { isThere: true, top, shapes: [part('baseFlashing', [strokes(isKnown ? 'membrane' : 'unknown', [at(reaches === false ? thickness / 3 : 0, 0), at(back, 0), at(back, top)])], { known: String(isKnown) })] }
}

function filled({ at, known }: Frame, { thickness, airSpace }: Layers, { ledge }: BaseLevels): readonly Shape[] {
  if (known.flag('base.spaceFilledBelowFlashing') !== true || ledge > -5) return []
  return [part('filledSpace', [cutField('concrete', [at(thickness, ledge), at(thickness + airSpace * 0.6, ledge), at(thickness + airSpace * 0.6, 0), at(thickness, 0)])])]
}

function weepAtBase({ at, known, scale }: Frame, { thickness }: Layers): readonly Shape[] {
  const kind = known.choice('base.weeps.kind')
  if (kind === undefined || kind === 'none') return []
  const [x, y] = at(0, 6)
  return [part('weep', [strokes('hidden', [at(0, 0), at(0, Math.min(57, 14 / scale)), at(thickness, Math.min(57, 14 / scale)), at(thickness, 0)]), strokes('cut', [[x + 3, y], [x - 3.4, y]], [[x - 2, y - 0.9], [x - 3.4, y], [x - 2, y + 0.9]])])]
}

function grade({ at }: Frame, { inside }: Layers, { grade: level, bottom, top }: BaseLevels & { readonly top: number }): readonly Shape[] {
  if (level === undefined || level < bottom || level > top) return []
  const [end, y] = at(0, level)
  const start = at(-inside / 10, level)[0] - 6
  const slants = Array.from({ length: Math.floor((end - start) / 2.2) }, (_, index) => [[start + 1 + index * 2.2, y], [start + index * 2.2, y + 1.6]] as const)
  return [part('grade', [strokes('cut', [[start, y], [end, y]]), strokes('hatch', ...slants)], { level: String(level) })]
}

function weepText({ known }: Frame): string {
  const kind = choiceLabel(known, 'base.weeps.kind')
  return kind === undefined ? 'weep: not known' : kind === 'none' ? 'no weep' : `weep, ${kind}, beyond`
}
