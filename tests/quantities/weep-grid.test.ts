import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { headJoints, weepsIn } from '../../src/quantities/weep-grid.ts'

describe('head joints between two dams', () => {
  test.each([
    { name: 'every 8 over 56', length: 56, pitches: [8], joints: [8, 16, 24, 32, 40, 48] },
    { name: 'a joint at the right dam is the dam', length: 24, pitches: [8], joints: [8, 16] },
    { name: 'Flemish, 8 and 4 in turn', length: 30, pitches: [8, 4], joints: [8, 12, 20, 24] },
    { name: 'none in a flashing of one brick', length: 8, pitches: [8], joints: [] },
  ])('$name', ({ length, pitches, joints }) => {
    expect(headJoints(length, pitches)).toEqual(joints)
  })
})

describe('weeps in head joints', () => {
  test.each([
    { name: 'every third joint and the last', joints: [8, 16, 24, 32, 40, 48], longest: 24, weeps: [8, 32, 48] },
    { name: 'one joint, one weep', joints: [8], longest: 24, weeps: [8] },
    { name: 'joints too far apart', joints: [12, 24], longest: 10, weeps: undefined },
    { name: 'one joint too far from the dam', joints: [12], longest: 10, weeps: undefined },
    { name: 'no joints', joints: [], longest: 24, weeps: undefined },
  ])('$name', ({ joints, longest, weeps }) => {
    expect(weepsIn(joints, longest)).toEqual(weeps)
  })

  const course = fc.record({
    length: fc.integer({ min: 9, max: 400 }),
    pitches: fc.integer({ min: 2, max: 12 }).chain((pitch) => fc.constantFrom([pitch], [pitch, pitch / 2])),
    longest: fc.integer({ min: 1, max: 40 }),
  })

  test('stand in joints, none farther than allowed from the next or from a dam', () => {
    fc.assert(fc.property(course, ({ length, pitches, longest }) => {
      const joints = headJoints(length, pitches)
      const weeps = weepsIn(joints, longest)
      fc.pre(weeps !== undefined)
      expect(weeps.every((weep) => joints.includes(weep))).toBe(true)
      expect([weeps[0], weeps.at(-1)]).toEqual([joints[0], joints.at(-1)])
      expect(Math.max(...gaps([0, ...weeps, length]))).toBeLessThanOrEqual(longest)
    }))
  })

  test('are as few as any choice of joints from the first to the last', () => {
    fc.assert(fc.property(course, ({ length, pitches, longest }) => {
      const joints = headJoints(length, pitches)
      fc.pre(joints.length > 0 && (joints[0] ?? 0) <= longest)
      expect(weepsIn(joints, longest)?.length).toBe(fewest(joints, longest))
    }))
  })

  test('are no fewer than the spacing alone asks: ⌈(L − 2e) / s⌉ + 1', () => {
    fc.assert(fc.property(course, ({ length, pitches, longest }) => {
      const joints = headJoints(length, pitches)
      const weeps = weepsIn(joints, longest)
      fc.pre(weeps !== undefined)
      expect(weeps.length).toBeGreaterThanOrEqual(Math.ceil(((joints.at(-1) ?? 0) - (joints[0] ?? 0)) / longest) + 1)
    }))
  })

  test('are refused only where two joints, or a dam and a joint, are too far apart', () => {
    fc.assert(fc.property(course, ({ length, pitches, longest }) => {
      const joints = headJoints(length, pitches)
      fc.pre(joints.length > 0 && weepsIn(joints, longest) === undefined)
      expect(Math.max(...gaps([0, ...joints]))).toBeGreaterThan(longest)
    }))
  })
})

function gaps(places: readonly number[]): readonly number[] {
  return places.slice(1).map((place, index) => place - (places[index] ?? 0))
}

/** By trying every joint before: slow, and with no greed in it. */
function fewest(joints: readonly number[], longest: number): number | undefined {
  const least: (number | undefined)[] = []
  joints.forEach((joint, index) => {
    const before = joints.slice(0, index).flatMap((earlier, at) => (joint - earlier <= longest ? [least[at]] : [])).filter((count) => count !== undefined)
    least.push(index === 0 ? 1 : before.length > 0 ? Math.min(...before) + 1 : undefined)
  })
  return least.at(-1)
}
