import { evaluated } from '../report/reported.ts'
import type { ReportedBuilding } from '../../src/report/reported-building.ts'

const both = { inchPound: '60 in', si: '1524 mm' }
const counts = { pass: 3, fail: 1, notDetermined: 2, notApplicable: 1 }
const [miss] = evaluated('missed-end-dam').evaluation.findings.filter(({ outcome }) => outcome === 'fail')
if (!miss) throw new Error('the fixture misses nothing')

/** A building of one opening with a line in every table; the figures stand for none in particular. */
export const smallBuilding: ReportedBuilding = {
  project: 'p', title: '12 Quarry Walk', jurisdiction: 'us-xa', asOf: '2026-03-01', editions: ['irc-2021'], basis: 'asBuilt', catalog: { release: '2026.2.0', digest: 'sha256:0' },
  openings: 2, evaluated: 1, verdicts: { pass: 0, attention: 0, incomplete: 0, fail: 1, notEvaluated: 1 },
  holdPoints: [{ holdPoint: 'lintelSet', title: 'Lintel on its bearings', ...counts, ready: 0, notReady: 1, signedOff: 1 }],
  status: [{ opening: 'W-1', reference: 'W-1', unitSystem: 'inchPound', holdPoint: 'lintelSet', verdict: 'fail', ...counts, mandatoryFailures: 1, mandatoryNotDetermined: 1, noLongerInSight: ['a'], readiness: [{ holdPoint: 'lintelSet', ready: false, signedOff: true, undecided: ['b'], notMet: ['c'], waived: [] }] }],
  failures: [{ ...miss, opening: 'W-1', reference: 'W-1', waived: true, covered: false, seen: { at: '2026-03-02T09:00:00Z', by: 'crew' } }],
  walks: [{ holdPoint: 'lintelSet', title: 'Lintel on its bearings', openings: [{ opening: 'W-1', reference: 'W-1', facts: [{ title: 'Seat of the bearing', lastChance: true, mandatory: true }] }] }],
  lintels: [{ mark: 'L-1', count: 1, references: ['W-1'], width: both, support: 'looseSteelAngle', section: 'L4x4x1/4', chosen: 'lightest', length: both, bearing: both, weight: both }],
  flashing: [{ place: 'head', length: both, girth: both, count: 1, references: ['W-1'] }],
  cutLists: [{ place: 'head', girth: both, plan: { bars: [{ stock: both, pieces: [{ reference: 'W-1', length: both }], offcut: both }] } }],
  totals: [{ title: 'Weeps over the head', ...both, counted: ['W-1'], notKnown: ['X-1'] }],
  gaps: [{ reference: 'X-1', title: 'Weeps over the head', missing: ['opening.width'], why: null }],
  notEvaluated: [{ opening: 'X-1', reference: null, problems: [{ pointer: '/opening', detail: 'is required' }] }],
  notice: 'An aid, not an approval.',
}
