import type { Browser } from 'playwright-core'

/** A page as it comes out of the printer, read as the bytes that a PDF leaves uncompressed. */
export async function printed(browser: Browser, html: string, format: 'A4' | 'Letter'): Promise<string> {
  const page = await browser.newPage()
  await page.setContent(html)
  const pdf = await page.pdf({ format, preferCSSPageSize: true, printBackground: true })
  await page.close()
  return pdf.toString('latin1')
}

export function pagesOf(pdf: string): number {
  return [...pdf.matchAll(/\/MediaBox /g)].length
}

/** The page with the first words and the end of every finding and every row under ids, and a link to each, since only what is linked to is named in a PDF. The first words are named a little below their upper edge, which may be the edge of two pages. */
export function withBounds(html: string): { readonly page: string; readonly count: number } {
  let count = 0
  const bounded = html.replaceAll(/(<article class="finding miss"[^>]*><h4)(>[\s\S]*?)(<\/article>)|(<tr><th scope="row">)([\s\S]*?)(<\/th>[\s\S]*?)(<\/t[hd]><\/tr>)/g, (...[, article = '', card = '', end = '', row = '', name = '', cells = '', closed = '']: readonly string[]) => {
    count += 1
    const first = `id="first-${count}" style="position:relative;top:3px"`
    const last = `<span id="last-${count}"></span>`
    return article === '' ? `${row}<span ${first}>${name}</span>${cells}${last}${closed}` : `${article} ${first}${card}${last}${end}`
  })
  const links = Array.from({ length: count }, (_, index) => `<a href="#first-${index + 1}">.</a><a href="#last-${index + 1}">.</a>`).join('')
  return { page: bounded.replace(/<meta http-equiv[^>]*>/, '').replace('</body>', `<nav style="break-before:page">${links}</nav></body>`), count }
}

/** On which page each begins and ends, by the destinations that the PDF names. */
export function boundsIn(pdf: string): ReadonlyMap<string, { readonly first: string; readonly last: string }> {
  const places = new Map([...pdf.matchAll(/\/(first|last)-(\d+) \[(\d+) 0 R/g)].map(([, end, number, page]) => [`${end ?? ''} ${number ?? ''}`, page ?? '']))
  const numbers = [...places.keys()].flatMap((key) => (key.startsWith('first ') ? [key.slice('first '.length)] : []))
  return new Map(numbers.flatMap((number) => {
    const [first, last] = [places.get(`first ${number}`), places.get(`last ${number}`)]
    return first === undefined || last === undefined ? [] : [[number, { first, last }] as const]
  }))
}
