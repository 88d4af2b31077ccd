import { createHash } from 'node:crypto'
import { open } from 'node:fs/promises'
import { z } from 'zod'

/** The first line of a backup: what it is, and which migrations its tables have been through. */
export const backupHead = z.strictObject({ backup: z.literal('wythe'), format: z.literal(1), takenAt: z.string(), migrations: z.array(z.string()) })
export type BackupHead = z.infer<typeof backupHead>

const value = z.union([z.string(), z.number(), z.null()])
/** A row, as every line between the first and the last. */
export const backupRow = z.strictObject({ table: z.string(), row: z.record(z.string(), value) })
export type BackupRow = z.infer<typeof backupRow>

/** The last line. A backup without it is not whole. */
const backupEnd = z.strictObject({ rows: z.number() })

/** A backup that cannot be used, and in which line that shows. */
export class BackupDamaged extends Error {
  constructor(line: number, what: string) {
    super(`line ${line}: ${what}`)
  }
}

const linked = /^\{"link":"([0-9a-f]{64})",(.+)$/

/** Puts a link to everything before into each line, so that a damage shows in the line where it is. */
export function linkLines(): (content: object) => string {
  let link = ''
  return (content) => {
    // Readers of lines take these two for the end of one.
    const text = JSON.stringify(content).slice(1).replaceAll('\u2028', '\\u2028').replaceAll('\u2029', '\\u2029')
    link = linkAfter(link, text)
    return `{"link":"${link}",${text}\n`
  }
}

export interface BackupLine {
  readonly line: number
  readonly content: BackupRow
}

/** Reads a backup from its first line to its last. Throws where a link does not hold, and at the end where the end is missing. */
export async function* readBackup(file: string, seen: (head: BackupHead) => void): AsyncGenerator<BackupLine> {
  let [line, link, rows, ended] = [0, '', 0, false]
  const handle = await open(file)
  for await (const text of handle.readLines()) {
    line += 1
    if (ended) throw new BackupDamaged(line, 'there is more after the end of the backup')
    const [, told = '', rest = ''] = linked.exec(text) ?? []
    link = linkAfter(link, rest)
    if (told !== link) throw new BackupDamaged(line, line === 1 ? 'this is not the beginning of a backup, or not as it was written' : 'this line, or a line before it that is gone, is not as it was written')
    const content: unknown = JSON.parse(`{${rest}`)
    if (line === 1) seen(parsed(backupHead, content, line))
    else if (backupEnd.safeParse(content).success) ended = parsed(backupEnd, content, line).rows === rows
    else {
      rows += 1
      yield { line, content: parsed(backupRow, content, line) }
    }
  }
  if (!ended) throw new BackupDamaged(line, 'the backup ends here without its last line: it is not whole')
}

function linkAfter(link: string, text: string): string {
  return createHash('sha256').update(`${link}\n${text}`).digest('hex')
}

function parsed<T extends z.ZodType>(schema: T, content: unknown, line: number): z.output<T> {
  const read = schema.safeParse(content)
  if (!read.success) throw new BackupDamaged(line, `a line of another kind of backup: ${read.error.issues.map(({ path, message }) => `${path.join('.')} ${message}`).join('; ')}`)
  return read.data
}
