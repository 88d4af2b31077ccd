import type { Finding, Summary } from './document.ts'

/**
 * Counts, and the verdict: only a mandatory failure fails; with mandatory rules open, or a code of which the catalog holds only
 * a part, it is incomplete; a recommendation missed asks for attention.
 */
export function summarise(findings: readonly Pick<Finding, 'force' | 'outcome' | 'evidence'>[], inPart: boolean): Summary {
  const counts = { pass: 0, fail: 0, notDetermined: 0, notApplicable: 0 }
  let [mandatoryFailures, mandatoryNotDetermined, recommendedFailures, fromMemory] = [0, 0, 0, 0]
  for (const { force, outcome, evidence } of findings) {
    counts[outcome] += 1
    if (outcome === 'fail' && force === 'mandatory') mandatoryFailures += 1
    if (outcome === 'fail' && force === 'recommended') recommendedFailures += 1
    if (outcome === 'notDetermined' && force === 'mandatory') mandatoryNotDetermined += 1
    if (evidence === 'memory' && (outcome === 'pass' || outcome === 'fail')) fromMemory += 1
  }
  return { ...counts, mandatoryFailures, mandatoryNotDetermined, fromMemory, verdict: verdictOf(mandatoryFailures, inPart || mandatoryNotDetermined > 0, recommendedFailures) }
}

function verdictOf(mandatoryFailures: number, open: boolean, recommendedFailures: number): Summary['verdict'] {
  if (mandatoryFailures > 0) return 'fail'
  if (open) return 'incomplete'
  return recommendedFailures > 0 ? 'attention' : 'pass'
}
