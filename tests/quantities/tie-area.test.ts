import { describe, expect, test } from 'vitest'
import { tieArea } from '../../src/quantities/tie-area.ts'
import { amount, inputsOf } from './inputs.ts'

/** IRC R703.8.4.1 and its exception; all from memory. */
const irc = { 'tie.area-per-tie': '2.67 [ft_i]2', 'tie.area-per-tie-high-demand': '2 [ft_i]2' } as const
/** TMS 402, prescriptive anchors; from memory. */
const tms = { 'tie.area-per-anchor': '2.67 [ft_i]2', 'tie.area-per-anchor-seismic': '2 [ft_i]2' } as const

function areaOf(facts: Record<string, unknown>, limits: Readonly<Record<string, string>>) {
  return tieArea.find(inputsOf({ facts, limits }))
}

describe('area per tie', () => {
  test.each([
    { name: 'category B, ordinary wind', facts: { 'exposure.seismicDesignCategory': 'B', 'exposure.windPressure': '20 psf' }, limits: irc, area: '2.67 [ft_i]2', note: /usual/ },
    { name: 'category D1', facts: { 'exposure.seismicDesignCategory': 'D1' }, limits: irc, area: '2 [ft_i]2', note: /lessened/ },
    { name: 'a townhouse in category C', facts: { 'exposure.seismicDesignCategory': 'C', 'exposure.building': 'townhouse' }, limits: irc, area: '2 [ft_i]2', note: /lessened/ },
    { name: 'a house in category C', facts: { 'exposure.seismicDesignCategory': 'C', 'exposure.building': 'oneOrTwoFamily' }, limits: irc, area: '2.67 [ft_i]2', note: /lessens/ },
    { name: 'perhaps a townhouse in category C', facts: { 'exposure.seismicDesignCategory': 'C' }, limits: irc, area: '2 [ft_i]2', note: /lessened/ },
    { name: 'wind of just 30 psf', facts: { 'exposure.seismicDesignCategory': 'A', 'exposure.windPressure': '30 psf' }, limits: irc, area: '2.67 [ft_i]2', note: /usual/ },
    { name: 'wind over 30 psf', facts: { 'exposure.windPressure': '1.5 kPa' }, limits: irc, area: '2 [ft_i]2', note: /lessened/ },
    { name: 'nothing known of the place', facts: {}, limits: irc, area: '2.67 [ft_i]2', note: /lessens/ },
    { name: 'category D under the standard', facts: { 'exposure.seismicDesignCategory': 'D' }, limits: tms, area: '2 [ft_i]2', note: /lessened/ },
    { name: 'the standard has no lesser area for wind', facts: { 'exposure.seismicDesignCategory': 'B', 'exposure.windPressure': '35 psf' }, limits: tms, area: '2.67 [ft_i]2', note: /usual/ },
  ])('$name: $area', ({ facts, limits, area, note }) => {
    const found = areaOf(facts, limits)
    if (!found.known) throw new Error(found.missing.join())
    expect(found.value.area).toBe(amount(area))
    expect(found.value.note).toMatch(note)
  })

  test('is not known without a rule', () => {
    expect(areaOf({ 'exposure.seismicDesignCategory': 'B' }, {})).toEqual({ known: false, missing: ['rule tie.area-per-tie', 'rule tie.area-per-anchor'] })
  })
})
