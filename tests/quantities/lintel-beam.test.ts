import { describe, expect, test } from 'vitest'
import { bendingStressOf, deflectionOf, momentOf, sectionModulusFor } from '../../src/quantities/lintel-beam.ts'
import { metres } from '../../src/units/length.ts'
import { amount } from './inputs.ts'
import { expectNear } from './lintel-example.ts'

const tenFeet = metres(amount('10 ft'))
const steel = amount('29000000 [psi]')

describe('a simple span', () => {
  // An engineers' forum, angle L7x4x3/8 under 5 ft 4 in of brick at 40 psf, 10 ft span
  // (https://eng-tips.com/threads/brick-veneer-angle-lintel-design-limited-veneer-height-above.474516/post-8606928)
  test('carries an even load as the published check has it', () => {
    const load = { triangle: 0, uniform: amount('213 [lbf_av]/[ft_i]') * tenFeet }
    const moment = momentOf(load, tenFeet)
    expectNear(moment, '32000 [lbf_av].[in_i]', 0.02)
    expectNear(sectionModulusFor(moment, amount('22000 [psi]')), '1.45 [in_i]3', 0.02)
    expectNear(deflectionOf(load, tenFeet, { modulus: steel, momentOfInertia: amount('20.5 [in_i]4') }) * 1e9, '0.0817 in', 0.02)
  })

  // UFC 3-310-05A, lintel example: 200 lb triangle and 62 plf of lintel on 4 ft: 257 lb-ft
  test('carries a triangle and its own weight as the published example has it', () => {
    const fourFeet = metres(amount('4 ft'))
    expectNear(momentOf({ triangle: amount('200 lbf'), uniform: amount('248 lbf') }, fourFeet), '257 [lbf_av].[ft_i]', 0.01)
  })

  // Design of Reinforced Masonry Structures, p. 230, example 4.26(a): 1213 plf on 20.67 ft gives 64.78 kip-ft
  test('agrees with the textbook on a long span', () => {
    const span = amount('20.67 ft') / 1e9
    expectNear(momentOf({ triangle: 0, uniform: amount('1213 [lbf_av]/[ft_i]') * span }, span), '64780 [lbf_av].[ft_i]', 0.002)
  })

  // Worked by hand: 1000 N·m on 10 cm³ is 100 MPa
  test('puts stress and section modulus in each other\'s units', () => {
    expect(bendingStressOf(1_000, 10_000)).toBeCloseTo(100e6, 3)
    expect(sectionModulusFor(1_000, 100e6)).toBeCloseTo(10_000, 6)
  })

  // Worked by hand, 1 m and 1 kN on E I = 20 kN·m²: 1/60/20 m and 5/384/20 m
  test('sags under each shape of load', () => {
    const stiffness = { modulus: 200e9, momentOfInertia: 1e5 }
    expect(deflectionOf({ triangle: 1_000, uniform: 0 }, 1, stiffness)).toBeCloseTo(1 / 1_200, 9)
    expect(deflectionOf({ triangle: 0, uniform: 1_000 }, 1, stiffness)).toBeCloseTo(5 / 7_680, 9)
  })
})
