import { z } from 'zod'
import { evidence, unitSystem } from '../catalog/limit.ts'
import { part } from '../catalog/rule.ts'
import { finding, verdict } from '../evaluation/document.ts'
import { holdPointId } from '../opening/hold-points.ts'
import { bases } from '../record/opening-record.ts'
import { flashingCutLists } from './flashing-cut-lists.ts'
import { lengthView } from './lengths.ts'
import { flashingPiece, gap, sectionChosen, total } from './take-off.ts'

const text = z.string()
const counted = z.int().min(0).max(100_000_000)
const end = z.enum(['left', 'right']).nullable().meta({ description: 'Which end, seen from outside; null where there are no two.' })
const outcomes = { pass: counted, fail: counted, notDetermined: counted, notApplicable: counted }
const ids = z.array(text)

export const basis = z.enum(bases).meta({ id: 'RecordBasis', description: 'By which reading of the record.' })

const verdicts = z
  .strictObject({ pass: counted, attention: counted, incomplete: counted, fail: counted, notEvaluated: counted })
  .meta({ id: 'VerdictCounts', description: 'Openings by their verdict.' })

const partStatus = z.strictObject({ part, ...outcomes }).meta({ id: 'PartStatus', description: 'Findings of all rules of a part, over all openings that were evaluated.' })

const holdPointStatus = z
  .strictObject({
    holdPoint: holdPointId, title: text, ...outcomes,
    ready: counted.meta({ description: 'Openings at which every mandatory rule to be seen here is decided, and met or waived. Where no mandatory rule is to be seen, no opening counts as ready or as not ready.' }),
    notReady: counted,
    signedOff: counted.meta({ description: 'Openings at which somebody has signed it off, ready or with a reason.' }),
  })
  .meta({ id: 'HoldPointStatus' })

const readiness = z
  .strictObject({ holdPoint: holdPointId, ready: z.boolean(), signedOff: z.boolean(), undecided: ids, notMet: ids, waived: ids })
  .meta({ id: 'OpeningReadiness', description: 'Mandatory rules, by id, that stand in the way of going on past a hold point; and those that are not met and waived.' })

const openingStatus = z
  .strictObject({ opening: text, reference: text.nullable(), unitSystem: unitSystem.meta({ description: 'The system in which it was described.' }), holdPoint: holdPointId.nullable().meta({ description: 'As far as the work is known to stand.' }), verdict, ...outcomes, mandatoryFailures: counted, mandatoryNotDetermined: counted, noLongerInSight: ids.meta({ description: 'Mandatory rules that are not decided and that a look can no longer decide: the work has hidden what to look at.' }), readiness: z.array(readiness) })
  .meta({ id: 'BuildingOpening' })

const notEvaluated = z
  .strictObject({ opening: text, reference: text.nullable(), holdPoint: holdPointId.nullable(), problems: z.array(z.strictObject({ code: text, pointer: text, detail: text }).meta({ id: 'DescriptionProblem' })) })
  .meta({ id: 'NotEvaluatedOpening', description: 'On record, and not described far enough to be evaluated. It is in no other count.' })

const { measured, required, margin, remedy, chain } = finding.shape
const failure = z
  .strictObject({
    opening: text, reference: text.nullable(), rule: text, title: text, part, holdPoint: holdPointId, member: end,
    measured, required, margin, remedy,
    cautions: z.array(text), evidence, chain, withinResolution: z.boolean(),
    waived: z.boolean().meta({ description: 'The official has granted a waiver or a modification that is in force.' }),
    covered: z.boolean().nullable().meta({ description: 'The work has hidden the place, so that the remedy after cover-up is the one to take; null where a computed quantity is judged.' }),
    seen: z.strictObject({ entry: text, at: text, by: text }).meta({ id: 'SeenBy' }).nullable().meta({ description: 'The reading that says so; null where it comes from the drawing or is worked out.' }),
  })
  .meta({ id: 'MandatoryFailure' })

const factToCollect = z
  .strictObject({
    fact: text, title: text, hiddenBy: holdPointId.nullable(),
    lastChance: z.boolean().meta({ description: 'The next operation hides it.' }),
    mandatory: z.boolean().meta({ description: 'A mandatory rule waits for it.' }),
    decides: ids.meta({ description: 'Rules that this fact alone would settle.' }),
    contributesTo: ids.meta({ description: 'Rules that need it and something else.' }),
  })
  .meta({ id: 'FactToCollect' })
const walk = z
  .strictObject({
    holdPoint: holdPointId, title: text,
    lastChances: counted.meta({ description: 'Facts, over all openings, that the next operation hides.' }),
    openings: z.array(z.strictObject({ opening: text, reference: text.nullable(), lastChances: counted, facts: z.array(factToCollect) }).meta({ id: 'WalkOpening' })),
  })
  .meta({ id: 'Walk', description: 'What to look at on one walk: the openings with most last chances first, and of each opening the last chances, then what mandatory rules wait for.' })

const described = z.strictObject({ length: lengthView.nullable(), left: lengthView.nullable(), right: lengthView.nullable() }).meta({ id: 'DescribedLintel', description: 'Length and bearing at each end as drawn or seen, where known.' })
const lintel = z
  .strictObject({
    mark: text, count: counted, references: ids.meta({ description: 'The openings it is for, by id.' }),
    width: lengthView.nullable(), height: lengthView.nullable(), support: text.nullable(),
    section: text.nullable().meta({ description: 'The angle as described, else the lightest that carries the brick.' }),
    chosen: sectionChosen,
    length: lengthView,
    bearing: lengthView.nullable().meta({ description: 'What the least length rests on at each end when it is set dead center.' }),
    described,
    weight: z.strictObject({ inchPound: text, si: text, newtons: z.number() }).meta({ id: 'WeightView' }).nullable().meta({ description: 'Of one piece of the least length; null where it could not be computed.' }),
  })
  .meta({ id: 'LintelLine', description: 'Identical lintels in one line; `length` is the least that bears enough at both ends. To be confirmed by a licensed professional.' })

export const buildingView = z
  .strictObject({
    project: text, title: text, jurisdiction: text.nullable(), asOf: text, editions: z.array(text), basis,
    catalog: z.strictObject({ release: text, digest: text }).meta({ id: 'CatalogUsed' }),
    openings: counted, evaluated: counted,
    counted: text.meta({ description: 'How many of the openings every figure below counts, in words.' }),
    verdicts,
    parts: z.array(partStatus), holdPoints: z.array(holdPointStatus),
    status: z.array(openingStatus),
    failures: z.array(failure).meta({ description: 'Mandatory rules that are not met, each end by itself.' }),
    walks: z.array(walk).meta({ description: 'What is not known and can still be seen, in the order of the work.' }),
    lintels: z.array(lintel), flashing: z.array(flashingPiece), cutLists: z.array(flashingCutLists),
    totals: z.array(total).meta({ description: 'Weeps, ties, bricks and sealant. Openings are named by id.' }),
    gaps: z.array(gap).meta({ description: 'What could not be computed; the totals are short of it.' }),
    notEvaluated: z.array(notEvaluated),
    notice: text,
  })
  .meta({ id: 'Building' })
export type Building = z.infer<typeof buildingView>
