import { greatest, positive, taken } from './choose.ts'
import { combined, fact, limit, orElse, parameter, type Need } from './need.ts'

export const insulation = orElse(fact.amount('wall.insulationThickness'), taken(0), 'Insulation outside the sheathing is not described; none is counted.')
export const airSpace = orElse(fact.amount('wall.airSpace'), limit('air-space.recommended'), 'The air space is not known; the recommended one is taken.')
const brick = fact.amount('wall.veneer.thickness')

/** From the barrier to the face of the brick, across whatever stands between. */
const backingToFace = combined({ insulation, airSpace, brick }, ({ insulation, airSpace, brick }) => insulation + airSpace + brick)

/** The legs of the head flashing. */
export const headLegs = {
  upstand: greatest(limit('flashing.upstand'), fact.amount('head.flashing.upstand')),
  depth: backingToFace,
  projection: greatest(limit('flashing.drip-projection'), fact.amount('head.flashing.projection')),
}

const sillOverhang = orElse(fact.amount('sill.projection'), limit('sill.projection'), 'How far the sill stands out past the face is not known; the least projection of the rule in force is taken.')

/** The legs of the flashing under the sill units: it lies under them from their back to the face below, and turns up behind them. */
export const sillLegs = {
  upstand: fact.amount('sill.flashing.upstand'),
  depth: orElse(
    positive(combined({ depth: fact.amount('sill.depth'), overhang: sillOverhang }, ({ depth, overhang }) => depth - overhang)),
    backingToFace,
    'The depth of the sill over the brick is not known; the flashing is taken to start at the backing.',
  ),
  projection: orElse(
    positive(fact.amount('sill.flashing.projection')),
    limit('flashing.drip-projection'),
    'No projection of the sill flashing past the face is given; that of a head flashing is taken.',
  ),
}

const foldedMetals: readonly string[] = ['stainlessSteel', 'copper', 'leadCoatedCopper', 'galvanizedSteel', 'aluminum', 'lead']

/** A hem stiffens the front edge of sheet metal and takes its sharpness; membranes have none. */
export function hemOf(material: string): Need<number> {
  const ofMetal = combined({ material: fact.choice(material), hem: parameter('flashing.hem-width') }, ({ material, hem }) => (foldedMetals.includes(material) ? hem : 0))
  return orElse(ofMetal, taken(0), 'The material of the flashing is not known; no hem is counted.')
}
