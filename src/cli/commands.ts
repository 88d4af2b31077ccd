import { parseArgs } from 'node:util'
import type { Catalog } from '../catalog/catalog.ts'
import { workingCatalog } from '../store/working-catalog.ts'
import { backUpTo, restoreFrom } from './backup.ts'
import { checkCatalogFolder } from './check-catalog.ts'
import { computeQuantity } from './compute-quantity.ts'
import { createTokenInStore } from './create-token.ts'
import { drawFile } from './draw-file.ts'
import { evaluateFile } from './evaluate-file.ts'
import { explainRule } from './explain-rule.ts'
import type { CommandResult } from './output.ts'
import { reportFile } from './report-file.ts'
import { cut, differences, sign, verify } from './releases.ts'

export const usage = `Usage:
  npm run wythe -- evaluate <opening.yaml> --jurisdiction us-xa-101-2400000 [--as-of 2026-03-01] [--hold-point headFlashing] [--json]
  npm run wythe -- evaluate <opening.yaml> --edition irc-2021
  npm run wythe -- draw <opening.yaml> [--kind elevation | section | flashingPattern | weepsAndTies] [--out drawing.svg] --jurisdiction us-xa-101-2400000 [--as-of 2026-03-01] [--edition irc-2021]
  npm run wythe -- report <opening.yaml> --jurisdiction us-xa-101-2400000 [--as-of 2026-03-01] [--hold-point headFlashing] --out report.html | --out report.pdf [--paper a4 | letter]
  npm run wythe -- explain <rule> [--jurisdiction us-xa-101-2400000] [--as-of 2026-03-01] [--edition irc-2021]
  npm run wythe -- compute <quantity> ["opening.width=6 ft"]… [--jurisdiction us-xa-101-2400000] [--as-of 2026-03-01] [--edition irc-2021] [--json]
  npm run wythe -- check-catalog [folder]
  npm run wythe -- release-differences <release> [release] [--json]
  npm run wythe -- cut-release <release> [--note <text>]
  npm run wythe -- sign-release <release> --private-key <file.pem>
  npm run wythe -- verify-release [release | --all] [--public-key <file.pem or folder>]
  npm run wythe -- create-token <title> [--evaluate] [--record | --project <id>…] [--amend us-xa-101]… [--administer] [--expires-at 2027-01-01T00:00:00Z]
  npm run wythe -- backup <new file>
  npm run wythe -- restore <file>
Each takes --catalog <folder>, but the last three, which take the settings of the service.
`

const misused: CommandResult = { text: usage, exitCode: 2 }

function parsed(args: readonly string[]) {
  return parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      jurisdiction: { type: 'string' }, 'as-of': { type: 'string' }, edition: { type: 'string' }, publication: { type: 'string' },
      'hold-point': { type: 'string' }, json: { type: 'boolean' }, catalog: { type: 'string', default: 'catalog' },
      evaluate: { type: 'boolean' }, record: { type: 'boolean' }, project: { type: 'string', multiple: true }, administer: { type: 'boolean' }, amend: { type: 'string', multiple: true }, 'expires-at': { type: 'string' },
      kind: { type: 'string' }, out: { type: 'string' }, paper: { type: 'string' }, note: { type: 'string' }, all: { type: 'boolean' }, 'public-key': { type: 'string' }, 'private-key': { type: 'string' },
    },
  })
}

type Options = ReturnType<typeof parsed>['values']
type Command = (operands: readonly string[], options: Options) => Promise<CommandResult>

const commands: ReadonlyMap<string, Command> = new Map<string, Command>([
  ['evaluate', withCatalog((file, { 'as-of': asOf, 'hold-point': holdPoint, jurisdiction, edition, publication, json }, catalog) =>
    evaluateFile(file, { asOf, holdPoint, jurisdiction, edition, publication, json }, catalog))],
  ['draw', withCatalog(async (file, { 'as-of': asOf, 'hold-point': holdPoint, jurisdiction, edition, publication, kind, out }, catalog) =>
    drawFile(file, { asOf, holdPoint, jurisdiction, edition, publication, kind, out }, catalog))],
  ['report', withCatalog((file, { 'as-of': asOf, 'hold-point': holdPoint, jurisdiction, edition, publication, out, paper }, catalog) =>
    reportFile(file, { asOf, holdPoint, jurisdiction, edition, publication, out, paper }, catalog))],
  ['explain', withCatalog(async (rule, { 'as-of': asOf, jurisdiction, edition, publication }, catalog) =>
    explainRule(rule, { asOf, jurisdiction, edition, publication }, catalog))],
  ['compute', withCatalog(async (quantity, { 'as-of': asOf, jurisdiction, edition, publication, json }, catalog, given) =>
    computeQuantity(quantity, given, { asOf, jurisdiction, edition, publication, json }, catalog))],
  ['check-catalog', ([folder], { catalog }) => checkCatalogFolder(folder ?? catalog)],
  ['cut-release', async ([release], { catalog, note }) => (release === undefined ? misused : cut(catalog, release, note))],
  ['verify-release', async ([release], { catalog, all, 'public-key': key }) => (all && release !== undefined ? misused : verify(catalog, release, key))],
  ['sign-release', async ([release], { catalog, 'private-key': key }) => (release === undefined || key === undefined ? misused : sign(catalog, release, key))],
  ['create-token', async ([title], { evaluate = false, record = false, project: projects = [], administer = false, amend = [], 'expires-at': expiresAt }) => (title === undefined ? misused : createTokenInStore({ title, evaluate, record, projects, administer, amend, expiresAt }))],
  ['backup', async ([file]) => (file === undefined ? misused : backUpTo(file))],
  ['restore', async ([file]) => (file === undefined ? misused : restoreFrom(file))],
  ['release-differences', async ([before, after], { catalog, json }) => (before === undefined ? misused : differences(catalog, before, after, json))],
])

/** Runs one command line; whoever calls decides where the text goes. */
export async function runCommand(args: readonly string[]): Promise<CommandResult> {
  try {
    const { values, positionals } = parsed(args)
    const [name = '', ...operands] = positionals
    return await (commands.get(name)?.(operands, values) ?? misused)
  } catch (error) {
    return { text: `${error instanceof Error ? error.message : String(error)}\n${usage}`, exitCode: 2 }
  }
}

function withCatalog(run: (subject: string, options: Options, catalog: Catalog, others: readonly string[]) => Promise<CommandResult>): Command {
  return async ([subject, ...others], options) => {
    if (subject === undefined) return misused
    const loaded = await workingCatalog(options.catalog)
    return loaded.ok ? run(subject, options, loaded.catalog, others) : checkCatalogFolder(options.catalog)
  }
}
