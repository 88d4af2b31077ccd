import { element } from './element.js'

const ends = ['left', 'right']

/** Fields for every fact that the service knows, by the stage of the work at which each is first seen. */
export function showFacts(into, facts, holdPoints) {
  for (const { id, title } of holdPoints) {
    const here = facts.filter(({ seenFrom }) => seenFrom === id)
    if (here.length > 0) into.append(element('details', { id: `stage-${id}` }, element('summary', {}, title, ' ', element('span', { class: 'count' })), here.map(fieldOf)))
  }
}

function fieldOf(fact) {
  const id = idOf(fact.fact)
  if (!fact.perEnd) return element('div', { class: 'field' }, element('label', { for: id }, fact.title), control(fact, id, `${id}-help ${id}-error`), help(fact, id), errorOf(id))
  return element('fieldset', { class: 'field ends' }, element('legend', {}, fact.title), help(fact, id),
    ends.map((end) => element('div', {}, element('label', { for: `${id}-${end}` }, end), control(fact, `${id}-${end}`, `${id}-help ${id}-${end}-error`), errorOf(`${id}-${end}`))))
}

function control({ fact, kind, choices, dimension, unit }, id, describedBy) {
  const shared = { id, 'data-fact': fact, 'aria-describedby': describedBy }
  if (kind === 'boolean') return element('select', { ...shared, 'data-kind': kind }, option('', 'not known'), option('true', 'yes'), option('false', 'no'))
  if (kind === 'choice') return element('select', { ...shared, 'data-kind': kind }, option('', 'not known'), choices.map((choice) => option(choice, words(choice))))
  return element('input', { ...shared, 'data-kind': dimension !== null && unit === '1' ? 'number' : 'text', spellcheck: 'false' })
}

function help({ help: text, least, greatest }, id) {
  const bounds = least === null || greatest === null ? '' : ` Between ${least} and ${greatest}.`
  return element('p', { class: 'help', id: `${id}-help` }, `${text}${bounds}`)
}

function errorOf(id) {
  return element('p', { class: 'error', id: `${id}-error` })
}

function option(value, text) {
  return element('option', { value }, text)
}

/** "looseSteelAngle" as people write it. */
export function words(choice) {
  return choice.replace(/([a-z])([A-Z0-9])/g, '$1 $2').toLowerCase()
}

export function idOf(fact) {
  return `fact-${fact.replaceAll('.', '-')}`
}

/** Puts the values of a description into the fields; what it does not say is not known. Opens the stages that say anything. */
export function fill(description, facts) {
  for (const fact of facts) {
    const value = fact.fact.split('.').reduce((inner, key) => inner?.[key], description)
    if (fact.perEnd) ends.forEach((end, index) => put(`${idOf(fact.fact)}-${end}`, Array.isArray(value) ? value[index] : value))
    else put(idOf(fact.fact), value)
  }
  for (const stage of document.querySelectorAll('#facts details')) stage.open = false
  countKnown()
  const first = [...document.querySelectorAll('#facts details')].filter((stage) => stage.dataset.known !== '0')
  for (const stage of first.slice(0, 2)) stage.open = true
}

function put(id, value) {
  const text = value === null || value === undefined ? '' : typeof value === 'object' ? `${value.value} ${value.unit}` : String(value)
  document.getElementById(id).value = text
}

/** Says at every stage how many of its facts are known. */
export function countKnown() {
  for (const stage of document.querySelectorAll('#facts details')) {
    const controls = [...stage.querySelectorAll('[data-fact]')]
    const known = new Set(controls.filter(({ value }) => value.trim() !== '').map(({ dataset }) => dataset.fact)).size
    stage.dataset.known = String(known)
    stage.querySelector('.count').textContent = `${known} of ${new Set(controls.map(({ dataset }) => dataset.fact)).size} known`
  }
}

/** The description that the fields hold. An empty field says nothing. */
export function described(facts) {
  const description = {}
  for (const { fact, perEnd } of facts) {
    const value = perEnd ? ofEnds(fact) : valueOf(document.getElementById(idOf(fact)))
    if (value === null) continue
    const path = fact.split('.')
    const last = path.pop()
    path.reduce((inner, key) => (inner[key] ??= {}), description)[last] = value
  }
  return description
}

function ofEnds(fact) {
  const values = ends.map((end) => valueOf(document.getElementById(`${idOf(fact)}-${end}`)))
  return values.every((value) => value === null) ? null : values
}

function valueOf({ value, dataset: { kind } }) {
  const text = value.trim()
  if (text === '') return null
  if (kind === 'boolean') return text === 'true'
  return kind === 'number' && /^-?\d+(\.\d+)?$/.test(text) ? Number(text) : text
}
