import { z } from 'zod'
import { flag } from '../fact.ts'
import { holdPoints } from '../hold-points.ts'

type Inspected = Extract<(typeof holdPoints)[number], { kind: 'hold' | 'witness' }>

const inspections = holdPoints.filter((point): point is Inspected => point.kind !== 'selfCheck').map(({ id, title }) => {
  const help = 'True when whoever inspects there has signed for it; false when it was missed or not passed.'
  return [id, flag(`Inspection passed: ${title}`, { help, from: id })] as const
})

const inspected = z
  .strictObject(Object.fromEntries(inspections) as Readonly<Record<Inspected['id'], ReturnType<typeof flag>>>)
  .meta({ id: 'InspectedInput', title: 'Inspections passed' })

const beforeWork = { from: 'submittalsAndMockUp' } as const

const submitted = z
  .strictObject({
    flashingDrawing: flag('Flashing drawing submitted', { help: 'A drawing of the flashing of this opening, with laps, end dams and drip, is with whoever has to see it.', ...beforeWork }),
    lintelSchedule: flag('Lintel schedule submitted', { help: 'A list of the lintels with section, length and bearing is with whoever has to see it.', ...beforeWork }),
    tieData: flag('Tie data submitted', { help: 'Product data of the ties and their fasteners are with whoever has to see them.', ...beforeWork }),
    mockUp: flag('Mock-up accepted', { help: 'A sample of the wall with an opening was built, seen and accepted.', ...beforeWork }),
  })
  .meta({ id: 'SubmittedInput', title: 'Submittals' })

/** How the work goes and who has seen it: for clauses on inspections and submittals. */
export const workProcess = z
  .strictObject({ inspected: inspected.nullish(), submitted: submitted.nullish() })
  .meta({ id: 'ProcessInput', title: 'Inspections and submittals' })
