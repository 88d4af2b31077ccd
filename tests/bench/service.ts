import { once } from 'node:events'
import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { request, type IncomingMessage } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buildClientSchema, getIntrospectionQuery, type IntrospectionQuery } from 'graphql'
import { evaluateBriefly } from '../../src/evaluation/brief.ts'
import { fullQuery } from '../conformance/full-query.ts'
import type { Described } from '../corpus.ts'
import { described, place, unlikeWindows, type Ground } from './cases.ts'
import { post, rate, startBare, startService, type Process } from './processes.ts'
import { medianOf, row, table } from './report.ts'

/** The service as built, over the line, with the client on the same machine. */
export async function measureService(on: Ground, { milliseconds, lines }: { readonly milliseconds: number; readonly lines: number }): Promise<string> {
  const service = await startService()
  const rest = await service.memory()
  try {
    const doors = await measureDoors(service, on, milliseconds)
    const batch = await measureBatch(service, on, lines)
    return `## Over the line\n\nReady ${service.startedIn.toFixed(0)} ms after its start, with ${rest.now.toFixed(0)} MB resident before the first request.\n\n${doors}\n${batch}`
  } finally {
    await service.end()
  }
}

async function measureDoors(service: Process, on: Ground, milliseconds: number): Promise<string> {
  const bodiesOf = (windows: readonly Described[]) => windows.map(({ description }) => JSON.stringify({ ...place, opening: description }))
  const others = unlikeWindows(on, 400)
  const [alike, unlike] = [bodiesOf(on.windows), bodiesOf(others)]
  const query = await evaluationQuery(service)
  const asking = (text: string, windows: readonly Described[]) => windows.map(({ description }) => JSON.stringify({ query: text, variables: { ...place, opening: description } }))
  const [asked, askedUnlike, askedLess] = [asking(query, on.windows), asking(query, others), asking(verdictQuery, on.windows)]
  const answer = await post(`${service.url}/v1/evaluations`, alike[0] ?? '')
  const folder = await mkdtemp(join(tmpdir(), 'wythe-bench-'))
  await writeFile(join(folder, 'answer.json'), answer)
  const bare = await startBare(join(folder, 'answer.json'))
  const contestants = [
    ['a route of Fastify alone, with a ready answer as long, as text', () => rate(`${bare.url}/text`, alike, milliseconds)],
    ['the same with the answer ready as bytes', () => rate(`${bare.url}/bytes`, alike, milliseconds)],
    ['POST /v1/evaluations', () => rate(`${service.url}/v1/evaluations`, alike, milliseconds)],
    ['the same, of windows with no length in common', () => rate(`${service.url}/v1/evaluations`, unlike, milliseconds)],
    ['GraphQL, every field of the first', () => rate(`${service.url}/graphql`, asked, milliseconds)],
    ['GraphQL, every field, of windows with no length in common', () => rate(`${service.url}/graphql`, askedUnlike, milliseconds)],
    ['GraphQL, the verdict and the outcome of each rule, of the first', () => rate(`${service.url}/graphql`, askedLess, milliseconds)],
  ] as const
  for (const [, run] of contestants) await run() // until the code is compiled
  const rates: number[][] = contestants.map(() => [])
  for (let round = 0; round < 5; round += 1) for (const [index, [, run]] of contestants.entries()) rates[index]?.push(await run())
  await bare.end()
  await rm(folder, { recursive: true })
  const ours = 2
  const medians = rates.map((some) => medianOf(some))
  const rows = contestants.map(([name], index) => row(name, (medians[index] ?? NaN).toFixed(0), ((medians[index] ?? NaN) / (medians[ours] ?? NaN)).toFixed(2)))
  return `An answer has ${(answer.length / 1000).toFixed(0)} kB; four requests at once, median of five rounds.\n\n${table(['what', 'each second', 'of POST /v1/evaluations'], rows)}`
}

const verdictQuery = `query ($jurisdiction: String, $asOf: String, $opening: OpeningInput!) {
  evaluation(jurisdiction: $jurisdiction, asOf: $asOf, opening: $opening) { summary { verdict } findings { rule outcome } }
}`

async function evaluationQuery(service: Process): Promise<string> {
  const told = JSON.parse((await post(`${service.url}/graphql`, JSON.stringify({ query: getIntrospectionQuery() }))).toString()) as { data: IntrospectionQuery }
  return fullQuery(buildClientSchema(told.data), 'evaluation')
}

async function measureBatch(service: Process, on: Ground, lines: number): Promise<string> {
  const texts = on.windows.map(({ description }, index) => `${JSON.stringify({ key: String(index), opening: description })}\n`)
  await answeredLines(service, texts, Math.min(lines, 400)) // until the code is compiled
  const alone = await coreRate(on)
  const before = await service.memory()
  const took = await answeredLines(service, texts, lines)
  const { now, most } = await service.memory()
  const each = (lines * 1000) / took
  return `A batch of ${lines} lines: ${each.toFixed(0)} each second, ${(each / alone).toFixed(2)} of what one core does with the same descriptions in this process just before. Resident before ${before.now.toFixed(0)} MB, after ${now.toFixed(0)} MB, at most ${most.toFixed(0)} MB.\n`
}

/** Describe, judge and write, without a service around. */
async function coreRate(on: Ground): Promise<number> {
  const run = () => { for (const window of on.windows) JSON.stringify(evaluateBriefly(described(window), on.ruleSet, on.catalog, null)) }
  for (let round = 0; round < 5; round += 1) run()
  const start = performance.now()
  for (let round = 0; round < 10; round += 1) run()
  return (on.windows.length * 10 * 1000) / (performance.now() - start)
}

/** Milliseconds until all lines are answered, in order; sends no faster than it is taken. */
async function answeredLines({ url }: Process, texts: readonly string[], count: number): Promise<number> {
  const sent = request(`${url}/v1/evaluations/batch?${new URLSearchParams(place).toString()}`, { method: 'POST', headers: { 'content-type': 'application/x-ndjson' } })
  sent.flushHeaders()
  const start = performance.now()
  const counted = once(sent, 'response').then(([response]) => lineCount(response as IncomingMessage))
  for (let line = 0; line < count; line += 1) if (!sent.write(texts[line % texts.length] ?? '')) await once(sent, 'drain')
  sent.end()
  const answered = await counted
  if (answered !== count) throw new Error(`${answered} of ${count} lines were answered`)
  return performance.now() - start
}

async function lineCount(response: IncomingMessage): Promise<number> {
  let count = 0
  for await (const part of response as AsyncIterable<Buffer>) for (const byte of part) if (byte === 10) count += 1
  return count
}
