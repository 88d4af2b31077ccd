/** Catches what the service logs, line by line. */
export class LogLines {
  readonly lines: Record<string, unknown>[] = []
  text = ''

  readonly stream = {
    write: (line: string): void => {
      this.text += line
      this.lines.push(JSON.parse(line) as Record<string, unknown>)
    },
  }

  clear(): void {
    this.lines.length = 0
    this.text = ''
  }
}
