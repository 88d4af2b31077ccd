import { cellText, type Table } from '../catalog/reference.ts'
import { readLength } from '../units/length-text.ts'
import { readQuantity } from '../units/quantity.ts'
import { combined, fact, optional, table, type Need } from './need.ts'

/** An angle, or a pair of them side by side, long leg vertical. Lengths in nm; mass in kg/m; inertia in mm⁴; modulus in mm³. */
export interface Angle {
  readonly section: string
  readonly verticalLeg: number
  readonly horizontalLeg: number
  readonly thickness: number
  readonly mass: number
  readonly momentOfInertia: number
  readonly sectionModulus: number
}

type Row = Table['rows'][number]

interface Sections {
  readonly lightestFirst: readonly Angle[]
  readonly bySpelling: ReadonlyMap<string, Angle>
}

/** Tables are read once: an evaluation looks an angle up several times. */
const read = new WeakMap<Table, Sections>()

/** Every angle of a table of sections, the lightest first. */
export function anglesOf(sections: Table): readonly Angle[] {
  return sectionsOf(sections).lightestFirst
}

/** The angle of that spelling, in inches or millimeters; a pair, "2L6x4x3/8", has twice the stiffness, strength and mass of one. */
export function findAngle(sections: Table, section: string): Angle | undefined {
  const pair = /^(\d)(L.*)$/.exec(section)
  const one = sectionsOf(sections).bySpelling.get(pair?.[2] ?? section)
  return one && pair ? several(one, Number(pair[1]), section) : one
}

function sectionsOf(table: Table): Sections {
  const ready = read.get(table) ?? readSections(table)
  read.set(table, ready)
  return ready
}

function readSections({ rows }: Table): Sections {
  const angles = rows.map(angleOf)
  const metric = rows.flatMap((row, index) => (angles[index] ? [[cellText(row['metric']), angles[index]] as const] : []))
  return {
    lightestFirst: [...angles].sort((a, b) => a.mass - b.mass),
    bySpelling: new Map([...metric, ...angles.map((angle) => [angle.section, angle] as const)]),
  }
}

function several(one: Angle, count: number, section: string): Angle {
  return { ...one, section, mass: count * one.mass, momentOfInertia: count * one.momentOfInertia, sectionModulus: count * one.sectionModulus }
}

function angleOf(row: Row): Angle {
  return {
    section: cellText(row['section']),
    verticalLeg: cellAmount(row, 'verticalLeg'),
    horizontalLeg: cellAmount(row, 'horizontalLeg'),
    thickness: cellAmount(row, 'thickness'),
    mass: cellAmount(row, 'weight'),
    momentOfInertia: cellAmount(row, 'momentOfInertia'),
    sectionModulus: cellAmount(row, 'sectionModulus'),
  }
}

/** A cell in base units. The inch-pound figure is the published one; a cell that cannot be read is a fault of the catalog. */
function cellAmount(row: Row, column: string): number {
  const text = cellText(row[column])
  const quantity = readQuantity(text)
  if (!quantity) throw new Error(`table of sections, ${cellText(row['section'])}: ${column} "${text}" is not an amount`)
  return quantity.amount
}

const described = combined(
  { sections: table('steel.angle-sections'), section: fact.choice('head.support.section'), longLeg: optional(fact.choice('head.support.longLeg')) },
  (given) => given,
)

/** The angle over the opening, with its properties for bending in the plane of the wall. */
export const angleOverOpening: Need<Angle> = {
  asks: described.asks,
  find: (inputs) => {
    const given = described.find(inputs)
    if (!given.known) return given
    const { sections, section, longLeg } = given.value
    const angle = findAngle(sections, section)
    if (!angle) return without('outsidePrescriptive', `${section} is not in the table of angle sections; its strength needs a licensed professional.`)
    if (longLeg === 'horizontal' && angle.verticalLeg !== angle.horizontalLeg) return without('methodDoesNotHold', 'The long leg lies flat; the table gives the strength with the long leg standing.')
    return { ...given, value: angle }
  },
}

function without(reason: 'outsidePrescriptive' | 'methodDoesNotHold', why: string) {
  return { known: false, missing: [], because: { status: 'notDetermined', reason, why } } as const
}

/** What a spelling says of an angle, in nm. */
export interface Sizes {
  readonly verticalLeg: number
  readonly horizontalLeg: number
  readonly thickness: number
}

/** Reads the legs and thickness out of the one spelling that descriptions are settled into; undefined for any other. */
export function sizesOf(section: string): Sizes | undefined {
  const sizes = /^\d?L(.*)$/.exec(section)?.[1]?.split('x') ?? []
  const unit = sizes.some((size) => Number(size) > longestInchLeg) ? 'mm' : 'in'
  const [verticalLeg, horizontalLeg, thickness] = sizes.map((size) => readLength(size, unit))
  if (!verticalLeg?.ok || !horizontalLeg?.ok || !thickness?.ok) return undefined
  return { verticalLeg: verticalLeg.nanometres, horizontalLeg: horizontalLeg.nanometres, thickness: thickness.nanometres }
}

/** No angle has a leg of more inches; a greater number is in millimeters. */
const longestInchLeg = 12
