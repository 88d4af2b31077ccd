import { describe, expect, test } from 'vitest'
import { baseUnits, findUnit } from '../../src/units/dimension.ts'

/** One of the unit in the SI unit that the table prints, to the seven figures it prints. */
function inSi(code: string, basePerSi: number): number {
  const factor = findUnit(code)?.factor ?? NaN
  return Number((factor / basePerSi).toPrecision(7))
}

describe('factors of NIST SP 811 (2008), appendix B.8', () => {
  test.each([
    { code: '[in_i]', si: 'm', published: 2.54e-2, basePerSi: 1e9 }, // inch, exact
    { code: '[ft_i]', si: 'm', published: 3.048e-1, basePerSi: 1e9 }, // foot, exact
    { code: '[mil_i]', si: 'm', published: 2.54e-5, basePerSi: 1e9 }, // mil (0.001 in), exact
    { code: '[in_i]2', si: 'm2', published: 6.4516e-4, basePerSi: 1e6 }, // square inch, exact
    { code: '[ft_i]2', si: 'm2', published: 9.290304e-2, basePerSi: 1e6 }, // square foot, exact
    { code: '[in_i]3', si: 'm3', published: 1.638706e-5, basePerSi: 1e9 }, // cubic inch
    { code: '[in_i]4', si: 'm4', published: 4.162314e-7, basePerSi: 1e12 }, // inch to the fourth power
    { code: '[lbf_av]/[ft_i]2', si: 'Pa', published: 4.788026e1, basePerSi: 1 }, // pound-force per square foot
    { code: '[psi]', si: 'Pa', published: 6.894757e3, basePerSi: 1 }, // pound-force per square inch
    { code: '[lbf_av]', si: 'N', published: 4.448222, basePerSi: 1 }, // pound-force
    { code: '[lbf_av]/[ft_i]', si: 'N/m', published: 1.45939e1, basePerSi: 1 }, // pound-force per foot
    { code: '[lbf_av].[ft_i]', si: 'N.m', published: 1.355818, basePerSi: 1 }, // pound-force foot
    { code: '[lbf_av].[in_i]', si: 'N.m', published: 1.129848e-1, basePerSi: 1 }, // pound-force inch
    { code: '[lb_av]/[ft_i]', si: 'kg/m', published: 1.488164, basePerSi: 1 }, // pound per foot
    { code: '[mi_i]/h', si: 'm/s', published: 4.4704e-1, basePerSi: 1 }, // mile per hour, exact
  ])('$code is $published $si', ({ code, published, basePerSi }) => expect(inSi(code, basePerSi)).toBe(published))
})

describe('what the trade writes', () => {
  test.each([
    ['"', '[in_i]'], ['in.', '[in_i]'], ['IN', '[in_i]'], ["'", '[ft_i]'], ['FT', '[ft_i]'], ['mils', '[mil_i]'], ['MM', 'mm'],
    ['psf', '[lbf_av]/[ft_i]2'], ['PSF', '[lbf_av]/[ft_i]2'], ['lb/ft2', '[lbf_av]/[ft_i]2'], ['psi', '[psi]'], ['mph', '[mi_i]/h'],
    ['sq ft', '[ft_i]2'], ['SQ. FT.', '[ft_i]2'], ['ft²', '[ft_i]2'], ['in³', '[in_i]3'], ['in⁴', '[in_i]4'], ['m²', 'm2'], ['kN·m', 'kN.m'], ['°', 'deg'], ['º', 'deg'],
  ])('%s is %s', (written, code) => {
    expect(findUnit(written)).toBeDefined()
    expect(findUnit(written)).toBe(findUnit(code))
  })

  test('a mass per length is no load, and both are told apart', () => {
    expect(findUnit('lb/ft')?.dimension).toBe('linearMass')
    expect(findUnit('lbf/ft')?.dimension).toBe('lineLoad')
  })

  test.each(['', 'ga', 'Mm', 'mPa', 'MPA', 'kpa', 'toString', 'constructor', '__proto__', 'hasOwnProperty', 'IN2 ', 'oc'])('%j is no unit', (code) => expect(findUnit(code)).toBeUndefined())

  test('each base unit is worth one of itself', () => {
    for (const code of new Set(Object.values(baseUnits))) expect([code, findUnit(code)?.factor]).toEqual([code, 1])
  })
})
