import { resolve } from 'node:path'
import { readConfig } from '../config.ts'
import { backUp } from '../store/back-up.ts'
import { restore } from '../store/restore.ts'
import type { CommandResult } from './output.ts'

/** Backs up the store that the environment names, while services may use it. */
export async function backUpTo(file: string): Promise<CommandResult> {
  return saying(async () => {
    const rows = await backUp(readConfig(process.env), file, new Date().toISOString())
    return { text: `${rowsText(rows)}\nin ${resolve(file)}, which holds hashes of tokens: keep it where only its owner reads it\n`, exitCode: 0 }
  })
}

/** Fills the store that the environment names, which must be empty. */
export async function restoreFrom(file: string): Promise<CommandResult> {
  return saying(async () => {
    const { takenAt, rows, broken } = await restore(readConfig(process.env), file)
    const told = broken.map(({ project, sequence }) => `The journal of project ${project} does not hold from entry ${sequence} on. It did not when it was backed up.\n`)
    return { text: `${rowsText(rows)}\nas they were at ${takenAt}\n${told.length === 0 ? 'The chain of every journal holds.\n' : told.join('')}`, exitCode: told.length === 0 ? 0 : 1 }
  })
}

function rowsText(rows: Readonly<Record<string, number>>): string {
  return Object.entries(rows).map(([table, count]) => `${String(count).padStart(8)} ${table.replaceAll(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)}`).join('\n')
}

/** The command is right, and its subject is not: no usage is shown. */
async function saying(work: () => Promise<CommandResult>): Promise<CommandResult> {
  try {
    return await work()
  } catch (error) {
    return { text: `${error instanceof Error ? error.message : String(error)}\n`, exitCode: 1 }
  }
}
