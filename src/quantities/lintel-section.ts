import { cellText, type Table } from '../catalog/reference.ts'
import { readQuantity } from '../units/quantity.ts'
import { angleBySize, computedBySize, slendernessOf } from './angle-by-size.ts'
import { countOf, sizesOf, type Angle, type Sizes } from './angle-sizes.ts'
import type { Inputs } from './inputs.ts'
import { asksOf, combined, fact, foundOnce, optional, parameter, table, type Found, type Need } from './need.ts'

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
  const count = countOf(section)
  const one = sectionsOf(sections).bySpelling.get(count === 1 ? section : section.slice(1))
  return one && count > 1 ? several(one, count, section) : one
}


function sectionsOf(table: Table): Sections {
  const ready = read.get(table) ?? readSections(table)
  read.set(table, ready)
  return ready
}

function readSections({ rows }: Table): Sections {
  const angles = rows.map(angleOf)
  const metric = rows.flatMap((row, index) => (row['metric'] !== undefined && angles[index] ? [[cellText(row['metric']), angles[index]] as const] : []))
  return {
    lightestFirst: [...angles].sort((a, b) => a.mass - b.mass),
    bySpelling: new Map([...metric, ...angles.map((angle) => [angle.section, angle] as const)]),
  }
}

function several(one: Angle, count: number, section: string): Angle {
  return { ...one, section, count, mass: count * one.mass, momentOfInertia: count * one.momentOfInertia, sectionModulus: count * one.sectionModulus }
}

function angleOf(row: Row): Angle {
  return {
    section: cellText(row['section']),
    count: 1,
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

const section = fact.choice('head.support.section')
const longLeg = optional(fact.choice('head.support.longLeg'))

/** An angle as it is described; undefined where it is not found. */
interface Described {
  readonly section: string
  readonly angle: Angle | undefined
  readonly longLeg: string | undefined
}

const listedIn = (id: string): Need<Described> => combined({ sections: table(id), section, longLeg }, ({ sections, section, longLeg }) => ({ section, longLeg, angle: findAngle(sections, section) }))
const listedInInches = listedIn('steel.angle-sections')
const listedInMillimetres = listedIn('steel.metric-angle-sections')

/** Of no table, but no more slender than the angles of one: the legs of a thinner one may buckle before they yield. */
const bySize: Need<Described> = combined({ sections: table('steel.angle-sections'), section, longLeg, barMass: parameter('steel.bar-mass') }, ({ sections, section, longLeg, barMass }) => {
  const sizes = sizesOf(section)
  const stout = sizes && slendernessOf(sizes) <= Math.max(...anglesOf(sections).map(slendernessOf))
  return { section, longLeg, angle: stout ? angleBySize(section, countOf(section), longLeg === 'vertical' ? longLegStanding(sizes) : sizes, barMass) : undefined }
})

function longLegStanding({ verticalLeg, horizontalLeg, thickness }: Sizes): Sizes {
  return { verticalLeg: Math.max(verticalLeg, horizontalLeg), horizontalLeg: Math.min(verticalLeg, horizontalLeg), thickness }
}

/** From a table of sections, else from its sizes. */
function anyAngle(inputs: Inputs): Found<Described> {
  const inInches = listedInInches.find(inputs)
  if (!inInches.known || inInches.value.angle) return inInches
  const inMillimetres = listedInMillimetres.find(inputs)
  if (inMillimetres.known && inMillimetres.value.angle) return inMillimetres
  const computed = bySize.find(inputs)
  return computed.known && computed.value.angle ? { ...computed, assumptions: [...computed.assumptions, computedBySize] } : inInches
}

/** The angle over the opening, with its properties for bending in the plane of the wall. */
export const angleOverOpening: Need<Angle> = foundOnce({
  asks: asksOf(listedInInches, listedInMillimetres, bySize),
  find: (inputs) => {
    const given = anyAngle(inputs)
    if (!given.known) return given
    const { section, angle, longLeg } = given.value
    if (!angle) return without('outsidePrescriptive', `${section} is in no table of angle sections, and its legs are more slender than those of any that is; its strength needs a licensed professional.`)
    if (longLeg === 'horizontal' && angle.verticalLeg !== angle.horizontalLeg) return without('methodDoesNotHold', 'The long leg lies flat; the table gives the strength with the long leg standing.')
    return { ...given, value: angle }
  },
})

function without(reason: 'outsidePrescriptive' | 'methodDoesNotHold', why: string) {
  return { known: false, missing: [], because: { status: 'notDetermined', reason, why } } as const
}
