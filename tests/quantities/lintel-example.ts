import { expect } from 'vitest'
import type { QuantityDefinition } from '../../src/quantities/define.ts'
import { lintelArching } from '../../src/quantities/lintel-arching.ts'
import { lintelBearingStress } from '../../src/quantities/lintel-bearing-stress.ts'
import { lintelBendingMoment, lintelBendingStress } from '../../src/quantities/lintel-bending-stress.ts'
import { lintelDeflection, lintelDeflectionLimit } from '../../src/quantities/lintel-deflection.ts'
import { lintelEffectiveSpan } from '../../src/quantities/lintel-effective-span.ts'
import { lintelHorizontalLeg, lintelThickness } from '../../src/quantities/lintel-legs.ts'
import { lintelBrickLoad, lintelLoad, lintelLoadWithoutArching } from '../../src/quantities/lintel-load.ts'
import { lintelReactionLeft, lintelReactionRight, lintelShear } from '../../src/quantities/lintel-reactions.ts'
import { lintelSelfWeight } from '../../src/quantities/lintel-self-weight.ts'
import { amount, type Given } from './inputs.ts'

/** What the later lintel quantities build on. */
export const lintelQuantities: readonly QuantityDefinition[] = [
  lintelEffectiveSpan, lintelArching, lintelLoadWithoutArching, lintelBrickLoad, lintelSelfWeight, lintelLoad,
  lintelReactionLeft, lintelReactionRight, lintelShear, lintelBendingMoment, lintelBendingStress,
  lintelDeflection, lintelDeflectionLimit, lintelBearingStress, lintelHorizontalLeg, lintelThickness,
]

/** A 72 in opening under an angle, with brick that arches; worked by hand in the tests that use it. */
export const arched72 = {
  facts: {
    'opening.width': '72 in',
    'opening.pierWidth': '4 ft',
    'wall.veneer.weight': '40 psf',
    'wall.veneer.bond': 'running',
    'wall.heightAboveHead': '8 ft',
    'wall.movementJointAtJamb': false,
    'wall.loadAbove': false,
    'head.support.kind': 'looseSteelAngle',
    'head.support.section': 'L3-1/2x3-1/2x1/4',
    'head.support.bearing': '4 in',
  },
  limits: { 'lintel.bearing-length': '4 in' },
} satisfies Given

/** The same opening with other facts; null for one that is not known. */
export function arched72With(facts: Readonly<Record<string, unknown>>, rest: Omit<Given, 'facts'> = {}): Given {
  return { ...arched72, ...rest, facts: { ...arched72.facts, ...facts } }
}

/** Compares base units with a text in any unit, to a part of the expected value. */
export function expectNear(value: number, expected: string, relative: number): void {
  expect(Math.abs(value / amount(expected) - 1), `${value / amount(expected)} of ${expected}`).toBeLessThanOrEqual(relative)
}
