import { z } from 'zod'
import type { Catalog } from '../catalog/catalog.ts'
import { part } from '../catalog/rule.ts'
import { factsIn } from '../evaluation/condition.ts'
import { facts } from '../opening/facts.ts'
import { holdPointId, holdPoints } from '../opening/hold-points.ts'
import type { FactDefinition } from '../opening/fact.ts'
import { baseUnits } from '../units/dimension.ts'
import { defineOperation } from './operation.ts'
import { page, pageOf, paging } from './page.ts'

const text = z.string()

const factView = z
  .strictObject({
    fact: text,
    title: text,
    help: text,
    kind: z.enum(['quantity', 'boolean', 'choice', 'section']).meta({ id: 'FactKind' }),
    dimension: text.nullable(),
    unit: text.nullable().meta({ description: 'UCUM code of the unit in which it is kept.' }),
    choices: z.array(text),
    least: text.nullable(),
    greatest: text.nullable(),
    perEnd: z.boolean().meta({ description: 'Has a left and a right, seen from outside.' }),
    seenFrom: holdPointId,
    hiddenBy: holdPointId.nullable(),
    usedBy: z.array(text).meta({ description: 'Rules that ask for it.' }),
  })
  .meta({ id: 'Fact' })

export const listFacts = defineOperation({
  name: 'listFacts',
  summary: 'List the facts of an opening',
  description: 'Every fact that a description may hold: its words, unit, allowed values, when it can be seen and what hides it.',
  input: z.strictObject({ part: part.nullish().meta({ description: 'Only facts that rules of this part use.' }), seenFrom: holdPointId.nullish().meta({ description: 'Only facts first seen at this hold point.' }), ...paging }),
  output: pageOf(factView, 'FactPage'),
  keyOf: ({ fact }) => fact,
  answer: ({ catalog }, { part, seenFrom, ...paging }) => {
    const users = usersOf(catalog, part ?? undefined)
    const wanted = [...facts].map(([path, definition]) => viewOf(path, definition, users.get(path) ?? [])).filter((one) => (!part || one.usedBy.length > 0) && (!seenFrom || one.seenFrom === seenFrom))
    return page(wanted, ({ fact }) => fact, paging)
  },
})

const holdPointView = z
  .strictObject({ id: holdPointId, order: z.int().min(0).max(1_000_000), title: text, kind: z.enum(['hold', 'witness', 'selfCheck']).meta({ id: 'HoldPointKind' }), hides: text.nullable(), facts: z.array(text).meta({ description: 'Facts first seen here.' }), rules: z.array(text).meta({ description: 'Rules to be seen here.' }) })
  .meta({ id: 'HoldPoint' })

export const listHoldPoints = defineOperation({
  name: 'listHoldPoints',
  summary: 'List the hold points',
  description: 'The order of the work, with what each stage hides, the facts first seen at it and the rules to be seen at it.',
  input: z.strictObject({}),
  output: z.strictObject({ items: z.array(holdPointView) }).meta({ id: 'HoldPointList' }),
  answer: ({ catalog }) => ({
    ok: true,
    value: {
      items: holdPoints.map(({ id, title, kind, hides }, order) => ({
        id, order, title, kind, hides,
        facts: [...facts].filter(([, { from }]) => from === id).map(([path]) => path),
        rules: [...catalog.rules.values()].filter(({ holdPoint }) => holdPoint === id).map(({ rule }) => rule),
      })),
    },
  }),
})

function viewOf(fact: string, definition: FactDefinition, usedBy: readonly string[]): z.infer<typeof factView> {
  const { title, help, kind, dimension, choices, between, perEnd, from, hiddenBy } = definition
  return {
    fact, title, help, kind, dimension: dimension ?? null, unit: dimension ? baseUnits[dimension] : null, choices: [...(choices ?? [])],
    least: between?.[0] ?? null, greatest: between?.[1] ?? null, perEnd, seenFrom: from, hiddenBy: hiddenBy ?? null, usedBy: [...usedBy],
  }
}

function usersOf({ rules }: Catalog, part: string | undefined): ReadonlyMap<string, readonly string[]> {
  const pairs = [...rules.values()].filter((rule) => part === undefined || rule.part === part).flatMap((rule) => {
    const paths = [...('fact' in rule.check ? [rule.check.fact] : []), ...(rule.appliesWhen ? factsIn(rule.appliesWhen) : [])]
    return [...new Set(paths)].map((path) => [path, rule.rule] as const)
  })
  return new Map(pairs.map(([path]) => [path, pairs.filter((pair) => pair[0] === path).map(([, rule]) => rule)]))
}
