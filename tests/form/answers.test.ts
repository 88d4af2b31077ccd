import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { choiceWords } from '../../src/opening/choice-words.ts'
import { everyQuestion, questionName, type Asked } from '../../src/form/question-name.ts'
import { mostAnswers, readAnswers } from '../../src/form/read-answers.ts'
import { valueSchema } from '../../src/form/value-schema.ts'
import { facts } from '../../src/opening/facts.ts'
import { observationProblems } from '../../src/record/observed.ts'
import { believable } from '../evaluation/any-opening.ts'
import { tradeText } from '../units/spellings.ts'

const validator = new Ajv2020({ strict: false })
const compiled = new Map<string, ValidateFunction>()

/** What a form lets be answered to a question. */
function takenByForm(fact: string, value: unknown): boolean {
  const definition = facts.get(fact)
  if (!definition) throw new Error(`there is no fact ${fact}`)
  const { schema, definitions } = valueSchema(definition, undefined)
  const validate = compiled.get(fact) ?? validator.compile({ ...schema, $defs: definitions })
  compiled.set(fact, validate)
  return validate(value)
}

/** What the service says of an answer, as it takes filled forms: no problem, or the codes of all. */
function refusalsOf(asked: Asked, value: unknown): readonly string[] {
  const [answer] = readAnswers({ now: { [questionName(asked)]: value } })?.answers ?? []
  if (!answer) return ['blank']
  if ('problems' in answer) return answer.problems.map(({ code }) => code)
  const { fact, member } = answer
  return observationProblems({ fact, ...(member ? { member } : {}), value: answer.value as never, method: 'examine', holdPoint: 'handover' }).map(({ code }) => code)
}

/** How large an amount may be is checked when it is read: a pattern of a text cannot compare. */
const ofAmount = ['notBelievable', 'outOfRange']
const questions = [...everyQuestion].map(([name, asked]) => [name, asked] as const)
/** A value of a description in the words of a form. */
function asForms(fact: string, value: unknown): unknown {
  if (typeof value === 'boolean') return value ? 'Yes' : 'No'
  return facts.get(fact)?.kind === 'choice' ? choiceWords(String(value)) : value
}

/** Values of a description, which the service takes beside the words of the form. */
function isCode(fact: string, value: unknown): boolean {
  const { kind, choices = [] } = facts.get(fact) ?? {}
  return kind === 'boolean' ? typeof value === 'boolean' || /^(yes|no)$/i.test(String(value)) : choices.includes(String(value))
}

describe('a form and the service take the same answers', () => {
  test.each(questions)('%s: what is believable is taken by both', (_, asked) => {
    fc.assert(fc.property(believable(asked.fact), (value) => {
      const answer = asForms(asked.fact, value)
      expect([refusalsOf(asked, answer), takenByForm(asked.fact, answer)], JSON.stringify(answer)).toEqual([[], true])
    }), { numRuns: 40 })
  })

  const anything = fc.oneof(tradeText, fc.constantFrom('Yes', 'No', 'yes', 'looseSteelAngle', 'Loose steel angle', 'Window', 'None', 'none', 'window', '3 7/8 in', '98 mm', '15 deg', '3:12', '40 psf', '25 %', '0.25', '-1/2 in', '115 mph', '3', 'maybe', '3 lb', 'L5x3-1/2x5/16'), fc.integer(), fc.double(), fc.boolean(), fc.constant([]), fc.constant({}))

  test.each(questions.filter(([, { fact }]) => facts.get(fact)?.kind !== 'section'))('%s: whatever the form takes, the service takes, but for its size', (_, asked) => {
    fc.assert(fc.property(anything, (value) => {
      if (value !== '' && takenByForm(asked.fact, value)) expect(refusalsOf(asked, value).filter((code) => !ofAmount.includes(code)), JSON.stringify(value)).toEqual([])
    }), { numRuns: 150 })
  })

  test.each(questions.filter(([, { fact }]) => facts.get(fact)?.kind === 'choice' || facts.get(fact)?.kind === 'boolean' || facts.get(fact)?.dimension === 'count'))('%s: whatever the form refuses, the service refuses', (_, asked) => {
    fc.assert(fc.property(anything.filter((value) => value !== '' && (takenByForm(asked.fact, value) || !isCode(asked.fact, value))), (value) => {
      expect(refusalsOf(asked, value).length === 0, JSON.stringify(value)).toBe(takenByForm(asked.fact, value))
    }), { numRuns: 150 })
  })
})

describe('a filled form', () => {
  const read = (filled: Readonly<Record<string, unknown>>) => readAnswers(filled) ?? { note: null, answers: [] }

  test('has no more answers than a form could ask', () => {
    const many = (count: number) => ({ now: Object.fromEntries(Array.from({ length: count }, (_, index) => [`question_${index}`, 'Yes'])) })
    expect(readAnswers(many(mostAnswers))?.answers).toHaveLength(mostAnswers)
    expect(readAnswers(many(mostAnswers + 1))).toBeUndefined()
    expect(everyQuestion.size).toBeLessThan(mostAnswers)
  })

  test('is read question by question, in sections or without them, and what is blank is no answer', () => {
    const filled = { lastChance: { head_support_bearing_left: '6 in', head_support_bearing_right: '', head_support_longLeg: null }, now: {}, head_flashing_present: 'no', note: '' }
    expect(readAnswers(filled)).toEqual({
      note: null,
      answers: [
        { fact: 'head.support.bearing', member: 'left', question: 'head_support_bearing_left', pointer: '/lastChance/head_support_bearing_left', value: '6 in' },
        { fact: 'head.flashing.present', member: null, question: 'head_flashing_present', pointer: '/head_flashing_present', value: false },
      ],
    })
  })

  test('tells of a question that there is not, of one that is answered twice, and of an answer that is neither yes nor no', () => {
    const { answers } = read({ now: { head_suport_bearing_left: '6 in', head_flashing_present: 'maybe', wall_airSpace: '1 in' }, overdue: { wall_airSpace: '2 in' } })
    expect(answers.map((one) => ('problems' in one ? one.problems.map(({ code, pointer, detail }) => `${code} ${pointer} ${detail}`) : one.value))).toEqual([
      ['unknownKey /now/head_suport_bearing_left "head_suport_bearing_left" is not a question of any form. Did you mean "head_support_bearing_left"?'],
      ['notAllowed /now/head_flashing_present must be "Yes" or "No"; left out where it is not known'],
      '1 in',
      ['saidTwice /overdue/wall_airSpace is answered in two sections of this form; the first is taken'],
    ])
  })

  test('may give a length with what the tape can tell', () => {
    expect(read({ wall_airSpace: { value: 25, unit: 'mm', resolution: 1 } }).answers).toMatchObject([{ fact: 'wall.airSpace', value: { value: 25, unit: 'mm' } }])
  })
})
