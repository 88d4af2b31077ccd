import { describe, expect, test } from 'vitest'
import type { Limit } from '../../src/catalog/limit.ts'
import type { Table } from '../../src/catalog/reference.ts'
import type { QuantityResult } from '../../src/quantities/result.ts'
import { amount, citation, judged, resolvedRule } from './subject.ts'

const bearing = resolvedRule({ check: { fact: 'head.support.bearing', comparator: 'notLessThan' } }, amount('4 [in_i]', '102 mm'))
const spacing = resolvedRule({ check: { fact: 'head.weeps.spacing', comparator: 'notMoreThan' } }, amount('33 [in_i]', '838 mm'))

describe('an amount', () => {
  test.each([
    ['notLessThan', '4 in', 'pass', '0 mm'],
    ['notLessThan', '3 63/64 in', 'fail', '-0.396875 mm'],
    ['notLessThan', '5 in', 'pass', '25.4 mm'],
    ['moreThan', '4 in', 'fail', '0 mm'],
    ['notMoreThan', '4 in', 'pass', '0 mm'],
    ['notMoreThan', '102 mm', 'fail', '-0.4 mm'],
    ['lessThan', '4 in', 'fail', '0 mm'],
    ['lessThan', '3 in', 'pass', '25.4 mm'],
    ['equalTo', '4 in', 'pass', '0 mm'],
    ['equalTo', '5 in', 'fail', '-25.4 mm'],
  ] as const)('%s 4 in: %s gives %s, with %s to spare', (comparator, measured, outcome, margin) => {
    const rule = resolvedRule({ check: { fact: 'head.weeps.spacing', comparator } }, amount('4 [in_i]', '102 mm'))
    expect(judged(rule, { 'head.weeps.spacing': measured })).toMatchObject({ outcome, reason: null, comparator, margin: { si: margin } })
  })

  test('is told in both systems, as it was given and against what is asked', () => {
    expect(judged(spacing, { 'head.weeps.spacing': "2'-8\"" })).toMatchObject({
      measured: { text: '2\'-8"', inchPound: '32 in', si: '812.8 mm', nanometres: 812_800_000 },
      required: { text: 'at most 33 in (838 mm)', governing: 'inchPound', inchPound: '33 in', si: '838 mm' },
      margin: { inchPound: '1 in', si: '25.4 mm' },
    })
  })

  test('is measured against the figure that governs: 838 mm keeps 33 in, 33 in does not keep 838 mm', () => {
    const metric = resolvedRule(spacing.rule, { ...citation, governing: 'si', inchPound: '33 [in_i]', si: '838 mm' })
    expect(judged(spacing, { 'head.weeps.spacing': '33 in' })).toMatchObject({ outcome: 'pass', differsByUnit: true })
    expect(judged(spacing, { 'head.weeps.spacing': '838 mm' })).toMatchObject({ outcome: 'pass', differsByUnit: false })
    expect(judged(metric, { 'head.weeps.spacing': '33 in' })).toMatchObject({ outcome: 'fail', differsByUnit: true })
    expect(judged(metric, { 'head.weeps.spacing': '838 mm' })).toMatchObject({ outcome: 'pass', margin: { si: '0 mm' }, differsByUnit: false })
  })

  test('says when the figure in the other system would decide otherwise: 25 mm against 1 in (25 mm)', () => {
    const airSpace = resolvedRule({ check: { fact: 'wall.airSpace', comparator: 'notLessThan' } }, amount('1 [in_i]', '25 mm'))
    expect(judged(airSpace, { 'wall.airSpace': '25 mm' })).toMatchObject({ outcome: 'fail', margin: { si: '-0.4 mm' }, differsByUnit: true })
    expect(judged(airSpace, { 'wall.airSpace': '24.9 mm' })).toMatchObject({ outcome: 'fail', differsByUnit: false })
    expect(judged(airSpace, { 'wall.airSpace': '1 in' })).toMatchObject({ outcome: 'pass', differsByUnit: false })
  })

  test.each([
    ['4 in', '1/16 in', true, 'pass'],
    ['4 1/16 in', '1/16 in', false, 'pass'],
    ['4 1/16 in', '1/8 in', true, 'pass'],
    ['3 15/16 in', '1/16 in', true, 'fail'],
    ['3 7/8 in', '1/16 in', false, 'fail'],
  ])('%s with a tape that tells %s: within the resolution %s, and the outcome stays %s', (measured, lengthResolution, withinResolution, outcome) => {
    expect(judged(bearing, { lengthResolution, 'head.support.bearing': measured })).toMatchObject({ withinResolution, outcome })
  })

  test('is never within a resolution that nobody gave', () => {
    expect(judged(bearing, { 'head.support.bearing': '4 in' }).withinResolution).toBe(false)
  })
})

describe('a fact with two ends', () => {
  test.each([
    ['the shorter end decides', ['3 in', '2 in'], 'fail', 'right', '-50.8 mm'],
    ['a failing end decides over a passing one', ['8 in', '3 in'], 'fail', 'right', '-25.4 mm'],
    ['a failing end decides over one that is not known', [null, '3 in'], 'fail', 'right', '-25.4 mm'],
    ['of two passing ends the one with less to spare speaks', ['6 in', '5 in'], 'pass', 'right', '25.4 mm'],
    ['of two equal ends the left one speaks', ['5 in', '5 in'], 'pass', 'left', '25.4 mm'],
    ['a passing end does not decide alone', ['8 in', null], 'notDetermined', 'right', undefined],
    ['nor does its being on the right', [null, '8 in'], 'notDetermined', 'left', undefined],
  ] as const)('%s: %j', (_, ends, outcome, member, margin) => {
    const finding = judged(bearing, { 'head.support.bearing': ends })
    expect(finding).toMatchObject({ outcome, member })
    expect(finding.margin?.si).toBe(margin)
  })

  test('given once means both', () => {
    expect(judged(bearing, { 'head.support.bearing': '4 in' }).members.map(({ member, outcome }) => `${member} ${outcome}`)).toEqual(['left pass', 'right pass'])
  })

  test('tells of both ends, and is missing only while that keeps it open', () => {
    expect(judged(bearing, { 'head.support.bearing': ['8 in', null] })).toMatchObject({ missing: ['head.support.bearing'], reason: 'missing', members: [{ outcome: 'pass' }, { outcome: 'notDetermined', measured: null }] })
    expect(judged(bearing, { 'head.support.bearing': ['3 in', null] })).toMatchObject({ missing: [], reason: null, members: [{ outcome: 'fail' }, { outcome: 'notDetermined' }] })
  })
})

describe('a choice', () => {
  const rule = (comparator: 'oneOf' | 'noneOf', values: string[]) => resolvedRule({ check: { fact: 'head.weeps.kind', comparator } }, { ...citation, values })

  test.each([
    ['oneOf', ['openHeadJoint', 'mesh'], 'mesh', 'pass'],
    ['oneOf', ['openHeadJoint', 'mesh'], 'rope', 'fail'],
    ['noneOf', ['none', 'rope'], 'mesh', 'pass'],
    ['noneOf', ['none', 'rope'], 'rope', 'fail'],
  ] as const)('%s %j: %s gives %s', (comparator, values, value, outcome) => {
    expect(judged(rule(comparator, [...values]), { 'head.weeps.kind': value })).toMatchObject({ outcome, margin: null, measured: { text: value, nanometres: null } })
  })

  test('of yes or no', () => {
    const present = resolvedRule({ check: { fact: 'head.flashing.present', comparator: 'equalTo' } }, { ...citation, value: true })
    expect(judged(present, { 'head.flashing.present': true }).outcome).toBe('pass')
    expect(judged(present, { 'head.flashing.present': false }).outcome).toBe('fail')
    expect(judged(present, { 'head.flashing.present': null }).outcome).toBe('notDetermined')
  })
})

describe('a rule with a condition', () => {
  const onSteel = resolvedRule({ check: bearing.rule.check, appliesWhen: { fact: 'head.support.kind', is: 'looseSteelAngle' } }, bearing.limit)

  test('does not apply where the condition is false, and names what decided', () => {
    expect(judged(onSteel, { 'head.support.kind': 'masonryArch', 'head.support.bearing': '1 in' })).toMatchObject({ outcome: 'notApplicable', decidedBy: ['head.support.kind'], measured: null, reason: null, remedy: null })
  })

  test('is open where the condition is unknown, though the fact it checks would fail', () => {
    expect(judged(onSteel, { 'head.support.bearing': '1 in' })).toMatchObject({ outcome: 'notDetermined', reason: 'missing', missing: ['head.support.kind'], decidedBy: [] })
  })
})

describe('the reason for not deciding', () => {
  const upstand = resolvedRule({ check: { fact: 'head.flashing.upstand', comparator: 'notLessThan' } }, amount('8 [in_i]'))

  test('is missing while the fact can still be seen, and covered from the point that hides it', () => {
    const reasons = (['headFlashing', 'headFirstCourse', 'inService'] as const).map((holdPoint) => judged(upstand, {}, { holdPoint }))
    expect(reasons.map(({ reason }) => reason)).toEqual(['missing', 'covered', 'covered'])
    expect(reasons.map(({ nextStep }) => nextStep?.split(':')[0])).toEqual(['Find out', 'No longer in sight', 'No longer in sight'])
    expect(judged(upstand, {}).reason).toBe('missing')
  })

  test('is missing as long as one of the facts that are wanted can be seen', () => {
    const both = resolvedRule({ check: upstand.rule.check, appliesWhen: { all: [{ fact: 'head.flashing.present', is: true }, { fact: 'head.weeps.kind', is: 'mesh' }] } }, upstand.limit)
    expect(judged(both, {}, { holdPoint: 'wallAbove' })).toMatchObject({ reason: 'missing', missing: ['head.flashing.present', 'head.weeps.kind'] })
    expect(judged(both, { 'head.weeps.kind': 'mesh' }, { holdPoint: 'wallAbove' })).toMatchObject({ reason: 'covered', missing: ['head.flashing.present'] })
  })

  test('a fact that was read before it was covered still decides', () => {
    expect(judged(upstand, { 'head.flashing.upstand': '8 in' }, { holdPoint: 'inService' }).outcome).toBe('pass')
  })

  test('is conflicting evidence where a given fact does not follow from the others', () => {
    const dam = resolvedRule({ check: { fact: 'head.flashing.endDamPresent', comparator: 'equalTo' } }, { ...citation, value: true })
    expect(judged(dam, { 'head.flashing.endDamPresent': true, 'head.flashing.endDamHeight': ['2 in', '0 in'] })).toMatchObject({
      outcome: 'notDetermined', reason: 'conflictingEvidence', member: 'right', nextStep: expect.stringContaining('contradict') as string,
    })
    expect(judged(dam, { 'head.flashing.endDamPresent': true, 'head.flashing.endDamHeight': '2 in' }).outcome).toBe('pass')
  })

  test('is that no code was adopted, for mandatory rules alone and before anything else', () => {
    expect(judged(bearing, { 'head.support.bearing': '1 in' }, { adopted: false })).toMatchObject({ outcome: 'notDetermined', reason: 'notAdopted', missing: [], nextStep: expect.stringContaining('No code was in force') as string })
    const recommended = resolvedRule({ check: bearing.rule.check, force: 'recommended' }, bearing.limit)
    expect(judged(recommended, { 'head.support.bearing': '1 in' }, { adopted: false }).outcome).toBe('fail')
  })
})

describe('a limit whose printed figures contradict each other', () => {
  const note = 'The ordinance prints 24 in (737 mm); 737 mm is 29 in.'
  const limit: Limit = { ...citation, governing: 'inchPound', inchPound: '24 [in_i]', si: '737 mm', printedConflict: note }
  const tie = resolvedRule({ check: { fact: 'ties.verticalSpacing', comparator: 'notMoreThan' } }, limit)
  const spaced = (spacing: string) => judged(tie, { 'ties.verticalSpacing': spacing })

  test.each([
    ['24 in', 'pass', '0 mm'],
    ['30 in', 'fail', '-152.4 mm'],
  ])('decides where both figures agree: %s gives %s', (spacing, outcome, margin) => {
    expect(spaced(spacing)).toMatchObject({ outcome, reason: null, margin: { si: margin }, differsByUnit: false, printedConflict: note })
  })

  test.each(['24 1/16 in', '29 in', '737 mm'])('is not decided between the two figures: %s', (spacing) => {
    expect(spaced(spacing)).toMatchObject({
      outcome: 'notDetermined', reason: 'ruleUndecided', margin: null, differsByUnit: true, missing: [], printedConflict: note, required: { inchPound: '24 in', si: '737 mm' },
      nextStep: 'The adopted text contradicts itself; ask the authority having jurisdiction which figure governs.', measured: { text: spacing }, remedy: null,
    })
  })

  test('decides the same whichever figure is said to govern', () => {
    const other = resolvedRule(tie.rule, { ...limit, governing: 'si' })
    for (const spacing of ['20 in', '24 in', '26 in', '737 mm', '30 in']) expect(judged(other, { 'ties.verticalSpacing': spacing }).outcome).toBe(spaced(spacing).outcome)
  })

  test('still fails for an end that neither figure allows', () => {
    const bearings = resolvedRule({ check: bearing.rule.check }, { ...citation, governing: 'inchPound', inchPound: '4 [in_i]', si: '152 mm', printedConflict: note })
    expect(judged(bearings, { 'head.support.bearing': ['5 in', '3 in'] })).toMatchObject({ outcome: 'fail', member: 'right', members: [{ outcome: 'notDetermined' }, { outcome: 'fail' }] })
    expect(judged(bearings, { 'head.support.bearing': ['5 in', '8 in'] })).toMatchObject({ outcome: 'notDetermined', reason: 'ruleUndecided', member: 'left' })
  })

  test('does not show where there is none', () => expect(judged(spacing, { 'head.weeps.spacing': '30 in' }).printedConflict).toBeNull())
})

describe('a condition on a fact that others contradict', () => {
  const conflicting = { 'head.flashing.endDamPresent': true, 'head.flashing.endDamHeight': '0 in' }
  const dammed = resolvedRule({ check: { fact: 'head.flashing.slopesOut', comparator: 'equalTo' }, appliesWhen: { fact: 'head.flashing.endDamPresent', is: true } }, { ...citation, value: true })

  test('is not decided, whatever the rule checks', () => {
    for (const slopes of [true, false, undefined]) {
      expect(judged(dammed, { ...conflicting, 'head.flashing.slopesOut': slopes })).toMatchObject({
        outcome: 'notDetermined', reason: 'conflictingEvidence', missing: [], decidedBy: [], nextStep: expect.stringContaining('(End dam)') as string,
      })
    }
    expect(judged(dammed, { 'head.flashing.endDamPresent': true, 'head.flashing.slopesOut': true }).outcome).toBe('pass')
  })

  test('holds all the same where the other end shows it without contradiction', () => {
    expect(judged(dammed, { ...conflicting, 'head.flashing.endDamHeight': ['0 in', '2 in'], 'head.flashing.slopesOut': true }).outcome).toBe('pass')
  })

  test('gives way to a fact that is missing, which can be found out at once', () => {
    const both = resolvedRule({ check: dammed.rule.check, appliesWhen: { all: [{ fact: 'head.flashing.endDamPresent', is: true }, { fact: 'head.flashing.present', is: true }] } }, dammed.limit)
    expect(judged(both, conflicting)).toMatchObject({ reason: 'missing', missing: ['head.flashing.present'] })
    expect(judged(both, { ...conflicting, 'head.flashing.present': false })).toMatchObject({ outcome: 'notApplicable', decidedBy: ['head.flashing.present'] })
    expect(judged(both, { ...conflicting, 'head.flashing.present': true })).toMatchObject({ reason: 'conflictingEvidence' })
  })
})

describe('a limit that depends on the opening', () => {
  const third = resolvedRule({ check: { fact: 'head.support.veneerOverhang', comparator: 'notMoreThan' } }, { ...citation, proportion: '1/3', of: 'wall.veneer.thickness' })
  const spans: Table = {
    table: 'test.spans', title: 'Spans', publication: 'irc', edition: '2021', locator: 'Table 1', evidence: 'memory', lastReviewed: '2026-11-25', columns: { section: 'angle', stories: 'stories above', span: 'greatest span' },
    lookup: { keys: [{ column: 'section', fact: 'head.support.section' }, { column: 'stories', fact: 'wall.storiesAbove' }], gives: 'span', governing: 'inchPound' },
    rows: [{ section: 'L4x3x1/4', stories: 0, span: { inchPound: '8 [ft_i]', si: '2438 mm' } }, { section: 'L4x3x1/4', stories: 1, span: null }],
  }
  const span = resolvedRule({ check: { fact: 'opening.width', comparator: 'notMoreThan' } }, { ...citation, table: 'test.spans' })
  const withTable = { catalog: { tables: new Map([['test.spans', spans]]), cautions: new Map() } }

  test('may be a part of another fact', () => {
    expect(judged(third, { 'wall.veneer.thickness': '3 in', 'head.support.veneerOverhang': '1 in' })).toMatchObject({ outcome: 'pass', margin: { si: '0 mm' }, required: { inchPound: '1 in', si: '25.4 mm' } })
    expect(judged(third, { 'wall.veneer.thickness': '3 in', 'head.support.veneerOverhang': '1 1/16 in' }).outcome).toBe('fail')
    expect(judged(third, { 'head.support.veneerOverhang': '1 in' })).toMatchObject({ outcome: 'notDetermined', reason: 'missing', missing: ['wall.veneer.thickness'] })
  })

  test('may stand in a row of a table', () => {
    expect(judged(span, { 'head.support.section': 'L4x3x1/4', 'wall.storiesAbove': 0, 'opening.width': '8 ft' }, withTable)).toMatchObject({ outcome: 'pass', margin: { si: '0 mm' }, required: { text: 'at most 8 ft (2438 mm)' } })
    expect(judged(span, { 'head.support.section': 'L4x3x1/4', 'wall.storiesAbove': 0, 'opening.width': '97 in' }, withTable)).toMatchObject({ outcome: 'fail', margin: { si: '-25.4 mm' } })
  })

  test('names the keys of the table that are not known', () => {
    expect(judged(span, { 'opening.width': '6 ft' }, withTable)).toMatchObject({ outcome: 'notDetermined', reason: 'missing', missing: ['head.support.section', 'wall.storiesAbove'] })
  })

  test.each([
    ['the table has no such row', 'L6x3-1/2x3/8', 0],
    ['the row is left blank', 'L4x3x1/4', 1],
  ])('needs engineering where %s', (_, section, stories) => {
    expect(judged(span, { 'head.support.section': section, 'wall.storiesAbove': stories, 'opening.width': '6 ft' }, withTable)).toMatchObject({
      outcome: 'notDetermined', reason: 'outsidePrescriptive', missing: [], nextStep: expect.stringContaining('licensed professional') as string,
    })
  })
})

describe('a computed quantity', () => {
  const ratio = resolvedRule({ check: { quantity: 'test.ratio', comparator: 'notMoreThan' } }, amount('1'))
  const result = (over: Partial<QuantityResult>): QuantityResult => ({
    id: 'test.ratio', title: 'A ratio', part: 'head', dimension: 'ratio', status: 'computed', value: 0.8, text: '0.8', formula: '', inputs: [{ name: 'width', from: 'opening.width', text: '48 in' }],
    steps: [], tables: [], notes: [], assumptions: [], sources: [], missing: [], reason: null, why: null, ...over,
  })
  const withResult = (over: Partial<QuantityResult>) => judged(ratio, {}, { quantities: new Map([['test.ratio', result(over)]]) })

  test('is judged like a fact, and tells what it was worked out from', () => {
    expect(withResult({})).toMatchObject({ outcome: 'pass', quantity: 'test.ratio', fact: null, derivedFrom: ['opening.width'], measured: { text: '0.8' } })
    expect(withResult({ value: 1 }).outcome).toBe('pass')
    expect(withResult({ value: 1.000001 }).outcome).toBe('fail')
  })

  test('leaves the rule open with its own reason where it could not be computed', () => {
    expect(withResult({ status: 'notDetermined', value: null, reason: 'missing', missing: ['wall.heightAboveHead', 'parameter test.load'] })).toMatchObject({ outcome: 'notDetermined', reason: 'missing', missing: ['wall.heightAboveHead'] })
    expect(withResult({ status: 'notDetermined', value: null, reason: 'methodDoesNotHold' })).toMatchObject({ outcome: 'notDetermined', reason: 'methodDoesNotHold', nextStep: expect.stringContaining('does not hold here') as string })
  })

  test('that does not apply leaves the rule not applicable', () => {
    expect(withResult({ status: 'notApplicable', value: null })).toMatchObject({ outcome: 'notApplicable', decidedBy: ['quantity test.ratio'] })
  })
})

test('remedy and cautions come with a failure and only with it', () => {
  expect(judged(bearing, { 'head.support.bearing': '3 in' })).toMatchObject({ remedy: { beforeCoverUp: 'Mend it.', afterCoverUp: 'Open the wall.' }, cautions: ['A licensed engineer decides.'] })
  for (const facts of [{ 'head.support.bearing': '4 in' }, {}]) expect(judged(bearing, facts)).toMatchObject({ remedy: null, cautions: [] })
})
