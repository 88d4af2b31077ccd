import type { Limit } from '../../src/catalog/limit.ts'
import type { Rule } from '../../src/catalog/rule.ts'
import type { ResolvedRule } from '../../src/catalog/rule-set.ts'
import type { Finding } from '../../src/evaluation/document.ts'
import { judge, type Subject } from '../../src/evaluation/judge.ts'
import { describeOpening } from '../../src/opening/describe.ts'
import type { Opening } from '../../src/opening/opening.ts'

type Facts = Readonly<Record<string, unknown>>

const given: Facts = { 'opening.kind': 'window', 'opening.width': '48 in', 'opening.height': '60 in' }

/** The document of an opening from facts by path; an entry without a dot stands for the whole document. */
export function documentOf(facts: Facts): Record<string, unknown> {
  const document: Record<string, unknown> = {}
  for (const [path, value] of Object.entries({ ...given, ...facts })) {
    const keys = path.split('.')
    const last = keys.pop() ?? path
    const part = keys.reduce((inner, key) => (inner[key] ??= {}) as Record<string, unknown>, document)
    part[last] = value
  }
  return document
}

export function openingWith(facts: Facts): Opening {
  const described = describeOpening(documentOf(facts))
  if (!described.ok) throw new Error(described.problems.map(({ pointer, detail }) => `${pointer} ${detail}`).join('\n'))
  return described.value
}

export const citation = { publication: 'irc', editions: ['2021'], locator: 'R703', evidence: 'memory' as const, lastReviewed: '2026-11-25' }

/** A limit that is the same in both unit systems, unless the other figure is given. */
export function amount(inchPound: string, si = inchPound): Limit {
  return { ...citation, governing: 'inchPound', inchPound, si }
}

export function resolvedRule(rule: Partial<Rule> & Pick<Rule, 'check'>, limit: Limit): ResolvedRule {
  const whole: Rule = {
    rule: 'test.rule', revision: 1, title: 'A rule', topic: 'lintel', part: 'head', holdPoint: 'lintelSet', status: 'inForce', statement: 'A statement.', force: 'mandatory',
    limits: [limit], remedy: { beforeCoverUp: 'Mend it.', afterCoverUp: 'Open the wall.' }, cautions: ['engineer'], examples: [], ...rule,
  }
  return { rule: whole, limit, comparator: limit.comparator ?? whole.check.comparator, chain: [] }
}

const engineer = { caution: 'engineer', title: 'Ask an engineer', text: 'A licensed engineer decides.', source: 'common practice, no source', evidence: 'memory' as const }

/** Judges one rule by itself, with nothing hidden and a code in force unless told otherwise. */
export function judged(rule: ResolvedRule, facts: Facts, around: Partial<Subject> = {}): Finding {
  return judge(rule, {
    opening: openingWith(facts), quantities: new Map(), catalog: { tables: new Map(), cautions: new Map([['engineer', engineer]]) }, adopted: true, holdPoint: null, ...around,
  })
}
