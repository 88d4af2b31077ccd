import { element, useShapes } from './element.js'
import { clearErrors, showErrors } from './errors.js'
import { countKnown, described, fill, showFacts } from './fields.js'
import { showResults, showVerdict, useWords } from './results.js'
import { all, get, hasToken, post, Refusal, useToken } from './service.js'

const pause = 400
const at = (id) => document.getElementById(id)
let facts = []
let stages = new Map()
let request = null
let running = new AbortController()
let timer

at('token-form').addEventListener('submit', (event) => {
  event.preventDefault()
  useToken(at('token').value.trim())
  void begin()
})
at('opening-form').addEventListener('submit', (event) => event.preventDefault())
at('opening-form').addEventListener('input', ({ target }) => target.id === 'start' || later(pause))
at('start').addEventListener('change', () => start(Number(at('start').value)))
at('kind').addEventListener('change', () => void draw(running.signal))
at('copy').addEventListener('click', () => void copy())
at('report').addEventListener('click', () => void report())
void begin()

/** Reads from the service what may be said of an opening, then shows the first example. */
async function begin() {
  try {
    const [known, points, jurisdictions, { openings }, words] = await Promise.all([all('/v1/facts'), get('/v1/hold-points'), all('/v1/jurisdictions'), get('/page/openings.json'), get('/page/words.json')])
    facts = known
    useWords(words)
    useShapes(words.shapes)
    stages = new Map(points.items.map(({ id, title }) => [id, title]))
    at('facts').replaceChildren()
    showFacts(at('facts'), facts, points.items)
    at('jurisdiction').replaceChildren(...jurisdictions.map(({ jurisdiction, name }) => element('option', { value: jurisdiction }, `${name} (${jurisdiction})`)))
    at('holdPoint').replaceChildren(element('option', { value: '' }, 'not said'), ...points.items.map(({ id, title }) => element('option', { value: id }, title)))
    at('start').replaceChildren(...openings.map(({ title }, index) => element('option', { value: index }, title)))
    examples = openings
    at('token-form').hidden = true
    at('bench').hidden = false
    at('loading').hidden = true
    start(0)
  } catch (fault) {
    refuseToBegin(fault)
  }
}

let examples = []

function refuseToBegin(fault) {
  const closed = fault instanceof Refusal && (fault.status === 401 || fault.status === 403)
  at('token-form').hidden = !closed
  at('loading').hidden = false
  at('loading').textContent = closed ? (hasToken() ? `The token is not taken: ${fault.message}` : 'The service is not open for evaluation without a token.') : `The service cannot be read: ${fault.message}`
  if (closed) at('token').focus()
}

function start(index) {
  const { request: { jurisdiction = '', asOf, holdPoint = '', opening } } = examples[index]
  at('start').value = String(index)
  for (const [id, value] of Object.entries({ jurisdiction, asOf, holdPoint, reference: opening.reference ?? '', basis: opening.basis ?? 'asBuilt', lengthUnit: opening.lengthUnit ?? 'in', lengthResolution: opening.lengthResolution ?? '' })) at(id).value = value ?? ''
  fill(opening, facts)
  later(0)
}

/** Only the last of what is typed is asked for. */
function later(milliseconds) {
  clearTimeout(timer)
  running.abort()
  running = new AbortController()
  at('results').classList.add('stale')
  timer = setTimeout(() => void evaluate(running.signal), milliseconds)
}

function requestNow() {
  const said = (id, key = id) => (at(id).value.trim() === '' ? {} : { [key]: at(id).value.trim() })
  return { ...said('jurisdiction'), ...publicationOf(), ...said('asOf'), ...said('holdPoint'), opening: { ...said('reference'), ...said('basis'), ...said('lengthUnit'), ...said('lengthResolution'), ...described(facts) } }
}

/** Which code governs the building of the example, where several are adopted at its place. */
function publicationOf() {
  const { request: { publication, jurisdiction } } = examples[Number(at('start').value)]
  return publication && jurisdiction === at('jurisdiction').value ? { publication } : {}
}

async function evaluate(signal) {
  const asked = requestNow()
  try {
    const evaluation = await (await post('/v1/evaluations', asked, signal)).json()
    request = asked
    clearErrors()
    countKnown()
    at('trouble').textContent = ''
    showVerdict(evaluation)
    showResults(evaluation, stages)
    at('curl').textContent = curl()
    await draw(signal)
    if (!signal.aborted) at('results').classList.remove('stale')
  } catch (fault) {
    if (!signal.aborted) refuse(fault, signal)
  }
}

/** Errors stand at their fields; what was evaluated last stays, and what was typed stays. */
function refuse(fault, signal) {
  if (!(fault instanceof Refusal)) return void (at('trouble').textContent = 'The service does not answer. Nothing you typed is lost; it is tried again with the next change.')
  if ((fault.status === 429 || fault.status === 503) && fault.seconds) {
    at('trouble').textContent = `The service asks to wait ${fault.seconds} seconds; then this is asked again.`
    clearTimeout(timer)
    timer = setTimeout(() => void evaluate(signal), fault.seconds * 1000)
    return
  }
  if (fault.status === 401) return refuseToBegin(fault)
  const elsewhere = showErrors(fault.errors)
  const told = fault.errors.length === 0 ? [fault.message] : elsewhere.map(({ pointer, detail }) => `${pointer} ${detail}`)
  const marked = fault.errors.length - elsewhere.length
  at('trouble').textContent = [marked > 0 ? `${marked} ${marked === 1 ? 'entry' : 'entries'} cannot be read; the verdict is of what was read last.` : '', ...told].filter(Boolean).join(' ')
}

async function draw(signal) {
  if (request === null) return
  try {
    const svg = await (await post('/v1/drawings', { ...request, kind: at('kind').value }, signal)).text()
    const told = new DOMParser().parseFromString(svg, 'image/svg+xml')
    const image = element('img', { src: `data:image/svg+xml,${encodeURIComponent(svg)}`, alt: told.querySelector('title')?.textContent ?? 'Drawing' })
    const open = at('drawing').querySelector('details')?.open ?? false
    at('drawing').replaceChildren(image, element('figcaption', {}, element('details', { open }, element('summary', {}, 'The drawing in words'), element('p', {}, told.querySelector('desc')?.textContent ?? ''))))
  } catch (fault) {
    if (!signal.aborted) at('drawing').replaceChildren(element('p', {}, `No drawing: ${fault.message}`))
  }
}

function curl() {
  const authorization = hasToken() ? ' -H "authorization: Bearer $TOKEN"' : ''
  return `curl -s ${location.origin}/v1/evaluations -H 'content-type: application/json'${authorization} -d '${JSON.stringify(request, null, 1).replaceAll("'", String.raw`'\''`)}'`
}

async function copy() {
  try {
    await navigator.clipboard.writeText(at('curl').textContent)
    at('done').textContent = 'Copied.'
  } catch {
    getSelection().selectAllChildren(at('curl'))
    at('done').textContent = 'Selected; copy it with your keyboard.'
  }
}

/** Opens the report as a page of its own, from which it is printed. */
async function report() {
  at('done').textContent = ''
  try {
    const page = await (await post('/v1/reports', request)).blob()
    const address = URL.createObjectURL(page)
    if (open(address) === null) at('done').replaceChildren(element('a', { href: address, download: 'report.html' }, 'The report'))
  } catch (fault) {
    at('done').textContent = fault.message
  }
}
