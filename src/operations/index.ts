import { evaluateOpening } from './evaluate-opening.ts'
import { listFacts, listHoldPoints } from './facts.ts'
import { listJurisdictions, readJurisdiction } from './jurisdictions.ts'
import { listPublications, readPublication } from './publications.ts'
import { listRules } from './list-rules.ts'
import { readRule } from './read-rule.ts'

/** Everything the service does. */
export const operations = {
  evaluateOpening, listRules, readRule, listJurisdictions, readJurisdiction, listPublications, readPublication, listFacts, listHoldPoints,
} as const
