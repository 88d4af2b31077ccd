import { beforeAll, describe, expect, test } from 'vitest'
import type { Building } from '../../src/catalog/building.ts'
import type { Catalog } from '../../src/catalog/catalog.ts'
import type { ReleaseDifferences } from '../../src/catalog/release.ts'
import { releaseDifferences } from '../../src/evaluation/release-differences.ts'
import { placesOf, vectorsOf, type Vector } from '../../src/evaluation/release-vectors.ts'
import { realCatalog } from '../catalog/real-catalog.ts'
import { loadPatched, type Patch } from '../catalog/small-catalog.ts'

const building: Building = {
  building: 'mill-lane-3', title: '3 Mill Lane', note: 'Invented for the tests.', jurisdiction: 'aa-open-01', publication: 'irc', asOf: '2024-06-01',
  openings: [{
    story: 'five inches of bearing',
    opening: { reference: 'W-1', lengthUnit: 'in', opening: { kind: 'window', width: 48, height: 60 }, head: { support: { kind: 'looseSteelAngle', bearing: 5 }, weeps: { spacing: 30 } } },
  }],
}
const bearing = 'rules/lintel/bearing-length.yaml'
const raised = { '/limits/0/inchPound': '5 1/2 [in_i]', '/limits/0/si': '140 mm', '/examples/0/edition': 'tms-402-2016', '/examples/1/edition': 'tms-402-2016' }

describe('the reference openings', () => {
  test('are named after building, place in it and reference', async () => {
    expect(read(await small()).map(({ id }) => id)).toEqual(['mill-lane-3/1 W-1'])
  })

  test('are all of the real buildings, at the stage of their work', async () => {
    const catalog = await realCatalog()
    const vectors = read(catalog)
    expect(vectors).toHaveLength([...catalog.buildings.values()].reduce((sum, { openings }) => sum + openings.length, 0))
    expect(vectors.map(({ holdPoint }) => holdPoint)).toContain('headFlashing')
  })

  test('that cannot be read are told with every problem', async () => {
    const broken = withBuilding(await small(), { ...building, openings: [{ story: 'x', holdPoint: 'never', opening: {} }, { story: 'y', holdPoint: 'never', opening: building.openings[0]?.opening ?? {} }] })
    const answer = vectorsOf(broken)
    expect(answer.ok ? [] : answer.problems.map(({ pointer }) => pointer)).toEqual(['/mill-lane-3/openings/0/opening/opening', '/mill-lane-3/openings/1/holdPoint'])
  })

  test('are tried at home, wherever a code is adopted or amended, and by every edition of a model code', async () => {
    const catalog = await small()
    expect(read(catalog).flatMap(({ home }) => placesOf(catalog, home)).map(({ jurisdiction, publication, edition, asOf }) => `${jurisdiction ?? ''} ${publication ?? ''} ${edition ?? ''} ${asOf}`)).toEqual([
      'aa-open-01 irc  2024-06-01', 'aa-closed ibc  2024-06-01', 'aa-open irc  2024-06-01',
      '  ibc-2021 2024-06-01', '  irc-2018 2024-06-01', '  irc-2021 2024-06-01',
    ])
  })
})

describe('a release', () => {
  let catalog: Catalog
  beforeAll(async () => {
    catalog = await small()
  })

  const since = async (patch: Patch, before = catalog): Promise<ReleaseDifferences> => {
    const next = await small(patch)
    return releaseDifferences(before, next, read(next))
  }
  const outcomesOf = ({ outcomes }: ReleaseDifferences) => outcomes.map(({ jurisdiction, edition, rule, before, after }) => `${rule} ${jurisdiction ?? edition ?? ''}: ${before} > ${after}`)

  test('that changes nothing has no differences', async () => {
    const found = await since({})
    expect(found.counts).toEqual({ rulesAdded: 0, rulesRemoved: 0, rulesChanged: 0, requirements: 0, outcomes: 0, quantities: 0 })
  })

  test('is the first where there is none before, and has no outcomes that could have changed', async () => {
    const found = releaseDifferences(null, catalog, read(catalog))
    expect(found.counts).toEqual({ rulesAdded: catalog.rules.size + 1, rulesRemoved: 0, rulesChanged: 0, requirements: 0, outcomes: 0, quantities: 0 })
  })

  test('tells each outcome that is not as before, with where and when', async () => {
    const found = await since({ set: { [bearing]: raised, 'jurisdictions/aa-open-01/amendments/ord-1.yaml': { '/modifications/0/old/inchPound': '5 1/2 [in_i]' } } })
    expect(found.outcomes[0]).toEqual({ vector: 'mill-lane-3/1 W-1', jurisdiction: 'aa-open', publication: 'irc', edition: null, asOf: '2024-06-01', rule: 'lintel.bearing-length', before: 'pass', after: 'fail' })
    // At home the town's six inches stand as before, and the standard behind ibc-2021 still says four.
    expect(outcomesOf(found)).toEqual(['aa-open', 'irc-2018', 'irc-2021'].map((place) => `lintel.bearing-length ${place}: pass > fail`))
    expect(found.counts.outcomes).toBe(3)
  })

  test('has null for a rule that was not there before, or is not there any more', async () => {
    const spacing = { set: { 'rules/weep/spacing.yaml': { '/status': 'draft' } } } satisfies Patch
    expect(new Set((await since({}, await small(spacing))).outcomes.map(({ rule, before, after }) => `${rule} ${before} > ${after}`))).toEqual(new Set(['weep.spacing null > pass']))
    expect(new Set((await since(spacing)).outcomes.map(({ rule, before, after }) => `${rule} ${before} > ${after}`))).toEqual(new Set(['weep.spacing pass > null']))
  })

  test('tells what local law changed at home alone', async () => {
    expect(outcomesOf(await since({ set: { 'jurisdictions/aa-open-01/amendments/ord-1.yaml': { '/effectiveUntil': '2024-01-01' } } }))).toEqual([
      'aa-open-01.weep.count aa-open-01: notDetermined > null', 'lintel.bearing-length aa-open-01: fail > pass',
    ])
  })

  test('is not held against places that the one before did not know', async () => {
    const more = await small({ set: { 'publications/irc.yaml': { '/editions/-': { edition: '2024', issued: '2023-10-01' } } } })
    const found = releaseDifferences(catalog, more, read(more))
    expect(found.outcomes).toEqual([])
  })

  test('shows an edition that was taken out as answers that are gone', async () => {
    const more = await small({ set: { 'publications/irc.yaml': { '/editions/-': { edition: '2024', issued: '2023-10-01' } }, 'rules/flashing/head-present.yaml': { '/limits/0/editions/-': '2024' } } })
    expect(outcomesOf(releaseDifferences(more, catalog, read(catalog))).filter((line) => line.startsWith('flashing'))).toEqual(['flashing.head-present irc-2024: notDetermined > null'])
  })

  test('gives the same differences again', async () => {
    const patch: Patch = { set: { [bearing]: raised, 'jurisdictions/aa-open-01/amendments/ord-1.yaml': { '/modifications/0/old/inchPound': '5 1/2 [in_i]' } } }
    expect(JSON.stringify(await since(patch))).toBe(JSON.stringify(await since(patch)))
  })

  test('tells the computed quantities that are not as before', async () => {
    const real = await realCatalog()
    const weight = real.parameters.get('masonry.veneer-weight')
    if (!weight) throw new Error('the figure that is changed here has gone')
    const heavier = { ...real, parameters: new Map([...real.parameters, ['masonry.veneer-weight', { ...weight, inchPound: '60 [lbf_av]/[ft_i]2' }]]) }
    const found = releaseDifferences(real, heavier, read(real).filter(({ id }) => id.includes('W-104')))
    expect(found.requirements).toEqual(['parameter masonry.veneer-weight'])
    const loads = found.quantities.filter(({ quantity, edition }) => quantity === 'lintel.brick-load' && edition === 'irc-2021')
    expect(loads).toHaveLength(1)
    const [before = 0, after = 0] = [loads[0]?.before, loads[0]?.after].map((text) => Number.parseFloat(text ?? ''))
    expect(after / before).toBeCloseTo(1.5, 3)
  })
})

async function small(patch: Patch = {}): Promise<Catalog> {
  const loaded = await loadPatched(patch)
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.problems, null, 1))
  return withBuilding(loaded.catalog, building)
}

function withBuilding(catalog: Catalog, one: Building): Catalog {
  return { ...catalog, buildings: new Map([[one.building, one]]) }
}

function read(catalog: Catalog): readonly Vector[] {
  const vectors = vectorsOf(catalog)
  if (!vectors.ok) throw new Error(JSON.stringify(vectors.problems))
  return vectors.value
}
