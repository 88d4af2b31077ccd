import { computedLengthText } from '../units/quantity-text.ts'
import { defineQuantity, type Computation } from './define.ts'
import { headJointHeight, headPitches, type Pitches } from './joint-pitch.ts'
import { combined, foundOnce, limit, optional, parameter, result, type Need } from './need.ts'
import { circleArea, rectangleArea, smallAreaText } from './plane-area.ts'
import type { QuantityTable } from './result.ts'
import { headJoints, weepsIn } from './weep-grid.ts'
import { mortarJoint } from './weep-opening.ts'
import { openJointSpacing, slowWeepSpacing, type Spacing } from './weep-spacing.ts'
import { saidOfWeeps, weepSources } from './weep-sources.ts'

/** A figure with the titles of what it was taken from, for a line of the comparison. */
interface Sourced<T> {
  readonly value: T
  readonly from: string
}

/** One way of making a weep. */
interface Way {
  readonly name: string
  readonly spacing: Sourced<Spacing>
  readonly area?: number | undefined
  /** Depth of water that surface tension holds back. */
  readonly heldBack?: number
  readonly said: string
}

/** Kinds of weep side by side for this flashing; it tells them apart and is no measure of how much water they carry off. */
export const weepComparison = defineQuantity({
  id: 'weeps.comparison',
  title: 'Kinds of weep over the head, compared',
  part: 'head',
  dimension: null,
  formula: 'count by the spacing allowed; clear area; water held back 4 σ / (ρ g d) in a round hole, 2 σ / (ρ g w) in a slot',
  indicative: true,
  onlyWhenKnown: true,
  sources: weepSources,
  needs: {
    length: result('flashing.head-pan-length'),
    pitches: headPitches,
    joint: combined({ width: mortarJoint, height: headJointHeight }, (joint) => joint),
    open: sourced(openJointSpacing),
    slow: sourced(slowWeepSpacing),
    large: parameter('weep.tube-diameter-large'),
    small: parameter('weep.tube-diameter-small'),
    least: optional(limit('weep.size')),
    water: combined({ tension: parameter('water.surface-tension'), density: parameter('water.density'), gravity: parameter('physics.gravity') }, ({ tension, density, gravity }) => ({ tension, perMeter: density * gravity })),
  },
  compute: compared,
})

interface Given {
  readonly length: number
  readonly pitches: Pitches
  readonly joint: { readonly width: number; readonly height: number | undefined }
  readonly open: Sourced<Spacing>
  readonly slow: Sourced<Spacing>
  readonly large: number
  readonly small: number
  readonly least: number | undefined
  readonly water: { readonly tension: number; readonly perMeter: number }
}

function compared(given: Given): Computation {
  const { joint, large, small, least = small } = given
  if (Math.min(joint.width, large, small, least) <= 0) return { reason: 'methodDoesNotHold', why: 'A joint or a tube without width lets no water out.' }
  const joints = headJoints(given.length, given.pitches)
  if (joints.length === 0) return { reason: 'methodDoesNotHold', why: 'No regular head joint falls between the end dams; place the weeps on the drawing.' }
  const count = ({ value }: Sourced<Spacing>) => weepsIn(joints, value.longest)?.length ?? null
  const rows = waysOf(given).map((way) => rowOf(way, count(way.spacing), given.length))
  return {
    value: `open joints: ${count(given.open) ?? 'too far apart'}; tubes or wicks: ${count(given.slow) ?? 'too far apart'}`,
    steps: stepsOf(given),
    tables: [{ title: 'Kinds of weep on this flashing', columns, rows }],
    notes: [
      'Clean, level openings with sharp edges are reckoned with; droppings, paint and insects close small ones first.',
      'No rate is given for wicks, since no measured one was found. This is no measure of how much water gets out.',
    ],
  }
}

function waysOf({ joint: { width, height }, open, slow, large, small, least, water }: Given): readonly Way[] {
  const round = (name: string, diameter: number, said: string): Way => ({ name, spacing: slow, area: circleArea(diameter), heldBack: heldBack(4, diameter, water), said })
  return [
    { name: 'Open head joint', spacing: open, area: height === undefined ? undefined : rectangleArea(width, height), heldBack: heldBack(2, width, water), said: saidOfWeeps.openHeadJoint },
    { name: 'Open head joint with a cell vent or mesh', spacing: open, said: saidOfWeeps.vent },
    round(`Tube, ${computedLengthText(large, 'inchPound')}`, large, saidOfWeeps.tube),
    round(`Tube, ${computedLengthText(small, 'inchPound')}`, small, saidOfWeeps.tube),
    ...(least === undefined ? [] : [round(`Round hole of the least size allowed, ${computedLengthText(least, 'inchPound')}`, least, saidOfWeeps.least)]),
    { name: 'Wick, or rope left in place', spacing: slow, said: saidOfWeeps.wick },
  ]
}

/** Pressure of the curved surface over the weight of water: twice over in a round hole, which curves both ways. */
function heldBack(curvature: 2 | 4, width: number, { tension, perMeter }: Given['water']): number {
  return Math.round(((curvature * tension) / perMeter / (width * 1e-9)) * 1e9)
}

const columns: QuantityTable['columns'] = [
  { title: 'Kind', dimension: null }, { title: 'Greatest spacing', dimension: 'length' }, { title: 'Weeps', dimension: 'count' },
  { title: 'Clear area of one', dimension: null }, { title: 'Clear area per length', dimension: 'openArea' },
  { title: 'Water held back', dimension: 'length' }, { title: 'What is said of it', dimension: null }, { title: 'Spacing by', dimension: null },
]

function rowOf({ name, spacing, area, heldBack, said }: Way, count: number | null, length: number): QuantityTable['rows'][number] {
  const perLength = area === undefined || count === null ? null : (count * area) / (length * 1e-9)
  return [name, spacing.value.amount, count, area === undefined ? null : smallAreaText(area), perLength, heldBack ?? null, said, spacing.from]
}

function stepsOf({ joint: { width }, water, small }: Given): readonly string[] {
  const shown = (length: number) => computedLengthText(length, 'si')
  return [
    `Slot as wide as the joint: 2 × ${water.tension} N/m / (${water.perMeter} N/m3 × ${shown(width)}) = ${shown(heldBack(2, width, water))}`,
    `Smaller tube: 4 × ${water.tension} N/m / (${water.perMeter} N/m3 × ${shown(small)}) = ${shown(heldBack(4, small, water))}`,
  ]
}

function sourced<T>(wanted: Need<T>): Need<Sourced<T>> {
  return foundOnce({
    asks: wanted.asks,
    find: (inputs) => {
      const found = wanted.find(inputs)
      return found.known ? { ...found, value: { value: found.value, from: [...new Set(found.sources.map(({ title, locator }) => `${title}, ${locator}`))].join('; ') } } : found
    },
  })
}
