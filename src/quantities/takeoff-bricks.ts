import { areaOf } from '../units/length.ts'
import { exactLengthText } from '../units/quantity-text.ts'
import { figuresText, inBothSystems } from './both-systems.ts'
import { namedBrick, type NamedBrick } from './brick-table.ts'
import { brick } from './brick-unit.ts'
import { isKnown, taken, whether } from './choose.ts'
import { laidInCourses } from './coursing.ts'
import { defineQuantity } from './define.ts'
import { combined, fact, optional, orElse, parameter, result, type Need } from './need.ts'

const squareMetre_mm2 = 1e6

/** What is in a wall to the last brick; counts that come out whole but for the arithmetic stay whole. */
export function wholeBricks(count: number): number {
  return Math.ceil(count - 1e-9)
}

const ownSizes = combined(
  { height: isKnown(fact.amount('wall.veneer.unitHeight')), length: isKnown(fact.amount('wall.veneer.unitLength')), joint: isKnown(fact.amount('wall.veneer.jointThickness')) },
  ({ height, length, joint }) => height || length || joint,
)

/** A published count is for the sizes of the standard name only. */
const published: Need<NamedBrick['published']> = whether(ownSizes, taken(undefined), combined({ named: namedBrick }, ({ named }) => named.published))

const bond = orElse(fact.choice('wall.veneer.bond'), taken('running'), 'The bond is not known; whole stretchers are counted.')

/** Bricks in a square meter of wall face. */
export const bricksPerArea = defineQuantity({
  id: 'takeoff.bricks-per-area',
  title: 'Bricks for an area of wall',
  part: 'wall',
  dimension: 'unitsPerArea',
  formula: '1 / ((brick length + joint) × course)',
  appliesTo: laidInCourses,
  needs: { brick, bond, published: optional(published) },
  compute: ({ brick: { length, joint, course }, bond, published }) => {
    const value = squareMetre_mm2 / areaOf(length + joint, course)
    return {
      value,
      steps: [`1 / ((${exactLengthText(length)} + ${exactLengthText(joint)}) × ${inBothSystems({ dimension: 'length', amount: course })}) = ${countText(value)}`],
      tables: published ? [comparison(value, published.perArea)] : [],
      notes: [
        ...(published ? [`Published counts are rounded or take another joint: ${published.where}.`] : []),
        ...(bond === 'flemish' || bond === 'english' ? ['Headers are taken as half bricks, with both halves of a brick used.'] : []),
      ],
    }
  },
})

/** Bricks in the wall as built, turned courses counted as if they were stretchers. */
export const bricksNet = defineQuantity({
  id: 'takeoff.bricks-net',
  title: 'Bricks in the wall',
  part: 'wall',
  dimension: 'count',
  formula: 'net wall area × bricks for an area, rounded up',
  onlyWhenKnown: true,
  needs: { area: result('takeoff.net-area'), perArea: result('takeoff.bricks-per-area') },
  compute: ({ area, perArea }) => {
    const count = (area / squareMetre_mm2) * perArea
    return {
      value: wholeBricks(count),
      steps: [`${inBothSystems({ dimension: 'area', amount: area })} × ${countText(perArea)} = ${figuresText(count)}, rounded up`],
      notes: ['Deep returns at the jambs come on top; a rowlock sill takes more bricks than the stretchers it stands for.'],
    }
  },
})

/** Bricks to order. */
export const bricksOrder = defineQuantity({
  id: 'takeoff.bricks-order',
  title: 'Bricks to order',
  part: 'wall',
  dimension: 'count',
  formula: 'bricks in the wall × (1 + waste), rounded up',
  onlyWhenKnown: true,
  needs: { net: result('takeoff.bricks-net'), waste: parameter('masonry.brick-waste') },
  compute: ({ net, waste }) => ({
    value: wholeBricks(net * (1 + waste)),
    steps: [`${net} × (1 + ${figuresText(waste)}) = ${figuresText(net * (1 + waste))}, rounded up`],
    notes: ['Round up to whole packs.'],
  }),
})

function comparison(computed: number, published: number) {
  return {
    title: 'Bricks for an area, computed and published',
    columns: [{ title: 'Count', dimension: null }, { title: 'Bricks', dimension: 'unitsPerArea' as const }, { title: 'Against computed', dimension: 'ratio' as const }],
    rows: [['Computed from the sizes', computed, 1], ['Published', published, published / computed]],
  }
}

function countText(perArea: number): string {
  return inBothSystems({ dimension: 'unitsPerArea', amount: perArea })
}
