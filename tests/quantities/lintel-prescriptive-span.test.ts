import { describe, expect, test } from 'vitest'
import { lintelPrescriptiveSpan } from '../../src/quantities/lintel-prescriptive-span.ts'
import { feetInchesText } from '../../src/units/quantity-text.ts'
import { evaluate, inputsOf, valueOf } from './inputs.ts'
import { arched72With, lintelQuantities } from './lintel-example.ts'

/** Rows as printed: the angle, then feet and inches under less than one, one and two stories of brick. */
type Rows = readonly (readonly [section: string, ...spans: readonly [string, string, string]])[]

// International Residential Code, Table R703.8.3.1 (R703.7.3.1 in 2012), from memory
const residentialCode: Rows = [
  ['L3x3x1/4', '6-0', '4-6', '3-0'], ['L4x3x1/4', '8-0', '6-0', '4-6'], ['L5x3-1/2x5/16', '10-0', '8-0', '6-0'], ['L6x3-1/2x5/16', '14-0', '9-6', '7-0'], ['2L6x3-1/2x5/16', '20-0', '12-0', '9-6'],
]

// CABO One and Two Family Dwelling Code, as printed in Masonry and Concrete (McGraw-Hill), p. 265, fig. 7-14
const codeBefore: Rows = [
  ['L3x3x1/4', '6-0', '3-6', '3-0'], ['L4x3x1/4', '8-0', '5-0', '3-0'], ['L6x3-1/2x1/4', '14-0', '8-0', '3-6'], ['2L6x3-1/2x1/4', '20-0', '11-0', '5-0'],
]

const at = (section: string, stories: number) => arched72With({ 'head.support.section': section, 'wall.storiesAbove': stories })
const printed = (nanometres: number) => feetInchesText(nanometres).replace(/'|"/g, '')

describe('widest opening by the span table', () => {
  test.each(residentialCode)('%s: %s, %s, %s', (section, ...spans) => {
    expect([0, 1, 2].map((stories) => printed(valueOf(evaluate(lintelPrescriptiveSpan, at(section, stories)))))).toEqual(spans)
  })

  test.each(codeBefore)('by the table before it, %s: %s, %s, %s', (section, ...spans) => {
    const before = inputsOf({}).table('lintel.angle-spans-cabo')?.table ?? null
    expect([0, 1, 2].map((stories) => printed(valueOf(evaluate(lintelPrescriptiveSpan, { ...at(section, stories), tables: { 'lintel.angle-spans': before } }))))).toEqual(spans)
  })

  test('says of which angle and how much brick', () => {
    expect(evaluate(lintelPrescriptiveSpan, at('L4x3x1/4', 1)).steps).toEqual([`L4x3x1/4 under 1 story of brick: 6'-0"`])
  })

  test.each([{ section: 'L4x4x1/4', stories: 1 }, { section: 'L4x3x1/4', stories: 3 }])('$section under $stories stories is not in the table', ({ section, stories }) => {
    const result = evaluate(lintelPrescriptiveSpan, at(section, stories))
    expect(result).toMatchObject({ status: 'notDetermined', reason: 'outsidePrescriptive', why: expect.stringContaining(`no row for ${section} under ${stories} stor`) as string })
  })

  test('a span that stands in the rule goes before the table', () => {
    const given = { ...at('L4x3x1/4', 1), limits: { 'lintel.prescriptive-span': { text: '5 ft', comparator: 'notMoreThan' as const } } }
    expect(evaluate(lintelPrescriptiveSpan, given).text).toBe('60 in')
  })

  test('a load on the brick takes the opening out of the table', () => {
    const given = { ...at('L4x3x1/4', 1), facts: { ...at('L4x3x1/4', 1).facts, 'wall.loadAbove': true, 'wall.imposedLoad': '100 lbf/ft', 'wall.pointLoad': '0 lbf' } }
    expect(evaluate(lintelPrescriptiveSpan, given, lintelQuantities)).toMatchObject({ reason: 'outsidePrescriptive', why: expect.stringContaining('for brick alone') as string })
    expect(evaluate(lintelPrescriptiveSpan, { ...given, facts: { ...given.facts, 'wall.imposedLoad': null, 'wall.pointLoad': null } })).toMatchObject({ reason: 'outsidePrescriptive' })
  })

  test('asks for the angle and the stories', () => {
    expect(evaluate(lintelPrescriptiveSpan, arched72With({ 'head.support.section': null })).missing).toEqual(['head.support.section', 'wall.storiesAbove'])
  })
})
