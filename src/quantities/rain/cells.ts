/** The cells of one line of a table in text; a cell in quotation marks may hold the separator, and two marks for one (RFC 4180). */
export function cellsOf(line: string, separator = ','): readonly string[] {
  if (!line.includes('"')) return line.split(separator)
  const cells: string[] = []
  let cell = ''
  let quoted = false
  for (let at = 0; at < line.length; at += 1) {
    const letter = line.charAt(at)
    if (quoted && letter === '"' && line.charAt(at + 1) === '"') {
      cell += letter
      at += 1
    } else if (letter === '"') quoted = !quoted
    else if (letter === separator && !quoted) {
      cells.push(cell)
      cell = ''
    } else cell += letter
  }
  return [...cells, cell]
}
