import { endOf } from '../evaluation/words.ts'
import type { UnitSystem } from '../units/dimension.ts'
import { buildingStatus } from './building-status.ts'
import { buildingTakeOff } from './building-take-off.ts'
import { cautionList, cautionReferences, cautionsOf, type Cautions } from './cautions.ts'
import { htmlDocument } from './document.ts'
import { html, said, type Markup, type Part } from './markup.ts'
import { mark, outcomeMark, verdictMark } from './mark.ts'
import type { FailureShown, OpeningShown, ReportedBuilding, WalkShown } from './reported-building.ts'
import { reproduction } from './reproduce.ts'
import { list, table } from './table.ts'
import { counted, sourceLine, unsigned } from './words.ts'

/** What the report on a building is made of. */
export interface BuildingReport {
  readonly building: ReportedBuilding
  /** When the record was read. */
  readonly at: string
  readonly publicUrl: string
  /** The path under which the same record is read as data. */
  readonly path: string
  /** What rules are called, by their ids. */
  readonly titleOf: (rule: string) => string
}

/** The report on a building, from its record. The same record at the same moment gives the same report. */
export function buildingPage(report: BuildingReport): string {
  const { building, at, publicUrl, path } = report
  const cautions = cautionsOf(building.failures)
  return htmlDocument({ title: `${building.title}: report on a building, ${at.slice(0, 10)}` }, html`<header><p class="kind">Report on a building with anchored brick veneer</p><h1>${said(building.title)}</h1>${placeOf(report)}</header>
<main>
${summaryOf(building)}
<p class="notice"><strong>Notice.</strong> ${building.notice}</p>
${cautionList(cautions)}
${failureSection(building, cautions)}
${buildingStatus(building)}
${walkSection(building.walks)}
${buildingTakeOff(building, leadingOf(building.status))}
${openingsInShort(report)}
${reproduction({ publicUrl, path, request: null }, { catalog: building.catalog })}
</main>`)
}

/** The system in which most openings were described leads where they are taken together. */
function leadingOf(openings: ReportedBuilding['status']): UnitSystem {
  return openings.filter(({ unitSystem }) => unitSystem === 'si').length * 2 > openings.length ? 'si' : 'inchPound'
}

const readings: Readonly<Record<string, string>> = { asDesigned: 'as designed', asBuilt: 'as seen', asBuiltOverDesign: 'as seen, and as drawn where nobody has looked yet' }

function placeOf({ building, at }: BuildingReport): Markup {
  const { jurisdiction, asOf, editions, basis, catalog, project } = building
  return list([['Place', jurisdiction ?? 'the published texts alone'], ['Permit applied for', asOf], ['Code', editions.join(' with ') || 'none adopted'], ['Catalog', catalog.release], ['Openings taken', readings[basis] ?? basis], ['Record read at', at], ['Project', html`<code>${project}</code>`]])
}

function summaryOf({ openings, evaluated, verdicts }: ReportedBuilding): Markup {
  const count = (verdict: 'fail' | 'incomplete' | 'attention' | 'pass') => html`<li>${verdictMark(verdict)}: ${counted(verdicts[verdict], 'opening')}</li>`
  return html`<section aria-labelledby="summary"><h2 id="summary">Summary</h2><p>${evaluated} of ${counted(openings, 'opening')} could be evaluated${verdicts.notEvaluated > 0 && `; ${verdicts.notEvaluated} could not and ${verdicts.notEvaluated === 1 ? 'is' : 'are'} in no other count`}.</p><ul class="tally">${(['fail', 'incomplete', 'attention', 'pass'] as const).map(count)}</ul></section>`
}

/** Each miss speaks in the system of its own opening. */
function failureSection({ failures, status }: ReportedBuilding, cautions: Cautions): Part {
  if (failures.length === 0) return html`<section aria-labelledby="misses"><h2 id="misses">Mandatory rules not met</h2><p>None by what is known.</p></section>`
  const systems = new Map(status.map(({ opening, unitSystem }) => [opening, unitSystem]))
  return html`<section aria-labelledby="misses"><h2 id="misses">Mandatory rules not met</h2>${failures.map((failure) => failureCard(failure, cautions, systems.get(failure.opening) ?? leadingOf(status)))}</section>`
}

function failureCard(failure: FailureShown, cautions: Cautions, unitSystem: UnitSystem): Markup {
  const { opening, reference, rule, title, member, measured, required, margin, remedy, cautions: own, withinResolution, waived, covered, seen } = failure
  const due = covered === true ? 'after cover-up' : 'before cover-up'
  return html`<article class="finding miss"><h3>${said(reference ?? opening)}: ${title}${endOf(member)} ${outcomeMark('fail')}${waived && html` <span class="force">waived</span>`}</h3>
${list([['Found', measured?.text ?? null], ['Required', required.text], ['Off by', margin && unsigned(margin, unitSystem)], ['Seen', seen && html`${seen.at} by ${said(seen.by)}`]], 'figures')}
${withinResolution && html`<p>Closer to the limit than the tape can tell.</p>`}
${remedy && list([[`Remedy ${due}`, covered === true ? remedy.afterCoverUp : remedy.beforeCoverUp]], 'remedies')}
${cautionReferences(own, cautions)}
<p class="origin"><code>${rule}</code> ${sourceLine(failure, null)}</p></article>`
}

/** What to look at on each walk: the openings with the most last chances first. */
function walkSection(walks: readonly WalkShown[]): Part {
  if (walks.length === 0) return null
  return html`<section aria-labelledby="walks"><h2 id="walks">What to measure next</h2><p>${mark('attention')} marks the last chance: the next operation hides it.</p>${walks.map(({ holdPoint, title, openings }) => html`<section aria-labelledby="walk-${holdPoint}"><h3 id="walk-${holdPoint}">${title}</h3>${table(`To look at: ${counted(openings.length, 'opening')}`, openings, [
    ['Opening', ({ opening, reference }) => said(reference ?? opening)],
    ['Facts', ({ facts }) => html`<ul class="facts">${facts.map((fact) => html`<li>${fact.lastChance && html`${mark('attention')} last chance: `}${fact.title}${fact.mandatory && html` <span class="force mandatory">mandatory</span>`}</li>`)}</ul>`],
  ], 'walk')}</section>`)}</section>`
}

function openingsInShort({ building, publicUrl, titleOf }: BuildingReport): Markup {
  return html`<section aria-labelledby="openings"><h2 id="openings">The openings in short</h2>${building.status.map((one) => openingInShort(one, building, { publicUrl, titleOf }))}</section>`
}

function openingInShort(one: OpeningShown, { project, failures, basis }: ReportedBuilding, { publicUrl, titleOf }: Pick<BuildingReport, 'publicUrl' | 'titleOf'>): Markup {
  const misses = failures.filter(({ opening }) => opening === one.opening)
  const open = one.readiness.filter(({ ready }) => !ready)
  const address = `${publicUrl}/v1/projects/${encodeURIComponent(project)}/openings/${encodeURIComponent(one.opening)}/evaluation?basis=${basis}`
  return html`<article class="opening kept"><h3>${said(one.reference ?? one.opening)}: ${verdictMark(one.verdict)}</h3>
<p>${one.pass} met, ${one.fail} not met (${one.mandatoryFailures} mandatory), ${one.notDetermined} not determined (${one.mandatoryNotDetermined} mandatory), ${one.notApplicable} not applicable.</p>
${misses.length > 0 && html`<p>Not met: ${misses.map(({ title, member }) => `${title}${endOf(member)}`).join('; ')}.</p>`}
${one.noLongerInSight.length > 0 && html`<p>No longer in sight: ${one.noLongerInSight.map(titleOf).join('; ')}.</p>`}
${open.length > 0 && html`<p class="aside">Not decided: ${[...new Set(open.flatMap(({ undecided }) => undecided))].map(titleOf).join('; ') || 'nothing'}.</p>`}
<p class="origin"><a href="${address}">Its evaluation</a></p></article>`
}
