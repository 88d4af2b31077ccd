import { beforeAll, describe, expect, test } from 'vitest'
import { amendment as amendmentSchema, type Amendment } from '../../src/catalog/amendment.ts'
import type { Catalog } from '../../src/catalog/catalog.ts'
import { digestOf } from '../../src/catalog/digest.ts'
import type { Modification } from '../../src/catalog/modification.ts'
import { resolveRules } from '../../src/catalog/resolve.ts'
import type { Rule } from '../../src/catalog/rule.ts'
import { conditionDigest } from '../../src/catalog/substitute.ts'
import { resolved, ruleIn } from './real-catalog.ts'
import { loadPatched } from './small-catalog.ts'

let small: Catalog

beforeAll(async () => {
  const loaded = await loadPatched({})
  if (!loaded.ok) throw new Error('the small catalog does not load')
  small = loaded.catalog
})

/** A substitution by the country, which may do as it likes. */
function substitution(rule: string, part: string, old: object, next: object): Modification {
  return { modification: 'm1', kind: 'substitution', target: { rule, part }, old, new: { ...next, locator: '9' } } as Modification
}

function act(modifications: readonly Modification[], over: Partial<Amendment> = {}): Amendment {
  return amendmentSchema.parse({
    amendment: 'aa/act-1', jurisdiction: 'aa', amends: { publication: 'irc', editions: ['2018'] }, instrument: { kind: 'act', number: '1', adopted: '2021-01-01' }, effectiveFrom: '2022-01-01', effectiveUntil: null,
    application: 'permitApplicationDate', supersedes: [], modifications, examples: [{ name: 'any', rule: 'weep.kind', asOf: '2022-01-01', facts: {}, outcome: 'notDetermined' }], ...over,
  })
}

const place = { jurisdiction: 'aa-open', asOf: '2022-01-01' }
const amended = (id: string, ...amendments: readonly Amendment[]) => ruleIn(resolved({ ...small, amendments }, place), id)
const faults = (...amendments: readonly Amendment[]) => {
  const answer = resolveRules({ ...small, amendments }, place)
  return answer.ok ? [] : answer.problems.map(({ detail }) => detail)
}
const ruleOf = (id: string): Rule => {
  const rule = small.rules.get(id)
  if (!rule) throw new Error(`${id} has gone`)
  return rule
}

describe('a substitution', () => {
  test('of the condition changes where the rule applies, and nothing else', () => {
    const appliesWhen = { fact: 'head.support.kind', oneOf: ['looseSteelAngle', 'precastLintel'] }
    const before = amended('lintel.bearing-length')
    const after = amended('lintel.bearing-length', act([substitution('lintel.bearing-length', 'condition', { digest: conditionDigest(ruleOf('lintel.bearing-length')) }, { appliesWhen })]))
    expect(after).toEqual({ ...before, rule: { ...before.rule, appliesWhen }, chain: [...before.chain, after.chain.at(-1)] })
    expect(after.chain.at(-1)).toMatchObject({ layer: 'aa', action: 'substitution', part: 'condition', document: 'aa/act-1', modification: 'm1', locator: '9', old: 'head.support.kind is looseSteelAngle', new: 'head.support.kind is one of looseSteelAngle, precastLintel' })
  })

  test('of the condition may give one to a rule that had none, and take it away again', () => {
    const appliesWhen = { fact: 'opening.width', comparator: 'moreThan', quantity: '6 [ft_i]' } as const
    const given = act([substitution('weep.spacing', 'condition', { digest: null }, { appliesWhen })])
    expect(amended('weep.spacing', given).rule.appliesWhen).toEqual(appliesWhen)
    const state = act([substitution('weep.spacing', 'condition', { digest: digestOf(appliesWhen) }, { appliesWhen: null })], { amendment: 'aa-open/rule-1', jurisdiction: 'aa-open' })
    const freed = amended('weep.spacing', given, state)
    expect(freed.rule.appliesWhen).toBeUndefined()
    expect(freed.chain.slice(2)).toMatchObject([{ old: null, new: 'opening.width is more than 6 ft' }, { old: 'opening.width is more than 6 ft', new: null }])
  })

  test('of the force makes law of advice, or advice of law', () => {
    const raised = amended('weep.spacing-recommended', act([substitution('weep.spacing-recommended', 'force', { force: 'recommended' }, { force: 'mandatory' })]))
    expect(raised).toMatchObject({ rule: { force: 'mandatory' }, limit: { inchPound: '24 [in_i]' }, chain: [{ layer: 'practice' }, { part: 'force', old: 'recommended', new: 'mandatory' }] })
    expect(amended('weep.spacing', act([substitution('weep.spacing', 'force', { force: 'mandatory' }, { force: 'informative' })])).rule.force).toBe('informative')
  })

  test('of the hold point moves when a rule is to be seen', () => {
    expect(amended('weep.spacing', act([substitution('weep.spacing', 'holdPoint', { holdPoint: 'headFirstCourse' }, { holdPoint: 'handover' })]))).toMatchObject({
      rule: { holdPoint: 'handover' }, chain: [{}, {}, { part: 'holdPoint', old: 'headFirstCourse', new: 'handover' }],
    })
  })

  test('of materials adds to a list and takes from it, in whatever order the old one is stated', () => {
    const after = amended('weep.kind', act([substitution('weep.kind', 'materials', { values: ['rope', 'none'] }, { add: ['wick'], remove: ['rope'] })]))
    expect(after).toMatchObject({ comparator: 'noneOf', limit: { values: ['none', 'wick'], locator: '9', publication: 'irc' }, chain: [{}, {}, { part: 'materials', old: 'other than none, rope', new: 'other than none, wick' }] })
  })

  test('of the remedy says what to do otherwise', () => {
    const remedy = { beforeCoverUp: 'Ask first.', afterCoverUp: 'Ask before opening the wall.' }
    expect(amended('weep.kind', act([substitution('weep.kind', 'remedy', { digest: digestOf(ruleOf('weep.kind').remedy) }, remedy)]))).toMatchObject({ rule: { remedy }, chain: [{}, {}, { part: 'remedy' }] })
  })

  test('of a limit keeps what an instrument prints against itself', () => {
    const next = { governing: 'inchPound', inchPound: '24 [in_i]', si: '737 mm', printedConflict: 'The ordinance gives 24 in and 737 mm.' }
    expect(amended('weep.spacing', act([substitution('weep.spacing', 'limit', { inchPound: '33 [in_i]' }, next)])).limit).toMatchObject(next)
  })

  test('grades its limit as the amendment says that it is known; the jurisdiction itself, which has the text, says nothing', () => {
    const raised = [substitution('weep.spacing', 'limit', { inchPound: '33 [in_i]' }, { governing: 'inchPound', inchPound: '24 [in_i]', si: '610 mm' })]
    expect(amended('weep.spacing', act(raised)).limit).toMatchObject({ evidence: 'primary', lastReviewed: '2026-11-25' })
    const read = { evidence: 'secondary', lastReviewed: '2026-12-01', readIn: 'https://law.example/1', note: 'A summary was read.' } as const
    const { limit, chain } = amended('weep.spacing', act(raised, read))
    expect(limit).toMatchObject(read)
    expect(chain.at(-1)).toMatchObject({ readIn: 'https://law.example/1' })
  })
})

test('all parts of one rule can be changed in one layer, in any order, and repeal alone stands against each', () => {
  const rule = ruleOf('weep.kind')
  const parts: readonly Modification[] = [
    substitution('weep.kind', 'condition', { digest: conditionDigest(rule) }, { appliesWhen: null }),
    substitution('weep.kind', 'force', { force: 'mandatory' }, { force: 'recommended' }),
    substitution('weep.kind', 'holdPoint', { holdPoint: 'headFirstCourse' }, { holdPoint: 'handover' }),
    substitution('weep.kind', 'materials', { values: ['none', 'rope'] }, { add: ['wick'] }),
    substitution('weep.kind', 'remedy', { digest: digestOf(rule.remedy) }, { beforeCoverUp: 'Ask.', afterCoverUp: 'Ask.' }),
  ].map((one, index) => ({ ...one, modification: `m${index + 1}` }))
  const ordered = [parts, parts.toReversed()].map((modifications) => amended('weep.kind', act(modifications)))
  expect(ordered[0]?.rule).toEqual(ordered[1]?.rule)
  expect(ordered[0]).toMatchObject({ rule: { appliesWhen: undefined, force: 'recommended', holdPoint: 'handover', remedy: { afterCoverUp: 'Ask.' } }, limit: { values: ['none', 'rope', 'wick'] } })
  const repeal: Modification = { modification: 'm6', kind: 'repeal', target: { rule: 'weep.kind' }, old: { revision: 1 }, reason: 'Elsewhere.' }
  for (const part of parts) expect(faults(act([part, repeal])).join()).toContain('both change weep.kind')
})

describe('where only stricter rules are allowed', () => {
  const town = (...modifications: readonly Modification[]) => act(modifications, { amendment: 'aa-open-01/ord-9', jurisdiction: 'aa-open-01' })
  const refusal = (modification: Modification) => {
    const answer = resolveRules({ ...small, amendments: [town(modification)] }, { jurisdiction: 'aa-open-01', asOf: '2022-01-01' })
    return answer.ok ? 'taken' : answer.problems[0]?.detail.slice(0, 48)
  }
  const refused = 'An outer jurisdiction allows only stricter rules'

  test.each<readonly [string, Modification | (() => Modification), string]>([
    ['a rule may apply more widely', () => substitution('lintel.bearing-length', 'condition', { digest: conditionDigest(ruleOf('lintel.bearing-length')) }, { appliesWhen: { fact: 'head.support.kind', oneOf: ['looseSteelAngle', 'shelfAngle'] } }), 'taken'],
    ['a rule may apply everywhere', () => substitution('lintel.bearing-length', 'condition', { digest: conditionDigest(ruleOf('lintel.bearing-length')) }, { appliesWhen: null }), 'taken'],
    ['a rule may not apply elsewhere instead', () => substitution('lintel.bearing-length', 'condition', { digest: conditionDigest(ruleOf('lintel.bearing-length')) }, { appliesWhen: { fact: 'head.support.kind', is: 'shelfAngle' } }), refused],
    ['advice may become law', substitution('weep.spacing-recommended', 'force', { force: 'recommended' }, { force: 'mandatory' }), 'taken'],
    ['law may not become advice', substitution('weep.spacing', 'force', { force: 'mandatory' }, { force: 'informative' }), refused],
    ['another hold point is as strict', substitution('weep.spacing', 'holdPoint', { holdPoint: 'headFirstCourse' }, { holdPoint: 'handover' }), 'taken'],
    ['a barring list may grow', substitution('weep.kind', 'materials', { values: ['none', 'rope'] }, { add: ['wick'] }), 'taken'],
    ['a barring list may not change', substitution('weep.kind', 'materials', { values: ['none', 'rope'] }, { add: ['wick'], remove: ['rope'] }), refused],
    ['a limit that contradicts itself may be stricter by both figures', substitution('weep.spacing', 'limit', { inchPound: '33 [in_i]' }, { governing: 'inchPound', inchPound: '24 [in_i]', si: '737 mm', printedConflict: 'So printed.' }), 'taken'],
    ['a limit that contradicts itself may not be looser by one', substitution('weep.spacing', 'limit', { inchPound: '33 [in_i]' }, { governing: 'inchPound', inchPound: '24 [in_i]', si: '914 mm', printedConflict: 'So printed.' }), refused],
  ])('%s', (_, modification, answer) => expect(refusal(typeof modification === 'function' ? modification() : modification)).toBe(answer))
})
