import { beforeAll, describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import type { Amendment } from '../../src/catalog/amendment.ts'
import type { Catalog } from '../../src/catalog/catalog.ts'
import type { Finding } from '../../src/evaluation/document.ts'
import { evaluate } from '../../src/evaluation/evaluate.ts'
import { describeOpening } from '../../src/opening/describe.ts'
import { readTexts } from '../read-sources.ts'
import { realCatalog, resolved, ruleIn } from './real-catalog.ts'

const baseline = parse(readTexts('tests/fixtures/openings', '.yaml').get('baseline-window.yaml') ?? '') as unknown
let catalog: Catalog

beforeAll(async () => {
  catalog = await realCatalog()
})

const wisconsin = { place: 'us-wi', day: '2024-11-25', eve: '2024-11-24' }
const minnesota = { place: 'us-mn', day: '2020-03-31', eve: '2020-03-30' }
const oregon = { place: 'us-or', day: '2010-01-01', eve: '2009-12-31' }
const henrico = { place: 'us-va-087', day: '2007-06-01', eve: '2007-05-31' }
const inspection = { place: 'us-va-087', day: '2026-11-25', eve: '2026-11-24' }
const norton = { place: 'us-oh-norton', day: '2025-01-01', eve: '2024-12-31' }
const paris = { place: 'us-tx-paris', day: '2026-04-29', eve: '2026-04-28' }

const sps32124 = /^(https:\/\/casetext\.com|http:\/\/docs\.legis\.wisconsin\.gov\/.+\/321\/VII\/25$)/
const sps32126 = /^https:\/\/docs\.legis\.wisconsin\.gov\/.+\/321\/VIII\/27$/
const notice2007 = /^http:\/\/henrico\.us\/bldg\/residential-building\/brick-veneer-flashing-and-ties-notice\/$/
const veneerPage = /^https:\/\/henrico\.gov\/bldg\/residential-building\/inspection-requirements\/veneer\/$/
const section143421 = /^https:\/\/codelibrary\.amlegal\.com\/codes\/norton\/latest\/norton_oh\/0-0-0-76443$/
const ordinance2026011 = /^https:\/\/documents\.paristexas\.gov\/WebLink\/0\/doc\/1402342\/Page65\.aspx$/

/** What each instrument prints, where in it, where it was read, and an opening that misses it by so much. */
const printed = [
  [wisconsin, 'us-wi.weep.spacing', { inchPound: '2 [ft_i]' }, 'SPS 321.26(8)(a)2', sps32126, { 'head.weeps.spacing': '25 in' }, '-25.4 mm'],
  [wisconsin, 'us-wi.weep.base-spacing', { inchPound: '2 [ft_i]' }, 'SPS 321.26(8)(a)2', sps32126, { 'base.weeps.spacing': '26 in' }, '-50.8 mm'],
  [wisconsin, 'us-wi.weep.size', { inchPound: '3/8 [in_i]' }, 'SPS 321.26(8)(c)3', sps32126, { 'head.weeps.diameter': '3/16 in' }, '-4.7625 mm'],
  [wisconsin, 'us-wi.weep.base-size', { inchPound: '3/8 [in_i]' }, 'SPS 321.26(8)(c)3', sps32126, { 'base.weeps.diameter': '1/4 in' }, '-3.175 mm'],
  [wisconsin, 'us-wi.base.flashing-upstand', { inchPound: '8 [in_i]' }, 'SPS 321.26(8)(b)2', sps32126, { 'base.flashing.upstand': '6 in' }, '-50.8 mm'],
  [wisconsin, 'us-wi.base.weeps-above-grade', { inchPound: '0 [in_i]' }, 'SPS 321.26(8)(c)1', sps32126, { 'base.weepsAboveGrade': '-1 in' }, '-25.4 mm'],
  [wisconsin, 'us-wi.weep.rope-removed', { values: ['rope', 'wick'] }, 'SPS 321.26(8)(c)2', sps32126, { 'head.weeps.kind': 'rope' }, null],
  [wisconsin, 'us-wi.flashing.exposed-to-sun', { values: ['selfAdheredMembrane', 'polyethylene', 'asphaltFelt', 'buildingWrap'] }, 'SPS 321.26(8)(a)3 and note', sps32126, { 'head.flashing.material': 'selfAdheredMembrane', 'head.flashing.exposedToSun': true }, null],
  [wisconsin, 'us-wi.flashing.splice-lap', { inchPound: '6 [in_i]' }, 'SPS 321.24(3)(c)1', sps32124, { 'head.flashing.spliceLap': '4 in' }, '-50.8 mm'],
  [wisconsin, 'us-wi.flashing.splice-sealed', { value: true }, 'SPS 321.24(3)(c)1 and 3', sps32124, { 'head.flashing.spliceSealed': false }, null],
  [wisconsin, 'us-wi.flashing.head-present', { value: true }, 'SPS 321.24(3)(d)1', sps32124, { 'head.flashing.present': false }, null],
  [wisconsin, 'us-wi.barrier.continuous-to-top', { value: true }, 'SPS 321.24(4)(a)1', sps32124, { 'barrier.continuousToTop': false }, null],
  [minnesota, 'us-mn.barrier.over-flashing', { inchPound: '2 [in_i]', si: '51 mm' }, '1309.0703, subpart 2a, R703.2', /^https:\/\/www\.revisor\.mn\.gov\/rules\/1309\.0703$/, { 'head.flashing.barrierLap': '1 in' }, '-25.4 mm'],
  [oregon, 'us-or.air-space.drained', { inchPound: '1/8 [in_i]', si: '3 mm' }, 'R703.1.1', /^https:\/\/laserfiche\.springfield-or\.gov\//, { 'wall.airSpace': '1/16 in' }, '-1.5875 mm'],
  [henrico, 'us-va-087.flashing.end-dam-present', { value: true }, 'item 1', notice2007, { 'head.flashing.endDamHeight': ['2 in', 0], 'head.flashing.endDamPresent': null }, null],
  [henrico, 'us-va-087.flashing.visible-at-head', { values: ['shortOfFace'] }, 'item 1', notice2007, { 'head.flashing.projection': '-1/2 in', 'head.flashing.frontEdge': null }, null],
  [henrico, 'us-va-087.base.flashing-visible', { value: true }, 'item 1', notice2007, { 'base.flashing.reachesFace': false }, null],
  [henrico, 'us-va-087.tie.no-roofing-nails', { values: ['roofingNail'] }, 'second paragraph', notice2007, { 'ties.fastener': 'roofingNail' }, null],
  [inspection, 'us-va-087.process.veneer-inspection', { value: true }, 'Veneer', veneerPage, { 'process.inspected.baseFlashing': false }, null],
  [inspection, 'us-va-087.base.filled-below-flashing', { value: true }, 'Veneer, item 2', veneerPage, { 'base.spaceFilledBelowFlashing': false }, null],
  [inspection, 'us-va-087.flashing.no-polyethylene', { values: ['polyethylene'] }, 'Veneer, item 5', veneerPage, { 'head.flashing.material': 'polyethylene' }, null],
  [inspection, 'us-va-087.joint.jamb-flashing', { value: true }, 'Veneer, item 5', veneerPage, { 'jambs.membranePresent': [true, false] }, null],
  [norton, 'us-oh-norton.tie.horizontal-spacing', { inchPound: '16 [in_i]' }, '1434.21(a)', section143421, { 'ties.horizontalSpacing': '24 in', 'ties.areaPerTie': null }, '-203.2 mm'],
  [norton, 'us-oh-norton.tie.fifth-course', { inchPound: '13 1/3 [in_i]' }, '1434.21(a)', section143421, { 'ties.verticalSpacing': '16 in' }, '-67.733333 mm'],
  [norton, 'us-oh-norton.height.veneer', { inchPound: '35 [ft_i]' }, '1434.21(a)', section143421, { 'wall.veneerHeight': '36 ft' }, '-304.8 mm'],
  [norton, 'us-oh-norton.height.veneer-thickness', { inchPound: '2 [in_i]' }, '1434.21(a)', section143421, { 'wall.veneer.thickness': '1 1/2 in' }, '-12.7 mm'],
  [norton, 'us-oh-norton.lintel.arch-rise', { proportion: '1/12', of: 'opening.width' }, '1434.21(e)', section143421, { 'head.support.kind': 'masonryArch', 'opening.headShape': 'segmentalArch', 'opening.headRise': '3 in' }, '-25.4 mm'],
  [paris, 'us-tx-paris.tie.vertical-spacing-16', { inchPound: '24 [in_i]', si: '737 mm' }, 'R703.8.4.1.2, item 1', ordinance2026011, { 'ties.verticalSpacing': '30 in', 'ties.areaPerTie': null }, '-152.4 mm'],
  [paris, 'us-tx-paris.tie.vertical-spacing-24', { inchPound: '16 [in_i]', si: '483 mm' }, 'R703.8.4.1.2, item 2', ordinance2026011, { 'wall.studSpacing': '24 in', 'ties.verticalSpacing': '20 in', 'ties.areaPerTie': null }, '-101.6 mm'],
] as const

const cases = printed.map(([from, rule, figure, locator, address, missed, margin]) => ({ ...from, rule, figure, locator, address, missed, margin }))

describe.each(cases)('$rule from $day on', ({ place, day, eve, rule, figure, locator, address, missed, margin }) => {
  test('asks for what is printed, says where, and was read', () => {
    const { limit, rule: whole } = ruleIn(at(place, day), rule)
    expect(limit).toMatchObject({ ...figure, locator, evidence: 'primary', readIn: expect.stringMatching(address) as string })
    expect(whole.force).toBe('mandatory')
  })

  test('fails an opening that misses it, and by how much', () => {
    expect(findingOf(rule, place, day, missed)).toMatchObject({ outcome: 'fail', margin: margin === null ? null : { si: margin } })
  })

  test('passes the opening of the careful crew, unless it does not speak of it', () => {
    const careful = findingOf(rule, place, day, {})
    expect(careful?.outcome).toBe(outcomeOfCareful[rule] ?? 'pass')
  })

  test('says nothing the day before', () => expect(findingOf(rule, place, eve, missed)).toBeUndefined())

  test('tells the instrument, its place in it and the day in its chain', () => {
    const { chain } = ruleIn(at(place, day), rule)
    expect(chain).toMatchObject([{ layer: place, action: 'insertion', locator, effectiveFrom: day, old: null, readIn: expect.stringMatching(/^https?:/) as string }])
    expect(chain[0]?.instrument?.href).toMatch(/^https?:/)
  })
})

/** Ties in every sixth course, studs at 16 in, a lintel and a drip of metal: what some of these rules do not speak of, or do not allow. */
const outcomeOfCareful: Readonly<Record<string, string>> = {
  'us-wi.flashing.exposed-to-sun': 'notApplicable',
  'us-oh-norton.tie.fifth-course': 'fail',
  'us-oh-norton.lintel.arch-rise': 'notApplicable',
  'us-tx-paris.tie.vertical-spacing-24': 'notApplicable',
}

describe('Norton, Ohio', () => {
  const short = { 'head.support.bearing': ['5 in', '6 in'], 'head.flashing.extensionPastSupport': null }

  test('raises the bearing of the state from 4 in to the 6 in of 1434.21(c), and the chain tells both', () => {
    expect(findingOf('lintel.bearing-length', norton.place, norton.eve, short)).toMatchObject({ outcome: 'pass', margin: { si: '25.4 mm' } })
    expect(findingOf('lintel.bearing-length', norton.place, norton.day, short)).toMatchObject({ outcome: 'fail', member: 'left', margin: { si: '-25.4 mm' }, evidence: 'primary' })
    expect(findingOf('lintel.bearing-length', 'us-oh', norton.day, short)).toMatchObject({ outcome: 'pass' })
    expect(ruleIn(at(norton.place, norton.day), 'lintel.bearing-length').chain).toMatchObject([
      { layer: 'modelCode', action: 'published', publication: 'irc', edition: '2018', locator: 'R703.8.3', new: 'at least 4 in (102 mm)' },
      { layer: 'us-oh', action: 'adoption', document: 'us-oh/irc-2018', effectiveFrom: '2019-07-01' },
      { layer: 'us-oh-norton', action: 'substitution', document: 'us-oh-norton/code-1434-21', part: 'limit', locator: '1434.21(c)', old: 'at least 4 in (102 mm)', new: 'at least 6 in (152 mm)', readIn: expect.stringMatching(section143421) as string },
    ])
  })

  test('loosens nothing: its 35 ft and its span/360 stand beside the 30 ft and the span/600 of the state', () => {
    const tall = { 'wall.veneerHeight': '32 ft' }
    expect(findingOf('us-oh-norton.height.veneer', norton.place, norton.day, tall)).toMatchObject({ outcome: 'pass', margin: { si: '914.4 mm' } })
    expect(findingOf('height.veneer', norton.place, norton.day, tall)).toMatchObject({ outcome: 'fail', margin: { si: '-609.6 mm' } })
    for (const id of ['height.veneer', 'lintel.deflection']) expect(ruleIn(at(norton.place, norton.day), id)).toEqual(ruleIn(at('us-oh', norton.day), id))
  })

  test('could not loosen either if it tried, since the state allows only what is stricter', () => {
    const looser = loosened('lintel.bearing-length', '3 [in_i]', '76 mm')
    expect(() => resolved({ ...catalog, amendments: [looser] }, { jurisdiction: norton.place, asOf: norton.day })).toThrow('allows only stricter rules')
  })

  test('judges the computed sag by the 360th part of the clear span (1434.21(d))', () => {
    const weak = { 'head.support.section': 'L3x3x1/4', 'opening.width': '8 ft' }
    expect(findingOf('us-oh-norton.lintel.deflection', norton.place, norton.day, weak)).toMatchObject({ outcome: 'fail', required: { text: 'at most 1/360 of opening.width', si: '6.773333 mm' } })
    expect(findingOf('us-oh-norton.lintel.deflection', norton.place, norton.day, {})).toMatchObject({ outcome: 'pass' })
  })

  function loosened(rule: string, inchPound: string, si: string): Amendment {
    const [amendment] = catalog.amendments.filter(({ jurisdiction }) => jurisdiction === norton.place)
    if (!amendment) throw new Error('the amendment that is changed here has gone')
    return { ...amendment, modifications: [{ modification: 'm1', kind: 'substitution', target: { rule, part: 'limit' }, old: { inchPound: '4 [in_i]' }, new: { governing: 'inchPound', inchPound, si, locator: '1434.21' } }] }
  }
})

/** 24 in is printed beside 737 mm, which is 29 in, and 16 in beside 483 mm, which is 19 in. */
describe('Paris, Texas, R703.8.4.1.2, whose inches and millimeters contradict each other', () => {
  test.each([
    ['16 in', '24 in', 'pass', null], ['16 in', '609 mm', 'pass', null], ['16 in', '24 1/16 in', 'notDetermined', 'ruleUndecided'], ['16 in', '700 mm', 'notDetermined', 'ruleUndecided'],
    ['16 in', '737 mm', 'notDetermined', 'ruleUndecided'], ['16 in', '29 1/16 in', 'fail', null],
    ['24 in', '16 in', 'pass', null], ['24 in', '17 in', 'notDetermined', 'ruleUndecided'], ['24 in', '483 mm', 'notDetermined', 'ruleUndecided'], ['24 in', '19 1/16 in', 'fail', null],
  ])('studs at %s, ties at %s: %s', (studSpacing, verticalSpacing, outcome, reason) => {
    const rule = `us-tx-paris.tie.vertical-spacing-${studSpacing.slice(0, 2)}`
    expect(findingOf(rule, paris.place, paris.day, { 'wall.studSpacing': studSpacing, 'ties.verticalSpacing': verticalSpacing, 'ties.areaPerTie': null })).toMatchObject({ outcome, reason })
  })

  test.each([['16', '24 in', '737 mm', '29 in'], ['24', '16 in', '483 mm', '19 in']])('shows the conflict for studs at %s in', (studs, inches, millimeters, really) => {
    const rule = `us-tx-paris.tie.vertical-spacing-${studs}`
    const { limit } = ruleIn(at(paris.place, paris.day), rule)
    expect('printedConflict' in limit && limit.printedConflict).toContain(`Printed as ${inches} (${millimeters}), which is ${really}.`)
    const finding = findingOf(rule, paris.place, paris.day, { 'wall.studSpacing': `${studs} in` })
    expect(finding?.required).toMatchObject({ inchPound: inches, si: millimeters, text: `at most ${inches} (${millimeters})` })
  })

  test('takes nothing from the IRC, which goes on asking for 24 in on any stud', () => {
    const far = { 'ties.verticalSpacing': '27 in', 'ties.areaPerTie': null }
    expect(findingOf('tie.vertical-spacing', paris.place, paris.day, far)).toMatchObject({ outcome: 'fail', margin: { si: '-76.2 mm' } })
  })
})

test('Minnesota says how far up the barrier goes, in the words of its own rule, from the day on', () => {
  const statement = (asOf: string) => ruleIn(at(minnesota.place, asOf), 'barrier.continuous-to-top').rule.statement
  expect(statement(minnesota.eve)).not.toContain('rafter')
  expect(statement(minnesota.day)).toContain('to the underside of the rafter or of the top chord of the truss')
  expect(ruleIn(at(minnesota.place, minnesota.day), 'barrier.continuous-to-top').chain.at(-1)).toMatchObject({ layer: 'us-mn', action: 'substitution', part: 'statement', document: 'us-mn/rule-1309-0703' })
})

describe('Virginia', () => {
  test.each([['2014-07-14', '2012'], ['2018-09-04', '2015'], ['2021-07-01', '2018'], ['2024-01-18', '2021']])('from %s on takes in IRC %s by its own code', (asOf, edition) => {
    const set = at('us-va', asOf)
    expect(set).toMatchObject({ adoption: `us-va/usbc-${edition}`, editions: [`va-usbc-${edition}`, `irc-${edition}`] })
    expect(ruleIn(set, 'lintel.bearing-length').chain).toMatchObject([{ publication: 'irc', edition }, { layer: 'us-va', document: `us-va/usbc-${edition}`, publication: 'va-usbc' }])
  })

  test('has no edition in the catalog before 2014, and says so; that of 2003 stands at the county whose notice needs it', () => {
    for (const asOf of ['2007-06-01', '2008-05-01', '2014-07-13']) expect(at('us-va', asOf)).toMatchObject({ adopted: false, adoption: null })
    expect(at('us-va-087', '2007-06-01')).toMatchObject({ adopted: true, adoption: 'us-va-087/usbc-2003' })
    expect(at('us-va-087', '2008-05-01')).toMatchObject({ adopted: false, adoption: null })
  })

  test('is not bound by the notice of one county, which holds under each of its editions', () => {
    const dams = (place: string, asOf: string) => at(place, asOf).rules.some(({ rule }) => rule.rule === 'us-va-087.flashing.end-dam-present')
    for (const asOf of ['2007-06-01', '2015-01-01', '2020-01-01', '2022-01-01', '2026-11-25']) {
      expect(dams('us-va-087', asOf)).toBe(true)
      expect(dams('us-va', asOf)).toBe(false)
      expect(dams('us-va-041', asOf)).toBe(false)
    }
  })
})

test.each([['us-wi', wisconsin.day, 'wi-sps-321'], ['us-or', oregon.day, 'or-orsc']])('%s has a code of its own: no mandatory rule there is from the IRC', (place, asOf, publication) => {
  const mandatory = at(place, asOf).rules.filter(({ rule }) => rule.force === 'mandatory')
  expect(mandatory.length).toBeGreaterThan(0)
  expect(new Set(mandatory.map(({ limit }) => limit.publication))).toEqual(new Set([publication]))
})

test.each([['us-tx', '2026-11-25'], ['us-tx-paris', paris.eve], ['us-or', '2011-07-01'], ['us-wi', wisconsin.eve], ['us-mn', minnesota.eve]])('what %s had adopted on %s is not known, and nothing passes for it', (place, asOf) => {
  const findings = findingsOf(place, asOf, {})
  expect(findings.filter(({ force, reason }) => force === 'mandatory' && reason !== 'notAdopted')).toEqual([])
  expect(findings.some(({ force }) => force === 'mandatory')).toBe(true)
})

describe('every real instrument', () => {
  const real = () => catalog.amendments.filter(({ jurisdiction }) => !/^us-x[a-z]/.test(jurisdiction))

  test('is here, one for each that was found', () => {
    expect(real().map(({ amendment }) => amendment).toSorted()).toEqual([
      'us-mn/rule-1309-0703', 'us-oh-norton/code-1434-21', 'us-or/orsc-r703-1-1', 'us-tx-paris/ord-2026-011', 'us-va-087/notice-2007-05-07', 'us-va-087/veneer-inspection', 'us-wi/sps-321-24', 'us-wi/sps-321-26',
    ])
  })

  test('says where it was read, how well, when, and what is doubtful about its dates', () => {
    for (const { amendment, evidence, readIn, lastReviewed, note, instrument } of real()) {
      expect([evidence, readIn, lastReviewed, note, instrument.href], amendment).toEqual([
        'primary', expect.stringMatching(/^https?:\/\/(?!law\.example)/), expect.stringMatching(/^\d{4}-\d\d-\d\d$/), expect.stringMatching(/.{40}/), expect.stringMatching(/^https?:\/\/(?!law\.example)/),
      ])
    }
  })

  test('binds no earlier than it was adopted', () => {
    expect(real().filter(({ effectiveFrom, instrument }) => effectiveFrom < instrument.adopted).map(({ amendment }) => amendment)).toEqual([])
  })

  test('has every rule of it checked above against what is printed, or is a plain yes or no of the same section', () => {
    const checked = new Set<string>(printed.map(([, rule]) => rule))
    const inserted = real().flatMap(({ modifications }) => modifications.flatMap((one) => (one.kind === 'insertion' ? [one.new] : [])))
    const amounts = inserted.filter(({ limits }) => limits.some((limit) => 'inchPound' in limit || 'proportion' in limit)).map(({ rule }) => rule)
    const elsewhere = ['us-oh-norton.lintel.deflection', 'us-oh-norton.tie.fifth-course-engineer', 'us-oh-norton.tie.fifth-course-tall', 'us-oh-norton.tie.fifth-course-roman']
    expect(amounts.filter((rule) => !checked.has(rule)).toSorted()).toEqual(elsewhere.toSorted())
  })
})

test.each([['modular', '13 1/3 [in_i]'], ['engineerModular', '16 [in_i]'], ['utility', '20 [in_i]'], ['roman', '10 [in_i]']])('five courses of %s brick are %s, as the table of bricks has it', (unit, figure) => {
  const height = catalog.tables.get('masonry.brick-units')?.rows.find((one) => one['unit'] === unit)?.['courseHeight']
  const rule = at(norton.place, norton.day).rules.filter(({ rule: { rule, appliesWhen } }) => rule.startsWith('us-oh-norton.tie.fifth-course') && JSON.stringify(appliesWhen).includes(`"${unit}"`))
  expect(rule.map(({ limit }) => limit)).toMatchObject([{ inchPound: figure }])
  expect(inches(figure)).toBeCloseTo(5 * inches(typeof height === 'string' ? height : ''), 9)
})

function inches(text: string): number {
  const [whole = '', fraction] = text.replace(' [in_i]', '').split(' ')
  const [numerator, denominator] = (fraction ?? '0/1').split('/').map(Number)
  return Number(whole) + (numerator ?? 0) / (denominator ?? 1)
}

function at(jurisdiction: string, asOf: string) {
  return resolved(catalog, { jurisdiction, asOf })
}

/** The baseline window with some facts changed, judged at a place on a day; null takes a fact away. */
function findingsOf(place: string, asOf: string, changed: Readonly<Record<string, unknown>>): readonly Finding[] {
  const document = structuredClone(baseline) as Record<string, unknown>
  for (const [path, value] of Object.entries(changed)) {
    const keys = path.split('.')
    const last = keys.pop() ?? path
    const part = keys.reduce((inner, key) => (inner[key] ??= {}) as Record<string, unknown>, document)
    part[last] = value
  }
  const described = describeOpening(document)
  if (!described.ok) throw new Error(described.problems.map(({ pointer, detail }) => `${pointer} ${detail}`).join('\n'))
  return evaluate(described.value, at(place, asOf), catalog, null).findings
}

function findingOf(rule: string, place: string, asOf: string, changed: Readonly<Record<string, unknown>>): Finding | undefined {
  return findingsOf(place, asOf, changed).find((finding) => finding.rule === rule)
}
