import { describe, expect, test } from 'vitest'
import { sarifOf } from '../../src/exports/sarif.ts'
import { building, opening, quarryWalk } from './building.ts'
import { publishedDigest, sarifFaults } from './checks.ts'

interface Result {
  readonly ruleId: string
  readonly ruleIndex: number
  readonly kind: string
  readonly level: string
  readonly message: { readonly text: string }
  readonly baselineState?: string
  readonly suppressions?: readonly object[]
  readonly attachments?: readonly object[]
  readonly correlationGuid: string
  readonly locations: readonly [{ readonly logicalLocations: readonly [{ readonly fullyQualifiedName: string; readonly index: number }] }]
  readonly properties: { readonly opening: string; readonly end: string | null }
}
interface Run {
  readonly tool: { readonly driver: { readonly rules: readonly { readonly id: string }[] } }
  readonly results: readonly Result[]
  readonly invocations: readonly [{ readonly toolExecutionNotifications: readonly { readonly message: { readonly text: string } }[] }]
  readonly logicalLocations: readonly { readonly fullyQualifiedName: string; readonly kind: string; readonly parentIndex?: number }[]
}

const runOf = (...given: Parameters<typeof building>) => (sarifOf(building(...given)) as { readonly runs: readonly [Run] }).runs[0]
const run = runOf(quarryWalk)
const at = (one: string, rule: string, end: string | null = null) => run.results.find(({ ruleId, properties }) => ruleId === rule && properties.opening === one && properties.end === end)

describe('SARIF 2.1.0', () => {
  test('the published schema is the one that the README names', () => expect(publishedDigest).toBe('1c49a0f2b60444c71bb14878e21e0d882198eff4c539861b133093ad89ed798c'))

  test('is valid by the published schema', () => {
    expect(sarifFaults(sarifOf(building(quarryWalk)))).toEqual([])
    expect(sarifFaults(sarifOf(building([])))).toEqual([])
  })

  test('the check finds what is wrong', () => {
    const document = sarifOf(building(quarryWalk)) as { runs: [{ results: { kind: string }[] }] }
    const wrong = { ...document, runs: [{ ...document.runs[0], results: [{ ...document.runs[0].results[0], kind: 'maybe' }] }] }
    expect(sarifFaults(wrong).join()).toContain('/runs/0/results/0/kind')
  })

  test('a result has the kind of its outcome, and a level only where it is a miss', () => {
    expect(at('bay-3', 'lintel.bearing-length', 'left')).toMatchObject({ kind: 'fail', level: 'error' })
    expect(at('bay-3', 'lintel.bearing-length', 'right')).toMatchObject({ kind: 'pass', level: 'none' })
    expect(at('bay-3', 'flashing.end-dam-present', 'right')).toMatchObject({ kind: 'fail', level: 'warning' })
    expect(new Set(run.results.map(({ kind }) => kind))).toEqual(new Set(['pass', 'fail', 'open', 'notApplicable']))
    // SARIF 2.1.0, 3.27.10: if kind is other than "fail", level shall be "none"
    expect(run.results.filter(({ kind, level }) => (kind === 'fail') === (level === 'none'))).toEqual([])
  })

  test('says both figures in words, and points at rule and place', () => {
    const miss = at('bay-3', 'lintel.bearing-length', 'left')
    expect(miss?.message.text).toBe('Tannery Row, bay 3 shop window: Lintel bearing at each end, left end. Not met: found 3 1/2 in, required at least 6 in (152 mm); off by -2 1/2 in (-63.5 mm).')
    expect(run.results.filter(({ ruleId, ruleIndex }) => run.tool.driver.rules[ruleIndex]?.id !== ruleId)).toEqual([])
    const places = run.results.map(({ locations: [{ logicalLocations: [place] }] }) => place)
    expect(places.filter(({ index, fullyQualifiedName }) => run.logicalLocations[index]?.fullyQualifiedName !== fullyQualifiedName)).toEqual([])
    expect(run.logicalLocations.filter(({ parentIndex }) => parentIndex === undefined).map(({ kind }) => kind)).toEqual(['building'])
  })

  test('compares with the look before the last posting', () => {
    // The last posting took the reading of the right end out of account; the drawing stands in for it, with the same figure
    expect(at('bay-3', 'lintel.bearing-length', 'left')?.baselineState).toBe('unchanged')
    const [drawn, mended] = [quarryWalk[0]?.entries[0]?.body, quarryWalk[0]?.entries[3]?.body] as [Record<string, unknown>, Record<string, unknown>]
    const shortened = opening('bay-3', 100, [{ receivedAt: '2026-03-02T13:00:00.000Z', entries: [drawn] }, { receivedAt: '2026-03-03T13:00:00.000Z', entries: [mended] }])
    const states = runOf([shortened]).results.filter(({ ruleId }) => ruleId === 'lintel.bearing-length').map(({ properties, baselineState }) => [properties.end, baselineState])
    expect(states).toEqual([['left', 'new'], ['right', 'unchanged']])
    expect(runOf([opening('bay-3', 100, [{ receivedAt: '2026-03-02T13:00:00.000Z', entries: [drawn] }])]).results.some((one) => 'baselineState' in one)).toBe(false)
  })

  test('a waiver in force suppresses, one that has run out does not; pictures are attached', () => {
    expect(at('bay-3', 'lintel.bearing-length', 'left')).toMatchObject({ suppressions: [{ kind: 'external', status: 'accepted' }], attachments: [{ artifactLocation: { uri: 'https://pictures.example/left%20end%7C%5B1%5D.jpg', index: 0 } }] })
    const later = runOf(quarryWalk, { at: '2027-01-01T00:00:00.000Z' }).results.find(({ ruleId, kind }) => ruleId === 'lintel.bearing-length' && kind === 'fail')
    expect(later?.suppressions).toEqual([])
  })

  test('an opening that is not described far enough is told of', () => {
    expect(run.invocations[0].toolExecutionNotifications.map(({ message }) => message.text)).toEqual(['unknown was not evaluated; it has to be known: opening.'])
  })

  test.each([['misses', ['fail']], ['open', ['fail', 'open']]] as const)('with findings "%s" has no others', (scope, kinds) => {
    expect(new Set(runOf(quarryWalk, { scope }).results.map(({ kind }) => kind))).toEqual(new Set(kinds))
  })

  test('tells results apart by ids that stay', () => {
    const ids = run.results.map(({ correlationGuid }) => correlationGuid)
    expect(new Set(ids).size).toBe(ids.length)
    expect(runOf(quarryWalk, { at: '2026-04-01T00:00:00.000Z' }).results.map(({ correlationGuid }) => correlationGuid)).toEqual(ids)
  })

  test('what looks like a placeholder or a link is escaped', () => {
    const odd = quarryWalk.map((one) => one.assessment === null ? one : { ...one, assessment: { ...one.assessment, subject: { ...one.assessment.subject, reference: '{0} [a](b) [c]' } } })
    expect(runOf(odd).results[0]?.message.text).toMatch(/^\{\{0\}\} \\\[a\]\(b\) \[c\]: /)
  })
})
