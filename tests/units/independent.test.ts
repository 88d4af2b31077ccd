import { unit } from 'mathjs'
import { expect, test } from 'vitest'
import { findUnit } from '../../src/units/dimension.ts'

/**
 * Our factors against those of mathjs, a general-purpose library with a table of its own: code, the same in its words,
 * and our base unit in its words. Areas, volumes and rates are put together by it, not by us.
 */
const pairs: readonly (readonly [code: string, theirs: string, base: string])[] = [
  ['[in_i]', '1 inch', 'nm'], ['[ft_i]', '1 foot', 'nm'], ['[mil_i]', '1 mil', 'nm'], ['um', '1 um', 'nm'], ['m', '1 m', 'nm'],
  ['[in_i]2', '1 inch^2', 'mm^2'], ['[ft_i]2', '1 foot^2', 'mm^2'], ['[in_i]3', '1 inch^3', 'mm^3'], ['cm3', '1 cm^3', 'mm^3'], ['[in_i]4', '1 inch^4', 'mm^4'], ['cm4', '1 cm^4', 'mm^4'],
  ['[lbf_av]/[ft_i]2', '1 lbf/foot^2', 'Pa'], ['kPa', '1 kPa', 'Pa'], ['[psi]', '1 psi', 'Pa'], ['ksi', '1000 psi', 'Pa'], ['MPa', '1 MPa', 'Pa'],
  ['[lbf_av]', '1 lbf', 'N'], ['kip', '1000 lbf', 'N'], ['kN', '1 kN', 'N'],
  ['[lbf_av]/[ft_i]', '1 lbf/foot', 'N/m'], ['[lbf_av].[ft_i]', '1 lbf foot', 'N m'], ['[lbf_av].[in_i]', '1 lbf inch', 'N m'],
  ['[lb_av]/[ft_i]', '1 lbm/foot', 'kg/m'], ['[lb_av]', '1 lbm', 'kg'], ['[mi_i]/h', '1 mile/hour', 'm/s'], ['km/h', '1 km/hour', 'm/s'],
  ['m3', '1 m^3', 'L'], ['[cft_i]', '1 foot^3', 'L'], ['[gal_us]', '1 gallon', 'L'], ['mL', '1 mL', 'L'],
  ['min', '1 minute', 'hour'], ['s', '1 s', 'hour'], ['d', '1 day', 'hour'],
  ['[in_i]/h', '1 inch/hour', 'mm/hour'], ['L/(m2.min)', '1 L/(m^2 minute)', 'mm/hour'], ['[gal_us]/([ft_i]2.h)', '1 gallon/(foot^2 hour)', 'mm/hour'],
  ['[gal_us]/[ft_i]2', '1 gallon/foot^2', 'mm'], ['L/min', '1 L/minute', 'L/hour'], ['mL/min', '1 mL/minute', 'L/hour'], ['[gal_us]/h', '1 gallon/hour', 'L/hour'],
  ['[in_i]2/[ft_i]', '1 inch^2/foot', 'mm^2/m'], ['/[ft_i]2', '1 foot^-2', 'm^-2'],
  ['[degF]', '1 degR', 'K'], ['/[degF]', '1 degR^-1', 'K^-1'], // a degree of difference, which Fahrenheit and Rankine share
]

test.each(pairs)('%s is what mathjs makes of %s, in %s', (code, theirs, base) => {
  const factor = findUnit(code)?.factor ?? NaN
  expect(factor / unit(theirs).toNumber(base)).toBeCloseTo(1, 9)
})
