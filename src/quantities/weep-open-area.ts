import { exactLengthText } from '../units/quantity-text.ts'
import { defineQuantity, type Computation } from './define.ts'
import { combined, fact, optional, result } from './need.ts'
import { smallAreaText } from './plane-area.ts'
import { weepArea } from './weep-opening.ts'
import { weepKind } from './weep-spacing.ts'

const formula = 'weeps × clear area of one / length dam to dam; joint width × open height, or π d² / 4'

/** Clear opening per length of the head flashing. */
export const headWeepOpenArea = defineQuantity({
  id: 'weeps.head-open-area',
  title: 'Clear opening of the weeps over the head, per length',
  part: 'head',
  dimension: 'openArea',
  formula,
  onlyWhenKnown: true,
  appliesTo: someWeeps('head'),
  needs: { kind: weepKind('head'), area: weepArea('head'), count: result('weeps.head-count'), length: result('flashing.head-pan-length') },
  compute: openArea,
})

/** Clear opening per length of the sill flashing. */
export const sillWeepOpenArea = defineQuantity({
  id: 'weeps.sill-open-area',
  title: 'Clear opening of the weeps under the sill, per length',
  part: 'sill',
  dimension: 'openArea',
  formula,
  onlyWhenKnown: true,
  appliesTo: someWeeps('sill'),
  needs: { kind: weepKind('sill'), area: weepArea('sill'), count: result('weeps.sill-count'), length: result('sill.flashing-length') },
  compute: openArea,
})

function someWeeps(place: 'head' | 'sill') {
  return combined({ kind: optional(fact.choice(`${place}.weeps.kind`)) }, ({ kind }) => kind !== 'none')
}

interface Given {
  readonly kind: string
  readonly area: number | undefined
  readonly count: number
  readonly length: number
}

function openArea({ kind, area, count, length }: Given): Computation {
  if (area === undefined) return { reason: 'methodDoesNotHold', why: withoutOpening[kind] ?? 'Under a slab, or among stones, no head joint gives the size of an open weep.' }
  return {
    value: (count * area) / (length * 1e-9),
    steps: [`${count} × ${smallAreaText(area)} in ${exactLengthText(length)}`],
    notes: ['Clean weeps; what mortar, mesh or insects close is not taken off.'],
  }
}

const withoutOpening: Readonly<Record<string, string>> = {
  cellVent: 'A cell vent has many small passages; their clear area is for its maker to state.',
  mesh: 'Mesh fills the joint; its clear area is for its maker to state.',
  wick: 'A wick draws water through its fibers and leaves no clear opening; no published rate was found.',
  rope: 'A rope left in place is a wick and leaves no clear opening; one that is pulled out leaves a tube.',
}
