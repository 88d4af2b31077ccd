import { expect, test } from 'vitest'
import { evaluateBriefly } from '../../src/evaluation/brief.ts'
import { evaluate } from '../../src/evaluation/evaluate.ts'
import { describeOpening } from '../../src/opening/describe.ts'
import { holdPoints } from '../../src/opening/hold-points.ts'
import { realCatalog, resolved } from '../catalog/real-catalog.ts'
import { corpus } from '../corpus.ts'

test('a brief evaluation comes to the same as a whole one, for every kind of opening, at every hold point and place', async () => {
  const catalog = await realCatalog()
  const places = [{ jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' }, { jurisdiction: null, asOf: '2026-03-01', edition: 'irc-2024' }].map((place) => resolved(catalog, place))
  let [compared, failing, open] = [0, 0, 0]
  for (const [index, { name, description }] of corpus(catalog).entries()) {
    if (index % 12 !== 0) continue
    const opening = describeOpening(description)
    if (!opening.ok) throw new Error(name)
    const point = index % 24 === 0 ? null : (holdPoints[index % holdPoints.length]?.id ?? null)
    for (const rules of places) {
      const { summary, findings, nextToMeasure, asOf, jurisdiction, catalog: stamp, notice } = evaluate(opening.value, rules, catalog, point)
      const brief = evaluateBriefly(opening.value, rules, catalog, point)
      const notDone = [...brief.notMet, ...brief.notDetermined]
      failing += brief.notMet.length
      open += brief.notDetermined.length
      expect({ ...brief, notMet: [], notDetermined: [] }, name).toEqual({ asOf, jurisdiction, catalog: stamp, summary, notMet: [], notDetermined: [], nextToMeasure, notice })
      expect(notDone.map(({ rule }) => rule).toSorted(), name).toEqual(findings.filter(({ outcome }) => outcome === 'fail' || outcome === 'notDetermined').map(({ rule }) => rule).toSorted())
      for (const one of notDone) expect(findings.find(({ rule }) => rule === one.rule), name).toMatchObject(one)
      compared += 1
    }
  }
  expect(Math.min(compared, failing, open)).toBeGreaterThan(20)
}, 120_000)
