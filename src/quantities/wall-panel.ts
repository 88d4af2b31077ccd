import { combined, fact, orElse, type Need } from './need.ts'
import type { Rectangle } from './tributary-area.ts'
import { footToSill, veneerHeight } from './veneer-height.ts'

/** The brick around one opening, from one end to the other and from foot to top, in nanometres from its lower left corner. */
export interface WallPanel {
  readonly panel: Rectangle
  readonly opening: Rectangle
}

const width = fact.amount('opening.width')
const left = fact.end('opening.pierWidth', 'left')
const right = fact.end('opening.pierWidth', 'right')

/** The brick on both sides; where one side is not known, what the length of the wall leaves for it. */
const piers: Need<readonly [left: number, right: number]> = orElse(
  fact.ends('opening.pierWidth'),
  orElse(
    combined({ length: fact.amount('wall.length'), width, left }, ({ length, width, left }) => [left, length - width - left] as const),
    combined({ length: fact.amount('wall.length'), width, right }, ({ length, width, right }) => [length - width - right, right] as const),
    'The brick on the left is worked out from the right one.',
  ),
  'The brick on one side is not known; this opening is taken to be the only one in the length of the wall.',
)

export const wallPanel: Need<WallPanel> = combined(
  { piers, width, below: footToSill, opening: fact.amount('opening.height'), height: veneerHeight },
  ({ piers: [left, right], width, below, opening, height }) => ({
    panel: { left: 0, right: left + width + right, bottom: 0, top: height },
    opening: { left, right: left + width, bottom: below, top: below + opening },
  }),
)

/** Whether the opening lies in the panel at all: measures that contradict each other do not make one. */
export function isInPanel({ panel, opening }: WallPanel): boolean {
  return opening.left >= panel.left && opening.right <= panel.right && opening.bottom >= panel.bottom && opening.top <= panel.top
}

/** Brick in the panel, in the square of the unit of its lengths. */
export function brickArea({ panel, opening }: WallPanel): number {
  return areaOfRectangle(panel) - areaOfRectangle(opening)
}

function areaOfRectangle({ left, right, bottom, top }: Rectangle): number {
  return (right - left) * (top - bottom)
}
