import { z } from 'zod'
import { verdict } from '../evaluation/document.ts'
import { entryId, entryInput, factValue } from '../record/entry.ts'
import { factPath } from '../catalog/identifier.ts'
import { projectId } from './projects.ts'

const text = z.string()
const column = text.min(1).max(200)
const counted = z.int().min(0).max(1_000_000)
const end = z.enum(['left', 'right']).nullish().meta({ description: 'Which end, seen from outside; both when left out.' })

const cellValue = z
  .strictObject({ cell: text.max(200), value: factValue.nullish().meta({ description: 'Left out: this word means that it is not known.' }) })
  .meta({ id: 'CellValueInput', description: 'What a word of the sheet means.' })

const columnInput = z
  .strictObject({
    column: column.meta({ description: 'The header as it stands in the sheet, or the number of the column, counted from 1.' }),
    fact: factPath.meta({ description: 'The path of the fact that it tells: "opening.width".' }),
    end,
    values: z.array(cellValue).max(200).nullish().meta({ description: 'What the words of the sheet mean, where they are not those of the fact. Cells are compared without regard to case and spacing.' }),
  })
  .meta({ id: 'ScheduleColumnInput' })

const saidOnce = z.strictObject({ fact: factPath, end, value: factValue }).meta({ id: 'SaidOnceInput', description: 'A fact that is the same in every row.' })

export const scheduleRequest = z
  .strictObject({
    project: projectId,
    import: entryId.meta({ description: 'The id of this import, made by the client: the same import sent twice is one.' }),
    csv: text.max(8_000_000).meta({ description: 'The sheet as CSV, at most 10,000 rows.' }),
    delimiter: text.regex(/^[,;|\t]$/, 'must be a comma, a semicolon, a tab or an upright stroke').meta({ maxLength: 1 }).nullish().meta({ description: 'Between two cells; found out when left out.' }),
    headerRow: z.int().min(1).max(100).nullish().meta({ description: 'The row of the sheet that has the headers; 1 when left out. What stands above is not read.' }),
    lengthUnit: z.enum(['in', 'mm']).nullish().meta({ description: 'The unit of every length that is written without one.' }),
    markColumn: column.meta({ description: 'The mark of the opening, which becomes its reference.' }),
    idColumn: column.nullish().meta({ description: 'The id of the opening within the project. When left out it is made from the mark, with a hyphen for what an id cannot hold.' }),
    quantityColumn: column.nullish().meta({ description: 'How many openings are so. Each becomes an opening by itself, with a number behind its mark and its id: W-1-1, W-1-2; also where it is one, so that ids stay when the quantity changes.' }),
    columns: z.array(columnInput).min(1).max(300),
    forEveryRow: z.array(saidOnce).max(300).nullish(),
    at: entryInput.shape.at,
    by: entryInput.shape.by,
    validateOnly: z.boolean().nullish().meta({ description: 'Checks and answers, and puts nothing on record.' }),
    takeGoodRows: z.boolean().nullish().meta({ description: 'Takes the rows without a problem. Left out, one problem anywhere holds everything back.' }),
    revise: z.boolean().nullish().meta({ description: 'A row whose opening has another design on record replaces it. Left out, such a row is a problem.' }),
  })
  .meta({ id: 'ScheduleImportRequest' })
export type ScheduleRequest = z.output<typeof scheduleRequest>

const imported = z
  .strictObject({
    row: counted, opening: text, reference: text, entry: text.nullable().meta({ description: 'The id of the design entry; null where there is none to make.' }),
    outcome: z
      .enum(['recorded', 'alreadyRecorded', 'unchanged', 'heldBack', 'refused'])
      .meta({ id: 'ImportOutcome', description: 'On record now; by this import since earlier; the design on record is the same; nothing wrong, and not taken because of other rows or because it was only to be checked; wrong.' }),
    verdict: verdict.nullable().meta({ description: 'Of the opening as it stands now, where it was recorded now.' }),
  })
  .meta({ id: 'ImportedOpening' })

const problem = z
  .strictObject({
    row: counted.meta({ description: 'As a spreadsheet counts: the first row of the sheet is 1.' }),
    column: text.nullable().meta({ description: 'The header of the column; null where it is about the whole row.' }),
    code: text, detail: text,
  })
  .meta({ id: 'ImportProblem' })

export const scheduleAnswer = z
  .strictObject({
    import: text,
    outcome: z.enum(['taken', 'takenInPart', 'nothingTaken', 'checked']).meta({ id: 'ScheduleOutcome', description: 'All of it is on record; what was right is; nothing is, see the problems; nothing was to be put on record.' }),
    rows: counted.meta({ description: 'Rows below the headers that are not empty.' }),
    wrongRows: counted.meta({ description: 'Rows with a problem; of one whose cells do not fit the headers no opening is known.' }),
    openings: counted,
    counts: z.strictObject({ recorded: counted, alreadyRecorded: counted, unchanged: counted, heldBack: counted, refused: counted }).meta({ id: 'ImportCounts', description: 'Openings by outcome.' }),
    problemCount: counted,
    problems: z.array(problem).meta({ description: 'In the order of the rows; at most 5,000 are told.' }),
    unreadColumns: z.array(text).meta({ description: 'Headers of columns from which nothing was read.' }),
    results: z.array(imported).meta({ description: 'One for each opening, in the order of the rows.' }),
  })
  .meta({ id: 'ScheduleImport' })
export type ScheduleAnswer = z.infer<typeof scheduleAnswer>
