import { choiceWords } from '../../opening/choice-words.ts'
import { dimensionText } from '../length-words.ts'
import { brickOf, type BrickSizes, type Known } from '../known.ts'
import type { UnitSystem } from '../../units/dimension.ts'
import type { Point } from '../shape.ts'
import type { Material } from './hatch.ts'

/** What stands behind what: millimeters from the face of the brick inward. */
export interface Layers {
  readonly brick: BrickSizes | undefined
  readonly course: number
  readonly thickness: number
  readonly thicknessKnown: boolean
  readonly airSpace: number
  readonly airSpaceKnown: boolean
  /** Where insulation starts and ends; both the same where there is none. */
  readonly insulation: readonly [from: number, to: number]
  /** Where barrier and upstands lie. */
  readonly backingFace: number
  /** Where the sheathing ends. */
  readonly sheathed: number
  readonly inside: number
  readonly backing: Material
  readonly backingKnown: boolean
}

/** A text beside a detail, led to what it tells of. */
export interface Label {
  readonly text: string
  readonly at: Point
}

const unknownThickness = 92
const unknownAirSpace = 45
const unknownCourse = 68
/** Sheathing and backing have no thickness in a description; they are drawn so. */
const drawnSheathing = 13
const drawnBacking = 60

const materials: Readonly<Record<string, Material>> = { woodStud: 'batt', steelStud: 'batt', concreteMasonry: 'blockwork', concrete: 'concrete' }

export function layersOf(known: Known): Layers {
  const brick = brickOf(known)
  const thickness = known.length('wall.veneer.thickness') ?? brick?.thickness
  const airSpace = known.length('wall.airSpace')
  const insulation = known.length('wall.insulationThickness') ?? 0
  const backing = known.choice('wall.backing')
  const sheathing = known.choice('wall.sheathing')
  const behind = (thickness ?? unknownThickness) + (airSpace ?? unknownAirSpace)
  const backingFace = behind + insulation
  const hasSheathing = sheathing !== undefined && sheathing !== 'none'
  const sheathed = backingFace + (hasSheathing ? drawnSheathing : 0)
  return {
    brick, course: brick?.course ?? unknownCourse, thickness: thickness ?? unknownThickness, thicknessKnown: thickness !== undefined, airSpace: airSpace ?? unknownAirSpace, airSpaceKnown: airSpace !== undefined,
    insulation: [behind, backingFace], backingFace, sheathed, inside: sheathed + drawnBacking, backing: materials[backing ?? ''] ?? 'mortar', backingKnown: backing !== undefined,
  }
}

/** "air space 2"", or that it is not known. */
export function lengthLabel(known: Known, system: UnitSystem, what: string, path: string): string {
  const length = known.length(path)
  return length === undefined ? `${what}: not known` : `${what} ${dimensionText(length, system)}`
}

export function choiceLabel(known: Known, path: string): string | undefined {
  const choice = known.choice(path)
  return choice === undefined ? undefined : choiceWords(choice).toLowerCase()
}
