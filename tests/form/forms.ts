import { makeForm, type Subject } from '../../src/form/make-form.ts'
import { resolveRules } from '../../src/catalog/resolve.ts'
import { describePart } from '../../src/opening/describe.ts'
import type { HoldPoint } from '../../src/opening/hold-points.ts'
import { realCatalog } from '../catalog/real-catalog.ts'

export interface Where {
  readonly jurisdiction?: string
  readonly asOf: string
  readonly edition?: string
  readonly publication?: string
}

export const city: Where = { jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' }
export const published: Where = { edition: 'irc-2021', asOf: '2026-03-01' }

/** A question as it stands in a form. */
export interface Question {
  readonly title: string
  readonly description: string
  readonly type?: string
  readonly $ref?: string
  readonly enum?: readonly string[]
  readonly 'x-values'?: readonly unknown[]
  readonly 'x-fact': string
  readonly 'x-member'?: 'left' | 'right'
  readonly 'x-mandatory': boolean
  readonly 'x-why': readonly string[]
  readonly 'x-computes': readonly string[]
  readonly 'x-order': number
  readonly 'x-hiddenBy'?: HoldPoint
  readonly 'x-between'?: readonly [string, string]
  readonly 'x-drawn'?: string
  readonly 'x-lastRead'?: object
}

interface Section {
  readonly title: string
  readonly description: string
  readonly properties?: Readonly<Record<string, Question>>
  readonly 'x-order': number
}

export interface FormDocument {
  readonly $schema: string
  readonly $id: string
  readonly title: string
  readonly description: string
  readonly properties: Readonly<Record<string, Section>>
  readonly $defs: Readonly<Record<string, { readonly pattern?: string }>>
  readonly 'x-rules': Readonly<Record<string, { readonly title: string; readonly force: string; readonly required: string; readonly source: string; readonly locator: string; readonly chain: readonly string[] }>>
  readonly 'x-quantities': Readonly<Record<string, { readonly title: string }>>
  readonly 'x-covered': readonly { readonly question: string; readonly why: readonly string[] }[]
}

const catalog = await realCatalog()

/** A form for no opening in particular, but for what is said of it. */
export function formFor(holdPoint: HoldPoint, { jurisdiction, asOf, edition, publication }: Where = city, known: object = { opening: { kind: 'window' } }, more: Partial<Subject> = {}): FormDocument {
  const ruleSet = resolveRules(catalog, { jurisdiction: jurisdiction ?? null, asOf, edition, publication })
  const opening = describePart(known)
  if (!ruleSet.ok || !opening.ok) throw new Error('there is no form for this')
  return makeForm({ opening: opening.value, holdPoint, known: null, about: 'window', ...more }, ruleSet.value, catalog).schema as unknown as FormDocument
}

export function questionsIn({ properties }: FormDocument): readonly (readonly [string, Question])[] {
  return Object.values(properties).flatMap((section) => Object.entries(section.properties ?? {}))
}

export function sectionsIn({ properties }: FormDocument): Readonly<Record<string, readonly string[]>> {
  return Object.fromEntries(Object.entries(properties).filter(([name]) => name !== 'note').map(([name, section]) => [name, Object.keys(section.properties ?? {})]))
}
