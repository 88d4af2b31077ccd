import type { Evidence } from '../catalog/limit.ts'

/** A published source of a figure or a formula. */
export interface Source {
  readonly title: string
  readonly locator: string
  readonly evidence: Evidence
  readonly readIn?: string
}
