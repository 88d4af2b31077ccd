import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'yaml'
import type { Catalog } from '../../src/catalog/catalog.ts'
import type { FailureCode } from '../../src/operations/operation.ts'
import type { OperationName } from './doors.ts'

/** One question, and what every door has to answer. */
export interface Case {
  readonly operation: OperationName
  readonly input: Readonly<Record<string, unknown>>
  /** What the answer holds at least, or the code of the failure. */
  readonly expect: object | FailureCode
  /** Each single error behind a failure, by place and code. */
  readonly errors?: readonly string[]
  /** A catalog other than the one that is delivered. */
  readonly catalog?: keyof typeof otherCatalogs
}

const root = join(import.meta.dirname, '../..')
const city = { jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' }
const window = { kind: 'window', width: '48 in', height: '60 in' }

/** Catalogs that no check would let through, or that nobody has delivered yet. */
export const otherCatalogs = {
  twoCodesAdopted: (catalog: Catalog): Catalog => {
    const other = { publication: 'ibc', edition: '2021' }
    const twice = [...catalog.adoptions].map(([layer, list]) => [layer, list.flatMap((one) => [one, { ...one, ...other, adoption: `${one.adoption}-other` }])] as const)
    return { ...catalog, adoptions: new Map(twice) }
  },
  amendedTwice: (catalog: Catalog): Catalog => ({
    ...catalog,
    amendments: catalog.amendments.flatMap((amendment) => [amendment, { ...amendment, amendment: `${amendment.amendment}-again` }]),
  }),
} as const

interface BuildingFile {
  readonly jurisdiction: string
  readonly publication?: string
  readonly asOf: string
  readonly openings: readonly { readonly holdPoint?: string; readonly opening: { readonly reference: string } }[]
}

const buildings: readonly Case[] = documentsIn<BuildingFile>('catalog/buildings').flatMap(({ jurisdiction, publication, asOf, openings }) =>
  openings.map(({ opening, holdPoint }): Case => ({
    operation: 'evaluateOpening',
    input: { jurisdiction, publication, asOf, holdPoint, opening },
    expect: { jurisdiction, asOf, subject: { reference: opening.reference }, holdPoint: holdPoint ?? null },
  })),
)

/** Questions of place, and what the answer must say of it. */
const places = [
  [city, { ...city, resolvedAt: city.jurisdiction }],
  [{ edition: 'irc-2018', asOf: '2021-05-01' }, { jurisdiction: null, asOf: '2021-05-01', editions: ['irc-2018'] }],
  [{ jurisdiction: 'us-xb', publication: 'ibc' }, { jurisdiction: 'us-xb', asOf: '2026-03-01', adoption: 'us-xb/ibc-2021' }],
  [{ jurisdiction: 'us-xa', asOf: '2015-01-01' }, { jurisdiction: 'us-xa', asOf: '2015-01-01', adoption: 'us-xa/irc-2012' }],
  [{ jurisdiction: 'us-elsewhere', holdPoint: 'wallAbove' }, { jurisdiction: 'us-elsewhere', resolvedAt: 'us', adoption: null, holdPoint: 'wallAbove' }],
] as const

const fixtures: readonly Case[] = documentsIn<{ reference: string }>('tests/fixtures/openings').map((opening, index): Case => {
  const [place, told] = places[index % places.length] ?? places[0]
  return { operation: 'evaluateOpening', input: { ...place, opening }, expect: { ...told, subject: { reference: opening.reference } } }
})

const evaluations: readonly Case[] = [
  ...buildings,
  ...fixtures,
  { operation: 'evaluateOpening', input: { edition: 'irc-2021', opening: { opening: window } }, expect: { asOf: '2026-03-01', jurisdiction: null, adoption: null, subject: { reference: null }, summary: { verdict: 'incomplete', pass: 0, fail: 0 } } },
  { operation: 'evaluateBatch', input: { ...city, openings: [{ key: 'one', opening: { opening: window } }, { holdPoint: 'handover', opening: { opening: window, reference: 'W-2' } }] }, expect: { answers: [{ line: 1, key: 'one', reference: null, code: null }, { line: 2, key: null, reference: 'W-2' }] } },
  { operation: 'evaluateBatch', input: { ...city, openings: [] }, expect: 'invalidInput', errors: ['outOfRange /openings'] },
  { operation: 'evaluateBatch', input: { openings: [{ opening: { opening: window } }] }, expect: 'placeMissing', errors: ['placeMissing /jurisdiction'] },
  { operation: 'evaluateOpening', input: { ...city, opening: { opening: window, head: { support: { bearing: { value: 98.4, unit: 'mm', resolution: 1 } }, flashing: { endDamHeight: [null, { value: '1 1/2', unit: '[in_i]' }] } } } }, expect: { editions: ['irc-2021'] } },
  { operation: 'evaluateOpening', input: { ...city, opening: { lengthUnit: 'in', opening: { ...window, width: 48, height: 60.5 }, jambs: null, head: { support: { bearing: 0, endGap: [0.25, null], bearingSeat: ['solidMasonry', 'coredUnit'] } } } }, expect: { asOf: '2026-03-01' } },
  { operation: 'evaluateOpening', input: { opening: { opening: window } }, expect: 'placeMissing', errors: ['placeMissing /jurisdiction'] },
  { operation: 'evaluateOpening', input: { jurisdiction: 'xx', opening: { opening: window } }, expect: 'unknownJurisdiction', errors: ['unknownJurisdiction /jurisdiction'] },
  { operation: 'evaluateOpening', input: { edition: 'irc-1999', opening: { opening: window } }, expect: 'unknownEdition', errors: ['unknownEdition /edition'] },
  { operation: 'evaluateOpening', input: { ...city, opening: { opening: window } }, catalog: 'twoCodesAdopted', expect: 'severalCodesAdopted', errors: ['severalCodesAdopted /publication'] },
  { operation: 'evaluateOpening', input: { ...city, opening: { opening: window } }, catalog: 'amendedTwice', expect: 'catalogFault', errors: ['catalogFault /jurisdiction'] },
  {
    operation: 'evaluateOpening',
    input: {
      jurisdiction: 'Not A Place', asOf: '2026-02-30',
      opening: { opening: { kind: 'window', width: 48, height: '60 parsecs' }, head: { support: { bearing: 'four', endGap: ['1/4 in', 'wide'], section: 'L5' } }, sill: { slope: '15' } },
    },
    expect: 'invalidInput',
    errors: [
      'notAllowed /jurisdiction', 'notAllowed /asOf', 'unitMissing /opening/opening/width', 'unreadable /opening/opening/height', 'unreadable /opening/head/support/section',
      'unreadable /opening/head/support/bearing', 'unreadable /opening/head/support/endGap/1', 'unitMissing /opening/sill/slope',
    ],
  },
  { operation: 'evaluateOpening', input: { ...city, opening: { lengthUnit: 'in', opening: { ...window, width: 1200 } } }, expect: 'invalidInput', errors: ['notBelievable /opening/opening/width'] },
  { operation: 'evaluateOpening', input: { ...city, opening: { opening: window, reference: 'x'.repeat(201), head: { support: { bearing: ['4 in', '4 in', '4 in'] } } } }, expect: 'invalidInput', errors: ['outOfRange /opening/reference', 'outOfRange /opening/head/support/bearing'] },
]

const lists: readonly Case[] = [
  { operation: 'listRules', input: {}, expect: { items: [{}] } },
  { operation: 'listRules', input: { ...city, part: 'head', force: 'mandatory', holdPoint: 'lintelSet', topic: 'lintel', first: 2 }, expect: { items: [{ part: 'head', force: 'mandatory', holdPoint: 'lintelSet', topic: 'lintel' }, { part: 'head' }] } },
  { operation: 'listRules', input: { edition: 'irc-2015', first: 200 }, expect: { nextCursor: null } },
  { operation: 'listRules', input: { topic: 'no such topic' }, expect: { items: [], nextCursor: null } },
  { operation: 'listRules', input: { asOf: '2026-03-01' }, expect: 'placeMissing', errors: ['placeMissing /jurisdiction'] },
  { operation: 'listRules', input: { first: 0 }, expect: 'invalidInput', errors: ['outOfRange /first'] },
  { operation: 'listRules', input: { first: 201, after: 'x' }, expect: 'invalidInput', errors: ['outOfRange /first'] },
  { operation: 'listRules', input: { after: 'bm90LWEtcnVsZQ' }, expect: 'invalidInput', errors: ['notAllowed /after'] },
  { operation: 'listRules', input: { jurisdiction: 'nowhere' }, expect: 'unknownJurisdiction', errors: ['unknownJurisdiction /jurisdiction'] },
  { operation: 'listJurisdictions', input: {}, expect: { nextCursor: null } },
  { operation: 'listJurisdictions', input: { within: 'us-xa', first: 1 }, expect: { items: [{ within: 'us-xa' }] } },
  { operation: 'listJurisdictions', input: { after: '' }, expect: 'invalidInput', errors: ['notAllowed /after'] },
  { operation: 'listPublications', input: { first: 3 }, expect: { items: [{}] } },
  { operation: 'listPublications', input: { first: -1 }, expect: 'invalidInput', errors: ['outOfRange /first'] },
  { operation: 'listFacts', input: { part: 'sill', seenFrom: 'sillFlashing', first: 200 }, expect: { items: [{ seenFrom: 'sillFlashing' }], nextCursor: null } },
  { operation: 'listFacts', input: { after: 'x'.repeat(601) }, expect: 'invalidInput', errors: ['outOfRange /after'] },
  { operation: 'listHoldPoints', input: {}, expect: { items: [{ id: 'detailReview', order: 0 }] } },
  { operation: 'listAmendments', input: { jurisdiction: 'us-xa-101', first: 1 }, expect: { items: [{ publication: 'irc' }] } },
  { operation: 'listAmendments', input: { first: 0 }, expect: 'invalidInput', errors: ['outOfRange /first'] },
  { operation: 'listReleases', input: {}, expect: { current: { adoptions: 0 } } },
]

const single: readonly Case[] = [
  { operation: 'readRule', input: { rule: 'lintel.bearing-length' }, expect: { rule: 'lintel.bearing-length', fact: 'head.support.bearing', resolved: null } },
  { operation: 'readRule', input: { rule: 'lintel.bearing-length', ...city }, expect: { resolved: { jurisdiction: city.jurisdiction, asOf: city.asOf, inForce: true } } },
  { operation: 'readRule', input: { rule: 'lintel.bearing-length', edition: 'irc-2012', asOf: '2014-06-01' }, expect: { resolved: { jurisdiction: null, asOf: '2014-06-01', inForce: true } } },
  { operation: 'readRule', input: { rule: 'lintel.no-such-rule' }, expect: 'notFound', errors: ['notFound '] },
  { operation: 'readRule', input: { rule: 'lintel.bearing-length', publication: 'irc' }, expect: 'placeMissing', errors: ['placeMissing /jurisdiction'] },
  { operation: 'readRule', input: { rule: 'lintel.bearing-length', ...city }, catalog: 'amendedTwice', expect: 'catalogFault', errors: ['catalogFault /jurisdiction'] },
  { operation: 'readJurisdiction', input: { jurisdiction: city.jurisdiction }, expect: { jurisdiction: city.jurisdiction } },
  { operation: 'readJurisdiction', input: { jurisdiction: 'a/b c?d' }, expect: 'notFound', errors: ['notFound '] },
  { operation: 'readForm', input: { ...city, kind: 'window', holdPoint: 'headFlashing' }, expect: { title: 'Head flashing complete: window', holdPoint: 'headFlashing', schema: { $schema: 'https://json-schema.org/draft/2020-12/schema', type: 'object' } } },
  { operation: 'readForm', input: { edition: 'irc-2021', kind: 'door', holdPoint: 'inService', lengthUnit: 'mm' }, expect: { title: 'First heavy rain, yearly walk or a report of a leak: door', schema: { 'x-lengthUnit': 'mm' } } },
  { operation: 'readForm', input: { kind: 'door', holdPoint: 'handover' }, expect: 'placeMissing', errors: ['placeMissing /jurisdiction'] },
  { operation: 'readForm', input: { jurisdiction: 'nowhere', kind: 'door', holdPoint: 'handover' }, expect: 'unknownJurisdiction', errors: ['unknownJurisdiction /jurisdiction'] },
  { operation: 'readPublication', input: { publication: 'irc' }, expect: { publication: 'irc' } },
  { operation: 'readPublication', input: { publication: 'x'.repeat(201) }, expect: 'invalidInput', errors: ['outOfRange /publication'] },
]

/** A lintel sized by itself: what an estimator knows, and nothing of the wall. */
const lintelAlone = [
  { from: 'opening.width', value: '6 ft' }, { from: 'head.support.kind', value: 'looseSteelAngle' }, { from: 'head.support.bearing', value: ['4 in', '102 mm'] },
  { from: 'quantity lintel.arching', value: 'arches' }, { from: 'wall.loadAbove', value: false },
] as const

const computations: readonly Case[] = [
  { operation: 'listQuantities', input: { part: 'sill', first: 2 }, expect: { items: [{ part: 'sill' }, { part: 'sill' }] } },
  { operation: 'listQuantities', input: { after: 'no-cursor' }, expect: 'invalidInput', errors: ['notAllowed /after'] },
  { operation: 'readQuantity', input: { quantity: 'lintel.length' }, expect: { quantity: 'lintel.length', unit: 'nm', asks: [{ from: 'head.support.kind', kind: 'fact' }, { from: 'opening.width', kind: 'fact' }, { from: 'rule lintel.bearing-length', kind: 'rule' }] } },
  { operation: 'readQuantity', input: { quantity: 'lintel.no-such-quantity' }, expect: 'notFound', errors: ['notFound '] },
  { operation: 'computeQuantities', input: { quantities: ['lintel.effective-span', 'lintel.length'], given: lintelAlone, ...city }, expect: { jurisdiction: city.jurisdiction, asOf: city.asOf, quantities: [{ id: 'lintel.length', status: 'computed' }, { id: 'lintel.effective-span', status: 'computed' }] } },
  { operation: 'computeQuantities', input: { quantities: ['lintel.length'], given: lintelAlone }, expect: { jurisdiction: null, asOf: null, quantities: [{ status: 'notDetermined', missing: ['rule lintel.bearing-length'] }] } },
  { operation: 'computeQuantities', input: { quantities: ['sill.drop'], lengthUnit: 'mm', opening: { sill: { slope: '15 deg' } }, given: [{ from: 'sill.depth', value: 100 }] }, expect: { quantities: [{ id: 'sill.drop', status: 'computed' }] } },
  { operation: 'computeQuantities', input: { quantities: ['lintel.length'], opening: { head: { support: { kind: 'shelfAngle' } } } }, expect: { quantities: [{ status: 'notApplicable', why: 'It does not apply where head.support.kind is shelfAngle.' }] } },
  {
    operation: 'computeQuantities',
    input: {
      quantities: ['lintel.lenght'], opening: { wall: { airSpace: 'two' } },
      given: [
        { from: 'opening.widht', value: '6 ft' }, { from: 'opening.width', value: '6' }, { from: 'rule lintel.bearing-length', value: '4 psf' }, { from: 'parameter steel.elastic-modulus', value: 'stiff' },
        { from: 'quantity lintel.arching', value: 'yes' }, { from: 'head.support.bearing', value: ['4 in', 'x'] }, { from: 'opening.height', value: '5 ft' }, { from: 'opening.height', value: '6 ft' }, { from: 'table steel.angle-sections', value: 1 },
      ],
    },
    expect: 'invalidInput',
    errors: [
      'notFound /quantities/0', 'unreadable /opening/wall/airSpace', 'unknownInput /given/0/from', 'unitMissing /given/1/value', 'unitMismatch /given/2/value', 'unreadable /given/3/value',
      'notAllowed /given/4/value', 'unreadable /given/5/value/1', 'saidTwice /given/7/from', 'unknownInput /given/8/from',
    ],
  },
  { operation: 'computeQuantities', input: { quantities: ['lintel.length'], jurisdiction: 'nowhere' }, expect: 'unknownJurisdiction', errors: ['unknownJurisdiction /jurisdiction'] },
  { operation: 'computeQuantities', input: { quantities: [] }, expect: 'invalidInput', errors: ['outOfRange /quantities'] },
]

const jfkLayout = {
  time: { year: 'year', month: 'month', day: 'day', hour: 'hour' }, rain: { column: 'precip', unit: 'in' }, wind: { column: 'wind_speed', unit: 'mph' }, direction: { column: 'wind_dir' },
  temperature: { column: 'temp', unit: '°F' }, station: { column: 'origin', is: 'JFK' }, dryHoursLeftOut: true,
}

const schedules: readonly Case[] = [
  {
    operation: 'takeOff',
    input: { ...city, openings: [{ count: 4, opening: parse(readFileSync(join(root, 'tests/fixtures/openings/baseline-window.yaml'), 'utf8')) as object }, { opening: { reference: 'D-1', opening: { kind: 'door', width: '38 in', height: '84 in' } } }] },
    expect: { jurisdiction: city.jurisdiction, openings: 5, lintels: [{ section: 'L5x3-1/2x5/16', chosen: 'described', count: 4, length: { inchPound: '60 in' } }] },
  },
  {
    operation: 'takeOff', input: { ...city, openings: [{ opening: { opening: window } }, { count: 2, opening: { opening: { ...window, width: 48 }, sill: { slope: 'steep' } } }] },
    expect: 'invalidInput', errors: ['unitMissing /openings/1/opening/opening/width', 'unreadable /openings/1/opening/sill/slope'],
  },
  { operation: 'takeOff', input: { openings: [{ opening: { opening: window } }] }, expect: 'placeMissing', errors: ['placeMissing /jurisdiction'] },
  // Worked by hand: 60 + 40 + 19 7/8 in and two saw cuts of 1/16 in fill a bar of 120 in exactly
  {
    operation: 'planCuts', input: { lengthUnit: 'in', stockLengths: [120, '240 in'], kerf: '1/16', pieces: [{ reference: 'a', length: 60, count: 1 }, { reference: 'b', length: '40 in', count: 1 }, { reference: 'c', length: '19 7/8', count: 1 }] },
    expect: { plan: { optimal: true, stock: { inchPound: '120 in' }, offcuts: { nanometres: 0 }, bound: { si: '3048 mm' } }, tooLong: [] },
  },
  { operation: 'planCuts', input: { stockLengths: ['3000 mm'], pieces: [{ reference: 'a', length: '3000.5 mm', count: 2 }] }, expect: { plan: null, tooLong: [{ reference: 'a', longest: { si: '3000 mm' } }] } },
  {
    operation: 'planCuts', input: { stockLengths: ['0 mm'], pieces: [{ reference: 'a', length: 'long', count: 20000 - 9_999 }, { reference: 'b', length: '10', count: 10_000 }] },
    expect: 'invalidInput', errors: ['outOfRange /pieces/0/count'],
  },
  { operation: 'planCuts', input: { stockLengths: ['0 mm'], kerf: '-1 mm', pieces: [{ reference: 'a', length: 'long', count: 1 }, { reference: 'b', length: '10', count: 1 }] }, expect: 'invalidInput', errors: ['unreadable /pieces/0/length', 'unitMissing /pieces/1/length', 'outOfRange /stockLengths/0', 'notBelievable /kerf'] },
  { operation: 'analyzeDrivingRain', input: { text: readFileSync(join(root, 'tests/fixtures/rain/jfk-2013-storms.csv'), 'utf8'), format: 'table', layout: jfkLayout, azimuths: [90, 270] }, expect: { file: { ofOtherStations: 0 } } },
  { operation: 'analyzeDrivingRain', input: { text: readFileSync(join(root, 'tests/fixtures/rain/miami-tmy3.epw'), 'utf8'), format: 'energyPlus' }, expect: { status: 'notDetermined', rain: null, walls: [] } },
  { operation: 'analyzeDrivingRain', input: { text: 'a', format: 'table' }, expect: 'invalidInput', errors: ['missingKey /layout'] },
  { operation: 'analyzeDrivingRain', input: { text: 'a', format: 'table', layout: { ...jfkLayout, time: { year: 'year' } } }, expect: 'invalidInput', errors: ['notAllowed /layout/time'] },
]

export const cases: readonly Case[] = [...evaluations, ...lists, ...single, ...computations, ...schedules]

export function nameOf({ operation, input, expect, catalog }: Case, index: number): string {
  const shown = 'opening' in input ? { ...input, opening: (input['opening'] as { reference?: string }).reference?.slice(0, 40) ?? '…' } : input
  return `${index + 1}. ${operation} ${JSON.stringify(shown).slice(0, 120)}${catalog ? ` with ${catalog}` : ''}: ${typeof expect === 'string' ? expect : 'answers'}`
}

function documentsIn<T>(folder: string): readonly T[] {
  return readdirSync(join(root, folder)).toSorted().map((file) => parse(readFileSync(join(root, folder, file), 'utf8')) as T)
}
