import { expect, test } from 'vitest'
import { checkPair } from '../../../src/catalog/checks/pair.ts'

type Pair = Parameters<typeof checkPair>[0]

/** How limits are printed, with where they were found. */
const agreeing: readonly (readonly [string, Pair])[] = [
  ['33 in printed as 838 mm (IRC R703.8.6)', { governing: 'inchPound', inchPound: '33 [in_i]', si: '838 mm' }],
  ['3/16 in printed as 4.8 mm (IRC R703.8.6)', { governing: 'inchPound', inchPound: '3/16 [in_i]', si: '4.8 mm' }],
  ['4 in printed as 102 mm (IRC R703.8.3)', { governing: 'inchPound', inchPound: '4 [in_i]', si: '102 mm' }],
  ['1 in printed as 25 mm (IRC Table R703.8.4)', { governing: 'inchPound', inchPound: '1 [in_i]', si: '25 mm' }],
  ['6 in printed as 150 mm with its rounding (UFGS 04810)', { governing: 'inchPound', inchPound: '6 [in_i]', si: '150 mm', roundedTo: '10 mm' }],
  ['838 mm printed as 33 in, which is rounded to the inch', { governing: 'si', inchPound: '33 [in_i]', si: '838 mm' }],
  ['4.8 mm printed as 3/16 in, which is rounded to the sixteenth', { governing: 'si', inchPound: '3/16 [in_i]', si: '4.8 mm' }],
  ['60 mm printed as 2 3/8 in, which is rounded to the eighth', { governing: 'si', inchPound: '2 3/8 [in_i]', si: '60 mm' }],
  ['2.67 sq ft printed as 0.25 m2 (TMS 402)', { governing: 'inchPound', inchPound: '2.67 [ft_i]2', si: '0.25 m2' }],
  ['a slope, the same in both', { governing: 'inchPound', inchPound: '15 deg', si: '15 deg' }],
]

const disagreeing: readonly (readonly [string, Pair])[] = [
  ['24 in printed as 737 mm (Paris, Texas, R703.8.4.1.2)', { governing: 'inchPound', inchPound: '24 [in_i]', si: '737 mm' }],
  ['6 in printed as 150 mm without a word on its rounding', { governing: 'inchPound', inchPound: '6 [in_i]', si: '150 mm' }],
  ['6 in printed as 150 mm, rounded to 2 mm', { governing: 'inchPound', inchPound: '6 [in_i]', si: '150 mm', roundedTo: '2 mm' }],
  ['a rounding that is not a length', { governing: 'inchPound', inchPound: '6 [in_i]', si: '150 mm', roundedTo: '10 deg' }],
  ['33 in one millimeter high', { governing: 'inchPound', inchPound: '33 [in_i]', si: '839 mm' }],
  ['3/16 in a tenth of a millimeter low', { governing: 'inchPound', inchPound: '3/16 [in_i]', si: '4.7 mm' }],
  ['60 mm printed as 2 1/8 in, more than a sixteenth off', { governing: 'si', inchPound: '2 1/8 [in_i]', si: '60 mm' }],
  ['4.8 mm printed as 1/16 in, more than a thirty-second off', { governing: 'si', inchPound: '1/16 [in_i]', si: '4.8 mm' }],
]

test.each(agreeing)('the two figures agree: %s', (_, pair) => {
  expect(checkPair(pair, undefined)).toBeUndefined()
})

test.each(disagreeing)('the two figures do not agree: %s', (_, pair) => {
  expect(checkPair(pair, undefined)).toMatchObject({ code: 'pairMismatch', detail: expect.stringContaining(pair.si) as string })
})

test('figures of different kinds, unreadable ones and ones of another kind than the fact are told apart', () => {
  const pair = { governing: 'inchPound', inchPound: '4 [in_i]', si: '102 mm' } as const
  expect(checkPair(pair, 'length')).toBeUndefined()
  expect(checkPair({ ...pair, si: '4 deg' }, 'length')).toMatchObject({ code: 'unitMismatch', detail: expect.stringContaining('a length and "4 deg"') as string })
  expect(checkPair({ ...pair, si: 'four' }, 'length')).toMatchObject({ code: 'unitMismatch', detail: expect.stringContaining('"four" cannot be read') as string })
  expect(checkPair(pair, 'angle')).toMatchObject({ code: 'unitMismatch', detail: expect.stringContaining('what is checked is a angle') as string })
})

test('figures that are said to be printed against each other must be so, and be of one kind all the same', () => {
  const pair = { governing: 'inchPound', inchPound: '24 [in_i]', si: '737 mm', printedConflict: 'So printed.' } as const
  expect(checkPair(pair, 'length')).toBeUndefined()
  expect(checkPair({ ...pair, governing: 'si' }, 'length')).toBeUndefined()
  expect(checkPair({ ...pair, si: '610 mm' }, 'length')).toMatchObject({ code: 'printedConflictUnneeded', detail: expect.stringContaining('agree within rounding') as string })
  expect(checkPair({ ...pair, si: '737 deg' }, 'length')).toMatchObject({ code: 'unitMismatch' })
})
