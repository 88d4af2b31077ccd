import { describe, expect, test } from 'vitest'
import { z } from 'zod'
import type { FactDefinition } from '../../src/opening/fact.ts'
import { facts } from '../../src/opening/facts.ts'
import { compareHoldPoints, holdPoints } from '../../src/opening/hold-points.ts'
import { openingSchema } from '../../src/opening/schema.ts'
import { readQuantity } from '../../src/units/quantity.ts'
import { described, problemsIn, withFact } from './openings.ts'

const all = [...facts]
const where = (predicate: (definition: FactDefinition) => boolean) => all.filter(([, definition]) => predicate(definition)).map(([path]) => path)

describe('every fact', () => {
  test('has a path in words of the trade', () => {
    expect(all.length).toBeGreaterThan(120)
    expect(all.map(([path]) => path).filter((path) => !/^[a-z]\w*(\.[a-z]\w*){1,3}$/i.test(path))).toEqual([])
  })

  test('has a title of its own and a sentence of help', () => {
    expect(where(({ title, help }) => title.trim() === '' || !/[.)]$/.test(help))).toEqual([])
    expect(new Set(all.map(([, { title }]) => title)).size).toBe(all.length)
  })

  test('is worded in US English', () => {
    expect(where(({ title, help }) => /\b(centre|colour|grey|storey|(milli|centi)?metres?|mould|fibre|aluminium)\b/i.test(`${title} ${help}`))).toEqual([])
  })

  test('is seen before it is hidden', () => {
    const known = new Set<string>(holdPoints.map(({ id }) => id))
    expect(where(({ from, hiddenBy }) => !known.has(from) || (hiddenBy !== undefined && !known.has(hiddenBy)))).toEqual([])
    expect(where(({ from, hiddenBy }) => hiddenBy !== undefined && compareHoldPoints(hiddenBy, from) <= 0)).toEqual([])
  })

  test('shows its title and help in the JSON Schema of an opening', () => {
    const text = JSON.stringify(z.toJSONSchema(openingSchema, { io: 'input', unrepresentable: 'any' }))
    expect(all.filter(([, { title, help }]) => !text.includes(JSON.stringify(title)) || !text.includes(JSON.stringify(help))).map(([path]) => path)).toEqual([])
  })
})

describe('believable bounds', () => {
  const bounded = all.filter(([, { kind }]) => kind === 'quantity')

  test('are there for every amount, in its own dimension, the least below the greatest', () => {
    const bad = bounded.filter(([, { dimension, between = ['', ''] }]) => {
      const [least, greatest] = between.map(readQuantity)
      return !least || !greatest || least.dimension !== dimension || greatest.dimension !== dimension || least.amount >= greatest.amount
    })
    expect(bad).toEqual([])
  })

  test.each(bounded.map(([path, { between = ['', ''], dimension }]) => ({ path, least: between[0], greatest: between[1], dimension })))('$path from $least to $greatest', ({ path, least, greatest, dimension }) => {
    const wire = (text: string) => (dimension === 'count' ? Number(text) : text)
    expect([least, greatest].flatMap((text) => problemsIn(withFact(path, wire(text))))).toEqual([])
    const beyond = (text: string, step: number) => (dimension === 'count' ? Number(text) + step : text.replace(/^-?[\d.]+/, (number) => String(Number(number) + step)))
    const pointer = `/${path.replaceAll('.', '/')}`
    expect(problemsIn(withFact(path, beyond(greatest, 1)))).toEqual([`notBelievable ${pointer}`])
    expect(problemsIn(withFact(path, beyond(least, -1)))).toEqual([`${dimension === 'count' && least === '0' ? 'outOfRange' : 'notBelievable'} ${pointer}`])
  })
})

describe('choices', () => {
  const chosen = all.flatMap(([path, { choices = [] }]) => choices.map((choice) => ({ path, choice })))

  test('are named once each', () => {
    expect(where(({ kind, choices = [] }) => (kind === 'choice') !== choices.length > 1 || new Set(choices).size !== choices.length)).toEqual([])
  })

  test('are all accepted', () => {
    for (const { path, choice } of chosen) expect(described(withFact(path, choice)).facts.get(path)?.[0]?.value).toBe(choice)
  })
})

describe('ends', () => {
  const wireOf = ({ kind, choices, between }: FactDefinition) => (kind === 'boolean' ? true : (choices?.[0] ?? between?.[1]))

  test('only facts with ends take a list', () => {
    for (const [path, definition] of all.filter(([, { kind, dimension }]) => kind !== 'section' && dimension !== 'count')) {
      const wire = wireOf(definition)
      expect([path, problemsIn(withFact(path, [wire, wire])).length]).toEqual([path, definition.perEnd ? 0 : 1])
      expect([path, described(withFact(path, wire)).facts.get(path)?.length]).toEqual([path, definition.perEnd ? 2 : 1])
    }
  })
})

test('splices of the head flashing are counted while the pan is in sight', () => {
  expect(facts.get('head.flashing.splices')).toEqual({
    title: 'Splices in the head flashing', help: '0 when it is one piece.', kind: 'quantity', dimension: 'count', perEnd: false, between: ['0', '40'], from: 'headFlashing', hiddenBy: 'headFirstCourse',
  })
})
