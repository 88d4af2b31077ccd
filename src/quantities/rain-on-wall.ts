import { defineQuantity, type Computation } from './define.ts'
import { fact, parameter } from './need.ts'
import { bandAcross } from './rain-band.ts'
import { storm } from './rain-driving.ts'
import { hourlyRain, hourlyRelation, linearRain } from './rain-free-wind.ts'
import { rainLoadStandard, wallIndexStandard } from './rain-sources.ts'
import { tooConvective, wallFactors, type WallFactors } from './rain-wall-factors.ts'

const convective: Computation = { reason: 'methodDoesNotHold', why: 'More of the yearly rain falls in severe convective storms than the wall factors hold for.' }

const notes = [
  'Most of the factors are from memory, and the methods differ by two or three times; use it to compare walls, not to build by.',
  'Not for sheer cliffs and gorges, nor for periods of snow or hail.',
]

/** Driving rain on the wall over a year or a spell, in L/m². */
export const wallIndex = defineQuantity({
  id: 'rain.wall-index',
  title: 'Driving rain on the wall over a year or a spell',
  part: 'wall',
  dimension: 'rainDepth',
  formula: 'driving rain in the free wind × factors of the wall, by ISO 15927-3 and by ASHRAE 160',
  indicative: true,
  onlyWhenKnown: true,
  sources: [wallIndexStandard, rainLoadStandard],
  needs: { free: fact.amount('exposure.airfieldIndex'), factors: wallFactors, tooConvective },
  compute: ({ free, factors, tooConvective }) => (tooConvective ? convective : onWall(factors, free, free, 'rainDepth')),
})

/** Driving rain on the wall in the storm described, in mm/h. */
export const rainOnWall = defineQuantity({
  id: 'rain.on-wall',
  title: 'Driving rain on the wall in the storm',
  part: 'wall',
  dimension: 'rainRate',
  formula: 'driving rain in the free wind × factors of the wall, by ISO 15927-3 and by ASHRAE 160',
  indicative: true,
  onlyWhenKnown: true,
  sources: [wallIndexStandard, rainLoadStandard],
  needs: { storm, relation: hourlyRelation, coefficient: parameter('rain.deposition-coefficient'), factors: wallFactors, tooConvective },
  compute: ({ storm, relation, coefficient, factors, tooConvective }) => {
    if (storm.onto === 0) return { value: 0, notes: ['The wind blows along the wall or from behind it.'] }
    return tooConvective ? convective : onWall(factors, hourlyRain(relation, storm), linearRain(coefficient, storm), 'rainRate')
  },
})

function onWall({ iso, ashrae, steps }: WallFactors, freeByIso: number, freeByAshrae: number, dimension: 'rainDepth' | 'rainRate'): Computation {
  const byIso = iso.least === iso.greatest
    ? [['ISO 15927-3', iso.least, freeByIso * iso.least] as const]
    : [['ISO 15927-3, at the foot of the slope', iso.least, freeByIso * iso.least] as const, ['ISO 15927-3, at the top of the slope', iso.greatest, freeByIso * iso.greatest] as const]
  const rows = [...byIso, ['ASHRAE 160', ashrae, freeByAshrae * ashrae] as const]
  return {
    value: bandAcross(rows.map(([, , amount]) => amount)),
    steps,
    tables: [{ title: 'By method', columns: [{ title: 'Method', dimension: null }, { title: 'Factor of the wall', dimension: 'ratio' }, { title: 'On the wall', dimension }], rows }],
    notes,
  }
}
