import { expect, test } from 'vitest'
import type { Amendment } from '../../src/catalog/amendment.ts'
import { evaluate } from '../../src/evaluation/evaluate.ts'
import { withAmendments } from '../../src/evaluation/with-amendments.ts'
import { facts } from '../../src/opening/facts.ts'
import { holdPoints, type HoldPoint } from '../../src/opening/hold-points.ts'
import { realCatalog, resolved } from '../catalog/real-catalog.ts'
import { openingWith } from './subject.ts'

const county = 'us-xa-101'
const catalog = await realCatalog()

/** A clause as an ordinance has them: it inserts an ordinary rule about how the work goes. */
function clause(modification: string, name: string, fact: string, holdPoint: HoldPoint) {
  return {
    modification, kind: 'insertion' as const,
    new: {
      rule: `${county}.process.${name}`, revision: 1, title: name, topic: 'process' as const, part: 'head' as const, holdPoint, status: 'inForce' as const, statement: 'It is done before the work goes on.', force: 'mandatory' as const,
      check: { fact, comparator: 'equalTo' as const },
      limits: [{ publication: `${county}-ordinances`, editions: ['2025'], locator: '9-310', value: true, evidence: 'memory' as const, lastReviewed: '2026-11-25' }],
      remedy: { beforeCoverUp: 'Stop and call for it.', afterCoverUp: 'Ask the building official.' },
      examples: [{ name: 'done', facts: { [fact]: true }, outcome: 'pass' as const }, { name: 'not done', facts: { [fact]: false }, outcome: 'fail' as const }, { name: 'not known', facts: {}, outcome: 'notDetermined' as const }],
    },
  }
}

function amended(publication: string, edition: string) {
  const clauses = [clause('m1', 'head-inspection', 'process.inspected.headFlashing', 'headFlashing'), clause('m2', 'tie-data', 'process.submitted.tieData', 'submittalsAndMockUp')]
  const ordinance: Amendment = {
    amendment: `${county}/ord-2027-1`, jurisdiction: county, amends: { publication: 'irc', editions: ['2021'] }, instrument: { kind: 'ordinance', number: '2027-1', adopted: '2026-11-02' }, effectiveFrom: '2027-01-01', effectiveUntil: null,
    application: 'permitApplicationDate', supersedes: [], modifications: clauses.map((one) => ({ ...one, new: { ...one.new, limits: one.new.limits.map((limit) => ({ ...limit, publication, editions: [edition] })) } })),
    examples: [{ name: 'missed', rule: `${county}.process.head-inspection`, asOf: '2027-01-01', facts: { 'process.inspected.headFlashing': false }, outcome: 'fail' }],
  }
  const extended = withAmendments(catalog, [ordinance])
  if (!extended.ok) throw new Error(JSON.stringify(extended.problems))
  return extended.catalog
}

const own = [...catalog.publications.values()].find(({ publication }) => publication.startsWith(`${county}-`) && !publication.startsWith(`${county}-2`))
if (!own?.editions[0]) throw new Error('the county has no publication of its own')
const after = amended(own.publication, own.editions[0].edition)
const evaluated = (given: Readonly<Record<string, unknown>>) => evaluate(openingWith(given), resolved(after, { jurisdiction: county, asOf: '2027-01-01' }), after, null)
const outcomes = (given: Readonly<Record<string, unknown>>) => ['head-inspection', 'tie-data'].map((name) => evaluated(given).findings.find(({ rule }) => rule === `${county}.process.${name}`)?.outcome)

test('an inspection and a submittal are asked for like anything else', () => {
  expect(outcomes({ 'process.inspected.headFlashing': true, 'process.submitted.tieData': true })).toEqual(['pass', 'pass'])
  expect(outcomes({ 'process.inspected.headFlashing': false, 'process.submitted.tieData': false })).toEqual(['fail', 'fail'])
  expect(outcomes({ 'process.inspected.lintelSet': true })).toEqual(['notDetermined', 'notDetermined'])
})

test('what nobody told is among what to find out next', () => {
  expect(evaluated({}).nextToMeasure.map(({ fact }) => fact)).toEqual(expect.arrayContaining(['process.inspected.headFlashing', 'process.submitted.tieData']))
})

test('every hold and witness point can be passed or missed, and only those', () => {
  const points = holdPoints.filter(({ kind }) => kind !== 'selfCheck').map(({ id, title }) => [`process.inspected.${id}`, `Inspection passed: ${title}`, id])
  const known = [...facts].filter(([path]) => path.startsWith('process.inspected.')).map(([path, { title, from }]) => [path, title, from])
  expect(known).toEqual(points)
})
