import { describe, expect, test } from 'vitest'
import { assuming, best, firstKnown, greatest, isKnown, onlyWhere, positive, shownOnce, taken, whether } from '../../src/quantities/choose.ts'
import { choiceIs, combined, fact, foundOnce, limit, orElse } from '../../src/quantities/need.ts'
import { amount, inputsOf } from './inputs.ts'

const upstand = fact.amount('head.flashing.upstand')
const asked = limit('flashing.upstand')

describe('the greatest', () => {
  const need = greatest(asked, upstand)

  test.each([
    { name: 'the rule where the drawing asks less', facts: { 'head.flashing.upstand': '6 in' }, limits: { 'flashing.upstand': '8 in' }, value: '8 in' },
    { name: 'the drawing where it asks more', facts: { 'head.flashing.upstand': '10 in' }, limits: { 'flashing.upstand': '8 in' }, value: '10 in' },
    { name: 'the only one that is known', facts: { 'head.flashing.upstand': '6 in' }, limits: {}, value: '6 in' },
  ])('is $name', ({ facts, limits, value }) => {
    expect(need.find(inputsOf({ facts, limits }))).toMatchObject({ known: true, value: amount(value) })
  })

  test('shows each input once, also those that did not decide', () => {
    const found = greatest(asked, upstand, asked).find(inputsOf({ facts: { 'head.flashing.upstand': '6 in' }, limits: { 'flashing.upstand': '8 in' } }))
    expect(found.known && found.used.map(({ from }) => from)).toEqual(['rule flashing.upstand', 'head.flashing.upstand'])
  })

  test('names everything that would do where nothing is known', () => {
    expect(need.find(inputsOf({}))).toEqual({ known: false, missing: ['rule flashing.upstand', 'head.flashing.upstand'] })
  })
})

describe('the first that is known', () => {
  const need = firstKnown(upstand, asked)

  test('is the first though the second is greater, and nothing is assumed', () => {
    expect(need.find(inputsOf({ facts: { 'head.flashing.upstand': '6 in' }, limits: { 'flashing.upstand': '8 in' } }))).toMatchObject({ value: amount('6 in'), assumptions: [] })
    expect(need.find(inputsOf({ limits: { 'flashing.upstand': '8 in' } }))).toMatchObject({ value: amount('8 in'), assumptions: [] })
  })

  test('misses what the last one lacks', () => {
    expect(need.find(inputsOf({}))).toEqual({ known: false, missing: ['rule flashing.upstand'] })
    expect(need.asks).toEqual(['head.flashing.upstand', 'rule flashing.upstand'])
  })
})

describe('whether', () => {
  const need = whether(choiceIs('sill.kind', 'brickRowlock'), fact.amount('sill.depth'), taken(1))

  test('asks only for the side that counts', () => {
    expect(need.find(inputsOf({ facts: { 'sill.kind': 'stone' } }))).toMatchObject({ value: 1, used: [{ from: 'sill.kind' }] })
    expect(need.find(inputsOf({ facts: { 'sill.kind': 'brickRowlock' } }))).toEqual({ known: false, missing: ['sill.depth'] })
    expect(need.find(inputsOf({ facts: { 'sill.kind': 'brickRowlock', 'sill.depth': '5 in' } }))).toMatchObject({ value: amount('5 in') })
  })

  test('names the condition while it is not known', () => {
    expect(need.find(inputsOf({ facts: { 'sill.depth': '5 in' } }))).toEqual({ known: false, missing: ['sill.kind'] })
  })
})

test('whether something is known is known itself', () => {
  expect(isKnown(upstand).find(inputsOf({}))).toMatchObject({ known: true, value: false })
  expect(isKnown(upstand).find(inputsOf({ facts: { 'head.flashing.upstand': '6 in' } }))).toMatchObject({ known: true, value: true })
})

test('what is assumed is said where there is a value', () => {
  const need = assuming(upstand, 'It was measured dry.')
  expect(need.find(inputsOf({ facts: { 'head.flashing.upstand': '6 in' } }))).toMatchObject({ assumptions: ['It was measured dry.'] })
  expect(need.find(inputsOf({}))).toEqual({ known: false, missing: ['head.flashing.upstand'] })
})

test('parts that go by the same input show it once', () => {
  const twice = combined({ one: assuming(upstand, 'It was measured dry.'), other: assuming(upstand, 'It was measured dry.') }, ({ one, other }) => one + other)
  const found = shownOnce(twice).find(inputsOf({ facts: { 'head.flashing.upstand': '6 in' } }))
  expect(found).toMatchObject({ value: amount('12 in'), used: [{ from: 'head.flashing.upstand' }], assumptions: ['It was measured dry.'] })
  expect(found.known && found.used).toHaveLength(1)
})

test('what is found once is not looked for again, but other inputs have their own', () => {
  let looked = 0
  const need = foundOnce({ asks: upstand.asks, find: (inputs) => { looked += 1; return upstand.find(inputs) } })
  const inputs = inputsOf({ facts: { 'head.flashing.upstand': '6 in' } })
  expect([need.find(inputs), need.find(inputs)]).toMatchObject([{ value: amount('6 in') }, { value: amount('6 in') }])
  expect(looked).toBe(1)
  expect(need.find(inputsOf({}))).toMatchObject({ known: false })
})

test('the best keeps the first of equals', () => {
  const found = best([taken({ of: 'first', size: 1 }), taken({ of: 'second', size: 1 })], (a, b) => a.size > b.size).find(inputsOf({}))
  expect(found).toMatchObject({ value: { of: 'first' } })
})

describe('only where', () => {
  const need = onlyWhere(choiceIs('sill.kind', 'brickRowlock'), fact.amount('sill.depth'))

  test('gives the value, and shows both inputs', () => {
    const found = need.find(inputsOf({ facts: { 'sill.kind': 'brickRowlock', 'sill.depth': '5 in' } }))
    expect(found).toMatchObject({ known: true, value: amount('5 in'), used: [{ from: 'sill.kind' }, { from: 'sill.depth' }] })
  })

  test('is not known where the condition is false, and asks for nothing', () => {
    expect(need.find(inputsOf({ facts: { 'sill.kind': 'stone', 'sill.depth': '5 in' } }))).toEqual({ known: false, missing: [] })
  })

  test('asks for the condition where that is not known', () => {
    expect(need.find(inputsOf({ facts: { 'sill.depth': '5 in' } }))).toEqual({ known: false, missing: ['sill.kind'] })
  })
})

describe('positive', () => {
  test.each([
    { text: '1/4 in', known: true },
    { text: '0 in', known: false },
  ])('$text is known: $known', ({ text, known }) => {
    expect(positive(upstand).find(inputsOf({ facts: { 'head.flashing.upstand': text } })).known).toBe(known)
  })

  test('a rule that asks for more than nothing is named as giving no length', () => {
    expect(positive(asked).find(inputsOf({ limits: { 'flashing.upstand': { text: '0 in', comparator: 'moreThan' } } }))).toEqual({ known: false, missing: ['rule flashing.upstand'] })
  })
})

test('what is taken is said by the one who takes it', () => {
  const found = orElse(upstand, taken(7), 'Seven is taken.').find(inputsOf({}))
  expect(found).toMatchObject({ value: 7, assumptions: ['Seven is taken.'] })
})
