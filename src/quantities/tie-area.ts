import { best, onlyWhere } from './choose.ts'
import { combined, fact, limit, optional, parameter, type Need } from './need.ts'

/** The least that any rule in force gives a tie to serve, in mm², and what to say about it. */
export interface TieArea {
  readonly area: number
  readonly note: string
}

const lowSeismic: readonly string[] = ['A', 'B']

/** Category C counts for townhouses, and for a building that may be one. */
const isSeismic = combined({ category: fact.choice('exposure.seismicDesignCategory'), building: optional(fact.choice('exposure.building')) }, ({ category, building }) => {
  if (category === 'C') return building === undefined || building === 'townhouse'
  return !lowSeismic.includes(category)
})

const isWindy = combined({ wind: fact.amount('exposure.windPressure'), high: parameter('tie.high-wind-pressure') }, ({ wind, high }) => wind > high)

const usual = least(limit('tie.area-per-tie'), limit('tie.area-per-anchor'))

const lessened = least(
  onlyWhere(isSeismic, limit('tie.area-per-tie-high-demand')),
  onlyWhere(isWindy, limit('tie.area-per-tie-high-demand')),
  onlyWhere(isSeismic, limit('tie.area-per-anchor-seismic')),
)

/** Where the exposure is not known the usual area is given, and the note says what would lessen it. */
export const tieArea: Need<TieArea> = combined(
  { usual, lessened: optional(lessened), seismic: optional(isSeismic), windy: optional(isWindy) },
  ({ usual, lessened, seismic, windy }) => ({ area: Math.min(usual, lessened ?? usual), note: noteOn(lessened !== undefined, seismic !== undefined && windy !== undefined) }),
)

function noteOn(isLessened: boolean, isKnown: boolean): string {
  if (isLessened) return 'The area per tie is the lessened one for the seismic design category or the wind.'
  return isKnown ? 'The usual area per tie holds.' : 'A high seismic design category or wind pressure, if there is one, lessens the area per tie.'
}

function least(...wanted: readonly Need<number>[]): Need<number> {
  return best(wanted, (area, other) => area < other)
}
