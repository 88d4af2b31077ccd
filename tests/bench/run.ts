import { writeFile } from 'node:fs/promises'
import { arch, cpus, loadavg, platform } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { plainBytes } from '../../src/catalog/canonical.ts'
import { digestOfAssessment } from '../../src/evaluation/evaluate.ts'
import { evaluateBriefly } from '../../src/evaluation/brief.ts'
import type { Subject } from '../../src/evaluation/judge.ts'
import type { Opening } from '../../src/opening/opening.ts'
import { usePlatformSha256 } from '../../src/store/platform-sha256.ts'
import type { Described } from '../corpus.ts'
import { contest, described, disagreements, findingsOf, fullEvaluation, ground, stranger, subjectOf, unlikeWindows } from './cases.ts'
import { measureGrowth } from './growth.ts'
import { plotOf } from './plot.ts'
import { measureReplicas } from './replicas.ts'
import { medianOf, row, table } from './report.ts'
import { measureService } from './service.ts'

/** One thing to measure: made ready without the clock, then run once for each piece of work. */
interface Case<T> {
  readonly name: string
  readonly work: () => readonly T[]
  readonly run: (piece: T) => unknown
}

interface Measured {
  readonly name: string
  /** Microseconds for one piece of work, the median of all rounds. */
  readonly each: number
}

const number = (usual: number) => ({ type: 'string', default: String(usual) }) as const
const { values: { rounds, windows, milliseconds, lines, kept } } = parseArgs({ options: { rounds: number(15), windows: number(40), milliseconds: number(2_000), lines: number(5_000), kept: number(100_000) } })

usePlatformSha256()
const on = await ground(Number(windows))
const question = contest(on)
for (const [index, subject] of question.subjects.entries()) {
  const facts = question.facts[index] ?? {}
  const differing = [question.compiled(facts), await question.interpreted(facts)].flatMap((theirs) => disagreements(question.rules, question.ours(subject), theirs))
  if (differing.length > 0) throw new Error(`the engines do not answer the same, so the comparison is void:\n${differing.join('\n')}`)
}

const asCase = <T>(one: Case<T>): Case<unknown> => one as Case<unknown>
const strange = (subjects: readonly Subject[]) => () => subjects.map((subject): Subject => ({ ...subject, opening: stranger(subject.opening) }))
/** What is done with windows that have all but one fact in common, as those of a building, or no length at all. */
const casesOf = (windows: readonly Described[]) => {
  const openings = windows.map(described)
  /** New objects, so that an opening as a whole is never one of an earlier round; its facts are, as they are to the service. */
  const fresh = () => openings.map((opening): Opening => ({ ...opening }))
  const assessments = () => fresh().map((opening) => fullEvaluation(on, opening))
  return [
    asCase({ name: 'describe: settle a description into facts', work: () => windows, run: described }),
    asCase({ name: 'full evaluation with all quantities', work: fresh, run: (opening: Opening) => fullEvaluation(on, opening) }),
    asCase({ name: 'the verdict with what stands in its way, as a batch answers', work: fresh, run: (opening: Opening) => evaluateBriefly(opening, on.ruleSet, on.catalog, null) }),
    asCase({ name: 'digest of an evaluation', work: assessments, run: digestOfAssessment }),
    asCase({ name: 'the same evaluation as JSON in UTF-8', work: assessments, run: plainBytes }),
    asCase({ name: 'the same by JSON.stringify', work: assessments, run: (assessment) => Buffer.from(JSON.stringify(assessment)) }),
    asCase({ name: 'quantities alone, with nothing remembered', work: () => openings.map(stranger), run: (opening: Opening) => subjectOf(on, opening) }),
    asCase({ name: 'findings alone, with nothing remembered', work: strange(openings.map((opening) => subjectOf(on, opening))), run: (subject: Subject) => findingsOf(on, subject) }),
  ]
}
const kinds = [casesOf(on.windows), casesOf(unlikeWindows(on, 120))] as const
const contestants = [
  asCase({ name: 'this service, outcomes only', work: strange(question.subjects), run: question.ours }),
  asCase({ name: 'this service, whole findings', work: strange(question.subjects), run: question.findings }),
  asCase({ name: 'json-rules-engine (interpreted), outcomes only', work: () => question.facts, run: question.interpreted }),
  asCase({ name: 'json-logic-engine (compiled), outcomes only', work: () => question.facts, run: question.compiled }),
]

const [alike, unlike] = kinds
const all = await measure([...alike, ...unlike, ...contestants], Number(rounds))
const core = reportOf({ alike: all.slice(0, alike.length), unlike: all.slice(alike.length, -contestants.length), engines: all.slice(-contestants.length) })
process.stdout.write(core)
const service = await measureService(on, { milliseconds: Number(milliseconds), lines: Number(lines) })
process.stdout.write(service)
const replicas = await measureReplicas(on, Number(milliseconds))
process.stdout.write(replicas)
const growth = await measureGrowth(on, Number(kept))
process.stdout.write(growth.report)
const report = `${core}${service}\n${replicas}\n${growth.report}\n![What each thing costs as there is more of something](growth.svg)\n`
await writeFile(join(import.meta.dirname, 'growth.svg'), plotOf(growth.curves))
await writeFile(join(import.meta.dirname, 'RESULTS.md'), report)

/** Every case in every round, one after the other, so that what else the machine does falls on all alike. */
async function measure(each: readonly Case<unknown>[], times: number): Promise<readonly Measured[]> {
  const taken = each.map((): number[] => [])
  for (let round = -Math.ceil(times / 3); round < times; round += 1) {
    for (const [index, { work, run }] of each.entries()) {
      const pieces = work()
      const start = performance.now()
      for (const piece of pieces) await run(piece)
      if (round >= 0) taken[index]?.push(((performance.now() - start) * 1000) / pieces.length)
    }
  }
  return each.map(({ name }, index) => ({ name, each: medianOf(taken[index] ?? []) }))
}

function reportOf({ alike, unlike, engines }: Readonly<Record<'alike' | 'unlike' | 'engines', readonly Measured[]>>): string {
  const machine = `${cpus().length}-core ${arch()} ${platform()}, Node ${process.versions.node.split('.')[0] ?? ''}, load ${(loadavg()[0] ?? NaN).toFixed(1)}`
  const own = engines[0]?.each ?? NaN
  const figures = ({ each }: Measured) => [each.toFixed(0), Math.round(1e6 / each).toString()]
  return [
    `# Bench\n\n\`npm run bench\` on ${machine}, ${new Date().toISOString().slice(0, 10)}: median of ${rounds} rounds. A load above 1 is that of others beside this; compare ratios within one run.\n\n`,
    `## The core\n\n${on.ruleSet.rules.length} rules in force. Fully described windows: ${on.windows.length} that have all but one fact in common, as those of a building, and others of which no two have a length in common.\n\n`,
    table(['what', 'µs, alike', 'each second, one core', 'µs, unlike', 'each second, one core'], alike.map((one, index) => row(one.name, ...figures(one), ...figures(unlike[index] ?? { name: '', each: NaN })))),
    `\n## Beside general rule engines\n\nThe ${question.rules.length} rules that each can express and every window decides, over the same facts in base units, with nothing remembered of a window before; all outcomes agree, or the run ends. Whole findings have texts, margins and sources, which no other engine answers.\n\n`,
    table(['engine', 'µs', 'times as long as ours'], engines.map(({ name, each }) => row(name, each.toFixed(0), (each / own).toFixed(2)))),
    '\n',
  ].join('')
}
