import { cellText, type Table } from '../catalog/reference.ts'
import { metres } from '../units/length.ts'
import { taken } from './choose.ts'
import { combined, fact, orElse, parameter, table, type Need } from './need.ts'
import { cellAmount, rowBelow, rowOf } from './rain-table.ts'
import type { Band } from './result.ts'

/** What part of the driving rain in the free wind reaches the wall, by each of the two methods. */
export interface WallFactors {
  /** By ISO 15927-3; at the foot and at the top of a slope, the same on level ground. */
  readonly iso: Band
  /** By ASHRAE 160. */
  readonly ashrae: number
  readonly steps: readonly string[]
}

/** Height above grade at which the wall is looked at, in nanometres: the top of the opening. */
export const heightAboveGrade: Need<number> = orElse(
  combined({ sill: fact.amount('opening.sillAboveGrade'), height: fact.amount('opening.height') }, ({ sill, height }) => sill + height),
  fact.amount('wall.veneerHeight'),
  'The height of the sill above grade is not known; the height of the veneer is taken.',
)

/** Wind over rough ground against open land at 10 m, by the terrain and the height in nanometres. */
export function roughness(terrains: Table, terrain: string, height: number): number {
  const row = rowOf(terrains, 'terrain', terrain)
  const [factor, length, least] = ['factor', 'roughnessLength', 'leastHeight'].map((column) => cellAmount(terrains, row, column))
  if (factor === undefined || length === undefined || least === undefined) throw new Error(`table ${terrains.table} lacks a column`)
  return factor * Math.log(Math.max(height, least) / length)
}

interface Topography {
  readonly gentle: number
  readonly steep: number
  readonly factor: number
  readonly greatest: number
}

const topography: Need<Topography> = combined(
  { gentle: parameter('rain.topography-gentle'), steep: parameter('rain.topography-steep'), factor: parameter('rain.topography-factor'), greatest: parameter('rain.topography-greatest') },
  (given) => given,
)

/** Speed-up over a slope, from its foot to its top; where on the slope the building stands is not described. */
export function speedUp({ gentle, steep, factor, greatest }: Topography, slope: number): Band {
  if (slope < gentle) return { least: 1, greatest: 1 }
  return { least: 1, greatest: 1 + (slope > steep ? greatest : factor * slope) }
}

const obstructed: Need<number> = orElse(
  combined({ obstacles: table('rain.obstruction'), distance: fact.amount('exposure.obstructionDistance') }, ({ obstacles, distance }) => cellAmount(obstacles, rowBelow(obstacles, 'nearerThan', distance), 'factor')),
  taken(1),
  'What stands in front of the wall is not known; nothing is taken to shelter it.',
)

const isoFactors = combined(
  {
    terrains: table('rain.terrain'),
    terrain: fact.choice('exposure.terrain'),
    height: heightAboveGrade,
    topography,
    slope: orElse(fact.amount('exposure.topographySlope'), taken(0), 'The slope of the ground upwind is not known; level ground is taken.'),
    obstructed,
    faces: table('rain.wall-faces'),
    face: fact.choice('exposure.wallFace'),
  },
  ({ terrains, terrain, height, topography, slope, obstructed, faces, face }) => {
    const rough = roughness(terrains, terrain, height)
    const speed = speedUp(topography, slope)
    const wall = cellAmount(faces, rowOf(faces, 'wallFace', face), 'factor')
    const speeds = speed.least === speed.greatest ? speed.least.toFixed(2) : `${speed.least.toFixed(2)} to ${speed.greatest.toFixed(2)}`
    return {
      band: { least: rough * speed.least * obstructed * wall, greatest: rough * speed.greatest * obstructed * wall },
      step: `ISO 15927-3: roughness ${rough.toFixed(3)} at ${metres(height).toFixed(1)} meters above grade × topography ${speeds} × obstruction ${obstructed} × wall ${wall}`,
    }
  },
)

const ashraeFactor = combined(
  {
    classes: table('rain.exposure-classes'),
    terrain: fact.choice('exposure.terrain'),
    exposures: table('rain.exposure-factors'),
    height: heightAboveGrade,
    depositions: table('rain.deposition'),
    face: fact.choice('exposure.wallFace'),
  },
  ({ classes, terrain, exposures, height, depositions, face }) => {
    const exposureClass = cellText(rowOf(classes, 'terrain', terrain)['exposure'])
    const exposed = cellAmount(exposures, rowBelow(exposures, 'lowerThan', height), exposureClass)
    const deposited = cellAmount(depositions, rowOf(depositions, 'wallFace', face), 'factor')
    return { factor: exposed * deposited, step: `ASHRAE 160: exposure ${exposed} (${exposureClass}) × deposition ${deposited}` }
  },
)

export const wallFactors: Need<WallFactors> = combined({ iso: isoFactors, ashrae: ashraeFactor }, ({ iso, ashrae }) => ({ iso: iso.band, ashrae: ashrae.factor, steps: [iso.step, ashrae.step] }))

/** Whether so much of the rain is convective that the wall factors do not hold. */
export const tooConvective: Need<boolean> = orElse(
  combined({ share: fact.amount('exposure.convectiveRainShare'), greatest: parameter('rain.convective-share-greatest') }, ({ share, greatest }) => share > greatest),
  taken(false),
  'What share of the yearly rain falls in severe convective storms is not known; the wall factors hold only where it is small.',
)
