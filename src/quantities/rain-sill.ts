import { metres, nanometresOf } from '../units/length.ts'
import { defineQuantity } from './define.ts'
import { fact } from './need.ts'
import { bandOf } from './rain-band.ts'
import { geometry, thinWater } from './rain-sources.ts'
import { filmThickness, water } from './water.ts'

const allGlass = 'The whole opening is taken as glass, which takes up no water; splash is left out.'

/** Rain that runs off the opening onto the sill, in L/h. */
export const sillRunoff = defineQuantity({
  id: 'rain.sill-runoff',
  title: 'Water from the opening onto the sill in the storm',
  part: 'sill',
  dimension: 'flow',
  formula: 'rain on the wall × opening height × opening width',
  indicative: true,
  onlyWhenKnown: true,
  sources: [geometry],
  needs: { rain: bandOf('rain.on-wall'), height: fact.amount('opening.height'), width: fact.amount('opening.width') },
  compute: ({ rain, height, width }) => {
    const rows = [['Least', rain.least], ['Greatest', rain.greatest]].map(([name = '', rate]) => {
      const perMeter = Number(rate) * metres(height)
      return [name, Number(rate), perMeter, perMeter * metres(width)]
    })
    return {
      value: { least: rain.least * metres(height) * metres(width), greatest: rain.greatest * metres(height) * metres(width) },
      tables: [{
        title: 'By rain on the wall',
        columns: [{ title: 'Rain', dimension: null }, { title: 'On the wall', dimension: 'rainRate' }, { title: 'Over each meter of sill', dimension: 'flow' }, { title: 'Over the sill', dimension: 'flow' }],
        rows,
      }],
      notes: [allGlass],
    }
  },
})

/** How thick the water runs over the sill, in nanometres. */
export const sillFilm = defineQuantity({
  id: 'rain.sill-film',
  title: 'Water running over the sill, thickness',
  part: 'sill',
  dimension: 'length',
  formula: '∛(3 × viscosity × flow over each meter / (density × gravity × sin(slope)))',
  indicative: true,
  onlyWhenKnown: true,
  sources: [thinWater],
  needs: { rain: bandOf('rain.on-wall'), height: fact.amount('opening.height'), slope: fact.amount('sill.slope'), water },
  compute: ({ rain, height, slope, water }) => {
    if (slope <= 0) return { reason: 'methodDoesNotHold', why: 'The sill does not fall to the outside; water stands on it.' }
    const thickness = (rate: number, degrees: number) => nanometresOf(filmThickness(water, rate * metres(height), degrees))
    const upright = 180 / 2
    return {
      value: { least: thickness(rain.least, slope), greatest: thickness(rain.greatest, slope) },
      tables: [{
        title: 'On the glass and on the sill',
        columns: [{ title: 'Where', dimension: null }, { title: 'Slope', dimension: 'angle' }, { title: 'Least', dimension: 'length' }, { title: 'Greatest', dimension: 'length' }],
        rows: [['Glass', upright, thickness(rain.least, upright), thickness(rain.greatest, upright)], ['Sill', slope, thickness(rain.least, slope), thickness(rain.greatest, slope)]],
      }],
      notes: [allGlass, 'A film so thin never asks for a deeper sill. What counts is that no water stays: slope, drip, and no dips.'],
    }
  },
})
