import { describe, expect, test } from 'vitest'
import { explainRule } from '../../src/cli/explain-rule.ts'
import { realCatalog } from '../catalog/real-catalog.ts'

const catalog = await realCatalog()
const city = { jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' }

describe.each([...catalog.rules.values()].map((rule) => [rule.rule, rule] as const))('%s', (id, rule) => {
  test('is explained with what it says, by each edition, and how to mend it', () => {
    const { text, exitCode } = explainRule(id, {}, catalog)
    const plain = text.replace(/\s+/g, ' ')
    expect(exitCode).toBe(0)
    expect(text.startsWith(`${id}: ${rule.title}\n`)).toBe(true)
    for (const part of [rule.statement, rule.remedy.beforeCoverUp, rule.remedy.afterCoverUp]) expect(plain).toContain(part.replace(/\s+/g, ' ').trim())
    for (const { publication, editions, locator, evidence } of rule.limits) {
      for (const edition of editions) expect(text).toMatch(new RegExp(`\\n {2}${literal(`${publication} ${edition}, ${locator}: `)}.+\\[${evidence}\\]`))
    }
    expect(text).not.toContain('IN FORCE')
  })
})

test('for a place and date it tells what is in force and how that came to be', () => {
  const { text, exitCode } = explainRule('lintel.bearing-length', city, catalog)
  expect(exitCode).toBe(0)
  expect(text).toMatch(/IN FORCE FOR us-xa-101-2400000 ON 2026-03-01: at least \d/)
  expect(text).toMatch(/\n {2}modelCode: published, irc 2021, R703/)
  expect(text).toMatch(/\n {2}us-xa: adoption, irc 2021, us-xa\/irc-2021/)
})

test('for an edition alone it tells what the published text says', () => {
  expect(explainRule('lintel.bearing-length', { edition: 'irc-2012', asOf: '2014-01-01' }, catalog).text).toContain('IN FORCE FOR the published text ON 2014-01-01: at least')
})

test('a rule that has no limit in an edition is not in force there', () => {
  const mandatory = [...catalog.rules.values()].find(({ force, limits }) => force === 'mandatory' && limits.every(({ publication }) => publication !== 'irc'))
  expect(mandatory).toBeDefined()
  expect(explainRule(mandatory?.rule ?? '', { edition: 'irc-2021' }, catalog).text).toContain(': not in force')
})

describe('what cannot be explained ends with 2 and says why', () => {
  test.each([
    ['an unknown rule', 'lintel.none', {}, 'There is no rule "lintel.none".'],
    ['an unknown jurisdiction', 'lintel.bearing-length', { jurisdiction: 'nowhere' }, '/jurisdiction "nowhere" is not in the catalog'],
    ['a date without a place', 'lintel.bearing-length', { asOf: '2026-03-01' }, '/jurisdiction Say where'],
    ['a date that is none', 'lintel.bearing-length', { ...city, asOf: 'May' }, '/asOf must be a date'],
  ])('%s', (_, rule, place, advice) => {
    const { text, exitCode } = explainRule(rule, place, catalog)
    expect(exitCode).toBe(2)
    expect(text).toContain(advice)
  })
})

function literal(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`)
}
