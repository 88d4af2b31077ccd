import { choice, type Seen } from '../fact.ts'

/** One list of flashing materials for head, sill and base. */
export const flashingMaterials = [
  'stainlessSteel', 'copper', 'leadCoatedCopper', 'copperComposite', 'galvanizedSteel', 'selfAdheredMembrane', 'epdm', 'pvc',
  'aluminum', 'lead', 'polyethylene', 'asphaltFelt', 'buildingWrap',
] as const

export const flashingMaterial = (title: string, seen: Seen) => choice(title, flashingMaterials, { help: 'What carries the water, not the drip or the primer.', ...seen })
