import papaparse from 'papaparse'
import { beforeAll, describe, expect, test } from 'vitest'
import type { z } from 'zod'
import type { Evaluation } from '../../src/evaluation/document.ts'
import { operations } from '../../src/operations/index.ts'
import { bodyOf, jurisdictionService, problemIn } from './jurisdiction.ts'
import { rfc4180Records } from './rfc4180.ts'
import { id, projectsOf, quarryWalk } from './schedule.ts'

const { http, tokenFor } = await jurisdictionService()
const { send, read, graphql, make } = projectsOf(http, await tokenFor({ kind: 'record' }))

type Building = z.output<typeof operations.readBuilding.output>
type Standing = z.output<typeof operations.listOpenings.output>['items'][number]

const about = (last: number, opening: string) => ({ id: id(last), opening, at: '2026-03-05T09:00:00Z', by: 'inspector' })
const seen = (last: number, opening: string, fact: string, value: unknown, member?: 'left' | 'right') =>
  ({ ...about(last, opening), observation: { fact, value, ...(member ? { member } : {}), method: 'examine', holdPoint: 'lintelSet' } })
const ordinance = { kind: 'notice', number: 'v-7', section: '1', adopted: '2026-02-02', href: 'https://law.example/v-7' }

/** What was recorded after the schedule came in. */
const walked = [
  seen(1, 'W-102', 'head.support.bearing', '5 1/2 in', 'left'), seen(2, 'W-102', 'head.support.bearing', '6 in', 'right'),
  seen(3, 'X-1', 'sill.slope', '10 deg'),
  { ...about(4, 'W-101'), waiver: { rule: 'lintel.bearing-length', kind: 'waiver', instrument: ordinance, grantedBy: 'building office', expires: '2027-01-01' } },
  { ...about(5, 'W-103'), signOff: { holdPoint: 'headFirstCourse', reason: 'seen by the engineer' } },
  { ...about(6, '~formula'), design: { description: { reference: '=HYPERLINK("https://law.example","a, b")', opening: { kind: 'window', width: '48 in', height: '60 in' }, head: { support: { kind: 'looseSteelAngle', bearing: ['2 in', '6 in'] } } } } },
]

let path = ''
let building: Building
const evaluations = new Map<string, Evaluation>()
const standings: Standing[] = []

beforeAll(async () => {
  const project = await make(1)
  path = project.path
  await project.take(quarryWalk)
  const posted = bodyOf(operations.postEntries, await send(`${path}/entries`, { entries: walked }))
  expect(posted.results.map(({ outcome }) => outcome)).toEqual(walked.map(() => 'recorded'))
  building = bodyOf(operations.readBuilding, await read(`${path}/building`))
  for (let after = ''; ;) {
    const page = bodyOf(operations.listOpenings, await read(`${path}/openings?first=17${after}`))
    standings.push(...page.items)
    if (page.nextCursor === null) break
    after = `&after=${encodeURIComponent(page.nextCursor)}`
  }
  for (const { opening, verdict } of standings) {
    if (verdict !== null) evaluations.set(opening, bodyOf(operations.evaluateRecordedOpening, await read(`${path}/openings/${opening}/evaluation?basis=asBuiltOverDesign`)))
  }
}, 120_000)

describe('the openings of a project', () => {
  test('are listed once each over the pages, in the order of their ids, each as its record says', async () => {
    expect(standings).toHaveLength(42)
    expect(standings.map(({ opening }) => opening)).toEqual(standings.map(({ opening }) => opening).toSorted((a, b) => (a < b ? -1 : 1)))
    expect(standings.find(({ opening }) => opening === 'X-1')).toMatchObject({ verdict: null, missing: ['opening'] })
    for (const opening of ['W-101', 'V-110']) {
      expect(standings.find((one) => one.opening === opening)).toEqual(bodyOf(operations.readOpeningRecord, await read(`${path}/openings/${opening}`)).standing)
    }
  })
})

describe('a building', () => {
  test('says how many of its openings are counted, and which are not and why', () => {
    expect(building).toMatchObject({ openings: 42, evaluated: 41, counted: '41 of 42 openings counted', basis: 'asBuiltOverDesign', notEvaluated: [{ opening: 'X-1', problems: [{ code: 'missingKey', pointer: '/opening' }] }] })
    expect(building.status.map(({ opening }) => opening)).toEqual([...evaluations.keys()])
    expect(Object.values(building.verdicts).reduce((sum, count) => sum + count)).toBe(42)
  })

  test('counts by part and by hold point what the single evaluations find', () => {
    const findings = [...evaluations.values()].flatMap((one) => one.findings)
    const count = (some: typeof findings) => Object.fromEntries((['pass', 'fail', 'notDetermined', 'notApplicable'] as const).map((outcome) => [outcome, some.filter((one) => one.outcome === outcome).length]))
    for (const { part, ...counts } of building.parts) expect(counts, part).toEqual(count(findings.filter((one) => one.part === part)))
    for (const { holdPoint, pass, fail, notDetermined, notApplicable } of building.holdPoints) expect({ pass, fail, notDetermined, notApplicable }, holdPoint).toEqual(count(findings.filter((one) => one.holdPoint === holdPoint)))
    expect(building.parts.reduce((sum, { pass, fail, notDetermined, notApplicable }) => sum + pass + fail + notDetermined + notApplicable, 0)).toBe(findings.length)
    for (const { opening, verdict, pass, mandatoryFailures } of building.status) expect(evaluations.get(opening)?.summary).toMatchObject({ verdict, pass, mandatoryFailures })
  })

  test('is ready at a hold point where every mandatory rule is decided, and met or waived', () => {
    const here = (opening: string) => building.status.find((one) => one.opening === opening)?.readiness.find(({ holdPoint }) => holdPoint === 'lintelSet')
    expect(here('W-101')).toMatchObject({ ready: false, notMet: [], waived: ['lintel.bearing-length'] })
    expect(here('W-201')).toMatchObject({ ready: false, notMet: ['lintel.bearing-length'], waived: [] })
    for (const { holdPoint, ready, notReady } of building.holdPoints) {
      const open = [...evaluations.entries()].filter(([opening, { findings }]) => findings.some((one) => one.holdPoint === holdPoint && one.force === 'mandatory' && (one.outcome === 'fail' || one.outcome === 'notDetermined') && !(opening === 'W-101' && one.rule === 'lintel.bearing-length')))
      const somethingToSee = [...evaluations.values()].some(({ findings }) => findings.some((one) => one.holdPoint === holdPoint && one.force === 'mandatory'))
      expect([ready, notReady], holdPoint).toEqual(somethingToSee ? [41 - open.length, open.length] : [0, 0])
    }
    expect(building.holdPoints.filter(({ signedOff }) => signedOff > 0).map(({ holdPoint, signedOff }) => [holdPoint, signedOff])).toEqual([['headFirstCourse', 1]])
  })

  test('has every mandatory failure, each end by itself', () => {
    const single = [...evaluations].flatMap(([opening, { findings }]) => findings.filter(({ force, outcome }) => force === 'mandatory' && outcome === 'fail').flatMap(({ rule, members }) =>
      members.length === 2 ? members.filter(({ outcome }) => outcome === 'fail').map(({ member }) => `${opening} ${rule} ${member ?? ''}`) : [`${opening} ${rule} `]))
    expect(building.failures.map(({ opening, rule, member }) => `${opening} ${rule} ${member ?? ''}`)).toEqual(single)
    expect(building.failures.find(({ opening }) => opening === 'W-102')).toMatchObject({ rule: 'lintel.bearing-length', member: 'left', measured: { text: '5 1/2 in' }, margin: { inchPound: '-1/2 in' }, covered: false, waived: false, seen: { entry: id(1), by: 'inspector' } })
    expect(building.failures.find(({ opening }) => opening === 'W-101')).toMatchObject({ waived: true, seen: null })
    expect(building.failures.every(({ remedy }) => remedy !== null)).toBe(true)
  })

  test('names what to look at on each walk, last chances first, and nothing that is hidden', () => {
    const lintel = building.walks.find(({ holdPoint }) => holdPoint === 'lintelSet')
    const facts = lintel?.openings.find(({ opening }) => opening === 'W-102')?.facts ?? []
    expect(facts.filter(({ fact }) => fact.startsWith('head.support.')).map(({ fact, lastChance, hiddenBy }) => [fact, lastChance, hiddenBy])).toEqual(expect.arrayContaining([['head.support.protection', true, 'headFlashing'], ['head.support.longLeg', true, 'headFlashing']]))
    expect(facts.map(({ lastChance }) => lastChance)).toEqual(facts.map(({ lastChance }) => lastChance).toSorted((a, b) => Number(b) - Number(a)))
    const single = (opening: string) => evaluations.get(opening)?.nextToMeasure.map(({ fact, decides }) => `${fact} ${decides.join()}`).toSorted()
    for (const opening of ['W-102', 'W-103', 'D-108']) {
      const collected = building.walks.flatMap(({ openings }) => openings.filter((one) => one.opening === opening).flatMap((one) => one.facts))
      expect(collected.map(({ fact, decides }) => `${fact} ${decides.join()}`).toSorted(), opening).toEqual(single(opening))
    }
    expect(building.status.find(({ opening }) => opening === 'W-103')?.noLongerInSight).toEqual(evaluations.get('W-103')?.findings.filter(({ force, reason }) => force === 'mandatory' && reason === 'covered').map(({ rule }) => rule))
    expect(building.status.find(({ opening }) => opening === 'W-103')?.noLongerInSight).toContain('lintel.corrosion-protection')
    const covered = building.walks.flatMap(({ openings }) => openings.filter(({ opening }) => opening === 'W-103').flatMap((one) => one.facts)).filter(({ fact }) => fact.startsWith('head.flashing.endDam'))
    expect(covered).toEqual([])
  })

  test('adds up what single evaluations compute, and names who is not in the sum', () => {
    expect(building.totals.length).toBeGreaterThan(5)
    for (const { quantity, amount, counted, notKnown, notApplicable } of building.totals) {
      const computed = [...evaluations].flatMap(([opening, { quantities }]) => quantities.filter((one) => one.id === quantity).map((one) => ({ opening, ...one })))
      const known = computed.filter(({ status }) => status === 'computed')
      expect(amount, quantity).toBe(known.reduce((sum, one) => sum + (one.amount ?? NaN), 0))
      expect(counted, quantity).toEqual(known.map(({ opening }) => opening))
      expect([...counted, ...notKnown, ...notApplicable].toSorted(), quantity).toEqual([...evaluations.keys()].toSorted())
      expect(notKnown, quantity).toEqual(expect.arrayContaining(computed.filter(({ status }) => status === 'notDetermined').map(({ opening }) => opening)))
    }
    expect(building.totals.find(({ quantity }) => quantity === 'weeps.head-count')?.amount).toBeGreaterThan(40)
  })

  test('has each lintel once, identical ones in one line', () => {
    const withLintel = [...evaluations].filter(([, { quantities }]) => quantities.some((one) => one.id === 'lintel.length' && one.status === 'computed')).map(([opening]) => opening)
    expect(building.lintels.flatMap(({ references }) => references).toSorted()).toEqual(withLintel.toSorted())
    for (const { count, references } of building.lintels) expect(count).toBe(references.length)
    // 48 in and 6 in at each end; L4x3-1/2x1/4 weighs 6.2 lb/ft: AISC Steel Construction Manual, Table 1-7 (from memory); 5 ft × 6.2 = 31 lb
    expect(building.lintels.find(({ references }) => references.includes('W-107'))).toMatchObject({
      section: 'L4x3-1/2x1/4', chosen: 'described', width: { inchPound: '48 in' }, height: { inchPound: '60 in' }, length: { inchPound: '60 in' }, bearing: { inchPound: '6 in' }, described: { left: { inchPound: '6 in' } }, weight: { inchPound: '31 lbf' },
    })
  })

  test('cuts as much flashing as the single evaluations ask for', () => {
    const asked = [...evaluations.values()].flatMap(({ quantities }) => quantities.filter((one) => one.id === 'flashing.head-cut-length').map((one) => one.amount ?? 0)).reduce((sum, one) => sum + one, 0)
    const pieces = building.flashing.filter(({ place }) => place === 'head').reduce((sum, { length, count }) => sum + length.nanometres * count, 0)
    expect(pieces).toBe(asked)
    expect(building.cutLists.find(({ place }) => place === 'head')?.plan.bars.length).toBeGreaterThan(5)
  })

  test('is shown by another reading of the record, in part, and for one walk', async () => {
    const drawn = bodyOf(operations.readBuilding, await read(`${path}/building?basis=asDesigned&startsWith=W-1&holdPoint=headFlashing`))
    expect(drawn.status.map(({ opening }) => opening).every((opening) => opening.startsWith('W-1'))).toBe(true)
    expect(drawn.walks.map(({ holdPoint }) => holdPoint)).toEqual(['headFlashing'])
    expect(drawn.failures.filter(({ opening }) => opening === 'W-102')).toEqual([])
  })

  test('needs the scope and a project', async () => {
    for (const place of ['building', 'openings', 'tables/openings']) {
      expect(problemIn(await http.get(`${path}/${place}`)).code).toBe('unauthenticated')
      expect(problemIn(await read(`/v1/projects/${id(77)}/${place}`)).code).toBe('notFound')
    }
  })
})

const tables = ['openings', 'parts', 'holdPoints', 'readiness', 'failures', 'toMeasure', 'lintels', 'flashing', 'flashingCuts', 'weepsAndTies', 'gaps']

describe('a table', () => {
  test.each(tables)('%s is CSV as RFC 4180 has it, and another parser reads the same', async (table) => {
    const { text, headers } = await read(`${path}/tables/${table}?startsWith=W-10`)
    expect(headers['content-type']).toBe('text/csv; charset=utf-8; header=present')
    expect(headers['content-disposition']).toBe(`attachment; filename="${table}-${id(1)}.csv"`)
    const records = rfc4180Records(text)
    const { data, errors } = papaparse.parse<string[]>(text, { skipEmptyLines: true })
    expect(errors).toEqual([])
    expect(data).toEqual(records)
    expect(records.length).toBeGreaterThan(1)
    expect(records.flat().filter((cell) => /^[=+\-@\t\r]/.test(cell))).toEqual([])
  })

  test('has the rows of the building, with no formula in them', async () => {
    const rows = papaparse.parse<Record<string, string>>((await read(`${path}/tables/failures`)).text, { header: true, skipEmptyLines: true }).data
    expect(rows.map((row) => `${row['Opening'] ?? ''} ${row['Rule'] ?? ''} ${row['End'] ?? ''}`)).toEqual(building.failures.map(({ opening, rule, member }) => `${opening} ${rule} ${member ?? ''}`))
    expect(rows.find((row) => row['Opening'] === '~formula')).toMatchObject({ Reference: `'=HYPERLINK("https://law.example","a, b")`, Found: '2 in', 'Short by (inch-pound)': '4 in' })
    const openings = papaparse.parse<Record<string, string>>((await read(`${path}/tables/openings`)).text, { header: true, skipEmptyLines: true }).data
    expect(openings).toHaveLength(42)
    expect(openings.find((row) => row['Opening'] === 'X-1')).toMatchObject({ Verdict: 'notEvaluated', 'Mandatory not met': '', 'Why not evaluated': 'opening is required' })
    const sums = papaparse.parse<Record<string, string>>((await read(`${path}/tables/weepsAndTies`)).text, { header: true, skipEmptyLines: true }).data
    expect(sums.filter((row) => row['Openings counted'] === '0' && row['Not known at'] !== '').map((row) => row['Amount'])).toEqual(expect.arrayContaining(['']))
    for (const row of sums) {
      expect(row).toMatchObject({ 'Openings in all': '42', 'Not evaluated': 'X-1' })
      const notKnown = (row['Not known at'] ?? '').split('; ').filter((opening) => opening !== '')
      expect(Number(row['Openings counted']) + Number(row['Openings without']) + notKnown.length + 1).toBe(42)
    }
  })

  test('is led by a byte order mark where a spreadsheet needs one', async () => {
    const plain = await read(`${path}/tables/parts`)
    const marked = await read(`${path}/tables/parts?byteOrderMark=yes`)
    expect(marked.text.replace(/^\uFEFF/, '')).toBe(plain.text)
    expect(Number(marked.headers['content-length'])).toBe(Number(plain.headers['content-length']) + 3)
  })

  test('that is not one is refused with those that are', async () => {
    expect(problemIn(await read(`${path}/tables/windows`)).errors).toMatchObject([{ code: 'notAllowed', pointer: '/table', detail: expect.stringContaining('"weepsAndTies"') as string }])
  })
})

test('GraphQL answers the same', async () => {
  const answered = await graphql('query($project: String!) { building(project: $project) { counted failures { opening rule member margin { inchPound } } totals { quantity amount } lintels { mark count } } buildingTable(project: $project, table: failures) openings(project: $project, first: 2) { edges { node { opening verdict } } pageInfo { endCursor } } }', { project: id(1) })
  const { text } = await read(`${path}/tables/failures`)
  const next = ((await read(`${path}/openings?first=2`)).body as { nextCursor: string }).nextCursor
  expect(next).not.toBeNull()
  expect(answered.body).toEqual({
    data: {
      building: {
        counted: building.counted,
        failures: building.failures.map(({ opening, rule, member, margin }) => ({ opening, rule, member, margin: margin && { inchPound: margin.inchPound } })),
        totals: building.totals.map(({ quantity, amount }) => ({ quantity, amount })),
        lintels: building.lintels.map(({ mark, count }) => ({ mark, count })),
      },
      buildingTable: text,
      openings: { edges: standings.slice(0, 2).map(({ opening, verdict }) => ({ node: { opening, verdict } })), pageInfo: { endCursor: next } },
    },
  })
})
