import { expect, test } from 'vitest'
import { compareHoldPoints, holdPointId, holdPoints } from '../../src/opening/hold-points.ts'

const ids = holdPoints.map(({ id }) => id)

test('each point has a name of its own and a title', () => {
  expect(new Set(ids).size).toBe(ids.length)
  expect(holdPoints.filter(({ title }) => title.trim() === '')).toEqual([])
})

test('the order is that of the work', () => {
  expect(compareHoldPoints('barrierAndPan', 'unitSet')).toBeLessThan(0) // the pan goes in before the window
  expect(compareHoldPoints('lintelSet', 'headFlashing')).toBeLessThan(0) // the flashing lies on the lintel
  expect(compareHoldPoints('headFlashing', 'headFirstCourse')).toBeLessThan(0) // and is hidden by the brick
  expect(compareHoldPoints('sealantAndCleaning', 'wallAbove')).toBeGreaterThan(0)
  expect(compareHoldPoints('lintelSet', 'lintelSet')).toBe(0)
})

test('sorting by it gives the list back', () => expect(ids.toReversed().toSorted(compareHoldPoints)).toEqual(ids))

test('the wire form takes these and no others', () => {
  expect(ids.every((id) => holdPointId.safeParse(id).success)).toBe(true)
  expect(holdPointId.safeParse('roofOn').success).toBe(false)
})
