/** What a flashing has to become: lengths in nanometers, angles in degrees. */
export interface Pan {
  /** Dam to dam. */
  readonly length: number
  readonly leftDam: number
  readonly rightDam: number
  /** Level distance from the backing to the face. */
  readonly depth: number
  readonly upstand: number
  /** Level distance from the face to the edge of the drip. */
  readonly projection: number
  /** Of the drip, down from the level. */
  readonly dripAngle: number
  /** Fall of the bed toward the face. */
  readonly fall: number
  readonly hem: number
}

/** From the left end of the blank, seen from outside, and from its front edge. */
export type Point = readonly [x: number, y: number]

export interface Fold {
  readonly name: string
  readonly from: Point
  readonly to: Point
  /** Up is toward the wet side. */
  readonly direction: 'up' | 'down'
  /** How far it is turned from flat. */
  readonly angle: number
}

/** A flat blank. Nothing is slit: its corners are folded into ears, so that no seam is left to seal. */
export interface CutPattern {
  readonly length: number
  readonly width: number
  readonly outline: readonly Point[]
  readonly folds: readonly Fold[]
  /** How high water can stand in the corners before it runs over. */
  readonly holds: number
}

/** Distances of the folds from the front edge. */
interface Levels {
  readonly hem: number
  readonly face: number
  readonly back: number
  readonly top: number
}

/** One end of the blank: where its dam is folded, and on which side of that fold the dam lies. */
interface End {
  readonly name: 'Left' | 'Right'
  readonly fold: number
  readonly outward: -1 | 1
  readonly dam: number
  /** Of the ear, along the blank; less than the dam where the upstand is lower. */
  readonly ear: number
}

const rightAngle = 180 / 2

export function cutPattern(pan: Pan): CutPattern {
  const levels = levelsOf(pan)
  const left = endOf(pan, 'Left')
  const right = endOf(pan, 'Right')
  return {
    length: pan.leftDam + pan.length + pan.rightDam,
    width: levels.top,
    outline: distinct([...edgeOf(pan, levels, left).toReversed(), ...edgeOf(pan, levels, right)]),
    folds: [...acrossFolds(pan, levels), ...[left, right].flatMap((end) => endFolds(pan, levels, end))],
    holds: Math.round(Math.min(left.ear, right.ear) / Math.cos(radians(pan.fall))),
  }
}

/** The drip goes on at the fall of the bed where that is steeper than it is turned down. */
function dripTurn({ dripAngle, fall }: Pan): number {
  return Math.max(dripAngle, fall)
}

function levelsOf(pan: Pan): Levels {
  const hem = pan.projection > 0 ? pan.hem : 0
  const face = hem + Math.round(pan.projection / Math.cos(radians(dripTurn(pan))))
  const back = face + Math.round(pan.depth / Math.cos(radians(pan.fall)))
  return { hem, face, back, top: back + pan.upstand }
}

/** The diagonal of the ear halves the angle between the back edge of the dam and the line of the dam carried up the upstand. */
function diagonalRise({ fall }: Pan): number {
  return Math.tan(radians((rightAngle + fall) / 2))
}

function endOf(pan: Pan, name: End['name']): End {
  const dam = name === 'Left' ? pan.leftDam : pan.rightDam
  const ear = Math.min(dam, Math.round(pan.upstand / diagonalRise(pan)))
  return { name, fold: name === 'Left' ? pan.leftDam : pan.leftDam + pan.length, outward: name === 'Left' ? -1 : 1, dam, ear }
}

/** From the front edge up: the drip stops at the dam, and what the ear does not need behind a dam higher than the upstand is cut away. */
function edgeOf(pan: Pan, { face, back, top }: Levels, { fold, outward, dam, ear }: End): readonly Point[] {
  const backEdge = Math.tan(radians(pan.fall))
  const behind: readonly Point[] = ear < dam
    ? [[fold + outward * dam, back + Math.round(dam * backEdge)], [fold + outward * ear, back + Math.round(ear * backEdge)], [fold + outward * ear, top]]
    : [[fold + outward * dam, top]]
  return [[fold, 0], [fold, face], [fold + outward * dam, face], ...behind]
}

function acrossFolds(pan: Pan, { hem, face, back }: Levels): readonly Fold[] {
  const across = (name: string, y: number, direction: Fold['direction'], angle: number): Fold => ({ name, from: [pan.leftDam, y], to: [pan.leftDam + pan.length, y], direction, angle })
  return [
    across('Hem, folded under', hem, 'down', 180),
    across('Drip, at the face', face, 'down', dripTurn(pan) - pan.fall),
    across('Upstand', back, 'up', rightAngle - pan.fall),
  ].filter(({ name, from: [, y], angle }) => angle > 0 && y > 0 && (name !== 'Upstand' || pan.upstand > 0))
}

function endFolds(pan: Pan, { face, back }: Levels, { name, fold, outward, dam, ear }: End): readonly Fold[] {
  if (dam === 0) return []
  const corner: Point = [fold, back]
  const tip = (rise: number): Point => [fold + outward * ear, back + Math.round(ear * rise)]
  const damFold: Fold = { name: `${name} end dam`, from: [fold, face], to: corner, direction: 'up', angle: rightAngle }
  if (ear === 0) return [damFold]
  return [
    damFold,
    { name: `${name} ear, along the back of the dam`, from: corner, to: tip(Math.tan(radians(pan.fall))), direction: 'down', angle: rightAngle },
    { name: `${name} ear, diagonal`, from: corner, to: tip(diagonalRise(pan)), direction: 'up', angle: 180 },
  ]
}

/** Without the points that fall together where a leg has no width. */
function distinct(points: readonly Point[]): readonly Point[] {
  return points.filter(([x, y], index) => {
    const next = points[(index + 1) % points.length]
    return next === undefined || next[0] !== x || next[1] !== y
  })
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180
}
