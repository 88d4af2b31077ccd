import { resolve } from 'node:path'
import { buildApp } from '../app.ts'
import type { Building } from '../catalog/building.ts'
import type { Evaluation } from '../evaluation/document.ts'
import { openService } from '../service.ts'
import { cautionsText, evaluationText, wrapped } from './evaluation-text.ts'

/** Starts the service on a free port, evaluates the openings of the demonstration building over both doors, and ends. */
const rule = '─'.repeat(110)
const serve = process.argv.includes('--serve')
const port = serve ? Number(process.env['PORT'] ?? 8080) : 0

const { deps, close } = await openService(
  { catalogDir: process.env['CATALOG_DIR'] ?? 'catalog', catalogRelease: 'working', releasePublicKeys: undefined, dataDir: ':memory:', databaseUrl: undefined },
  { error: (detail, message) => say(`${message}: ${JSON.stringify(detail)}`) },
)
const publicUrl = `http://127.0.0.1:${serve ? port : 8080}`
const app = await buildApp({ deps, publicUrl, explorerDir: resolve('dist/explorer') })
const address = await app.listen({ host: '127.0.0.1', port })

for (const building of deps.active.state.catalog.buildings.values()) await show(building)
if (serve) say(`Still serving: ${address} (Ctrl+C ends it)\n  API reference     ${address}/reference\n  GraphQL explorer  ${address}/explorer/`)
else {
  await app.close()
  await close()
}

async function show(building: Building): Promise<void> {
  say(`${building.title.toUpperCase()}\n${wrapped(`${building.note} Jurisdiction ${building.jurisdiction}, permit applied for on ${building.asOf}. Service at ${address}.`, '')}`)
  const evaluations: Evaluation[] = []
  for (const opening of building.openings) evaluations.push(await overRest(building, opening))
  for (const [index, evaluation] of evaluations.entries()) {
    say(`${rule}\n${building.openings[index]?.story ?? ''}\nPOST /v1/evaluations\n`)
    say(evaluationText(evaluation))
  }
  say(`${rule}\n${cautionsText(evaluations)}`)
  say(`${rule}\nTHE SAME OVER GRAPHQL, asking only for what a schedule needs\n`)
  say(await overGraphql(building))
  say(`${rule}\nWHERE TO LOOK NEXT
  npm run demo -- --serve                                    keep the service up; then open / to try an opening
  npm run wythe -- explain lintel.bearing-length --jurisdiction ${building.jurisdiction} --as-of ${building.asOf}
  catalog/buildings/                                         the openings shown here
  catalog/rules/lintel/bearing-length.yaml                   a rule, as one file
  README.md                                                  how to call it from another platform`)
}

function requestOf({ jurisdiction, publication, asOf }: Building, { opening, holdPoint }: Building['openings'][number]) {
  return { jurisdiction, asOf, ...(publication ? { publication } : {}), ...(holdPoint ? { holdPoint } : {}), opening }
}

async function overRest(building: Building, opening: Building['openings'][number]): Promise<Evaluation> {
  return (await post('/v1/evaluations', requestOf(building, opening))) as Evaluation
}

async function overGraphql(building: Building): Promise<string> {
  const query = `query Schedule($opening: OpeningInput!, $jurisdiction: String, $publication: String, $asOf: String, $holdPoint: HoldPointId) {
  evaluation(opening: $opening, jurisdiction: $jurisdiction, publication: $publication, asOf: $asOf, holdPoint: $holdPoint) {
    subject { reference } summary { verdict mandatoryFailures } quantities { id value }
  }
}`
  const lines: string[] = []
  for (const opening of building.openings) {
    const answer = (await post('/graphql', { query, variables: requestOf(building, opening) })) as { data: { evaluation: Pick<Evaluation, 'subject' | 'summary' | 'quantities'> } }
    const { subject, summary, quantities } = answer.data.evaluation
    const valueOf = (id: string) => quantities.find((quantity) => quantity.id === id)?.value ?? 'not known'
    lines.push(`${(subject.reference ?? '').padEnd(7)}${summary.verdict.padEnd(12)}lintel ${valueOf('lintel.length').padEnd(12)}lightest angle ${valueOf('lintel.lightest-angle').padEnd(18)}head flashing cut ${valueOf('flashing.head-cut-length')}`)
  }
  return `${query}\n\n${lines.join('\n')}`
}

async function post(path: string, body: unknown): Promise<unknown> {
  const response = await fetch(`${address}${path}`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) })
  const answer: unknown = await response.json()
  if (!response.ok || (typeof answer === 'object' && answer !== null && 'errors' in answer)) throw new Error(`${path} answered ${response.status}: ${JSON.stringify(answer)}`)
  return answer
}

function say(text: string): void {
  process.stdout.write(`${text}\n`)
}
