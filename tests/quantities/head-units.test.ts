import { describe, expect, test } from 'vitest'
import { headUnits } from '../../src/quantities/head-units.ts'
import { lintelLength } from '../../src/quantities/lintel-length.ts'
import { evaluate, valueOf } from './inputs.ts'

const head = (course: string, more = {}) => ({ facts: { 'wall.veneer.unit': 'modular', 'wall.veneer.headCourse': course, 'opening.width': '48 in', ...more } })

describe('soldiers and rowlocks over the head', () => {
  // Worked by hand: 48 in / 2 5/8 in = 18.3; 18 on the 2 2/3 in module. A soldier with its joint is 8 in, 3 courses; a rowlock 4 in, 1 1/2
  test.each([
    { course: 'soldier', rise: 'They stand 8 in high with their joint, 3 courses.' },
    { course: 'rowlock', rise: 'They stand 4 in high with their joint, 1.5 courses: the courses beside them do not meet their top.' },
  ])('$course', ({ course, rise }) => {
    const result = evaluate(headUnits, head(course))
    expect(valueOf(result)).toBe(19)
    expect(result.notes).toEqual(['At the pitch of the coursing, 2.667 in, 18 fill the width exactly.', rise])
  })

  // Worked by hand: 56 in / 2 5/8 in = 21.3
  test('over the lintel as described, else as required', () => {
    expect(evaluate(headUnits, head('soldier', { 'head.support.length': '56 in' })).notes).toContain('Over the whole lintel, 56 in, they are 22.')
    const required = { ...head('soldier', { 'head.support.kind': 'looseSteelAngle' }), limits: { 'lintel.bearing-length': '4 in' } }
    expect(evaluate(headUnits, required, [lintelLength]).notes).toContain('Over the whole lintel, 56 in, they are 22.')
  })

  test('metric: 15 British soldiers of 75 mm over 1125 mm', () => {
    expect(valueOf(evaluate(headUnits, head('soldier', { 'wall.veneer.unit': 'britishStandard', 'opening.width': '1125 mm' })))).toBe(15)
  })

  test('only where the course is turned, and not in an arch', () => {
    expect(evaluate(headUnits, head('stretcher')).status).toBe('notApplicable')
    expect(evaluate(headUnits, head('soldier', { 'opening.headShape': 'jackArch' })).reason).toBe('methodDoesNotHold')
    expect(evaluate(headUnits, { facts: { 'opening.width': '48 in', 'wall.veneer.headCourse': 'soldier' } }).missing).toEqual(['wall.veneer.unit'])
    expect(evaluate(headUnits, { facts: { 'opening.width': '48 in', 'wall.veneer.unit': 'modular' } }).missing).toEqual(['wall.veneer.headCourse'])
  })
})
