import type { Finding, Summary } from './document.ts'

/**
 * Counts, and the verdict: only a mandatory failure fails; with mandatory rules open, or a code of which the catalog holds only
 * a part, it is incomplete; a recommendation missed asks for attention.
 */
export function summarise(findings: readonly Finding[], inPart: boolean): Summary {
  const count = (test: (finding: Finding) => boolean) => findings.filter(test).length
  const mandatoryFailures = count(({ force, outcome }) => force === 'mandatory' && outcome === 'fail')
  const mandatoryNotDetermined = count(({ force, outcome }) => force === 'mandatory' && outcome === 'notDetermined')
  const recommendedFailures = count(({ force, outcome }) => force === 'recommended' && outcome === 'fail')
  return {
    pass: count(({ outcome }) => outcome === 'pass'),
    fail: count(({ outcome }) => outcome === 'fail'),
    notDetermined: count(({ outcome }) => outcome === 'notDetermined'),
    notApplicable: count(({ outcome }) => outcome === 'notApplicable'),
    mandatoryFailures,
    mandatoryNotDetermined,
    fromMemory: count(({ evidence, outcome }) => evidence === 'memory' && (outcome === 'pass' || outcome === 'fail')),
    verdict: verdictOf(mandatoryFailures, inPart || mandatoryNotDetermined > 0, recommendedFailures),
  }
}

function verdictOf(mandatoryFailures: number, open: boolean, recommendedFailures: number): Summary['verdict'] {
  if (mandatoryFailures > 0) return 'fail'
  if (open) return 'incomplete'
  return recommendedFailures > 0 ? 'attention' : 'pass'
}
