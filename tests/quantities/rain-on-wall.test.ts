import { describe, expect, test } from 'vitest'
import { rainOnWall, wallIndex } from '../../src/quantities/rain-on-wall.ts'
import { roughness, speedUp } from '../../src/quantities/rain-wall-factors.ts'
import { amount, evaluate, inputsOf } from './inputs.ts'

const terrains = inputsOf({}).table('rain.terrain')?.table
if (!terrains) throw new Error('the catalog lacks the terrains')

/** A wall in a suburb, 6 m up, with an obstacle of its height 30 m away, under the eaves of two stories. */
const wall = {
  'opening.sillAboveGrade': '4 m', 'opening.height': '2 m', 'exposure.terrain': 'suburban', 'exposure.obstructionDistance': '30 m',
  'exposure.wallFace': 'twoStoryEaves', 'exposure.topographySlope': '0 %', 'exposure.convectiveRainShare': '10 %',
}
const index = { ...wall, 'exposure.airfieldIndex': '551.3 L/m2' }
const storm = { ...wall, 'exposure.rainIntensity': '4 mm/h', 'exposure.windSpeedInRain': '5 m/s', 'exposure.windAngle': '30 deg' }

function rowsOf(definition: typeof wallIndex, facts: Readonly<Record<string, unknown>>) {
  return evaluate(definition, { facts }).tables[0]?.rows ?? []
}

describe('roughness', () => {
  // K ln(z/z0) with the constants of ISO 15927-3 in the public code helper.py of comsol_tools; worked with a calculator
  test.each([['coastal', '6 m', 1.0875], ['open', '10 m', 1.0067], ['suburban', '6 m', 0.7224], ['urban', '20 m', 0.719], ['coastal', '-1 m', 0.9007]])('%s at %s', (terrain, height, expected) => {
    expect(roughness(terrains, terrain, amount(height))).toBeCloseTo(expected, 3)
  })
})

describe('the speed-up over a slope', () => {
  const topography = { gentle: 0.05, steep: 0.3, factor: 2, greatest: 0.6 }

  // ISO 15927-3, from memory: 1 below 5 %, 1 + 2 s φ to 30 %, 1 + 0.6 s above; s from 0 at the foot to 1 at the top
  test.each([[0, 1], [0.049, 1], [0.05, 1.1], [0.2, 1.4], [0.3, 1.6], [0.5, 1.6]])('of %d', (slope, top) => {
    const { least, greatest } = speedUp(topography, slope)
    expect(least).toBe(1)
    expect(greatest).toBeCloseTo(top, 9)
  })
})

describe('driving rain on a wall over a year or a spell', () => {
  // 551.3 × 0.7224 × 1 × 0.5 × 0.3 worked by hand; obstruction and wall factors from memory
  test('by ISO 15927-3', () => expect(rowsOf(wallIndex, index)[0]?.[2]).toBeCloseTo(59.73, 1))

  // 551.3 × 1.0 × 0.35 worked by hand; the factors of ASHRAE 160 from memory
  test('by ASHRAE 160', () => expect(rowsOf(wallIndex, index)[1]?.[2]).toBeCloseTo(192.955, 6))

  test('spans both', () => {
    const [iso, ashrae] = rowsOf(wallIndex, index)
    expect(evaluate(wallIndex, { facts: index })).toMatchObject({ status: 'computed', value: { least: iso?.[2], greatest: ashrae?.[2] }, assumptions: [] })
  })

  // Building Science Digest 148, tower in Toronto: height factor 1.5 at 50 m in a suburb
  test('high up every exposure has one factor', () => {
    const high = { ...index, 'opening.sillAboveGrade': '60 m', 'exposure.wallFace': 'multistoryTop' }
    expect(rowsOf(wallIndex, high)[1]?.[1]).toBeCloseTo(1.5 * 0.5, 9)
  })

  // The same digest, west wall of a low house among others: height factor 0.7
  test('a low house in town is sheltered', () => {
    expect(rowsOf(wallIndex, { ...index, 'exposure.terrain': 'urban' })[1]?.[1]).toBeCloseTo(0.7 * 0.35, 9)
  })

  test('a slope widens the band, foot and top', () => {
    const rows = rowsOf(wallIndex, { ...index, 'exposure.topographySlope': '20 %' })
    expect(rows).toHaveLength(3)
    expect(Number(rows[1]?.[2]) / Number(rows[0]?.[2])).toBeCloseTo(1.4, 9)
  })

  // Distances and factors of ISO 15927-3, from memory; a distance on the bound takes the higher factor
  test.each([['2 m', 0.2], ['7.9 m', 0.2], ['8 m', 0.3], ['59 m', 0.6], ['119 m', 0.9], ['120 m', 1], ['900 m', 1]])('an obstacle at %s leaves %d', (distance, share) => {
    const factorAt = (at: string | null) => Number(rowsOf(wallIndex, { ...index, 'exposure.obstructionDistance': at })[0]?.[1])
    expect(factorAt(distance) / factorAt(null)).toBeCloseTo(share, 9)
  })

  test('does not hold where much of the rain is convective', () => {
    expect(evaluate(wallIndex, { facts: { ...index, 'exposure.convectiveRainShare': '26 %' } })).toMatchObject({ status: 'notDetermined', reason: 'methodDoesNotHold', value: null })
    expect(evaluate(wallIndex, { facts: { ...index, 'exposure.convectiveRainShare': '25 %' } }).status).toBe('computed')
  })

  test('says what it takes for granted', () => {
    const bare = { 'exposure.airfieldIndex': '551.3 L/m2', 'exposure.terrain': 'open', 'exposure.wallFace': 'twoStoryGable', 'wall.veneerHeight': '20 ft' }
    expect(evaluate(wallIndex, { facts: bare }).assumptions).toEqual([
      expect.stringMatching(/height of the veneer/), expect.stringMatching(/level ground/), expect.stringMatching(/nothing is taken to shelter/), expect.stringMatching(/convective/),
    ])
  })

  test('names the face of the building where it is not known', () => {
    expect(evaluate(wallIndex, { facts: { ...index, 'exposure.wallFace': null } })).toMatchObject({ status: 'notDetermined', missing: ['exposure.wallFace'] })
  })
})

describe('driving rain on a wall in a storm', () => {
  // 3.2995 × 0.7224 × 0.5 × 0.3, worked by hand
  test('by ISO 15927-3', () => expect(rowsOf(rainOnWall, storm)[0]?.[2]).toBeCloseTo(0.35753, 4))

  // ASHRAE 160: 1.0 × 0.35 × 0.2 × 5 × 4 × cos 30°, worked by hand
  test('by ASHRAE 160', () => expect(rowsOf(rainOnWall, storm)[1]?.[2]).toBeCloseTo(1.21244, 5))

  test('is nothing on the lee side', () => {
    expect(evaluate(rainOnWall, { facts: { ...storm, 'exposure.windAngle': '120 deg' } })).toMatchObject({ status: 'computed', value: 0 })
  })

  test('does not hold where much of the rain is convective', () => {
    expect(evaluate(rainOnWall, { facts: { ...storm, 'exposure.convectiveRainShare': '40 %' } }).reason).toBe('methodDoesNotHold')
  })
})
