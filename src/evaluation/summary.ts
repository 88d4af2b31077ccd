import type { Finding, Summary } from './document.ts'

/** Counts, and the verdict: only a mandatory failure fails; with mandatory rules open it is incomplete; a recommendation missed asks for attention. */
export function summarise(findings: readonly Finding[]): Summary {
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
    verdict: verdictOf(mandatoryFailures, mandatoryNotDetermined, recommendedFailures),
  }
}

function verdictOf(mandatoryFailures: number, mandatoryNotDetermined: number, recommendedFailures: number): Summary['verdict'] {
  if (mandatoryFailures > 0) return 'fail'
  if (mandatoryNotDetermined > 0) return 'incomplete'
  return recommendedFailures > 0 ? 'attention' : 'pass'
}
