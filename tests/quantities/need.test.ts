import { describe, expect, test } from 'vitest'
import { choiceIs, combined, fact, limit, optional, orElse, parameter, result, together } from '../../src/quantities/need.ts'
import { amount, inputsOf } from './inputs.ts'

describe('one end of a fact', () => {
  const inputs = inputsOf({ facts: { 'head.support.bearing': ['4 in', null] } })

  test('is known by itself', () => {
    expect(fact.end('head.support.bearing', 'left').find(inputs)).toMatchObject({ known: true, value: amount('4 in'), used: [{ from: 'head.support.bearing', text: 'left 4 in' }] })
  })

  test('is missing while only the other one is known', () => {
    expect(fact.end('head.support.bearing', 'right').find(inputs)).toEqual({ known: false, missing: ['head.support.bearing'] })
  })
})

describe('a choice among some', () => {
  const carried = choiceIs('head.support.kind', 'looseSteelAngle', 'shelfAngle')

  test.each([['looseSteelAngle', true], ['masonryArch', false]])('%s: %s', (kind, expected) => {
    expect(carried.find(inputsOf({ facts: { 'head.support.kind': kind } }))).toMatchObject({ known: true, value: expected })
  })

  test('is not known while the fact is not', () => {
    expect(carried.find(inputsOf({}))).toEqual({ known: false, missing: ['head.support.kind'] })
  })
})

describe('several needs as one', () => {
  const area = combined({ width: fact.amount('opening.width'), height: fact.amount('opening.height') }, ({ width, height }) => width * height)

  test('carries inputs and sources along', () => {
    const deflection = combined({ width: fact.amount('opening.width'), divisor: parameter('lintel.deflection-divisor') }, ({ width, divisor }) => width / divisor)
    const found = deflection.find(inputsOf({ facts: { 'opening.width': '600 mm' } }))
    expect(found).toMatchObject({ known: true, value: amount('1 mm'), used: [{ from: 'opening.width' }, { from: 'parameter lintel.deflection-divisor' }] })
    expect(found.known && found.sources).toHaveLength(1)
  })

  test('names everything that is missing, once', () => {
    expect(area.find(inputsOf({}))).toEqual({ known: false, missing: ['opening.width', 'opening.height'] })
    expect(combined({ a: area, b: area }, () => 0).find(inputsOf({}))).toEqual({ known: false, missing: ['opening.width', 'opening.height'] })
  })

  test('says an assumption once', () => {
    const assumed = orElse(fact.amount('opening.width'), limit('lintel.bearing-length'), 'taken')
    const found = combined({ a: assumed, b: assumed }, ({ a, b }) => a + b).find(inputsOf({ limits: { 'lintel.bearing-length': '4 in' } }))
    expect(found).toMatchObject({ known: true, value: amount('8 in'), assumptions: ['taken'] })
  })

  test('passes on why a quantity gave nothing', () => {
    const withheld = { status: 'notDetermined', reason: 'methodDoesNotHold', why: 'because', missing: [] }
    const inputs = { ...inputsOf({}), quantity: () => withheld as never }
    expect(combined({ a: result('lintel.load') }, ({ a }) => a).find(inputs)).toMatchObject({ known: false, missing: [], because: { reason: 'methodDoesNotHold', why: 'because' } })
  })

  test('a list of findings is known when all of them are', () => {
    const inputs = inputsOf({ facts: { 'opening.width': '1 m' } })
    expect(together([fact.amount('opening.width').find(inputs), optional(fact.amount('opening.height')).find(inputs)])).toMatchObject({ known: true, value: [amount('1 m'), undefined] })
    expect(together([fact.amount('opening.width').find(inputs), fact.amount('opening.height').find(inputs)])).toEqual({ known: false, missing: ['opening.height'] })
  })
})
