import type { Source } from './source.ts'

/** Spacing of vertical expansion joints. The equation is from memory; its worked spacing was read. */
export const expansionJoints: Source = {
  title: 'Technical Notes on Brick Construction 18A, Accommodating Expansion of Brickwork, 2006', locator: 'spacing of vertical expansion joints', evidence: 'memory',
}

/** How much of the growth a joint takes: reproduces a spacing of its own from the same three parts. */
export const movementArticle: Source = {
  title: 'Brick movement joints, Conspectus, 2011', locator: 'moisture and thermal movement', evidence: 'primary', readIn: 'https://conspectusinc.com/blog/2011/01/brick_movement_joints',
}

/** What a horizontal joint under a shelf angle has to allow for. */
export const shelfAngleJoint: Source = {
  title: 'Technical Notes on Brick Construction 18A, Accommodating Expansion of Brickwork, 2006', locator: 'horizontal expansion joints', evidence: 'primary',
  readIn: 'http://azkurs.org/accommodating-expansion-of-brickwork-abstract/azkurs.org/accommodating-expansion-of-brickwork-abstract.html?page=16',
}

/** W = (100 / X) (e L ΔT + M) + t, with the letters explained. */
export const sealantWidthFormula: Source = {
  title: 'Cornell University, ARCH 262, assignment on sealant joints, 2002', locator: 'preliminary sizing', evidence: 'primary',
  readIn: 'http://courses.cit.cornell.edu/arch262/arch262f02/assign2-262f02.html',
}

/** Half the width, within a least and a greatest depth. */
export const sealantDepthRule: Source = {
  title: 'Architectural detailing, text on sealant joints', locator: 'depth of sealant', evidence: 'secondary', readIn: 'https://www.northernarchitecture.us/architectural-detailing-2/j-jze.html',
}
