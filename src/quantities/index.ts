import type { QuantityDefinition } from './define.ts'
import { sillDrop } from './sill-drop.ts'

/** Every quantity, in the order in which an evaluation shows them. */
export const quantities: readonly QuantityDefinition[] = [sillDrop]
