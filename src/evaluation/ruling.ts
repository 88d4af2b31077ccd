import type { ResolvedRule } from '../catalog/rule-set.ts'
import type { Finding } from './document.ts'

/** How a rule stands for one opening. It is put into words when these are asked for, and once. */
export class Ruling implements Pick<Finding, 'force' | 'outcome' | 'evidence'> {
  readonly outcome: Finding['outcome']
  readonly #resolved: ResolvedRule
  readonly #write: () => Finding
  #finding: Finding | undefined

  constructor(resolved: ResolvedRule, outcome: Finding['outcome'], write: () => Finding) {
    this.outcome = outcome
    this.#resolved = resolved
    this.#write = write
  }

  get force(): Finding['force'] {
    return this.#resolved.rule.force
  }

  get evidence(): Finding['evidence'] {
    return this.#resolved.limit.evidence
  }

  get finding(): Finding {
    return (this.#finding ??= this.#write())
  }
}
