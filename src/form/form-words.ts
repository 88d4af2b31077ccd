import { notice } from '../evaluation/notice.ts'
import { nextToHide } from '../opening/facts.ts'
import { holdPoints, holdPointTitle, type HoldPoint } from '../opening/hold-points.ts'
import type { LengthUnit } from '../units/length-text.ts'
import type { SectionName } from './asked-here.ts'
import { howToWriteLengths } from './value-schema.ts'

interface FormAbout {
  readonly holdPoint: HoldPoint
  readonly about: string
  readonly lengthUnit: LengthUnit | undefined
  readonly rules: readonly { readonly cautions: readonly string[] }[]
  readonly covered: number
  readonly questions: number
}

/** The head of a form: what it is for, how to fill it, and the cautions that go with it. */
export function formWords({ holdPoint, about, lengthUnit, rules, covered, questions }: FormAbout): { readonly title: string; readonly description: string } {
  const cautions = [...new Set(rules.flatMap((rule) => rule.cautions))]
  const paragraphs = [
    questions === 0 ? 'No rule asks for anything that can be seen here.' : 'Answer what you can see. Leave out what you cannot: no answer means not known, never no. What is covered is left out too; say so in the note.',
    `Lengths: ${howToWriteLengths(lengthUnit).replace('Write it like', 'write them like')}`,
    ...(covered > 0 ? [`${covered === 1 ? 'One thing that matters was never read and is' : `${covered} things that matter were never read and are`} hidden by now; say in the note what is known of ${covered === 1 ? 'it' : 'them'}.`] : []),
    ...(cautions.length > 0 ? [`Before you climb, reach in or open anything: ${cautions.join('; ')}.`] : []),
    notice,
  ]
  return { title: `${holdPointTitle(holdPoint)}: ${about}`, description: paragraphs.join('\n\n') }
}

export function sectionWords(section: SectionName, holdPoint: HoldPoint): { readonly title: string; readonly description: string } {
  const next = nextToHide(holdPoint)
  const hides = holdPoints.find(({ id }) => id === holdPoint)?.hides
  const words = {
    lastChance: { title: 'Last chance to see', description: [hides, next ? `None of this can be seen any more at "${holdPointTitle(next)}".` : null].filter((line) => typeof line === 'string').join(' ') },
    now: { title: 'To be seen now', description: 'What shows first at this hold point, and what its rules ask for.' },
    overdue: { title: 'Still to be seen from before', description: 'Mandatory at an earlier hold point, and still in sight.' },
  }
  return words[section]
}
