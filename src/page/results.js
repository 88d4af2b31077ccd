import { element, mark } from './element.js'
import { idOf } from './fields.js'

/** What outcomes and verdicts are called, in the words of the service. */
let words = { outcomes: {}, verdicts: {}, meanings: {} }
const mostToMeasure = 8

export function useWords(given) {
  words = given
}

export function showVerdict({ summary, subject }) {
  const { verdict } = summary
  const counts = `${summary.pass} met, ${summary.fail} not met (${summary.mandatoryFailures} mandatory), ${summary.notDetermined} not determined (${summary.mandatoryNotDetermined} mandatory), ${summary.notApplicable} do not apply.`
  document.getElementById('verdict').replaceChildren(element('strong', { class: 'word' }, mark(verdict === 'incomplete' ? 'notDetermined' : verdict), ' ', subject.reference ? `${subject.reference}: ` : '', words.verdicts[verdict]), ' ', element('span', {}, words.meanings[verdict]), ' ', element('span', { class: 'counts' }, counts))
}

export function showResults({ findings, nextToMeasure, subject, notice }, stages) {
  const of = (outcome) => findings.filter((finding) => finding.outcome === outcome).toSorted((a, b) => rank(a) - rank(b))
  const misses = of('fail')
  replace('misses', misses.length === 0 ? [element('p', {}, 'Nothing by what is known.')] : misses.map((finding) => missCard(finding, subject.unitSystem)))
  replace('next', nextToMeasure.length === 0 ? [element('p', {}, 'Nothing is open that a look could settle.')] : [element('ol', {}, nextToMeasure.slice(0, mostToMeasure).map((fact) => toMeasure(fact, stages))), nextToMeasure.length > mostToMeasure && element('p', {}, `And ${nextToMeasure.length - mostToMeasure} more.`)])
  replace('others', ['notDetermined', 'pass', 'notApplicable'].map((outcome) => group(outcome, of(outcome), subject.unitSystem)))
  document.getElementById('notice').textContent = notice
}

/** Opens again what was open: a person who reads keeps the place. */
function replace(id, children) {
  const place = document.getElementById(id)
  const open = [...place.querySelectorAll('details[open]')].map(({ dataset }) => dataset.key)
  place.replaceChildren(...children.filter(Boolean))
  for (const details of place.querySelectorAll('details')) details.open = open.includes(details.dataset.key)
}

function rank({ force }) {
  return ['mandatory', 'recommended', 'informative'].indexOf(force)
}

function missCard(finding, unitSystem) {
  const { title, statement, fact, force, member, measured, required, margin, remedy, cautions, rule, evidence } = finding
  return element('article', { class: 'miss', 'data-rule': rule },
    element('h3', {}, mark('fail'), ` ${words.outcomes.fail}: ${title}${member === null ? '' : `, ${member} end`} `, element('span', { class: `force ${force}` }, force)),
    element('p', {}, statement),
    fact !== null && element('p', {}, toField(fact, 'Change what is known of it')),
    element('p', { class: 'figures' }, [measured && `Found ${measured.text}`, `required ${required.text}`, margin && `off by ${lead(margin, unitSystem).replace(/^-/, '')}`].filter(Boolean).join('; '), '.'),
    element('p', { class: 'aside' }, source(finding), evidence === 'memory' && element('strong', {}, '; from memory')),
    element('details', { 'data-key': rule }, element('summary', {}, 'Remedy and cautions'),
      remedy && element('p', {}, element('strong', {}, 'Before cover-up: '), remedy.beforeCoverUp), remedy && element('p', {}, element('strong', {}, 'After: '), remedy.afterCoverUp),
      cautions.map((caution) => element('p', { class: 'caution' }, mark('attention'), ' ', caution))))
}

function source({ rule, chain }) {
  return `${rule}: ${chain.map(({ action, publication, edition, locator, document: instrument, layer }) => (action === 'published' ? [publication, edition, locator].filter(Boolean).join(' ') : `${action} ${instrument ?? layer}`)).join(' › ')}`
}

function lead({ inchPound, si }, unitSystem) {
  return unitSystem === 'si' ? si : inchPound
}

function toMeasure({ fact, title, decides, hiddenBy }, stages) {
  return element('li', {}, toField(fact, title), ` settles ${decides.length} ${decides.length === 1 ? 'rule' : 'rules'}${hiddenBy === null ? '' : `; hidden by: ${stages.get(hiddenBy) ?? hiddenBy}`}`)
}

function toField(fact, title) {
  const go = element('button', { type: 'button', class: 'link' }, title)
  go.addEventListener('click', () => goTo(fact))
  return go
}

function goTo(fact) {
  const field = document.getElementById(idOf(fact)) ?? document.getElementById(`${idOf(fact)}-left`)
  field?.closest('details')?.setAttribute('open', '')
  field?.focus()
}

function group(outcome, findings, unitSystem) {
  const told = ({ measured, required, margin, nextStep }) => (outcome === 'pass' ? `found ${measured?.text ?? '–'}, required ${required.text}${margin === null ? '' : `, spare ${lead(margin, unitSystem)}`}` : outcome === 'notDetermined' ? nextStep : '')
  return findings.length > 0 && element('details', { 'data-key': outcome }, element('summary', {}, mark(outcome), ` ${words.outcomes[outcome]}: ${findings.length}`),
    element('ul', {}, findings.map((finding) => element('li', { 'data-rule': finding.rule }, element('strong', {}, finding.title), ` (${finding.force}) `, told(finding), element('span', { class: 'aside' }, source(finding), finding.evidence === 'memory' && element('strong', {}, '; from memory'))))))
}
