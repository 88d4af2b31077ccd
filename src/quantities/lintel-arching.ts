import { exactLengthText } from '../units/quantity-text.ts'
import { whether } from './choose.ts'
import { defineQuantity } from './define.ts'
import { loadsAbove, saidThatLoadRests } from './lintel-loads-above.ts'
import { bearing, onLintel } from './lintel-needs.ts'
import { confirmed, lintelTextbook } from './lintel-sources.ts'
import { asksOf, combined, fact, foundOnce, limit, parameter, result, together, type Need } from './need.ts'

export const arches = 'arches'
const doesNotArch = 'does not arch'

/** One thing that has to hold for the brick to arch, and how it stands here. */
interface Condition {
  readonly met: boolean
  readonly text: string
}

const bond = combined({ bond: fact.choice('wall.veneer.bond') }, ({ bond }): Condition => ({ met: bond !== 'stack', text: `units overlap in ${bond} bond` }))

/** How high over the lintel the brick, and any floor or roof on it, has to reach for the brick to arch. */
const heightNeeded = combined(
  { span: result('lintel.effective-span'), angle: parameter('lintel.arching-triangle-angle'), cover: parameter('lintel.arching-cover') },
  ({ span, angle, cover }) => ({ needed: Math.round((span / 2) * Math.tan((angle * Math.PI) / 180) + cover), cover }),
)

const height = combined({ above: fact.amount('wall.heightAboveHead'), height: heightNeeded }, ({ above, height: { needed, cover } }): Condition => {
  return { met: above >= needed, text: `${exactLengthText(above)} of brick above, ${exactLengthText(needed)} needed to stand ${exactLengthText(cover)} over the load triangle` }
})

const seats = combined({ ...bearing, least: limit('lintel.bearing-length') }, ({ left, right, least }): Condition => {
  return { met: Math.min(left, right) >= least, text: `bearing ${exactLengthText(left)} and ${exactLengthText(right)}, ${exactLengthText(least)} needed` }
})

const joints = combined({ joint: fact.atEitherEnd('wall.movementJointAtJamb') }, ({ joint }): Condition => ({ met: !joint, text: 'no movement joint at the jambs' }))

const level = combined({ at: fact.amount('wall.imposedLoadHeight'), height: heightNeeded }, ({ at, height: { needed } }): Condition => {
  return { met: at >= needed, text: `floor or roof load ${exactLengthText(at)} above the lintel, ${exactLengthText(needed)} needed for the brick to carry it past the opening` }
})

const withoutFloor = combined({ loads: loadsAbove }, ({ loads }): Condition => {
  return { met: true, text: loads.point === 0 ? 'no floor, roof or point load on the brick above' : 'a point load does not take arching away; its spread is counted on the lintel' }
})

const statedLoads = whether(combined({ loads: loadsAbove }, ({ loads }) => loads.even > 0), level, withoutFloor)

/** A load that nobody stated may come on at any level, so it takes arching away. */
const loads: Need<Condition> = foundOnce({
  asks: asksOf(saidThatLoadRests, statedLoads),
  find: (inputs) => {
    const [said, stated] = [saidThatLoadRests.find(inputs), statedLoads.find(inputs)]
    if (stated.known || !said.known || stated.because?.reason !== 'outsidePrescriptive') return stated
    return { ...said, value: { met: false, text: 'a floor, roof or point load rests on the brick above, at a level that is not known' } }
  },
})

const besides = combined(
  { pier: fact.ends('opening.pierWidth'), clear: fact.amount('opening.width'), least: parameter('lintel.arching-pier-width'), share: parameter('lintel.arching-pier-share') },
  ({ pier, clear, least, share }): Condition => {
    const needed = Math.max(least, Math.round(share * clear))
    return { met: Math.min(...pier) >= needed, text: `masonry beside the opening ${pier.map(exactLengthText).join(' and ')}, ${exactLengthText(needed)} needed to take the thrust` }
  },
)

const atCorner = fact.flag('opening.atCorner')

/** An opening that runs round a corner has no masonry on one side, whatever else was measured. */
const piers: Need<Condition> = foundOnce({
  asks: asksOf(atCorner, besides),
  find: (inputs) => {
    const corner = atCorner.find(inputs)
    return corner.known && corner.value ? { ...corner, value: { met: false, text: 'masonry at both jambs; the opening runs round a corner' } } : besides.find(inputs)
  },
})

const conditions: readonly Need<Condition>[] = [bond, height, seats, joints, loads, piers]

/** One condition that fails decides by itself; otherwise all of them have to be known. */
const judged: Need<readonly Condition[]> = foundOnce({
  asks: asksOf(...conditions),
  find: (inputs) => {
    const found = conditions.map((condition) => condition.find(inputs))
    const failed = found.some((one) => one.known && !one.value.met)
    return together(failed ? found.filter(({ known }) => known) : found)
  },
})

/** Whether the brick above carries itself past the opening, so that the lintel holds only a triangle of it. */
export const lintelArching = defineQuantity({
  id: 'lintel.arching',
  title: 'Arching of the brick above',
  part: 'head',
  dimension: null,
  choices: [arches, doesNotArch],
  structural: true,
  formula: 'overlapping bond, height above ≥ half the effective span × tan(triangle angle) + cover, enough bearing and masonry at both ends, no movement joint, no floor or roof load lower than that',
  sources: [
    lintelTextbook('pp. 218-219, eq. 4.82-4.83', 218),
    lintelTextbook('p. 222, floor and roof loads', 222),
    { title: 'Masonry and Concrete (McGraw-Hill)', locator: 'p. 260', evidence: 'primary', readIn: 'https://digilib.universitaspertamina.ac.id/ebook/Masonry%20and%20Concrete' },
  ],
  appliesTo: onLintel,
  needs: { judged },
  compute: ({ judged }) => {
    const arching = judged.every(({ met }) => met)
    return {
      value: arching ? arches : doesNotArch,
      steps: judged.map(({ met, text }) => `${met ? 'met' : 'not met'}: ${text}`),
      notes: [arching ? 'Shore the lintel until the mortar has set; green brickwork does not arch.' : 'The lintel has to carry all the brick above it.', confirmed],
    }
  },
})
