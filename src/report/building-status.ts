import { html, said, type Markup } from './markup.ts'
import { mark, verdictMark } from './mark.ts'
import { holdPointTitle } from '../opening/hold-points.ts'
import type { OpeningShown, ReadinessShown, ReportedBuilding } from './reported-building.ts'
import { table, wideTable } from './table.ts'

/** How every opening stands at every hold point, and every hold point over all openings. */
export function buildingStatus({ holdPoints, status, notEvaluated }: ReportedBuilding): Markup {
  const numbered = holdPoints.filter(({ ready, notReady }) => ready + notReady > 0)
  return html`<section aria-labelledby="status"><h2 id="status">Status</h2>
${table('Hold points, in the order of the work', holdPoints, [
    ['Hold point', ({ title, holdPoint }) => { const number = numbered.findIndex((one) => one.holdPoint === holdPoint); return number === -1 ? title : `${number + 1}. ${title}` }],
    ['Openings ready', ({ ready, notReady }) => (ready + notReady === 0 ? 'nothing mandatory' : ready)], ['Not ready', ({ notReady }) => notReady], ['Signed off', ({ signedOff }) => signedOff],
    ['Met', ({ pass }) => pass], ['Not met', ({ fail }) => fail], ['Not determined', ({ notDetermined }) => notDetermined],
  ], 'counts')}
${wideTable('Openings at the numbered hold points', status, [
    ['Opening', ({ opening, reference }: OpeningShown) => said(reference ?? opening)],
    ['Verdict', ({ verdict }: OpeningShown) => verdictMark(verdict)],
    ...numbered.map(({ holdPoint }, index) => [String(index + 1), ({ readiness }: OpeningShown) => standing(readiness.find((one) => one.holdPoint === holdPoint))] as const),
  ])}
${table('Openings as the work stands', status, [
    ['Opening', ({ opening, reference }) => said(reference ?? opening)],
    ['Work stands at', ({ holdPoint }) => (holdPoint === null ? 'nothing seen yet' : holdPointTitle(holdPoint))],
    ['Mandatory not met', ({ mandatoryFailures }) => mandatoryFailures], ['Mandatory not determined', ({ mandatoryNotDetermined }) => mandatoryNotDetermined],
  ], 'counts')}
${notEvaluated.length > 0 && table('Not described far enough to be evaluated; in no other count', notEvaluated, [
    ['Opening', ({ opening, reference }) => said(reference ?? opening)],
    ['Why', ({ problems }) => problems.map(({ pointer, detail }) => `${pointer.slice(1).replaceAll('/', '.')} ${detail}`).join('; ')],
  ])}</section>`
}

function standing(readiness: ReadinessShown | undefined): Markup {
  if (!readiness) return html`–`
  const { ready, signedOff, notMet } = readiness
  const word = notMet.length > 0 ? html`${mark('fail')} not met` : ready ? html`${mark('pass')} ready` : html`${mark('notDetermined')} open`
  return html`${word}${signedOff && html`, signed`}`
}
