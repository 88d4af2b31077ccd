import { describe, expect, test } from 'vitest'
import { describeOpening } from '../../src/opening/describe.ts'
import { resolveRules } from '../../src/catalog/resolve.ts'
import { evaluate } from '../../src/evaluation/evaluate.ts'
import { realCatalog } from '../catalog/real-catalog.ts'

const catalog = await realCatalog()

/** BIA Technical Notes 18A (2006): a movement joint at the jamb needs a slip plane under the lintel there, and a space at its end. */
function findingOf(rule: string, joint: unknown, seat: unknown) {
  const opening = describeOpening({
    lengthUnit: 'in', opening: { kind: 'window', width: 48, height: 60 },
    wall: { movementJointAtJamb: joint }, head: { support: { kind: 'looseSteelAngle', bearingSeat: seat } },
  })
  const rules = resolveRules(catalog, { jurisdiction: null, edition: 'irc-2021', asOf: '2026-03-01' })
  if (!opening.ok || !rules.ok) throw new Error('the example cannot be read')
  return evaluate(opening.value, rules.value, catalog, null).findings.find((finding) => finding.rule === rule)
}

describe('a condition on one end and a check at each end', () => {
  test.each([
    ['a joint at the left alone asks nothing of the right', [true, false], ['slipPlane', 'solidMasonry'], 'pass', null],
    ['and fails at the left alone', [true, false], ['solidMasonry', 'solidMasonry'], 'fail', 'left'],
    ['a joint at both asks both', [true, true], ['slipPlane', 'solidMasonry'], 'fail', 'right'],
    ['a joint at neither', [false, false], ['solidMasonry', 'solidMasonry'], 'notApplicable', null],
    ['the right not known leaves it open', [false, null], ['solidMasonry', 'slipPlane'], 'notDetermined', 'right'],
    ['a failure decides though the other is not known', [true, null], ['solidMasonry', null], 'fail', 'left'],
  ] as const)('%s', (_, joint, seat, outcome, member) => {
    const finding = findingOf('lintel.slip-plane', joint, seat)
    expect(finding?.outcome).toBe(outcome)
    if (member !== null) expect(finding?.member).toBe(member)
  })

  test('tells of each end, also of the one it does not apply to', () => {
    const finding = findingOf('lintel.slip-plane', [true, false], ['slipPlane', 'solidMasonry'])
    expect(finding?.members.map(({ member, outcome }) => [member, outcome])).toEqual([['left', 'pass'], ['right', 'notApplicable']])
  })
})
