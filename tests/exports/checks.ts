import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Ajv2020 } from 'ajv/dist/2020.js'
import formats from 'ajv-formats'
import { strFromU8, unzipSync } from 'fflate'
import { validateXML } from 'xmllint-wasm'
import { oscalAsWritten, type Oscal } from './oscal-as-written.ts'

const published = readFileSync(join(import.meta.dirname, '../fixtures/published-schemas/sarif-2.1.0.json'))
/** As the README beside the schema states it. */
export const publishedDigest = createHash('sha256').update(published).digest('hex')

const ajv = new Ajv2020({ strict: false, allErrors: true })
formats.default(ajv)
const validateSarif = ajv.compile(JSON.parse(published.toString('utf8')) as object)

/** What the published schema of SARIF 2.1.0 has against a document; nothing when it is valid. */
export function sarifFaults(document: object): readonly string[] {
  const sent: unknown = JSON.parse(JSON.stringify(document))
  return validateSarif(sent) ? [] : (validateSarif.errors ?? []).map(({ instancePath, message, params }) => `${instancePath} ${message ?? ''} ${JSON.stringify(params)}`)
}

/** What the check of OSCAL has against a document, with every reference within it that leads nowhere. */
export function oscalFaults(document: object): readonly string[] {
  const parsed = oscalAsWritten.safeParse(JSON.parse(JSON.stringify(document)))
  if (!parsed.success) return parsed.error.issues.map(({ path, message }) => `${path.join('/')} ${message}`)
  return [...danglingIn(parsed.data['assessment-results']), ...twiceIn(parsed.data)]
}

/** NIST asks that what is referred to is there: parties, subjects, observations, risks, objectives and resources. */
function danglingIn(results: Oscal): readonly string[] {
  const { observations = [], risks = [], findings = [], 'local-definitions': local, 'assessment-log': log } = results.results[0] ?? failed('no result')
  const actors = new Set([...(results.metadata.parties ?? []), ...local['assessment-assets']['assessment-platforms']].map(({ uuid }) => uuid))
  const items = new Set((local['inventory-items'] ?? []).map(({ uuid }) => uuid))
  const seen = new Set(observations.map(({ uuid }) => uuid))
  const known = new Set(risks.map(({ uuid }) => uuid))
  const resources = new Set(results['back-matter'].resources.map(({ uuid }) => `#${uuid}`))
  const objectives = new Set(results['local-definitions']['objectives-and-methods'].flatMap(({ parts }) => parts.map(({ id }) => id)))
  const logged = [...(log?.entries ?? []), ...risks.flatMap((risk) => risk['risk-log']?.entries ?? [])]
  return [
    ...[...observations, ...risks, ...findings].flatMap(({ origins }) => origins.flatMap(({ actors: all }) => all.map((actor) => actor['actor-uuid']))).filter((id) => !actors.has(id)),
    ...logged.flatMap((entry) => entry['logged-by'].map((party) => party['party-uuid'])).filter((id) => !actors.has(id)),
    ...observations.flatMap(({ subjects }) => subjects.map((subject) => subject['subject-uuid'])).filter((id) => !items.has(id)),
    ...[...risks, ...findings].flatMap((one) => (one['related-observations'] ?? []).map((related) => related['observation-uuid'])).filter((id) => !seen.has(id)),
    ...findings.flatMap((one) => (one['related-risks'] ?? []).map((related) => related['risk-uuid'])).filter((id) => !known.has(id)),
    ...findings.map(({ target }) => target['target-id']).filter((id) => !objectives.has(id)),
    ...[results['import-ap'].href, ...observations.flatMap((one) => (one['relevant-evidence'] ?? []).map(({ href }) => href))].filter((href) => !resources.has(href)),
  ].map((id) => `${id} leads nowhere`)
}

function twiceIn(document: object): readonly string[] {
  const all = [...JSON.stringify(document).matchAll(/"uuid":"([^"]+)"/g)].map(([, uuid = '']) => uuid)
  return all.filter((uuid, index) => all.indexOf(uuid) !== index).map((uuid) => `${uuid} stands twice`)
}

function failed(why: string): never {
  throw new Error(why)
}

export type Files = Readonly<Record<string, string>>

/** The files of a BCF by their path; folders are left out. */
export function filesIn(bcf: Uint8Array): Files {
  return Object.fromEntries(Object.entries(unzipSync(bcf)).filter(([path]) => !path.endsWith('/')).map(([path, bytes]) => [path, strFromU8(bytes)]))
}

const bcfSchema = readFileSync(join(import.meta.dirname, 'bcf-as-written.xsd'), 'utf8')

/** What libxml2 and the check of BCF have against the files of one; and what a topic says that its extensions do not list. */
export async function bcfFaults(files: Files): Promise<readonly string[]> {
  const xml = Object.entries(files).map(([path, contents]) => ({ fileName: path.replaceAll('/', '-'), contents }))
  const { errors } = await validateXML({ xml, schema: bcfSchema, maxMemoryPages: 4_096 })
  return [...errors.map(({ rawMessage }) => rawMessage), ...unlisted(files), ...misplaced(files)]
}

const listed = { Label: 'TopicLabel', Priority: 'Priority', Stage: 'Stage', CreationAuthor: 'User', ModifiedAuthor: 'User', Author: 'User' } as const

function unlisted(files: Files): readonly string[] {
  const extensions = files['extensions.xml'] ?? ''
  const has = (list: string, word: string) => extensions.includes(`<${list}>${word}</${list}>`)
  return markupsIn(files).flatMap(([, markup]) => [
    ...Object.entries(listed).flatMap(([name, list]) => [...markup.matchAll(new RegExp(`<${name}>([^<]*)</${name}>`, 'g'))].flatMap(([, word = '']) => (has(list, word) ? [] : [`${list} "${word}" is not listed`]))),
    ...(['TopicType', 'TopicStatus'] as const).flatMap((name) => { const word = new RegExp(`${name}="([^"]*)"`).exec(markup)?.[1] ?? ''; return has(name, word) ? [] : [`${name} "${word}" is not listed`] }),
  ])
}

/** The folder of a topic has its GUID for a name; the root of each file is told by its path. */
function misplaced(files: Files): readonly string[] {
  const roots = Object.entries(files).filter(([path, text]) => !text.includes(`\n<${{ 'bcf.version': 'Version', 'project.bcfp': 'ProjectInfo', 'extensions.xml': 'Extensions' }[path] ?? 'Markup'}`))
  return [...roots.map(([path]) => `${path} has another root`), ...markupsIn(files).filter(([path, markup]) => !markup.includes(`Guid="${path.split('/')[0] ?? ''}"`)).map(([path]) => `${path} is of another topic`)]
}

export function markupsIn(files: Files): readonly (readonly [string, string])[] {
  return Object.entries(files).filter(([path]) => path.endsWith('/markup.bcf'))
}
