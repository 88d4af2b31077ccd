import { describe, expect, test } from 'vitest'
import { codeSpacing, headSpacing, sillSpacing } from '../../src/quantities/weep-spacing.ts'
import { amount, inputsOf } from './inputs.ts'

const limits = {
  'weep.spacing': { text: '33 in', comparator: 'notMoreThan' }, // IRC R703.8.6, from memory
  'weep.spacing-open-head-joint': { text: '24 in', comparator: 'notMoreThan' }, // BIA Technical Notes 28B (2005)
  'weep.spacing-wick-or-tube': { text: '16 in', comparator: 'notMoreThan' }, // the same
  'weep.sill-spacing-open-head-joint': { text: '24 in', comparator: 'notMoreThan' }, // BIA Technical Notes 36 (1982)
  'weep.sill-spacing-tube': { text: '24 in', comparator: 'notMoreThan' }, // the same
  'weep.sill-spacing-wick': { text: '16 in', comparator: 'notMoreThan' }, // the same
} as const

describe('weep spacing at the head', () => {
  test.each([
    ...['openHeadJoint', 'cellVent', 'mesh'].map((kind) => ({ kind, spacing: '24 in' })),
    ...['tube', 'wick', 'rope'].map((kind) => ({ kind, spacing: '16 in' })),
  ])('$kind: $spacing', ({ kind, spacing }) => {
    expect(headSpacing.find(inputsOf({ facts: { 'head.weeps.kind': kind }, limits }))).toMatchObject({ value: { amount: amount(spacing), longest: amount(spacing) }, assumptions: [] })
  })

  test('the code wins where an amendment makes it stricter than the recommendation', () => {
    const amended = { ...limits, 'weep.spacing': { text: '20 in', comparator: 'notMoreThan' } } as const
    expect(headSpacing.find(inputsOf({ facts: { 'head.weeps.kind': 'openHeadJoint' }, limits: amended }))).toMatchObject({ value: { amount: amount('20 in') } })
  })

  test('no recommendation in force leaves the code', () => {
    expect(headSpacing.find(inputsOf({ facts: { 'head.weeps.kind': 'tube' }, limits: { 'weep.spacing': limits['weep.spacing'] } }))).toMatchObject({ value: { amount: amount('33 in') } })
  })

  test.each([undefined, 'none'])('takes open head joints where the kind is %s, and says so', (kind) => {
    const found = headSpacing.find(inputsOf({ facts: { 'head.weeps.kind': kind }, limits }))
    expect(found).toMatchObject({ value: { amount: amount('24 in') }, assumptions: [expect.stringMatching(/open head joints/)] })
  })

  test('is not known without a rule', () => {
    expect(headSpacing.find(inputsOf({ facts: { 'head.weeps.kind': 'tube' } }))).toEqual({ known: false, missing: ['rule weep.spacing', 'rule weep.spacing-wick-or-tube'] })
  })
})

test('"less than 33 in" leaves a nanometre less than 33 in', () => {
  // TMS 402, comparator from memory
  const found = codeSpacing.find(inputsOf({ limits: { 'weep.spacing': { text: '33 in', comparator: 'lessThan' } } }))
  expect(found).toMatchObject({ value: { amount: amount('33 in'), longest: amount('33 in') - 1 } })
})

describe('weep spacing at the sill', () => {
  test.each([
    { kind: 'openHeadJoint', spacing: '24 in' },
    { kind: 'tube', spacing: '24 in' },
    { kind: 'rope', spacing: '16 in' },
  ])('$kind: $spacing', ({ kind, spacing }) => {
    expect(sillSpacing.find(inputsOf({ facts: { 'sill.weeps.kind': kind }, limits }))).toMatchObject({ value: { amount: amount(spacing) } })
  })

  test('the code that speaks of supports does not set it', () => {
    expect(sillSpacing.find(inputsOf({ facts: { 'sill.weeps.kind': 'tube' }, limits: { 'weep.spacing': limits['weep.spacing'] } })).known).toBe(false)
  })
})
