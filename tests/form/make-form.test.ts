import { Ajv2020 } from 'ajv/dist/2020.js'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'yaml'
import { describe, expect, test } from 'vitest'
import { choiceWords } from '../../src/opening/choice-words.ts'
import { nameBasedId } from '../../src/form/name-based-id.ts'
import { everyQuestion } from '../../src/form/question-name.ts'
import { facts } from '../../src/opening/facts.ts'
import { compareHoldPoints, holdPoints, type HoldPoint } from '../../src/opening/hold-points.ts'
import { geometry } from '../../src/opening/parts/geometry.ts'
import { factsIn } from '../../src/evaluation/condition.ts'
import { askedBy } from '../../src/quantities/asked-by.ts'
import { quantities } from '../../src/quantities/index.ts'
import { realCatalog } from '../catalog/real-catalog.ts'
import { city, formFor, published, questionsIn, sectionsIn, type Where } from './forms.ts'

const kinds = geometry.shape.kind.options
const points = holdPoints.map(({ id }) => id)
const places: readonly Where[] = [
  city, published, { jurisdiction: 'us-xb', publication: 'ibc', asOf: '2026-03-01' }, { jurisdiction: 'us-oh-norton', asOf: '2026-03-01' }, { jurisdiction: 'us-xa', asOf: '2015-01-01' },
]
const catalog = await realCatalog()
const realPlaces: readonly Where[] = catalog.amendments.flatMap(({ jurisdiction, amends, effectiveFrom }) => [{ jurisdiction, publication: amends.publication, asOf: effectiveFrom }])
const root = join(import.meta.dirname, '../..')
const standard = 'https://json-schema.org/draft/2020-12/schema'

describe('every form', () => {
  // The metaschema as published by the JSON Schema organization, draft 2020-12, which the validator carries
  const validator = new Ajv2020({ strict: false })

  test.each(points)('at %s is a JSON Schema by the published metaschema, for every kind of opening in several places', { timeout: 120_000 }, (holdPoint) => {
    for (const where of places) for (const kind of kinds) {
      const form = formFor(holdPoint, where, { opening: { kind } })
      expect(form.$schema).toBe(standard)
      expect(validator.validateSchema(form, false), JSON.stringify(validator.errors)).toBe(true)
    }
  })

  test.each(points)('at %s compiles, takes an empty answer, and has no keyword but those of the standard and its own', (holdPoint) => {
    const strict = new Ajv2020({ strict: true, allowUnionTypes: false, addUsedSchema: false })
    const form = formFor(holdPoint)
    strict.addVocabulary([...annotationsIn(form)])
    const validate = strict.compile(form)
    expect(validate({})).toBe(true)
    expect(validate({ note: 'Scaffold in the way.' })).toBe(true)
    expect(JSON.stringify(form)).not.toMatch(/"(default|required)":\[/)
    expect(validate({ lastChance: { no_such_question: 'yes' } })).toBe(false)
  })

  test('has an id that changes with what it says, and with nothing else', () => {
    const ids = points.flatMap((holdPoint) => places.map((where) => formFor(holdPoint, where).$id))
    expect(new Set(ids).size).toBe(ids.length)
    expect(points.flatMap((holdPoint) => places.map((where) => formFor(holdPoint, where).$id))).toEqual(ids)
    for (const id of ids) expect(id).toMatch(/^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/)
  })

  test('carries the notice, how to leave out, and the cautions of what it asks', () => {
    const { description } = formFor('lintelSet')
    for (const said of [/authority having jurisdiction prevail/, /licensed professional/, /no answer means not known, never no/, /Shore before you cut/, /Guard against falls/, /Silica dust/, /3 7\/8 in/]) expect(description).toMatch(said)
  })
})

describe('the questions', () => {
  const forms = points.flatMap((holdPoint) => [
    ...places.map((where) => ({ holdPoint, form: formFor(holdPoint, where) })),
    ...kinds.map((kind) => ({ holdPoint, form: formFor(holdPoint, city, { opening: { kind } }) })),
  ])

  // Wherever and whenever an amendment came into force, beside the published texts
  const everywhere = [...realPlaces, published, { edition: 'irc-2012', asOf: '2026-03-01' }, { edition: 'ibc-2021', asOf: '2026-03-01' }]
  const asked = new Set(points.flatMap((point) => everywhere.flatMap((where) => questionsIn(formFor(point, where)).map(([, question]) => question['x-fact']))))
  const unasked = [...facts.keys()].filter((fact) => !asked.has(fact))

  test('are asked of every fact at some hold point, or there is a reason why not', () => {
    const listed = Object.keys(parse(readFileSync(join(root, 'tests/facts-without-a-rule.yaml'), 'utf8')) as object)
    expect(asked.size).toBeGreaterThan(100)
    expect(unasked.filter((fact) => !listed.includes(fact) && !isForEstimators(fact)).toSorted()).toEqual([])
    expect(listed.filter((fact) => asked.has(fact))).toEqual([])
  })

  test('leave out only what no rule of any edition asks for', () => {
    const wanted = new Set([...catalog.rules.values()].flatMap((rule) => [...('fact' in rule.check ? [rule.check.fact] : []), ...(rule.appliesWhen ? factsIn(rule.appliesWhen) : [])]))
    expect(unasked.filter((fact) => wanted.has(fact))).toEqual([])
  })

  test('name a reason each, with its title, force, source and place in it', () => {
    const asked = forms.flatMap(({ form }) => questionsIn(form).map(([name, question]) => ({ form, name, question })))
    for (const { form, name, question: { 'x-why': why, 'x-computes': computes, description } } of asked) {
      expect(why.length + computes.length, name).toBeGreaterThan(0)
      expect(description).toMatch(/Why: /)
      for (const rule of why) {
        const told = form['x-rules'][rule]
        expect(told, rule).toMatchObject({ force: expect.stringMatching(/^(mandatory|recommended|informative)$/) as string })
        for (const words of [told?.title, told?.source, told?.locator, told?.required]) expect(words, rule).not.toBe('')
      }
      for (const quantity of computes) expect(form['x-quantities'][quantity]?.title).toBeTruthy()
    }
  })

  test('are only of what can be seen: from its hold point on, until it is hidden', () => {
    for (const { holdPoint, form } of forms) for (const [name, question] of questionsIn(form)) {
      const { from, hiddenBy } = facts.get(question['x-fact']) ?? {}
      expect(from && compareHoldPoints(from, holdPoint) <= 0, `${name} at ${holdPoint}`).toBe(true)
      expect(hiddenBy === undefined || compareHoldPoints(holdPoint, hiddenBy) < 0, `${name} at ${holdPoint}`).toBe(true)
    }
  })

  test('stand in the order that they state, last chances first and mandatory ones first in each section', () => {
    for (const { holdPoint, form } of forms) {
      const sections = Object.entries(form.properties)
      expect(sections.map(([, section]) => section['x-order'])).toEqual(sections.map((_, index) => index))
      expect(sections.map(([name]) => name)).toEqual(['lastChance', 'now', 'overdue', 'note'].filter((name) => Object.hasOwn(form.properties, name)))
      const hidden = sections.flatMap(([name, { properties = {} }]) => (name === 'lastChance' ? Object.values(properties) : [])).map((question) => question['x-hiddenBy'])
      expect(new Set(hidden).size).toBeLessThanOrEqual(1)
      for (const [, { properties = {} }] of sections) {
        const questions = Object.values(properties)
        expect(questions.map((question) => question['x-order'])).toEqual(questions.map((_, index) => index))
        const mandatory = questions.map((question) => question['x-mandatory'])
        expect(mandatory, holdPoint).toEqual(mandatory.toSorted((a, b) => Number(b) - Number(a)))
      }
    }
  })

  test('about two ends are two, left and right, seen from outside', () => {
    const asked = Object.fromEntries(questionsIn(formFor('lintelSet')))
    expect(asked['head_support_bearing_left']).toMatchObject({ title: 'Bearing on the masonry, left', 'x-fact': 'head.support.bearing', 'x-member': 'left', 'x-hiddenBy': 'headFlashing' })
    expect(asked['head_support_bearing_right']?.description).toMatch(/^Right, seen from outside\. /)
    expect(asked).not.toHaveProperty('head_support_bearing')
  })

  test('offer choices in plain words, and yes or no as words, so that an untouched box is no answer', () => {
    const asked = Object.fromEntries(questionsIn(formFor('headFlashing')))
    expect(asked['head_flashing_present']).toMatchObject({ type: 'string', enum: ['Yes', 'No'], 'x-values': [true, false] })
    expect(asked['head_support_kind']?.enum?.[0]).toBe('Loose steel angle')
    expect(asked['head_support_kind']?.['x-values']?.[0]).toBe('looseSteelAngle')
    // A library may take the constant of an only or a first option for a default
    for (const { form } of forms) expect(JSON.stringify(form)).not.toMatch(/"(const|oneOf|anyOf|default)":/)
    const words = [...facts.values()].flatMap(({ choices = [] }) => choices.map((choice) => [choice, choiceWords(choice)] as const))
    for (const [choice, title] of words) expect(title, choice).toMatch(/^[A-Z0-9][A-Za-z0-9 ,./()-]*$/)
    for (const { choices = [] } of facts.values()) expect(new Set(choices.map(choiceWords)).size).toBe(choices.length)
    for (const { form } of forms) for (const [, { description }] of questionsIn(form)) expect(description).not.toMatch(/\b(true|false)\b/i)
  })

  test('have names without a point, one for each fact and end', () => {
    expect([...everyQuestion.keys()].filter((name) => !/^[A-Za-z0-9_]+$/.test(name))).toEqual([])
    expect(everyQuestion.size).toBe([...facts.values()].reduce((sum, { perEnd }) => sum + (perEnd ? 2 : 1), 0))
  })
})

describe('what is known of an opening', () => {
  const asks = (holdPoint: HoldPoint, known: object) => questionsIn(formFor(holdPoint, city, known)).map(([name]) => name)

  test('rules out what does not apply', () => {
    const plain = asks('lintelSet', { opening: { kind: 'window' } })
    const arch = asks('lintelSet', { opening: { kind: 'window' }, head: { support: { kind: 'masonryArch' } } })
    expect(plain).toContain('head_support_bearing_left')
    expect(arch).not.toContain('head_support_bearing_left')
    expect(asks('sillFlashing', { opening: { kind: 'door' }, sill: { kind: 'none' } }).length).toBeLessThan(asks('sillFlashing', { opening: { kind: 'window' }, sill: { kind: 'brickRowlock' } }).length)
  })

  test('comes as what was drawn and what was read last, and never as an answer that is already there', () => {
    const known = new Map([
      ['head_support_bearing_left', { drawn: '6 in', lastRead: { value: '5 1/2 in', at: '2026-03-02T09:00:00Z', holdPoint: 'lintelSet', contradicted: false } }],
      ['head_support_bearing_right', { drawn: '6 in', lastRead: null }],
    ] as const)
    const form = formFor('lintelSet', city, { opening: { kind: 'window' } }, { known })
    const asked = Object.fromEntries(questionsIn(form))
    expect(asked['head_support_bearing_left']).toMatchObject({ 'x-drawn': '6 in', 'x-lastRead': { value: '5 1/2 in' } })
    expect(asked['head_support_bearing_right']).not.toHaveProperty('x-lastRead')
    expect(JSON.stringify(form)).not.toContain('"default"')
    const { lastChance = [] } = sectionsIn(form)
    expect(lastChance.indexOf('head_support_bearing_right')).toBeLessThan(lastChance.indexOf('head_support_bearing_left'))
  })

  test('on record asks again for what was left open as long as it can be seen, and tells what is covered', () => {
    const form = formFor('wallAbove', city, { opening: { kind: 'window' } }, { known: new Map() })
    expect(sectionsIn(form)['overdue']).toContain('wall_veneer_bond')
    expect(form['x-covered'].map(({ question }) => question)).toContain('head_flashing_present')
    expect(form.description).toMatch(/\d+ things that matter were never read and are hidden by now/)
    expect(sectionsIn(formFor('wallAbove'))['overdue']).toBeUndefined()
  })

  test('on record asks again where two readings contradict each other', () => {
    const read = (contradicted: boolean) => new Map([['head_support_kind', { drawn: null, lastRead: { value: 'looseSteelAngle', at: '2026-03-02T09:00:00Z', holdPoint: 'detailReview', contradicted } }]] as const)
    const asked = (contradicted: boolean) => questionsIn(formFor('headFlashing', city, { opening: { kind: 'window' } }, { known: read(contradicted) })).map(([name]) => name)
    expect(asked(false)).not.toContain('head_support_kind')
    expect(asked(true)).toContain('head_support_kind')
  })
})

describe('the place', () => {
  test('an amendment changes the limit that a question is asked for, and tells its chain', () => {
    const told = (where: Where) => formFor('lintelSet', where)['x-rules']['lintel.bearing-length']
    expect(told(published)).toMatchObject({ required: 'at least 4 in (102 mm)', chain: [] })
    expect(told(city)?.required).toMatch(/^at least 6 in/)
    expect(told(city)?.chain.join(' ')).toMatch(/adoption us-xa\/irc-2021 substitution us-xa-101\/ord-2025-31#m1: /)
  })

  test('an amendment changes which questions are mandatory, and which are asked', () => {
    const asked = (where: Where) => points.flatMap((point) => questionsIn(formFor(point, where)).map(([name, question]) => `${point} ${name} ${question['x-mandatory']}`))
    expect(asked(city)).not.toEqual(asked({ jurisdiction: 'us-xa', asOf: '2026-03-01' }))
    const norton = questionsIn(formFor('lintelSet', { jurisdiction: 'us-oh-norton', asOf: '2026-03-01' })).flatMap(([, question]) => question['x-why'])
    expect(new Set(norton)).not.toEqual(new Set(questionsIn(formFor('lintelSet', published)).flatMap(([, question]) => question['x-why'])))
  })
})

describe('the unit that bare numbers take', () => {
  const bearing = (lengthUnit?: 'in' | 'mm') => new RegExp(formFor('lintelSet', city, undefined, { lengthUnit }).$defs['length']?.pattern ?? '', 'u')

  test('lets a length stand without one, and is said', () => {
    expect(bearing().test('3 7/8')).toBe(false)
    expect(bearing('in').test('3 7/8')).toBe(true)
    expect(formFor('lintelSet', city, undefined, { lengthUnit: 'mm' }).description).toMatch(/A number alone is in millimeters/)
  })
})

test('an id made from a name is the one of RFC 9562, appendix B.2', () => {
  expect(nameBasedId('6ba7b810-9dad-11d1-80b4-00c04fd430c8', 'www.example.com')).toBe('5c146b14-3c52-8afd-938a-375d0df1fbf6')
})

/** Only quantities ask for it that are computed for whoever described the opening for them. */
function isForEstimators(fact: string): boolean {
  const asking = quantities.filter((quantity) => askedBy(quantity).has(fact))
  return asking.length > 0 && asking.every(({ onlyWhenKnown, onRequest }) => onlyWhenKnown || onRequest)
}

/** Every keyword of the form that is not of the standard: all begin with x-. */
function annotationsIn(value: unknown): ReadonlySet<string> {
  if (typeof value !== 'object' || value === null) return new Set()
  return new Set(Object.entries(value).flatMap(([key, inner]) => [...(key.startsWith('x-') ? [key] : []), ...annotationsIn(inner)]))
}
