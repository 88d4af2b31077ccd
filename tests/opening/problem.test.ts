import { expect, test } from 'vitest'
import { pointerOf } from '../../src/opening/problem.ts'

// the examples of RFC 6901, section 5, for the document given there
test.each([
  [[], ''],
  [['foo'], '/foo'],
  [['foo', 0], '/foo/0'],
  [[''], '/'],
  [['a/b'], '/a~1b'],
  [['m~n'], '/m~0n'],
  [['~1'], '/~01'],
])('%j is %s', (path, pointer) => expect(pointerOf(path)).toBe(pointer))
