import type { Reason } from '../catalog/rule.ts'
import { asksOf, fact, foundOnce, together, type Found, type Need } from './need.ts'

/** What rests on the brick above: evenly along the wall in N/m, and at one place in newtons; 0 where nothing does. */
export interface LoadsAbove {
  readonly even: number
  readonly point: number
}

export const saidThatLoadRests = fact.flag('wall.loadAbove')
const even = fact.amount('wall.imposedLoad')
const point = fact.amount('wall.pointLoad')

export const loadNotStated = 'A floor, a roof or a point load rests on the brick above; the lintel needs a licensed professional.'
const contradicted = 'A floor, roof or point load on the brick above is stated, and it is also said that nothing rests there. One of the two is wrong.'
const nothingStated = 'It is said that something rests on the brick above, and every load there is stated as 0. One of the two is wrong.'

/** The loads as they are stated. A stated load says by itself that something rests on the brick. */
export const loadsAbove: Need<LoadsAbove> = foundOnce({
  asks: asksOf(saidThatLoadRests, even, point),
  find: (inputs) => settled(saidThatLoadRests.find(inputs), even.find(inputs), point.find(inputs)),
})

/** The same, and undefined while nobody said whether anything rests there; what is refused stays refused. */
export const loadsAboveIfSaid = foundOnce<LoadsAbove | undefined>({
  asks: loadsAbove.asks,
  find: (inputs) => {
    const given = loadsAbove.find(inputs)
    return given.known || given.because ? given : { known: true, value: undefined, used: [], sources: [], assumptions: [] }
  },
})

function settled(said: Found<boolean>, even: Found<number>, point: Found<number>): Found<LoadsAbove> {
  const rests = amountOf(even) > 0 || amountOf(point) > 0
  if (rests) return said.known && !said.value ? refused('methodDoesNotHold', contradicted) : stated([said, even, point], even, point)
  const bothAreNought = even.known && point.known
  if (said.known && said.value) return bothAreNought ? refused('methodDoesNotHold', nothingStated) : refused('outsidePrescriptive', loadNotStated)
  return said.known || bothAreNought ? stated([said, even, point], even, point) : said
}

function stated(given: readonly Found<boolean | number>[], even: Found<number>, point: Found<number>): Found<LoadsAbove> {
  const known = together(given.filter(({ known }) => known))
  if (!known.known) return known
  const rests = amountOf(even) > 0 || amountOf(point) > 0
  const uncounted = [
    ...(rests && !even.known ? ['No floor or roof load is stated; none is counted beside the point load.'] : []),
    ...(rests && !point.known ? ['No point load is stated; none is counted beside the floor or roof load.'] : []),
  ]
  return { ...known, value: { even: amountOf(even), point: amountOf(point) }, assumptions: uncounted }
}

function amountOf(given: Found<number>): number {
  return given.known ? given.value : 0
}

function refused(reason: Reason, why: string): Found<never> {
  return { known: false, missing: [], because: { status: 'notDetermined', reason, why } }
}
