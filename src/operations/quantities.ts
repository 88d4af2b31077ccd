import { z } from 'zod'
import type { Catalog } from '../catalog/catalog.ts'
import { evidence } from '../catalog/limit.ts'
import type { Parameter } from '../catalog/reference.ts'
import { part } from '../catalog/rule.ts'
import type { FactDefinition } from '../opening/fact.ts'
import { facts } from '../opening/facts.ts'
import { askedBy } from '../quantities/asked-by.ts'
import type { QuantityDefinition } from '../quantities/define.ts'
import { quantities } from '../quantities/index.ts'
import { baseUnits, type Dimension } from '../units/dimension.ts'
import { defineOperation, notFound } from './operation.ts'
import { page, pageOf, paging } from './page.ts'

const text = z.string()

const summaryShape = {
  quantity: text,
  title: text,
  part,
  unit: text.nullable().meta({ description: 'UCUM code of the unit in which it is answered; null for a text.' }),
  choices: z.array(text).meta({ description: 'What a text may be, where only some are possible.' }),
  formula: text,
  indicative: z.boolean().meta({ description: 'Only orders or compares; not a figure to build by.' }),
  needsLicensedProfessional: z.boolean(),
  inEvaluations: z.boolean().meta({ description: 'False where it is long to compute or to read, and has to be asked for by itself.' }),
}

const quantitySummary = z.strictObject(summaryShape).meta({ id: 'QuantitySummary' })

const inputView = z
  .strictObject({
    from: text.meta({ description: 'How to give it: `given: [{ from, value }]`.' }),
    kind: z.enum(['fact', 'rule', 'parameter', 'table', 'quantity']).meta({ id: 'InputKind' }),
    title: text,
    unit: text.nullable(),
    choices: z.array(text),
    perEnd: z.boolean(),
    usual: text.nullable().meta({ description: 'The figure of the catalog, where there is one.' }),
  })
  .meta({ id: 'QuantityInputView' })

const quantityView = z
  .strictObject({
    ...summaryShape,
    asks: z.array(inputView).meta({ description: 'What it computes with itself.' }),
    facts: z.array(text).meta({ description: 'Every fact that it or a quantity it builds on may ask for.' }),
    sources: z.array(z.strictObject({ title: text, locator: text, evidence, readIn: text.nullable() }).meta({ id: 'FormulaSource' })).meta({ description: 'Of the formula; figures bring their own.' }),
  })
  .meta({ id: 'QuantityDetail' })

export const listQuantities = defineOperation({
  name: 'listQuantities',
  summary: 'List the quantities that can be computed',
  description: 'Each with its formula in words and its unit. Any of them can be computed by itself with "computation".',
  input: z.strictObject({ part: part.nullish().meta({ description: 'Only those of this part.' }), ...paging }),
  output: pageOf(quantitySummary, 'QuantityPage'),
  keyOf: ({ quantity }) => quantity,
  answer: (_, { part, ...paging }) => page(quantities.filter((one) => !part || one.part === part).map(summaryOf), ({ quantity }) => quantity, paging),
})

export const readQuantity = defineOperation({
  name: 'readQuantity',
  summary: 'Read one quantity',
  description: 'What it is computed with, by which formula and from which source.',
  input: z.strictObject({ quantity: text.max(200).meta({ description: 'The id of the quantity.', examples: ['lintel.lightest-angle'] }) }),
  output: quantityView,
  answer: ({ catalog }, { quantity: id }) => {
    const definition = byId.get(id)
    return definition ? { ok: true, value: viewOf(definition, catalog) } : notFound('quantity', id)
  },
})

const byId = new Map(quantities.map((definition) => [definition.id, definition]))

function summaryOf({ id, title, part, dimension, choices = [], formula, indicative, structural, onRequest }: QuantityDefinition): z.infer<typeof quantitySummary> {
  return { quantity: id, title, part, unit: unitOf(dimension), choices: [...choices], formula, indicative, needsLicensedProfessional: structural, inEvaluations: !onRequest }
}

function viewOf(definition: QuantityDefinition, catalog: Catalog): z.infer<typeof quantityView> {
  const everything = askedBy(definition)
  return {
    ...summaryOf(definition),
    asks: definition.asks.map((from) => inputOf(from, catalog)),
    facts: [...facts.keys()].filter((path) => everything.has(path)),
    sources: definition.sources.map((source) => ({ ...source, readIn: source.readIn ?? null })),
  }
}

type InputView = z.infer<typeof inputView>

function inputOf(from: string, { rules, parameters, tables }: Catalog): InputView {
  const id = idIn(from)
  if (from.startsWith('rule ')) return { ...plain(from, 'rule'), title: rules.get(id)?.title ?? id }
  if (from.startsWith('table ')) return { ...plain(from, 'table'), title: tables.get(id)?.title ?? id }
  if (from.startsWith('parameter ')) return parameterInput(from, parameters.get(id))
  return from.startsWith('quantity ') ? quantityInput(from, byId.get(id)) : factInput(from, facts.get(from))
}

function parameterInput(from: string, parameter: Parameter | undefined): InputView {
  return parameter ? { ...plain(from, 'parameter'), title: parameter.title, usual: parameter[parameter.governing] } : plain(from, 'parameter')
}

function quantityInput(from: string, quantity: QuantityDefinition | undefined): InputView {
  return quantity ? { ...plain(from, 'quantity'), title: quantity.title, unit: unitOf(quantity.dimension), choices: [...(quantity.choices ?? [])] } : plain(from, 'quantity')
}

function factInput(from: string, fact: FactDefinition | undefined): InputView {
  return fact ? { ...plain(from, 'fact'), title: fact.title, unit: unitOf(fact.dimension ?? null), choices: [...(fact.choices ?? [])], perEnd: fact.perEnd } : plain(from, 'fact')
}

function plain(from: string, kind: InputView['kind']): InputView {
  return { from, kind, title: idIn(from), unit: null, choices: [], perEnd: false, usual: null }
}

function idIn(from: string): string {
  return from.slice(from.indexOf(' ') + 1)
}

function unitOf(dimension: Dimension | null): string | null {
  return dimension === null ? null : baseUnits[dimension]
}
