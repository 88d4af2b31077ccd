/** The request that the API reference shows. The same one is run by a test. */
export const evaluationExample = {
  jurisdiction: 'us-xa-101-2400000',
  asOf: '2026-03-01',
  opening: {
    reference: 'W-104',
    basis: 'asBuilt',
    lengthUnit: 'in',
    opening: { kind: 'window', width: '48', height: '60', headShape: 'flat' },
    head: {
      support: { kind: 'looseSteelAngle', section: 'L5x3-1/2x5/16', bearing: ['4', '3 1/2'] },
      flashing: { present: true, extensionPastJamb: ['8', '8'], endDamHeight: ['2', '0'], upstand: '8' },
      weeps: { kind: 'openHeadJoint', spacing: '24', onFlashing: true },
    },
  },
} as const

const inOnePlace = { at: '2026-03-02T09:00:00Z', by: 'inspector' }
const schedule = 'Mark,Type,Width,Height\nW-201,DH,48,60\nW-202,DH,36,48\n'
const amendment = {
  amendment: 'us-xa-101/ord-2026-40', jurisdiction: 'us-xa-101', amends: { publication: 'irc', editions: ['2021'] },
  instrument: { kind: 'ordinance', number: '2026-40', section: '9-4', adopted: '2026-02-10', href: 'https://law.example/us-xa-101/ord-2026-40' },
  effectiveFrom: '2026-10-01', effectiveUntil: null, application: 'permitApplicationDate', supersedes: [],
  modifications: [{
    modification: 'm1', kind: 'substitution', target: { rule: 'tie.embedment', part: 'limit' }, old: { inchPound: '1 1/2 [in_i]' },
    new: { governing: 'inchPound', inchPound: '2 [in_i]', si: '51 mm', locator: '9-4(b)' },
  }],
  examples: [
    { name: 'the day before', rule: 'tie.embedment', asOf: '2026-09-30', facts: { 'ties.embedment': '1 3/4 in' }, outcome: 'pass', margin: '6.35 mm' },
    { name: 'from the day on', rule: 'tie.embedment', asOf: '2026-10-01', facts: { 'ties.embedment': '1 3/4 in' }, outcome: 'fail', margin: '-6.35 mm' },
  ],
} as const

const house = { title: '12 Quarry Walk', jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' } as const

/** For each operation that takes a body, one that it takes. All of them are run by a test, in an order in which each finds what it builds on. */
export const examples: Readonly<Record<string, object>> = {
  evaluateOpening: evaluationExample,
  evaluateBatch: {
    jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01',
    openings: [{ key: '1', opening: evaluationExample.opening }, { key: '2', opening: { reference: 'W-105', lengthUnit: 'mm', opening: { kind: 'window', width: '1200', height: '1500' } } }],
  },
  reportOpening: evaluationExample,
  drawOpening: { ...evaluationExample, kind: 'elevation' },
  computeQuantities: {
    quantities: ['lintel.length', 'lintel.effective-span'], edition: 'irc-2021',
    given: [{ from: 'opening.width', value: '6 ft' }, { from: 'head.support.kind', value: 'looseSteelAngle' }, { from: 'head.support.bearing', value: '6 in' }],
  },
  takeOff: { jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01', openings: [{ count: 4, opening: evaluationExample.opening }] },
  planCuts: { stockLengths: ['10 ft'], pieces: [{ reference: 'W-104', length: '5 ft 4 in', count: 4 }] },
  analyzeDrivingRain: {
    format: 'table', azimuths: [180],
    text: 'time,rain,wind,from\n2013-06-10T13:00,0.4,5.1,180\n2013-06-10T14:00,1.2,6.3,190\n',
    layout: { time: { column: 'time' }, rain: { column: 'rain', unit: 'mm' }, wind: { column: 'wind', unit: 'm/s' }, direction: { column: 'from' } },
  },
  createAmendmentDraft: amendment,
  changeAmendmentDraft: { ...amendment, instrument: { ...amendment.instrument, section: '9-5' } },
  createProject: { id: '0199a000-0000-7000-8000-000000000001', ...house },
  changeProject: { ...house, title: '12 Quarry Walk, east wing' },
  postEntries: {
    entries: [
      { id: '0199a000-0000-7000-8000-000000000002', opening: 'W-104', at: '2026-03-01T15:00:00Z', by: 'design-office', design: { description: evaluationExample.opening } },
      { id: '0199a000-0000-7000-8000-000000000003', opening: 'W-104', ...inOnePlace, observation: { fact: 'head.support.bearing', member: 'right', value: '3 1/2 in', method: 'examine', holdPoint: 'lintelSet' } },
    ],
  },
  importSchedule: {
    import: '0199a000-0000-7000-8000-000000000004', at: '2026-03-02T10:00:00Z', by: 'design-office', lengthUnit: 'in', markColumn: 'Mark', csv: schedule,
    columns: [{ column: 'Type', fact: 'opening.kind', values: [{ cell: 'DH', value: 'window' }] }, { column: 'Width', fact: 'opening.width' }, { column: 'Height', fact: 'opening.height' }],
  },
  postFormAnswers: { id: '0199a000-0000-7000-8000-000000000005', ...inOnePlace, holdPoint: 'lintelSet', method: 'examine', answers: { head_support_bearing_left: '4 in' } },
  createWebhook: { target: 'https://hooks.example.com/openings', eventTypes: ['openingRecorded', 'holdPointSignedOff'], description: 'readiness board of the site office' },
  createToken: { title: 'form app of the inspectors', record: true, expiresAt: '2027-03-01T00:00:00Z' },
}
