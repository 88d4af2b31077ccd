import { z } from 'zod'
import { nameBasedId } from '../form/name-based-id.ts'
import { everyQuestion } from '../form/question-name.ts'
import { mostAnswers, readAnswers, type GivenAnswer, type WrongAnswer } from '../form/read-answers.ts'
import { holdPointId } from '../opening/hold-points.ts'
import type { Problem } from '../opening/problem.ts'
import { entryInput, observationMethod, openingId } from '../record/entry.ts'
import { defineRecordOperation, failure, type Answer } from './operation.ts'
import { postEntries } from './post-entries.ts'
import { projectFor, projectId } from './projects.ts'

const text = z.string()
const { at, by, note: noteInput } = entryInput.shape

const answers = z
  .record(z.string(), z.unknown(), { error: 'an object with the answers by question' })
  .meta({ id: 'FormAnswers', description: 'What the form library made: the answers by question, in the sections of the form or without them. Choices in the words of the form; what is left out, null or empty is not known.' })

const input = z
  .strictObject({
    project: projectId,
    opening: openingId,
    id: entryInput.shape.id.meta({ description: 'Of this filling of the form, made by the client. The id of every answer follows from it, so that the same form sent twice is one.' }),
    at: at.meta({ description: 'When the form was filled, by the clock of the device.' }),
    by,
    holdPoint: holdPointId.meta({ description: 'Where the work stood.' }),
    method: observationMethod,
    lengthUnit: z.enum(['in', 'mm']).nullish().meta({ description: 'The unit of every length that is written without one; the one for which the form was read.' }),
    answers,
  })
  .meta({ id: 'FormAnswersRequest' })

const itemId = { id: 'FormAnswerResult', description: 'What became of one answer; `id` is the id of its entry.' }
const item = postEntries.output.shape.results.element.extend({ question: text, fact: text.nullable(), member: z.enum(['left', 'right']).nullable() }).meta(itemId)
const output = postEntries.output.extend({ results: z.array(item).meta({ description: 'One for each answer, in the order sent.' }) }).meta({ id: 'FormAnswersAnswer' })

type Filling = z.output<typeof input>
type Item = z.infer<typeof item>

/** Takes a filled form. Each answer becomes one observation, recorded or refused by itself. */
export const postFormAnswers = defineRecordOperation({
  name: 'postFormAnswers',
  makes: true,
  summary: 'Post a filled form',
  description: 'Every answer becomes an observation of its fact, taken or refused by itself; sent again, nothing is recorded twice. The note of the form is kept with each.',
  input,
  output,
  answer: async (deps, filling) => {
    const filled = readAnswers(filling.answers)
    if (!filled) return failure('invalidInput', [{ code: 'outOfRange', pointer: '/answers', detail: `must have at most ${mostAnswers} answers` }])
    const noteProblems = problemsOfNote(filled.note)
    if (noteProblems.length > 0) return failure('invalidInput', noteProblems)
    const given = filled.answers.flatMap((one) => ('problems' in one ? [] : [one]))
    const project = await projectFor(deps, filling.project)
    if (!project.ok) return project
    if (filled.answers.length === 0) return failure('invalidInput', [{ code: 'missingKey', pointer: '/answers', detail: 'holds no answer; there is nothing to put on record' }])
    if (given.length === 0) return { ok: true, value: { results: filled.answers.map(unusable), openings: [] } }
    const posted = await postEntries.run(deps, { project: filling.project, entries: given.map((one) => entryOf(filling, one, filled.note)) })
    return posted.ok ? { ok: true, value: { ...posted.value, results: inOrder(filled.answers, given, posted.value.results) } } : posted
  },
})

function problemsOfNote(note: unknown): readonly Problem[] {
  const read = noteInput.safeParse(note)
  return read.success ? [] : [{ code: 'notAllowed', pointer: '/answers/note', detail: 'must be a text of at most 2000 characters' }]
}

function entryOf({ id, opening, at, by, method, holdPoint, lengthUnit }: Filling, { question, fact, member, value }: GivenAnswer, note: unknown) {
  const about = { id: nameBasedId(id, question), opening, at, by, ...(note === null ? {} : { note }) }
  return { ...about, observation: { fact, ...(member ? { member } : {}), value, ...(lengthUnit ? { lengthUnit } : {}), method, holdPoint } }
}

type Posted = Extract<Awaited<ReturnType<typeof postEntries.run>>, Answer<unknown> & { ok: true }>['value']

function inOrder(all: readonly (GivenAnswer | WrongAnswer)[], given: readonly GivenAnswer[], results: Posted['results']): Item[] {
  return all.map((one) => {
    if ('problems' in one) return unusable(one)
    const result = results[given.indexOf(one)]
    if (!result) throw new Error(`${one.question} was posted and not answered`)
    const { question, fact, member, pointer } = one
    return { ...result, question, fact, member, problems: result.problems.map((problem) => inFormWords(problem, pointer)) }
  })
}

/** Of a problem within an entry, the place in the form at which it was written. */
function inFormWords({ code, detail }: Problem, pointer: string): Problem {
  const words = code === 'idTaken' ? 'was answered otherwise when this form was sent before; what is on record is never changed: fill the form anew, under a new id' : detail
  return { code, pointer: `/answers${pointer}`, detail: words }
}

function unusable(one: GivenAnswer | WrongAnswer): Item {
  const problems = 'problems' in one ? one.problems.map((problem) => ({ ...problem, pointer: `/answers${problem.pointer}` })) : []
  const { fact = null, member = null } = everyQuestion.get(one.question) ?? {}
  return { id: null, outcome: 'refused', sequence: null, problems, question: one.question, fact, member }
}
