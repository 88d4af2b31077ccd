import type { Source } from './source.ts'

/** A digest that compares the methods and gives the averages of the driving rain factor. */
export const drivingRainDigest: Source = {
  title: 'Building Science Digest 148, Simplified Prediction of Driving Rain on Buildings, 2010',
  locator: 'driving rain factor and fall speed of the median drop',
  evidence: 'primary',
  readIn: 'https://www.buildingscience.com/documents/digests/bsd-148-wufi-simplified-driving-rain-prediction',
}

/** Formulas of the standard as public code carries them; the text is sold. */
export const wallIndexStandard: Source = {
  title: 'ISO 15927-3, 2009',
  locator: 'wall indices: airfield index × roughness, topography, obstruction and wall factors',
  evidence: 'secondary',
  readIn: 'https://github.com/anssilaukkarinen/comsol_tools/blob/0a3f21c0d8843da4a42bf58b014c9eac15fb2551/helper.py',
}

/** The rain load of the standard as a manual writes it out. */
export const rainLoadStandard: Source = {
  title: 'ASHRAE Standard 160, 2009',
  locator: 'design rain load: exposure factor × deposition factor × 0.2 s/m × wind × rain',
  evidence: 'secondary',
  readIn: 'https://wufi-wiki.com/mediawiki/index.php?diff=1183&oldid=1181&title=1D%3ADialog_Orientation',
}

/** Formulas that every textbook on hydraulics carries; no one text was opened for them. */
export const hydraulics: Source = { title: 'Hydraulics of small openings', locator: 'rectangular weir and orifice, pressure head', evidence: 'memory' }

/** Formulas of films and menisci that every physics text carries; no one text was opened for them. */
export const thinWater: Source = { title: 'Physics of thin films of water', locator: 'film down a slope (Nusselt), rise between plates and in tubes', evidence: 'memory' }

/** Arithmetic of lengths, areas and volumes. */
export const geometry: Source = { title: 'Geometry', locator: 'lengths, areas and volumes of the parts as described', evidence: 'memory' }
