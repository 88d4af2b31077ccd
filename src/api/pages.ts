import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { FastifyPluginAsync } from 'fastify'
import type { Catalog } from '../catalog/catalog.ts'
import { outcomeWords, verdictMeanings, verdictWords } from '../evaluation/words.ts'
import { shapes } from '../report/shapes.ts'
import { answerLate } from './answer-late.ts'
import { sendProblem } from './send-problem.ts'
import { problemTypes, type ProblemCode } from './problems.ts'

export interface PageOptions {
  /** The folder with the explorer's script and style, gathered by the build. Without it there is no explorer. */
  readonly explorerDir?: string | undefined
}

/** Pages for people: one to try the service, what it is about, an explanation of each problem code, and the GraphQL explorer. */
export const pages: FastifyPluginAsync<PageOptions> = async (app, { explorerDir }) => {
  const hidden = { schema: { hide: true } }
  const tryPage = (await readFile(join(pageDir, 'index.html'), 'utf8')).replace('<!-- explorer -->', explorerDir === undefined ? '' : explorerItem)
  app.get('/', hidden, (_, reply) => reply.type(html).send(tryPage))
  app.get('/page/openings.json', hidden, () => ({ openings: examplesIn(app.deps.active.state.catalog) }))
  app.get('/page/words.json', hidden, () => ({ outcomes: outcomeWords, verdicts: verdictWords, meanings: verdictMeanings, shapes }))
  answerLate(app, ['/page/*'], async () => (await import('./page-files.ts')).pageFiles({ root: pageDir, prefix: '/page/', index: false }))
  app.get('/about', hidden, (_, reply) => reply.type(html).send(frontPage(explorerDir !== undefined)))
  app.get<{ Params: { code: string } }>('/problems/:code', hidden, (request, reply) => {
    const { code } = request.params
    if (!Object.hasOwn(problemTypes, code)) return sendProblem(request, reply, 'notFound', [{ code: 'notFound', pointer: '', detail: `There is no problem code "${code}".` }])
    return reply.type(html).send(problemPage(code as ProblemCode))
  })
  if (explorerDir === undefined) return
  answerLate(app, ['/explorer/*'], async () => (await import('./page-files.ts')).pageFiles({ root: explorerDir, prefix: '/explorer/', index: ['index.html'] }))
  app.get('/explorer', hidden, (_, reply) => reply.redirect('/explorer/'))
}

/** The files of the page to try the service, beside this code; the build takes them along. */
const pageDir = join(import.meta.dirname, '../page')
const explorerItem = '<li><a href="/explorer/">GraphQL explorer</a>: ask for just the fields you need</li>'

/** The openings that the catalog brings for demonstration, as requests; those found in the middle of the work come first. */
function examplesIn({ buildings }: Catalog): readonly object[] {
  const all = [...buildings.values()].flatMap(({ jurisdiction, publication, asOf, openings }) =>
    openings.map(({ story, opening, holdPoint }) => ({ title: story, request: { jurisdiction, ...(publication ? { publication } : {}), asOf, ...(holdPoint ? { holdPoint } : {}), opening } })))
  return all.length === 0 ? [{ title: 'An opening of which nothing is known', request: { opening: {} } }] : all.toSorted((a, b) => Number('holdPoint' in b.request) - Number('holdPoint' in a.request))
}

const html = 'text/html; charset=utf-8'

function page(title: string, body: string): string {
  return `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>${title}</title>
<style>body{font:1rem/1.5 system-ui,sans-serif;max-width:42rem;margin:2rem auto;padding:0 1rem}code{background:#eee;padding:.1em .3em}@media(prefers-color-scheme:dark){body{background:#111;color:#eee}a{color:#9cf}code{background:#333}}</style>
<main>${body}</main></html>`
}

function frontPage(withExplorer: boolean): string {
  return page('Wythe', `<h1>Wythe</h1>
<p>Checks window, door and vent openings in anchored brick veneer, and computes what the crew needs to build them.</p>
<ul><li><a href="/reference">API reference</a>: every REST route, with examples to try</li>${withExplorer ? explorerItem : ''}
<li><a href="/v1/jurisdictions">Jurisdictions</a>, <a href="/v1/rules">rules</a>, <a href="/v1/facts">facts</a> and <a href="/v1/hold-points">hold points</a> as JSON</li></ul>
<p><strong>Not a substitute</strong> for the adopted code text, the authority having jurisdiction or a licensed professional. The local code prevails.</p>`)
}

function problemPage(code: ProblemCode): string {
  const { title, status, mend } = problemTypes[code]
  return page(title, `<h1>${title}</h1><p><code>${code}</code>, HTTP status ${status}</p><p>${mend}</p>`)
}
