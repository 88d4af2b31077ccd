import { html, type Markup } from './markup.ts'
import { list } from './table.ts'

/** By what a report was made, such that anybody can make it again. */
export interface Origin {
  /** Where the service is reached, without a slash at the end. */
  readonly publicUrl: string
  /** The path under which the same answer is read again; null where nothing was kept. */
  readonly path: string | null
  /** The request that was evaluated, as it would be sent to /v1/evaluations; null where the record of a building was read. */
  readonly request: unknown
}

interface Stamp {
  readonly catalog: { readonly release: string; readonly digest: string }
  readonly method?: string
  readonly digest?: string
}

/** Release, digests, address and the exact request: what makes a report reproducible. */
export function reproduction({ publicUrl, path, request }: Origin, { catalog, method, digest }: Stamp): Markup {
  const address = path === null ? `${publicUrl}/` : `${publicUrl}${path}`
  return html`<section class="reproduction" aria-labelledby="again"><h2 id="again">How to reproduce this</h2>
${list([
    ['Catalog', `release ${catalog.release}`], ['Digest of the catalog', html`<code>${catalog.digest}</code>`],
    ['Method', method ?? null], ['Digest of the evaluation', digest === undefined ? null : html`<code>${digest}</code>`],
    [path === null ? 'Service' : 'Read it again', html`<a href="${address}">${address}</a>`],
  ])}
${request !== null && html`<p>Equal digest means the same answer for the same reasons. The request:</p><pre tabindex="0" role="region" aria-label="The request">${curlOf(publicUrl, request)}</pre>`}</section>`
}

/** A call that a POSIX shell takes as it stands. It may be broken where JSON has spaces, as paper is narrow. */
export function curlOf(publicUrl: string, request: unknown): string {
  return `curl -s ${publicUrl}/v1/evaluations -H 'content-type: application/json' -d '${JSON.stringify(request, null, 1).replaceAll(/\n\s*/g, ' ').replaceAll("'", String.raw`'\''`)}'`
}
