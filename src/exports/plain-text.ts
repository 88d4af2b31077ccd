const replacement = '�'

/** Text in one line without a blank at either end; a dash where nothing is left of it. */
export function line(text: string): string {
  const plain = text.replaceAll(/[\s\p{Cc}]+/gu, ' ').trim()
  return plain === '' ? '–' : plain
}

/** Characters that XML 1.0 has no way to write; each is shown as replaced rather than left out in silence. */
const notInXml = /[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu

export function xmlCharacters(text: string): string {
  return text.replaceAll(notInXml, replacement)
}

/** OSCAL knows no other years. */
const [earliest, latest] = ['1900', '3000']

/** An instant in UTC. A clock that was never set is passed over for the time of arrival. */
export function instant(at: string, receivedAt: string): string {
  const read = Date.parse(at)
  const utc = Number.isNaN(read) ? receivedAt : new Date(read).toISOString()
  return utc >= earliest && utc < latest ? utc : receivedAt
}
