import { z } from 'zod'
import { digestOf } from '../catalog/digest.ts'

/** How many characters of the digest a cursor carries; enough that none fits another list by chance. */
const bindingLength = 16

interface Listing {
  readonly name: string
  readonly input: z.ZodObject
  readonly output: z.ZodType
}

export interface Cursors {
  /** The key behind a cursor; undefined when it was made for something else. */
  readonly open: (cursor: string) => string | undefined
  readonly seal: (key: string) => string
}

/** Whether an operation answers page by page. */
export function isPaged({ input, output }: Listing): boolean {
  return 'after' in input.shape && output instanceof z.ZodObject && 'nextCursor' in output.shape
}

/** Cursors that fit one list only: the same operation with the same filters, and over the catalog the same release. */
export function cursorsFor({ name }: Listing, asked: object, release: string | null): Cursors {
  const filters = Object.entries(asked).filter(([key, value]) => key !== 'first' && key !== 'after' && value !== null && value !== undefined)
  const binding = digestOf({ name, release, filters: Object.fromEntries(filters) }).slice(-bindingLength)
  return {
    seal: (key) => Buffer.from(`${binding}${key}`).toString('base64url'),
    open: (cursor) => {
      const text = Buffer.from(cursor, 'base64url').toString()
      return text.startsWith(binding) ? text.slice(bindingLength) : undefined
    },
  }
}
