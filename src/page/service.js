// Asks the service. A token is kept here and nowhere else.
let token = ''

export function useToken(given) {
  token = given
}

export function hasToken() {
  return token !== ''
}

/** What the service refused, with every single error by JSON Pointer. */
export class Refusal extends Error {
  constructor({ status, title, detail, errors }, seconds) {
    super(detail ?? title)
    this.status = status
    this.errors = errors ?? []
    /** When to come again, where the service says so. */
    this.seconds = seconds
  }
}

export async function get(path) {
  return (await answered(path, {})).json()
}

export async function post(path, body, signal) {
  return answered(path, { method: 'POST', body: JSON.stringify(body), signal, headers: { 'content-type': 'application/json' } })
}

/** Every item of a list that is handed out page by page. */
export async function all(path) {
  const items = []
  let after = null
  do {
    const query = after === null ? '' : `&after=${encodeURIComponent(after)}`
    const page = await get(`${path}?first=200${query}`)
    items.push(...page.items)
    after = page.nextCursor
  } while (after)
  return items
}

async function answered(path, { headers = {}, ...more }) {
  const response = await fetch(path, { ...more, headers: { ...headers, ...(token === '' ? {} : { authorization: `Bearer ${token}` }) } })
  if (response.ok) return response
  const problem = await response.json().catch(() => ({ title: `The service answered ${response.status}.` }))
  throw new Refusal({ ...problem, status: response.status }, Number(response.headers.get('retry-after')) || undefined)
}
