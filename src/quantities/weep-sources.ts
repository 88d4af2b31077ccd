import type { Source } from './source.ts'

/** What the sources below say of each kind, in short. */
export const saidOfWeeps = {
  openHeadJoint: 'Recommended; easiest to form and most effective. Insects get in, and well-meant sealant closes it.',
  vent: 'Counts as an open head joint and keeps insects out; its clear opening is for its maker to state.',
  tube: 'Seen less; clogs easily with droppings and is not recommended.',
  least: 'The least that the codes allow; holds back the most water before it runs.',
  wick: 'Draws water by its fibers above the droppings; works little once buried. A rope meant to be pulled out and left in does not work.',
} as const

export const weepSources: readonly Source[] = [
  { title: 'Technical Notes on Brick Construction 7A', locator: 'Summary of Recommendations, Weeps: open head joints', evidence: 'primary', readIn: 'https://studylib.net/doc/18882578/water-penetration-resistance---materials' },
  { title: 'Masonry and Concrete (McGraw-Hill, 2004)', locator: 'page 273: tubes clog easily; wicks', evidence: 'secondary', readIn: 'https://digilib.universitaspertamina.ac.id/ebook/Masonry%20and%20Concrete/' },
  { title: 'Proper drainage for weep holes, Masonry Construction', locator: 'types of weep holes', evidence: 'secondary', readIn: 'http://www.masonryconstruction.com/how-to/construction/proper-drainage-for-weep-holes_o' },
  { title: 'Masonry Weeps, Masonry Magazine', locator: 'open head joints and what closes them', evidence: 'secondary', readIn: 'https://masonrymagazine.com/Default?pageID=13212' },
  { title: 'Brick masonry wall flashing, a consultant', locator: 'rope left in place; tubes', evidence: 'secondary', readIn: 'https://cbiconsultingllc.com/masonry-wall-flashing' },
  { title: 'Pressure across a curved water surface (Young and Laplace)', locator: 'round hole and slot', evidence: 'memory' },
]
