import { parseArgs } from 'node:util'
import { loadCatalog } from '../store/load-catalog.ts'
import { checkCatalogFolder } from './check-catalog.ts'
import { evaluateFile } from './evaluate-file.ts'
import { explainRule } from './explain-rule.ts'
import type { CommandResult } from './output.ts'

const usage = `Usage:
  npm run wythe -- evaluate <opening.yaml> --jurisdiction us-xa-101-2400000 [--as-of 2026-03-01] [--hold-point headFlashing] [--json]
  npm run wythe -- evaluate <opening.yaml> --edition irc-2021
  npm run wythe -- explain <rule> [--jurisdiction us-xa-101-2400000] [--as-of 2026-03-01] [--edition irc-2021]
  npm run wythe -- check-catalog [folder]
`

async function run(args: readonly string[]): Promise<CommandResult> {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      jurisdiction: { type: 'string' }, 'as-of': { type: 'string' }, edition: { type: 'string' }, publication: { type: 'string' },
      'hold-point': { type: 'string' }, json: { type: 'boolean' }, catalog: { type: 'string', default: 'catalog' },
    },
  })
  const [command, subject] = positionals
  if (command === 'check-catalog') return checkCatalogFolder(subject ?? values.catalog)
  if ((command !== 'evaluate' && command !== 'explain') || subject === undefined) return { text: usage, exitCode: 2 }
  const loaded = await loadCatalog(values.catalog)
  if (!loaded.ok) return checkCatalogFolder(values.catalog)
  const { 'as-of': asOf, 'hold-point': holdPoint, jurisdiction, edition, publication, json } = values
  return command === 'explain'
    ? explainRule(subject, { asOf, jurisdiction, edition, publication }, loaded.catalog)
    : evaluateFile(subject, { asOf, holdPoint, jurisdiction, edition, publication, json }, loaded.catalog)
}

const result = await run(process.argv.slice(2)).catch((error: unknown): CommandResult => ({ text: `${error instanceof Error ? error.message : String(error)}\n${usage}`, exitCode: 2 }))
const stream = result.exitCode === 2 ? process.stderr : process.stdout
stream.write(result.text)
process.exitCode = result.exitCode
