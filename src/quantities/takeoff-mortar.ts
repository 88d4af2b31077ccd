import { areaOf, millimetres } from '../units/length.ts'
import { exactLengthText } from '../units/quantity-text.ts'
import { figuresText, inBothSystems } from './both-systems.ts'
import { brick, brickThickness } from './brick-unit.ts'
import { laidInCourses } from './coursing.ts'
import { defineQuantity } from './define.ts'
import { mortarBooks, type MortarRow } from './mortar-books.ts'
import { combined, fact, optional, parameter, result, type Need } from './need.ts'
import type { QuantityTable } from './result.ts'
import type { Source } from './source.ts'

const thousand = 1e3
const litre_mm3 = 1e6

/** Takes the bricks that are ordered, and adds the waste of mortar to that. */
const courseForBuilders: Source = {
  title: 'NAVEDTRA 14045, training course for builders',
  locator: 'structural clay tile and brick, quantities',
  evidence: 'primary',
  readIn: 'http://constructionmanuals.tpub.com/14045/css/Structural-Clay-Tile-159.htm',
}

/** What the books give for the joint of this wall, and for its brick where they name one. */
const comparable: Need<readonly MortarRow[]> = combined(
  { rows: mortarBooks, brick, unit: optional(fact.choice('wall.veneer.unit')) },
  ({ rows, brick, unit }) => rows.filter((row) => row.joint === brick.joint && (row.unit === undefined || row.unit === unit)),
)

/** Mortar around a thousand bricks, in liters: their places in the wall less the bricks. */
export const mortarPerThousand = defineQuantity({
  id: 'takeoff.mortar-per-thousand',
  title: 'Mortar for a thousand bricks, without waste',
  part: 'wall',
  dimension: 'volume',
  formula: '1000 × brick thickness × ((brick length + joint) × course − brick length × brick height)',
  appliesTo: laidInCourses,
  needs: { brick, thickness: brickThickness, books: comparable },
  compute: ({ brick: { length, height, joint, course }, thickness, books }) => {
    const face = areaOf(length + joint, course) - areaOf(length, height)
    const value = (thousand * millimetres(thickness) * face) / litre_mm3
    const [long, high, joints, courses, thick] = [exactLengthText(length), exactLengthText(height), exactLengthText(joint), inBothSystems({ dimension: 'length', amount: course }), exactLengthText(thickness)]
    return {
      value,
      steps: [`1000 × ${thick} × ((${long} + ${joints}) × ${courses} − ${long} × ${high}) = ${volumeText(value)}`],
      tables: [comparison('Mortar for a thousand bricks', thousand, value, books)],
      notes: ['Bed and head joints are full over the whole thickness; mortar that goes into frogs, cores and the air space comes on top.', ...disagreement(thousand, books)],
    }
  },
})

/** Mortar in the joints of the wall as built, in liters. */
export const mortarNet = defineQuantity({
  id: 'takeoff.mortar',
  title: 'Mortar in the wall',
  part: 'wall',
  dimension: 'volume',
  formula: 'bricks in the wall × mortar for one',
  onlyWhenKnown: true,
  needs: { bricks: result('takeoff.bricks-net'), perThousand: result('takeoff.mortar-per-thousand'), books: comparable },
  compute: ({ bricks, perThousand, books }) => {
    const value = (bricks / thousand) * perThousand
    return {
      value,
      steps: [`${bricks} bricks × ${volumeText(perThousand)} / 1000 = ${volumeText(value)}`],
      tables: [comparison('Mortar in this wall', bricks, value, books)],
      notes: disagreement(bricks, books),
    }
  },
})

/** Mortar to make, in liters. */
export const mortarOrder = defineQuantity({
  id: 'takeoff.mortar-order',
  title: 'Mortar to order',
  part: 'wall',
  dimension: 'volume',
  formula: 'bricks to order × mortar for one × (1 + waste)',
  onlyWhenKnown: true,
  sources: [courseForBuilders],
  needs: { bricks: result('takeoff.bricks-order'), perThousand: result('takeoff.mortar-per-thousand'), waste: parameter('masonry.mortar-waste') },
  compute: ({ bricks, perThousand, waste }) => {
    const laid = (bricks / thousand) * perThousand
    const value = laid * (1 + waste)
    return {
      value,
      steps: [`${bricks} bricks × ${volumeText(perThousand)} / 1000 = ${volumeText(laid)}`, `${volumeText(laid)} × (1 + ${figuresText(waste)}) = ${volumeText(value)}`],
      notes: ['Reckoned, as the book does, for the bricks that are ordered, and waste of mortar on top.'],
    }
  },
})

function comparison(title: string, bricks: number, computed: number, books: readonly MortarRow[]): QuantityTable {
  return {
    title,
    columns: [{ title: 'By', dimension: null }, { title: 'For', dimension: null }, { title: 'Waste', dimension: null }, { title: 'Mortar', dimension: 'volume' }],
    rows: [['The volume of the joints', 'this brick', 'not included', computed], ...books.map((row) => [row.title, row.about, row.waste, share(row, bricks)])],
  }
}

function disagreement(bricks: number, books: readonly MortarRow[]): readonly string[] {
  if (books.length === 0) return ['No book in the catalog gives mortar for this brick and joint.']
  const volumes = books.map((row) => share(row, bricks))
  return [`Books for this joint give ${volumeText(Math.min(...volumes))} to ${volumeText(Math.max(...volumes))}, some for another brick and some with waste; the table shows each.`]
}

/** What a book's figure comes to for so many bricks. */
function share({ mortar, bricks }: MortarRow, count: number): number {
  return (mortar / bricks) * count
}

function volumeText(amount: number): string {
  return inBothSystems({ dimension: 'volume', amount })
}
