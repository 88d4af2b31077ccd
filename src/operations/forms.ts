import { z } from 'zod'
import type { RuleSet } from '../catalog/rule-set.ts'
import { choiceWords } from '../opening/choice-words.ts'
import { knownOf, wordsOf, type Read } from '../form/known.ts'
import { makeForm, type Subject } from '../form/make-form.ts'
import { describePart } from '../opening/describe.ts'
import { holdPointId } from '../opening/hold-points.ts'
import type { Opening } from '../opening/opening.ts'
import { geometry } from '../opening/parts/geometry.ts'
import { describedBy } from '../record/as-built.ts'
import { openingId } from '../record/entry.ts'
import { openingBy, openingRecordOf, type OpeningRecord } from '../record/opening-record.ts'
import { openingFor } from './opening-records.ts'
import { defineOperation, defineRecordOperation, failure, type Answer, type Dependencies } from './operation.ts'
import { place, resolvePlace } from './place.ts'
import { projectId } from './projects.ts'

const text = z.string()

export const formDocument = z.record(z.string(), z.unknown()).meta({
  id: 'FormDocument',
  description: 'A JSON Schema document (2020-12), as a form library takes it. Sections and questions stand in the order in which to ask them, which `x-order` states too; the other annotations are told of in the README.',
})

const formView = z
  .strictObject({
    id: text.meta({ description: 'The `$id` of the document: the same for the same form.' }),
    title: text,
    holdPoint: holdPointId,
    questions: z.int().min(0).max(1_000_000),
    schema: formDocument,
  })
  .meta({ id: 'Form', description: 'What to look at and write down at one hold point.' })

const asked = {
  holdPoint: holdPointId.meta({ description: 'Where the work stands: only what can be seen there is asked.' }),
  lengthUnit: z.enum(['in', 'mm']).nullish().meta({ description: 'The unit that a bare number is to take; the filled form has to name it again. Left out, every length needs its unit.' }),
}

export const readForm = defineOperation({
  name: 'readForm',
  summary: 'Read the form for a hold point',
  description: 'What an inspector can see at this hold point and the rules of the place ask for, as a JSON Schema document that a form library shows without knowing anything of openings. For an opening on record, ask for its own form.',
  input: z.strictObject({ ...place, kind: geometry.shape.kind.meta({ description: 'What fills the opening.' }), ...asked }),
  output: formView,
  answer: (deps, { kind, holdPoint, lengthUnit, ...where }) => {
    const ruleSet = resolvePlace(deps, where)
    if (!ruleSet.ok) return ruleSet
    const opening = describePart({ opening: { kind } })
    if (!opening.ok) return failure('invalidInput', opening.problems)
    return { ok: true, value: viewOf(deps, { opening: opening.value, holdPoint, lengthUnit: lengthUnit ?? undefined, known: null, about: choiceWords(kind).toLowerCase() }, ruleSet.value) }
  },
})

export const readOpeningForm = defineRecordOperation({
  name: 'readOpeningForm',
  summary: 'Read the form for an opening on record',
  description: 'The form for a hold point, by what is on record of the opening: rules that are ruled out ask nothing, what was drawn and what was read last stand beside the questions, and what was left open at earlier hold points is asked again as long as it can be seen.',
  input: z.strictObject({ project: projectId, opening: openingId, ...asked }),
  output: formView,
  answer: async (deps, { project: id, opening, holdPoint, lengthUnit }) => {
    const found = await openingFor(deps, id, opening)
    if (!found.ok) return found
    const { project, entries } = found.value
    const ruleSet = resolvePlace(deps, project)
    if (!ruleSet.ok) return ruleSet
    const record = openingRecordOf(opening, entries)
    const described = describedOf(record)
    if (!described.ok) return described
    const designed = openingBy('asDesigned', record)
    const known = knownOf(designed.ok ? designed.value : undefined, record.facts.map(readingOf))
    return { ok: true, value: viewOf(deps, { opening: described.value, holdPoint, lengthUnit: lengthUnit ?? undefined, known, about: described.value.reference ?? opening }, ruleSet.value) }
  },
})

/** As seen, and as drawn where nobody has looked yet; as much of it as there is. */
function describedOf({ facts: seen, designs }: OpeningRecord): Answer<Opening> {
  const described = describePart(describedBy(seen, designs.at(-1)?.description ?? {}))
  return described.ok ? described : failure('invalidInput', described.problems)
}

function readingOf({ fact, member, governs: { at, holdPoint, reading }, contradicted }: OpeningRecord['facts'][number]): Read {
  return { fact, member, at, holdPoint, contradicted, value: wordsOf(fact, reading) }
}

function viewOf({ catalog }: Pick<Dependencies, 'catalog'>, subject: Subject, ruleSet: RuleSet): z.infer<typeof formView> {
  const { id, title, questions, schema } = makeForm(subject, ruleSet, catalog)
  return { id, title, holdPoint: subject.holdPoint, questions, schema: { ...schema } }
}
