import { z } from 'zod'

/**
 * The order of the work, as one list used everywhere. Each point names what the next operation hides,
 * so a fact that is not read by then may never be read. A hold point stops work until it is released;
 * a witness point invites someone; a self-check is the crew's own.
 * Source of the sequence: common practice, no source; the points with a published precedent are named in the catalog's rules.
 */
export const holdPoints = [
  { id: 'detailReview', title: 'Details reviewed before bid or permit', kind: 'selfCheck', hides: null },
  { id: 'submittalsAndMockUp', title: 'Submittals, meeting before the work, mock-up', kind: 'hold', hides: null },
  { id: 'backingReady', title: 'Backing, rough opening and ledge ready', kind: 'witness', hides: 'The water-resistive barrier hides the studs and sheathing.' },
  { id: 'barrierAndPan', title: 'Barrier and sill pan in, window not yet', kind: 'hold', hides: 'The window hides the pan and the wrapped opening.' },
  { id: 'unitSet', title: 'Window or door set, jamb and head membranes on', kind: 'hold', hides: 'The rising veneer hides the membranes.' },
  { id: 'baseFlashing', title: 'Base flashing and first courses', kind: 'hold', hides: 'The next courses hide the base flashing.' },
  { id: 'sillFlashing', title: 'Sill flashing in, sill units not yet', kind: 'hold', hides: 'The sill units hide their flashing.' },
  { id: 'jambRise', title: 'Veneer risen from sill to head', kind: 'witness', hides: 'Each lift hides the ties and the air space below it.' },
  { id: 'lintelSet', title: 'Lintel on its bearings', kind: 'hold', hides: 'The flashing and the brick hide the bearings.' },
  { id: 'headFlashing', title: 'Head flashing complete', kind: 'hold', hides: 'The first course above hides the flashing within minutes.' },
  { id: 'headFirstCourse', title: 'First course on the head flashing', kind: 'hold', hides: 'The next courses hide the back of the weeps.' },
  { id: 'wallAbove', title: 'Wall above, to the next support', kind: 'witness', hides: 'Each lift hides the ties and the air space below it.' },
  { id: 'sealantAndCleaning', title: 'Sealant joints and cleaning', kind: 'witness', hides: null },
  { id: 'handover', title: 'Final and handover', kind: 'hold', hides: null },
  { id: 'inService', title: 'First heavy rain, yearly walk or a report of a leak', kind: 'selfCheck', hides: null },
] as const

export type HoldPoint = (typeof holdPoints)[number]['id']

export const holdPointId = z
  .enum(holdPoints.map(({ id }) => id) as [HoldPoint, ...HoldPoint[]])
  .meta({ id: 'HoldPointId', title: 'Hold point', description: 'A stage of the work, in the order of the work.' })

/** Negative when `a` comes before `b` in the order of the work. */
export function compareHoldPoints(a: HoldPoint, b: HoldPoint): number {
  return order.indexOf(a) - order.indexOf(b)
}

export function holdPointTitle(point: HoldPoint): string {
  return titles[point]
}

const order = holdPoints.map(({ id }) => id)
const titles = Object.fromEntries(holdPoints.map(({ id, title }) => [id, title])) as Readonly<Record<HoldPoint, string>>
