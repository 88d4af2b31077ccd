import { failure, defineRecordOperation, type Answer, type RecordDependencies } from './operation.ts'
import { mapSheet } from '../record/schedule-mapping.ts'
import { intakeOf, type Intake } from '../record/schedule-intake.ts'
import { idProblems, openingsOf, type ScheduledDesign } from '../record/schedule-openings.ts'
import { readRow, type ReadRow, type RowProblem } from '../record/schedule-row.ts'
import { postInParts, type Posted } from './post-schedule.ts'
import { entriesByOpening } from './project-entries.ts'
import { projectFor } from './projects.ts'
import { isBlank, mostRows, readSheet, type Sheet } from './read-sheet.ts'
import { scheduleAnswer, scheduleRequest, type ScheduleAnswer, type ScheduleRequest } from './schedule-request.ts'

export const importSchedule = defineRecordOperation({
  name: 'importSchedule',
  makes: true,
  summary: 'Import an opening schedule',
  description: 'Makes the design of an opening from each row of a sheet, with every problem of every row told at once. One problem anywhere holds everything back, unless the good rows are to be taken. The answer says which were.',
  input: scheduleRequest,
  output: scheduleAnswer,
  answer: async (deps, request) => {
    const project = await projectFor(deps, request.project)
    if (!project.ok) return project
    const sheet = readSheet(request.csv, request.headerRow ?? 1, request.delimiter ?? null)
    const mapped = mapSheet(request, sheet.ok ? sheet.value.headers : null)
    const problems = [...(sheet.ok ? [] : sheet.problems), ...(mapped.ok ? [] : mapped.problems)]
    if (!sheet.ok || !mapped.ok) return failure('invalidInput', problems)
    const read = await readRows(deps, sheet.value, mapped.value)
    return takeIn(deps, request, { ...read, unread: mapped.value.unread })
  },
})

interface ReadSheet {
  readonly rows: number
  readonly openings: readonly ScheduledDesign[]
  readonly problems: readonly RowProblem[]
}

/** Others have their turn after as many rows. */
const rowsInTurn = 100

async function readRows(deps: RecordDependencies, { headers, rows }: Sheet, mapped: Parameters<typeof readRow>[0]): Promise<ReadSheet> {
  const filled = rows.filter(({ cells }) => !isBlank(cells))
  const fitting = filled.filter(({ cells }) => cells.length === headers.length)
  const uneven = filled.filter(({ cells }) => cells.length !== headers.length).map(({ row, cells }) => ({ row, column: null, code: 'cellCount', detail: `The row has ${cells.length} cells and the headers ${headers.length}. A cell that holds the delimiter has to be in quotes.` }))
  const read: ReadRow[] = []
  for (const [index, row] of fitting.entries()) {
    read.push(readRow(mapped, row))
    if (index % rowsInTurn === rowsInTurn - 1) await deps.giveWay()
  }
  const openings = read.flatMap(openingsOf)
  return { rows: filled.length, openings, problems: [...uneven, ...read.flatMap(({ problems }) => problems), ...idProblems(openings, (mapped.id ?? mapped.mark).header)] }
}

async function takeIn(deps: RecordDependencies, request: ScheduleRequest, sheet: ReadSheet & { readonly unread: readonly string[] }): Promise<Answer<ScheduleAnswer>> {
  const { project, at, by } = request
  if (sheet.openings.length > mostRows) return failure('invalidInput', [{ code: 'outOfRange', pointer: '/quantityColumn', detail: `The rows make ${sheet.openings.length} openings; at most ${mostRows} are taken at once.` }])
  const wanted = new Set(sheet.openings.map(({ opening }) => opening))
  const onRecord = await entriesByOpening(deps, project, ({ kind, opening }) => kind === 'design' && wanted.has(opening))
  const wrong = new Set(sheet.problems.map(({ row }) => row))
  const intakes = sheet.openings.filter(({ row }) => !wrong.has(row)).map((one) => [one.opening, intakeOf(one, onRecord.get(one.opening) ?? [], { project, at, by, id: request.import, revise: request.revise === true })] as const)
  const problems = [...sheet.problems, ...intakes.flatMap(([, intake]) => (intake.kind === 'refused' ? [intake.problem] : []))]
  const takes = request.validateOnly !== true && (problems.length === 0 || request.takeGoodRows === true)
  const entries = takes ? intakes.flatMap(([, intake]) => (intake.kind === 'record' ? [intake.entry] : [])) : []
  const posted = await postInParts(deps, project, entries)
  return { ok: true, value: answerOf(request, { ...sheet, problems }, new Map(intakes), posted) }
}

/** As many problems are told; nobody reads more before mending some. */
const mostProblems = 5_000

function answerOf(request: ScheduleRequest, sheet: ReadSheet & { readonly unread: readonly string[] }, intakes: ReadonlyMap<string, Intake>, posted: ReadonlyMap<string, Posted>): ScheduleAnswer {
  const results = sheet.openings.map((one) => resultOf(one, intakes.get(one.opening), posted))
  const late = sheet.openings.flatMap(({ row, opening }) => lateProblems(row, intakes.get(opening), posted))
  const problems = [...sheet.problems, ...late].toSorted((a, b) => a.row - b.row)
  const count = (outcome: ScheduleAnswer['results'][number]['outcome']) => results.filter((one) => one.outcome === outcome).length
  const counts = { recorded: count('recorded'), alreadyRecorded: count('alreadyRecorded'), unchanged: count('unchanged'), heldBack: count('heldBack'), refused: count('refused') }
  const ofThisImport = counts.recorded + counts.alreadyRecorded
  const outcome = request.validateOnly === true ? 'checked' : problems.length === 0 ? 'taken' : ofThisImport > 0 && counts.heldBack === 0 ? 'takenInPart' : 'nothingTaken'
  return { import: request.import, outcome, rows: sheet.rows, wrongRows: new Set(problems.map(({ row }) => row)).size, openings: results.length, counts, problemCount: problems.length, problems: problems.slice(0, mostProblems), unreadColumns: [...sheet.unread], results }
}

function resultOf({ row, opening, description }: ScheduledDesign, intake: Intake | undefined, posted: ReadonlyMap<string, Posted>): ScheduleAnswer['results'][number] {
  const about = { row, opening, reference: typeof description['reference'] === 'string' ? description['reference'] : '', verdict: null }
  if (!intake || intake.kind === 'refused') return { ...about, entry: null, outcome: 'refused' }
  if (intake.kind === 'unchanged') return { ...about, entry: null, outcome: 'unchanged' }
  if (intake.kind === 'alreadyRecorded') return { ...about, entry: intake.entry, outcome: 'alreadyRecorded' }
  const answered = posted.get(intake.entry.id)
  return answered ? { ...about, entry: intake.entry.id, outcome: answered.outcome, verdict: answered.verdict } : { ...about, entry: intake.entry.id, outcome: 'heldBack' }
}

/** What was right when the sheet was read and was refused all the same, because somebody recorded in between. */
function lateProblems(row: number, intake: Intake | undefined, posted: ReadonlyMap<string, Posted>): readonly RowProblem[] {
  const answered = intake?.kind === 'record' ? posted.get(intake.entry.id) : undefined
  return answered?.outcome === 'refused' ? answered.problems.map(({ code, detail }) => ({ row, column: null, code, detail })) : []
}
