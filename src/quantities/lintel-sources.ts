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
export const beamFormulas: Source = { title: 'Statics of a simple span', locator: 'uniform load, symmetric triangular load', evidence: 'memory' }

export const confirmed = 'A licensed professional confirms this before anyone relies on it.'
