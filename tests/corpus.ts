import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'yaml'
import type { Catalog } from '../src/catalog/catalog.ts'
import type { FactDefinition } from '../src/opening/fact.ts'
import { facts } from '../src/opening/facts.ts'
import { readTexts, root } from './read-sources.ts'

/** An opening description under a name that tells where it comes from. */
export interface Described {
  readonly name: string
  readonly description: unknown
}

/** A way to build that the fully described window is changed into, and the facts that are then tried at their extremes. */
interface Variation {
  readonly name: string
  readonly change: Readonly<Record<string, unknown>>
  readonly vary: readonly string[]
}

/** Every opening the tests know: the buildings of the catalog, the fixtures, and the fully described window with one thing changed at a time. */
export function corpus({ buildings }: Catalog): readonly Described[] {
  const fixtures = [...readTexts('tests/fixtures/openings', '.yaml')].map(([name, text]): Described => ({ name, description: parse(text) }))
  const shown = [...buildings.values()].flatMap(({ building, openings }) => openings.map(({ story, opening }) => ({ name: `${building}: ${story}`, description: opening })))
  const full = fixtures.find(({ name }) => name === 'baseline-window.yaml')?.description
  return [...fixtures, ...shown, ...oneChange('baseline', full, [...facts.keys()]), ...variations().flatMap((variation) => varied(variation, full))]
}

function variations(): readonly Variation[] {
  return parse(readFileSync(join(root, 'tests/fixtures/corpus-variations.yaml'), 'utf8')) as Variation[]
}

function varied({ name, change, vary }: Variation, full: unknown): readonly Described[] {
  const description = Object.entries(change).reduce((document, [path, value]) => changed(document, path, value), full)
  return [{ name, description }, ...oneChange(name, description, [...facts.keys()].filter((path) => vary.some((start) => path.startsWith(start))))]
}

/** The same description with one fact at each of its extremes: every choice, true and false, the least and greatest believable. */
function oneChange(name: string, description: unknown, paths: readonly string[]): readonly Described[] {
  return paths.flatMap((path) => extremes(facts.get(path)).map((value) => ({ name: `${name}, ${path} ${value}`, description: changed(description, path, value) })))
}

function extremes(fact: FactDefinition | undefined): readonly (string | number | boolean)[] {
  if (fact?.kind === 'boolean') return [true, false]
  if (fact?.kind === 'choice') return fact.choices ?? []
  const bounds = fact?.between ?? []
  return fact?.dimension === 'count' ? bounds.map(Number) : bounds
}

/** A copy in which one fact has another value; null takes it away. */
function changed(description: unknown, path: string, value: unknown): unknown {
  const copy: unknown = structuredClone(description)
  const keys = path.split('.')
  const last = keys.pop() ?? ''
  const part = keys.reduce<Record<string, unknown>>((inner, key) => (inner[key] ??= {}) as Record<string, unknown>, copy as Record<string, unknown>)
  part[last] = value
  return copy
}
