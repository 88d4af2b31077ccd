import type { Source } from './source.ts'

/** A page of the textbook whose lintel method (arching, triangle, effective span) is followed. */
export function lintelTextbook(locator: string, page: number): Source {
  return {
    title: 'Design of Reinforced Masonry Structures (McGraw-Hill)',
    locator,
    evidence: 'primary',
    readIn: `https://digilib.universitaspertamina.ac.id/ebook/Design%20of%20Reinforced%20Masonry%20Structures/files/basic-html/page${page}.html`,
  }
}

/** Simple-span formulas that every handbook of statics carries; no one text was opened for them. */
export const beamFormulas: Source = { title: 'Statics of a simple span', locator: 'uniform load, symmetric triangular load, load on a part of the span', evidence: 'memory' }

/** A worked lintel of reinforced masonry: its shear stress, and the pressure under its ends. */
export const lintelExample: Source = {
  title: 'UFC 3-310-05A, Masonry Structural Design for Buildings',
  locator: 'lintel example',
  evidence: 'primary',
  readIn: 'http://buildingcriteria1.tpub.com/ufc_3_310_05a/ufc_3_310_05a0073.htm',
}

/** What the residential code lets anchored veneer carry. */
export const veneerCarriesItself: Source = { title: 'International Residential Code', locator: 'anchored veneer, R703.8 (R703.7 in 2012): no vertical load but its own', evidence: 'memory' }

export const veneerCarriesItselfNote = 'The residential code lets anchored veneer carry no load but its own weight; this is computed as the load is stated, and is no leave to put it there.'

export const confirmed = 'A licensed professional confirms this before anyone relies on it.'
