import type { Building } from './building-schema.ts'
import type { SheetTable } from './csv-text.ts'
import { flashingTables } from './flashing-tables.ts'
import { inBoth, listed, tableOf, type Columns } from './sheet-columns.ts'

/** The tables of a building, one row for one thing. */
export const buildingTables = {
  openings: (view) =>
    tableOf<Building['status'][number] | Building['notEvaluated'][number]>([...view.status, ...view.notEvaluated].toSorted(byOpening), [
      ['Opening', ({ opening }) => opening],
      ['Reference', ({ reference }) => reference],
      ['Hold point reached', ({ holdPoint }) => holdPoint],
      ['Verdict', (one) => ('verdict' in one ? one.verdict : 'notEvaluated')],
      ['Mandatory not met', (one) => ('verdict' in one ? one.mandatoryFailures : null)],
      ['Mandatory not decided', (one) => ('verdict' in one ? one.mandatoryNotDetermined : null)],
      ['No longer in sight', (one) => ('verdict' in one ? listed(one.noLongerInSight) : null)],
      ['Met', (one) => ('verdict' in one ? one.pass : null)],
      ['Not met', (one) => ('verdict' in one ? one.fail : null)],
      ['Not decided', (one) => ('verdict' in one ? one.notDetermined : null)],
      ['Not applicable', (one) => ('verdict' in one ? one.notApplicable : null)],
      ['Why not evaluated', (one) => ('problems' in one ? one.problems.map(({ pointer, detail }) => `${pointer.slice(1).replaceAll('/', '.')} ${detail}`).join('; ') : null)],
    ]),
  parts: ({ parts }) => tableOf(parts, [['Part', ({ part }) => part], ...outcomeColumns]),
  holdPoints: ({ holdPoints }) =>
    tableOf(holdPoints, [
      ['Hold point', ({ holdPoint }) => holdPoint], ['Title', ({ title }) => title], ...outcomeColumns,
      ['Openings ready', ({ ready }) => ready], ['Openings not ready', ({ notReady }) => notReady], ['Openings signed off', ({ signedOff }) => signedOff],
    ]),
  readiness: ({ status }) =>
    tableOf(status.flatMap(({ opening, reference, readiness }) => readiness.map((one) => ({ opening, reference, ...one }))), [
      ['Opening', ({ opening }) => opening], ['Reference', ({ reference }) => reference], ['Hold point', ({ holdPoint }) => holdPoint],
      ['Ready', ({ ready }) => ready], ['Signed off', ({ signedOff }) => signedOff],
      ['Not decided', ({ undecided }) => listed(undecided)], ['Not met', ({ notMet }) => listed(notMet)], ['Waived', ({ waived }) => listed(waived)],
    ]),
  failures: ({ failures }) =>
    tableOf(failures, [
      ['Opening', ({ opening }) => opening], ['Reference', ({ reference }) => reference], ['Rule', ({ rule }) => rule], ['Title', ({ title }) => title],
      ['Part', ({ part }) => part], ['Hold point', ({ holdPoint }) => holdPoint], ['End', ({ member }) => member],
      ['Found', ({ measured }) => measured?.text ?? null], ['Required', ({ required }) => required.text],
      ...inBoth<Building['failures'][number]>('Short by', ({ margin }) => margin && { inchPound: shortOf(margin.inchPound), si: shortOf(margin.si) }),
      ['Tape cannot tell', ({ withinResolution }) => withinResolution], ['Waived', ({ waived }) => waived], ['Covered', ({ covered }) => covered],
      ['Remedy before cover-up', ({ remedy }) => remedy?.beforeCoverUp ?? null], ['Remedy after cover-up', ({ remedy }) => remedy?.afterCoverUp ?? null],
      ['Cautions', ({ cautions }) => listed(cautions)], ['Evidence', ({ evidence }) => evidence],
      ['Seen at', ({ seen }) => seen?.at ?? null], ['Seen by', ({ seen }) => seen?.by ?? null],
    ]),
  toMeasure: ({ walks }) =>
    tableOf(walks.flatMap(({ holdPoint, openings }) => openings.flatMap(({ opening, reference, facts }) => facts.map((fact) => ({ at: holdPoint, opening, reference, ...fact })))), [
      ['Hold point', ({ at }) => at], ['Opening', ({ opening }) => opening], ['Reference', ({ reference }) => reference],
      ['Last chance', ({ lastChance }) => lastChance], ['Mandatory', ({ mandatory }) => mandatory],
      ['Fact', ({ fact }) => fact], ['Title', ({ title }) => title], ['Hidden by', ({ hiddenBy }) => hiddenBy],
      ['Decides', ({ decides }) => listed(decides)], ['Needed with others for', ({ contributesTo }) => listed(contributesTo)],
    ]),
  lintels: ({ lintels }) =>
    tableOf(lintels, [
      ['Mark', ({ mark }) => mark], ['Count', ({ count }) => count],
      ...inBoth<Lintel>('Opening width', ({ width }) => width), ...inBoth<Lintel>('Opening height', ({ height }) => height),
      ['Support', ({ support }) => support], ['Section', ({ section }) => section], ['Section chosen', ({ chosen }) => chosen],
      ...inBoth<Lintel>('Least length', ({ length }) => length), ...inBoth<Lintel>('Bearing each end', ({ bearing }) => bearing),
      ...inBoth<Lintel>('Described length', ({ described }) => described.length),
      ...inBoth<Lintel>('Described bearing, left', ({ described }) => described.left), ...inBoth<Lintel>('Described bearing, right', ({ described }) => described.right),
      ...inBoth<Lintel>('Weight each', ({ weight }) => weight),
      ['Openings', ({ references }) => listed(references)],
    ]),
  ...flashingTables,
  weepsAndTies: ({ totals, openings, notEvaluated }) =>
    tableOf(totals, [
      ['Quantity', ({ quantity }) => quantity], ['Title', ({ title }) => title],
      ['Amount', (one) => (isKnown(one) ? readable(one).amount : null)], ['Unit of amount', (one) => readable(one).unit],
      ...inBoth<Total>('Total', (one) => (isKnown(one) ? one : null)),
      ['Openings counted', ({ counted }) => counted.length], ['Openings without', ({ notApplicable }) => notApplicable.length],
      ['Openings in all', () => openings], ['Not known at', ({ notKnown }) => listed(notKnown)], ['Not evaluated', () => listed(notEvaluated.map(({ opening }) => opening))],
    ]),
  gaps: ({ gaps }) =>
    tableOf(gaps, [
      ['Opening', ({ reference }) => reference], ['Quantity', ({ quantity }) => quantity], ['Title', ({ title }) => title],
      ['Missing', ({ missing }) => listed(missing)], ['Why', ({ why }) => why],
    ]),
} as const satisfies Record<string, (view: Building) => SheetTable>

type Lintel = Building['lintels'][number]
type Total = Building['totals'][number]

export type BuildingTable = keyof typeof buildingTables

const outcomeColumns: Columns<Building['parts'][number] | Building['holdPoints'][number]> = [
  ['Met', ({ pass }) => pass], ['Not met', ({ fail }) => fail], ['Not decided', ({ notDetermined }) => notDetermined], ['Not applicable', ({ notApplicable }) => notApplicable],
]

/** A miss is short by an amount; the sign would make a formula of it. */
function shortOf(margin: string): string {
  return margin.replace(/^-/, '')
}

function byOpening(a: { readonly opening: string }, b: { readonly opening: string }): number {
  return a.opening < b.opening ? -1 : 1
}

/** A sum over no opening at all is not nought while some opening ought to be in it. */
function isKnown({ counted, notKnown }: Total): boolean {
  return counted.length > 0 || notKnown.length === 0
}

/** Nobody adds up nanometers. */
function readable({ amount, unit }: Total): Pick<Total, 'amount' | 'unit'> {
  return unit === 'nm' ? { amount: amount / 1_000_000, unit: 'mm' } : { amount, unit }
}
