import fc from 'fast-check'

/** A length on a tape: whole feet, whole inches below twelve, sixty-fourths below an inch. */
export interface TapeLength {
  readonly feet: number
  readonly inches: number
  readonly sixtyFourths: number
}

export const tapeLength: fc.Arbitrary<TapeLength> = fc.record({
  feet: fc.integer({ min: 0, max: 3000 }),
  inches: fc.integer({ min: 0, max: 11 }),
  sixtyFourths: fc.integer({ min: 0, max: 63 }),
})

/** 1 ft = 304 800 000 nm, 1 in = 25 400 000 nm, 1/64 in = 396 875 nm: whole numbers, added without a fraction. */
export function tapeNanometres({ feet, inches, sixtyFourths }: TapeLength): number {
  return feet * 304_800_000 + inches * 25_400_000 + sixtyFourths * 396_875
}

/** Millimetres written with up to six decimals, taken apart as text: the digits after the point are the nanometres. */
export function millimetreTextNanometres(text: string): number {
  const [whole = '0', decimals = ''] = text.split('.')
  return Number(`${whole}${decimals.padEnd(6, '0')}`)
}

/** Texts made of what stands in lengths, so that some of them nearly are one. */
export const tradeText = fc.string({ unit: fc.constantFrom(...Array.from(`0123456789 .,/-–'"″′½⅞inftmcLx×:~[]_2µ`)), maxLength: 24 })
