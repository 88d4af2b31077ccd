import type { FastifyInstance } from 'fastify'
import type { Batch } from '../../operations/evaluate-batch.ts'
import { gatherAnswers, unanswered, type LineAnswers } from './line-answers.ts'
import type { LineThreads } from './line-threads.ts'
import type { Tallied } from './line-worker.ts'
import type { Line } from './lines.ts'

declare module 'fastify' {
  interface FastifyInstance {
    /** Null where everything is answered in the thread that serves. */
    lineThreads: LineThreads | null
  }
}

/** A batch with fewer lines is answered before threads would be awake. */
const mostWithoutThreads = 128
/** To hand over fewer lines takes longer than it saves, and whoever sends so few at a time waits for each of them. */
const fewestForThread = 3

export interface GroupAnswers extends LineAnswers {
  /** What is still to be counted. */
  readonly tallied: readonly Tallied[]
  /** The number of the last line. */
  readonly last: number
}

type Answers = Omit<GroupAnswers, 'last'>

/** Answers the lines of a batch: a few in the thread that serves, and those of a long batch in threads beside it, in the same words. */
export function lineAnswerer(batch: Batch, { deps: { giveWay, tally }, lineThreads: threads }: FastifyInstance): { readonly answerGroup: (lines: readonly Line[]) => Promise<GroupAnswers>; readonly most: () => number } {
  let seen = 0
  let brokeDown = false
  const wantsThreads = () => threads !== null && seen > mostWithoutThreads && !brokeDown
  const beside = async (by: LineThreads, lines: readonly Line[]): Promise<Answers> => {
    try {
      return await by.answer(batch, lines, tally !== undefined)
    } catch (error) {
      brokeDown = true
      const [only, ...others] = lines
      return only && others.length === 0 ? { ...unanswered(only, error), tallied: [] } : oneByOne(lines, (line) => beside(by, [line]))
    }
  }
  const here = async (lines: readonly Line[]): Promise<Answers> => {
    const gathered = gatherAnswers(batch.answer)
    for (const line of lines) {
      gathered.add(line)
      await giveWay()
    }
    return { ...gathered.all(), tallied: [] }
  }
  const answerGroup = async (lines: readonly Line[]) => {
    seen += lines.length
    const answers = await (threads && wantsThreads() && lines.length >= fewestForThread && threads.areReady() ? beside(threads, lines) : here(lines))
    return { ...answers, last: lines.at(-1)?.line ?? 0 }
  }
  return { answerGroup, most: () => (threads && wantsThreads() ? threads.count + 1 : 1) }
}

/** Again, after a thread broke down over one of several lines, so that the others are answered and that one is told. */
async function oneByOne(lines: readonly Line[], answer: (line: Line) => Promise<Answers>): Promise<Answers> {
  const all: Answers[] = []
  for (const line of lines) all.push(await answer(line))
  return { bytes: Buffer.concat(all.map(({ bytes }) => bytes)), faults: all.flatMap(({ faults }) => faults), tallied: all.flatMap(({ tallied }) => tallied) }
}
