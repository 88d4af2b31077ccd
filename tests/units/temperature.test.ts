import { expect, test } from 'vitest'
import { celsius } from '../../src/units/temperature.ts'

// Water freezes at 32 °F and boils at 212 °F; the two scales meet at -40
test.each([[32, '°F', 0], [212, 'degF', 100], [-40, '[degF]', -40], [18.5, 'Cel', 18.5], [0, '°C', 0]])('%d %s', (reading, unit, expected) => {
  expect(celsius(reading, unit)).toBeCloseTo(expected, 9)
})

test.each(['mm', 'K', 'furlong'])('%s is no scale of a thermometer', (unit) => expect(celsius(10, unit)).toBeUndefined())
