import { valueText, type Computation } from './define.ts'
import { cutPattern, type CutPattern, type Pan } from './flashing-pattern.ts'
import type { QuantityTable } from './result.ts'
import type { Source } from './source.ts'

export const cutPatternFormula = 'height of each end dam on both ends; drip + bed + upstand across; corners folded, not cut'

export const cutPatternSources: readonly Source[] = [
  { title: 'Common practice of the trade', locator: 'folded corners: common practice, no source', evidence: 'memory' },
  { title: 'Installing end dams (question and answer), Masonry Construction', locator: 'end dam out to the face', evidence: 'secondary', readIn: 'https://indexarticles.com/business/masonry-construction/installing-end-dams/' },
]

const notes: readonly string[] = [
  'Seen with the wet side up: x from the left end as seen from outside, y from the front edge. A fold up is toward the wet side.',
  'Fold the end dam and the upstand up together; the ear folds on its diagonal and lies flat on the upstand beyond the dam.',
  'The dam ends at the face of the brick; one that ends inside the wall lets water round it.',
  'Sheet too stiff for an ear is cut along the diagonal instead, and its corners are soldered or bonded watertight.',
  'Bend allowances are not taken off; fold a trial corner first.',
]

/** The blank with its outline and folds, to be laid out or drawn. */
export function patternOf(pan: Pan): Computation {
  const turned = Math.max(pan.dripAngle, pan.fall)
  if (pan.projection > 0 && turned >= 180 / 2) return { reason: 'methodDoesNotHold', why: 'A drip turned straight down does not stand out from the face; turn it down less.' }
  const pattern = cutPattern({ ...pan, projection: Math.max(0, pan.projection) })
  return { value: `${lengthText(pattern.length)} × ${lengthText(pattern.width)}`, steps: stepsOf(pan, pattern), tables: [outlineTable(pattern), foldTable(pattern)], notes: [...notes, ...warnings(pan, pattern)] }
}

function stepsOf(pan: Pan, pattern: CutPattern): readonly string[] {
  const drip = pan.projection > 0 ? ` + drip ${lengthText(pan.projection)} / cos(${degrees(Math.max(pan.dripAngle, pan.fall))})` : ''
  const hem = pan.projection > 0 && pan.hem > 0 ? ` + hem ${lengthText(pan.hem)}` : ''
  return [
    `Length: ${lengthText(pan.leftDam)} + ${lengthText(pan.length)} + ${lengthText(pan.rightDam)} = ${lengthText(pattern.length)}`,
    `Width: upstand ${lengthText(pan.upstand)} + bed ${lengthText(pan.depth)}${pan.fall === 0 ? '' : ` / cos(${degrees(pan.fall)})`}${drip}${hem} = ${lengthText(pattern.width)}`,
    `Corners hold water up to ${lengthText(pattern.holds)}`,
  ]
}

function warnings(pan: Pan, { holds }: CutPattern): readonly string[] {
  const dam = Math.min(pan.leftDam, pan.rightDam)
  return holds < dam ? [`The upstand is lower than the end dam; water runs over the corner at ${lengthText(holds)}, not at ${lengthText(dam)}.`] : []
}

function outlineTable({ outline }: CutPattern): QuantityTable {
  return {
    title: 'Outline of the blank, point after point',
    columns: [{ title: 'Point', dimension: 'count' }, { title: 'x', dimension: 'length' }, { title: 'y', dimension: 'length' }],
    rows: outline.map(([x, y], index) => [index + 1, x, y]),
  }
}

function foldTable({ folds }: CutPattern): QuantityTable {
  return {
    title: 'Folds',
    columns: [
      { title: 'Fold', dimension: null }, { title: 'From x', dimension: 'length' }, { title: 'From y', dimension: 'length' },
      { title: 'To x', dimension: 'length' }, { title: 'To y', dimension: 'length' }, { title: 'Direction', dimension: null }, { title: 'Turned from flat', dimension: 'angle' },
    ],
    rows: folds.map(({ name, from, to, direction, angle }) => [name, ...from, ...to, direction, angle]),
  }
}

function lengthText(length: number): string {
  return valueText(length, 'length')
}

function degrees(angle: number): string {
  return `${Number(angle.toFixed(2))}°`
}
