/** The commands of a shell text as lists of words: quotes, backslashes and comments as a shell reads them, no expansion. */
export function shellWords(text: string): readonly (readonly string[])[] {
  const commands: string[][] = [[]]
  let word: string | undefined
  const endWord = () => { if (word !== undefined) commands.at(-1)?.push(word); word = undefined }
  for (const [piece] of text.matchAll(/'[^']*'|"(?:\\.|[^"\\])*"|\\[\s\S]|#[^\n]*|[ \t]+|\n|&&|[^'"\\\s#&]+|[&#]/g)) {
    if (/^[ \t]/.test(piece) || piece === '\\\n') endWord()
    else if (piece === '\n' || piece === '&&') { endWord(); commands.push([]) }
    else if (!piece.startsWith('#') || word !== undefined) word = `${word ?? ''}${unquoted(piece)}`
  }
  endWord()
  return commands.filter((words) => words.length > 0)
}

function unquoted(piece: string): string {
  if (piece.startsWith("'")) return piece.slice(1, -1)
  if (piece.startsWith('"')) return piece.slice(1, -1).replaceAll(/\\(["\\$`])/g, '$1')
  return piece.startsWith('\\') ? piece.slice(1) : piece
}
