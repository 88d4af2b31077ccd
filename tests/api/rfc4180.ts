/**
 * The grammar of RFC 4180, section 2, read rule by rule: records end in CRLF, a field is plain text or stands in quotes,
 * a quote within quotes is doubled, every record has as many fields as the first. Throws at the first place that breaks it.
 */
export function rfc4180Records(text: string): readonly (readonly string[])[] {
  const records: string[][] = [[]]
  let at = 0
  while (at < text.length) {
    const field = /^(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/.exec(text.slice(at))
    if (!field) throw new Error(`no field of RFC 4180 at ${at}: ${JSON.stringify(text.slice(at, at + 40))}`)
    const [whole, quoted, plain = '', end] = field
    records.at(-1)?.push(quoted === undefined ? plain : quoted.replaceAll('""', '"'))
    at += whole.length
    if (end === '\r\n' && at < text.length) records.push([])
  }
  const widths = new Set(records.map(({ length }) => length))
  if (widths.size !== 1) throw new Error(`records of ${[...widths].join(' and ')} fields`)
  return records
}
