import { defineQuantity } from './define.ts'
import { combined, fact, parameter, type Need } from './need.ts'
import { bandAcross } from './rain-band.ts'
import { drops, hourlyRain, hourlyRelation, linearRain, rainOfDrops, shareOnto, type RainHour } from './rain-free-wind.ts'
import { drivingRainDigest } from './rain-sources.ts'

/** The storm that the opening is described for. */
export const storm: Need<RainHour> = combined(
  { rain: fact.amount('exposure.rainIntensity'), wind: fact.amount('exposure.windSpeedInRain'), angle: fact.amount('exposure.windAngle') },
  ({ rain, wind, angle }) => ({ rain, wind, onto: shareOnto(angle) }),
)

/** Rain through an upright plane in the free wind, in mm/h. */
export const drivingRain = defineQuantity({
  id: 'rain.driving-rain',
  title: 'Driving rain in the free wind',
  part: 'wall',
  dimension: 'rainRate',
  formula: 'hourly: 2/9 × wind × rain^(8/9) × cos(angle); in proportion: factor × wind × rain × cos(angle)',
  indicative: true,
  onlyWhenKnown: true,
  sources: [drivingRainDigest],
  needs: {
    storm,
    relation: hourlyRelation,
    least: parameter('rain.linear-coefficient-least'),
    greatest: parameter('rain.linear-coefficient-greatest'),
    drops,
  },
  compute: ({ storm, relation, least, greatest, drops }) => {
    if (storm.onto === 0) return { value: 0, notes: ['The wind blows along the wall or from behind it.'] }
    const rows = [
      ['Hourly relation of ISO 15927-3', hourlyRain(relation, storm)],
      ['In proportion to rain and wind, lower average', linearRain(least, storm)],
      ['In proportion to rain and wind, upper average', linearRain(greatest, storm)],
      ['Fall speed of the median raindrop', rainOfDrops(drops, storm) ?? null],
    ] as const
    return {
      value: bandAcross(rows.flatMap(([, rate]) => rate ?? [])),
      steps: [`${storm.wind.toFixed(2)} m/s of wind, ${(storm.onto * storm.wind).toFixed(2)} m/s of it straight onto the wall, and ${storm.rain.toFixed(2)} mm of rain in the hour`],
      tables: [{ title: 'By method', columns: [{ title: 'Method', dimension: null }, { title: 'Driving rain', dimension: 'rainRate' }], rows }],
      notes: ['Before any shelter by the building, the ground or its surroundings. Do not compare it with the spray rate of a test.'],
    }
  },
})
