import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { parse } from 'yaml'
import type { CatalogCode, CatalogProblem } from '../../src/catalog/catalog.ts'
import { loadPatched, type Patch } from './small-catalog.ts'

/** One mistake in an otherwise sound catalog, and everything that loading it has to say. */
interface Mistake extends Patch {
  readonly mistake: string
  readonly expect: readonly (Omit<CatalogProblem, 'detail'> & { readonly detail: readonly string[] })[]
}

const folder = join(import.meta.dirname, '../fixtures/broken-catalogs')
const files = readdirSync(folder).toSorted()

/** A new code does not compile here until it is listed, and does not pass below until there is a mistake for it. */
const codes: Readonly<Record<CatalogCode, true>> = {
  unreadableFile: true, unknownDocument: true, shape: true, duplicate: true, misplacedFile: true,
  unknownFact: true, unknownPublication: true, unknownRule: true, unknownTable: true, unknownCaution: true, unknownQuantity: true,
  unknownJurisdiction: true, circularJurisdiction: true, unitMismatch: true, pairMismatch: true, printedConflictUnneeded: true, sourceMissing: true, comparatorMismatch: true,
  overlappingAdoption: true, staleAmendment: true, unknownTarget: true, insertionExists: true, competingModifications: true,
  lessStringent: true, localAmendmentProhibited: true, exampleMissing: true, exampleFailed: true,
}

test('the small catalog loads as long as nothing is changed in it', async () => {
  expect(await loadPatched({})).toMatchObject({ ok: true })
})

test('there is at least one mistake for every code', () => {
  expect([...new Set(files.map((file) => file.split('.')[0]))].toSorted()).toEqual(Object.keys(codes).toSorted())
})

test.each(files)('%s is refused with exactly the problems it states', async (file) => {
  const mistake = parse(readFileSync(join(folder, file), 'utf8')) as Mistake
  const loaded = await loadPatched(mistake)
  const problems = loaded.ok ? [] : loaded.problems
  expect(problems.map(placeOf).toSorted(), mistake.mistake).toEqual(mistake.expect.map(placeOf).toSorted())
  expect(problems.map(({ code }) => code)).toContain(file.split('.')[0])
  for (const wanted of mistake.expect) {
    const told = problems.filter((problem) => placeOf(problem) === placeOf(wanted)).map(({ detail }) => detail).join('\n')
    for (const part of wanted.detail) expect(told).toContain(part)
  }
})

function placeOf({ code, path, pointer }: Omit<CatalogProblem, 'detail'>): string {
  return `${code} at ${path}#${pointer}`
}
