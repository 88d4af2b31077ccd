export function row(...cells: readonly string[]): string {
  return `| ${cells.join(' | ')} |\n`
}

/** A table in Markdown: the first column of words, the others of figures. */
export function table(heads: readonly string[], rows: readonly string[]): string {
  return [row(...heads), row('---', ...heads.slice(1).map(() => '---:')), ...rows].join('')
}

export function medianOf(numbers: readonly number[]): number {
  return numbers.toSorted((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? NaN
}
