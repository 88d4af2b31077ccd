import axe from 'axe-core'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { jurisdictionService } from '../api/jurisdiction.ts'
import { openBrowser } from '../form/browser.ts'
import { buildingPage } from '../../src/report/building-page.ts'
import { evaluated, reported, reportedInFull } from '../report/reported.ts'
import { boundsIn, pagesOf, printed, withBounds } from './printed.ts'
import { smallBuilding } from './small-building.ts'

// The page to try the service, and the reports, in a real browser. Widths: WCAG 2.2, 1.4.10 (reflow) names 320 CSS pixels.
const open = await jurisdictionService()
const closed = await jurisdictionService({ doorkeeping: { anonymous: 'none' } })
const scarce = await jurisdictionService({ quota: { units: 30, window: 2 } })
const phone = { width: 360, height: 740 }
const desk = { width: 1440, height: 900 }

let chromium: { readonly browser: Browser; readonly close: () => Promise<void> }
let address: string

beforeAll(async () => {
  address = await open.app.listen({ port: 0, host: '127.0.0.1' })
  chromium = await openBrowser()
}, 120_000)
afterAll(() => chromium.close())

/** The page, with its first verdict and its first drawing. */
async function shown(viewport: { width: number; height: number }, more: { readonly colorScheme?: 'light' | 'dark' } = {}): Promise<Page> {
  const page = await chromium.browser.newPage({ viewport, ...more })
  await page.goto(address)
  await settled(page)
  return page
}

async function settled(page: Page): Promise<void> {
  await page.locator('#results:not(.stale)').waitFor()
  await page.locator('#drawing img').waitFor()
}

/** As axe-core finds it, by everything it knows of WCAG 2.2 A and AA and of good practice. */
async function violations(page: Page, runOnly: readonly string[] = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']): Promise<readonly string[]> {
  await page.evaluate(axe.source)
  const found = await page.evaluate((only) => (globalThis as unknown as { axe: { run: (options: object) => Promise<axe.AxeResults> } }).axe.run({ runOnly: only, resultTypes: ['violations'] }), runOnly)
  return found.violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 200)}`))
}

const overflow = (page: Page) => page.evaluate('document.documentElement.scrollWidth - document.documentElement.clientWidth')

describe('the page', () => {
  test('shows the demonstration: verdict, misses, drawing, what to measure, notice, request', async () => {
    const page = await shown(desk)
    expect(await page.getByRole('status').first().textContent()).toMatch(/^\s*W-104: Fail At least one mandatory rule is not met\. 26 met, 6 not met \(1 mandatory\)/)
    expect(await page.locator('[data-rule="lintel.bearing-length"].miss').textContent()).toContain('Found 3 1/2 in; required at least 6 in (152 mm); off by 2 1/2 in.')
    expect(await page.getByRole('img', { name: 'Front elevation: W-104' }).count()).toBe(1)
    expect(await page.evaluate(`document.querySelector('#drawing img').naturalWidth`)).toBeGreaterThan(300)
    expect(await page.locator('#next li').count()).toBe(8)
    expect(await page.locator('#notice').textContent()).toContain('must be confirmed by a licensed professional')
    const sent = JSON.parse(/ -d '([\s\S]*)'$/.exec(await page.locator('#curl').textContent() ?? '')?.[1] ?? '') as object
    await open.http.post('/v1/evaluations').send(sent).expect(200).expect(({ body }: { body: { summary: { verdict: string } } }) => { expect(body.summary.verdict).toBe('fail') })
    await page.close()
  })

  test('tells what a longer bearing changes, in any unit, and says a wrong entry at its field and loses nothing', async () => {
    const page = await shown(desk)
    await page.locator('[data-rule="lintel.bearing-length"].miss').getByRole('button').click()
    const right = page.locator('#fact-head-support-bearing-right')
    expect(await page.evaluate('document.activeElement.id')).toBe('fact-head-support-bearing-left')
    await right.fill('160 mm')
    await page.locator('[data-rule="lintel.bearing-length"].miss').waitFor({ state: 'detached' })
    await settled(page)
    expect(await page.locator('#verdict').textContent()).toContain('W-104: Incomplete')
    await right.fill('160 parsecs')
    await page.locator('#fact-head-support-bearing-right-error', { hasText: 'parsecs' }).waitFor()
    expect(await right.getAttribute('aria-invalid')).toBe('true')
    expect(await page.getByRole('alert').textContent()).toContain('1 entry cannot be read')
    expect(await page.locator('#verdict').textContent()).toContain('W-104: Incomplete')
    expect(await right.inputValue()).toBe('160 parsecs')
    await right.fill('90 mm')
    await page.locator('[data-rule="lintel.bearing-length"].miss').waitFor()
    expect(await right.getAttribute('aria-invalid')).toBeNull()
    await page.close()
  })

  test('takes its bounds and choices from the service', async () => {
    const page = await shown(desk)
    const { items } = (await open.http.get('/v1/facts?first=200')).body as { items: readonly { fact: string; choices: readonly string[]; least: string | null }[] }
    const kind = items.find(({ fact }) => fact === 'head.support.kind')
    expect(await page.evaluate(`[...document.querySelectorAll('#fact-head-support-kind option')].map((option) => option.value)`)).toEqual(['', ...(kind?.choices ?? ['none'])])
    const width = items.find(({ fact }) => fact === 'opening.width')
    expect(await page.locator('#fact-opening-width-help').textContent()).toContain(`Between ${width?.least ?? 'none'} and`)
    expect(await page.evaluate(`new Set([...document.querySelectorAll('[data-fact]')].map((field) => field.dataset.fact)).size`)).toBeGreaterThan(items.length - 1)
    await page.close()
  })

  test('is used by keys alone', async () => {
    const page = await shown(desk)
    await page.keyboard.press('Tab')
    expect(await page.evaluate('document.activeElement.id')).toBe('start')
    for (let presses = 0; presses < 60 && (await page.evaluate('document.activeElement.id')) !== 'lengthResolution'; presses += 1) await page.keyboard.press('Tab')
    await page.keyboard.press('Tab')
    expect(await page.evaluate('document.activeElement.tagName')).toBe('SUMMARY')
    await page.locator('#stage-lintelSet > summary').focus()
    if ((await page.locator('#stage-lintelSet').getAttribute('open')) === null) await page.keyboard.press('Enter')
    for (let presses = 0; presses < 60 && (await page.evaluate('document.activeElement.id')) !== 'fact-head-support-bearing-right'; presses += 1) await page.keyboard.press('Tab')
    await page.keyboard.press('ControlOrMeta+A')
    await page.keyboard.type('6 in')
    await page.locator('[data-rule="lintel.bearing-length"].miss').waitFor({ state: 'detached' })
    expect(await page.evaluate('document.activeElement.id')).toBe('fact-head-support-bearing-right')
    await page.close()
  })

  test('opens the report as a page of its own', async () => {
    const page = await shown(desk)
    const [report] = await Promise.all([page.waitForEvent('popup'), page.getByRole('button', { name: 'Report to print' }).click()])
    expect(await report.locator('h1').textContent()).toBe('W-104')
    expect(await report.locator('svg[data-kind]').count()).toBe(4)
    expect(await report.evaluate(`getComputedStyle(document.querySelector('h1')).fontSize`)).toBe('36px')
    await page.close()
  })

  test('asks for a token where the service wants one, and keeps it in no store', async () => {
    const token = await closed.tokenFor({ kind: 'evaluate' })
    const page = await chromium.browser.newPage({ viewport: phone })
    await page.goto(await closed.app.listen({ port: 0, host: '127.0.0.1' }))
    await page.getByRole('heading', { name: 'This service asks for a token' }).waitFor()
    expect(await violations(page)).toEqual([])
    await page.getByLabel('Token').fill('wythe_wrong')
    await page.keyboard.press('Enter')
    await page.getByText('The token is not taken').waitFor()
    await page.getByLabel('Token').fill(token)
    await page.getByRole('button', { name: 'Use this token' }).click()
    await settled(page)
    expect(await page.locator('#curl').textContent()).toContain('authorization: Bearer $TOKEN')
    expect(await page.evaluate('JSON.stringify([localStorage, sessionStorage, document.cookie, location.href])')).not.toContain(token)
    await page.close()
  })

  test('waits as long as the service asks it to when the quota is used up, and then goes on', async () => {
    const page = await chromium.browser.newPage({ viewport: desk })
    await page.goto(await scarce.app.listen({ port: 0, host: '127.0.0.1' }))
    await settled(page)
    for (const width of ['49', '50', '51', '52', '53', '54']) {
      await page.evaluate(`document.getElementById('fact-opening-width').closest('details').open = true`)
      await page.locator('#fact-opening-width').fill(width)
      await page.waitForTimeout(500)
    }
    // The policy of the page lets nothing be evaluated in it, so that it is asked from outside again and again
    await expect.poll(() => page.evaluate(`JSON.parse(/ -d '([^]*)'$/.exec(document.getElementById('curl').textContent)[1]).opening.opening.width`), { timeout: 10_000, interval: 200 }).toBe('54')
    await page.close()
  })
})

describe.each([['a phone', phone], ['a desk', desk]] as const)('on %s', (_, viewport) => {
  test('the page has nothing against it by axe-core, and none of its colors in the dark', async () => {
    const page = await shown(viewport)
    await page.evaluate(`document.querySelectorAll('#facts > details:nth-child(-n+3), #misses details').forEach((one) => { one.open = true })`)
    await page.locator('#fact-opening-width').fill('wide')
    await page.locator('#fact-opening-width-error span').waitFor()
    expect(await violations(page)).toEqual([])
    await page.emulateMedia({ colorScheme: 'dark' })
    expect(await violations(page, ['color-contrast'])).toEqual([])
    await page.close()
  })

  test('the report on an opening has nothing against it by axe-core', async () => {
    const page = await chromium.browser.newPage({ viewport, colorScheme: viewport === desk ? 'dark' : 'light' })
    await page.setContent(viewport === desk ? reported(evaluated('louver')) : reported(evaluated('missed-end-dam'), { drawings: [] }))
    expect(await violations(page)).toEqual([])
    await page.close()
  })

  test('the report on a building has nothing against it by axe-core', async () => {
    const page = await chromium.browser.newPage({ viewport })
    await page.setContent(buildingPage({ building: smallBuilding, at: '2026-03-09T12:00:00.000Z', publicUrl: 'https://wythe.example', path: '/v1/projects/p/building', titleOf: (rule) => rule }))
    expect(await violations(page)).toEqual([])
    await page.close()
  })
})

describe('at 320 pixels', () => {
  test('nothing is moved sideways: the page', async () => {
    const page = await shown({ width: 320, height: 640 })
    await page.evaluate(`document.querySelectorAll('details').forEach((one) => { one.open = true })`)
    expect(await overflow(page)).toBe(0)
    await page.close()
  })

  test('nothing is moved sideways: the reports', async () => {
    for (const fixture of ['missed-end-dam', 'metric-precast-sill']) {
      // The policy of a report stays with its page, so each has one of its own.
      const page = await chromium.browser.newPage({ viewport: { width: 320, height: 640 } })
      await page.setContent(reported(evaluated(fixture)))
      expect(await overflow(page)).toBe(0)
      await page.close()
    }
  })
})

describe('on paper', () => {
  test.each([['A4', 595, 842], ['Letter', 612, 792]] as const)('%s: pages of that size; findings and rows stay whole, heads of tables come again', async (format, width, height) => {
    const page = await chromium.browser.newPage()
    await page.setContent(reported(evaluated('missed-end-dam'), { drawings: [] }))
    const pdf = (await page.pdf({ format })).toString('latin1')
    const boxes = [...pdf.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)].map(([, w, h]) => [Math.round(Number(w)), Math.round(Number(h))])
    expect(boxes.length).toBeGreaterThan(5)
    for (const [w = 0, h = 0] of boxes) expect(Math.abs(w - width) + Math.abs(h - height)).toBeLessThanOrEqual(2)
    await page.emulateMedia({ media: 'print' })
    const styleOf = (selector: string, property: string) => page.evaluate(`getComputedStyle(document.querySelector('${selector}')).${property}`)
    expect(await styleOf('article.miss', 'breakInside')).toBe('avoid')
    expect(await styleOf('tbody tr', 'breakInside')).toBe('avoid')
    expect(await styleOf('thead', 'display')).toBe('table-header-group')
    expect(await styleOf('body', 'color')).toBe('rgb(22, 22, 26)')
    await page.close()
  })
})

describe('a printed report', () => {
  test.each(['A4', 'Letter'] as const)('on a fully described opening takes at most twelve pages of %s', async (format) => {
    const pdf = await printed(chromium.browser, reportedInFull('baseline-window'), format)
    expect(pagesOf(pdf)).toBeGreaterThan(6)
    expect(pagesOf(pdf)).toBeLessThanOrEqual(12)
  })

  test.each([['missed-end-dam', 'A4'], ['metric-precast-sill', 'Letter']] as const)('on %s cuts no finding and no row over two pages of %s', async (fixture, format) => {
    const bounded = withBounds(reportedInFull(fixture))
    const bounds = boundsIn(await printed(chromium.browser, bounded.page, format))
    expect(bounded.count).toBeGreaterThan(150)
    expect(bounds.size).toBe(bounded.count)
    expect([...bounds].filter(([, { first, last }]) => first !== last)).toEqual([])
  })

  test('would be seen to cut a finding', async () => {
    const bounded = withBounds(reportedInFull('metric-precast-sill').replace('</style>', '.miss,tr{break-inside:auto!important}.miss p{margin:4cm 0!important}</style>'))
    expect([...boundsIn(await printed(chromium.browser, bounded.page, 'A4')).values()].some(({ first, last }) => first !== last)).toBe(true)
  })
})

describe('axe-core is awake', () => {
  test('to a field without a label and words too faint', async () => {
    const page = await chromium.browser.newPage()
    await page.setContent('<!doctype html><html lang="en"><title>x</title><main><h1>x</h1><input><p style="color:#bbb">faint</p></main></html>')
    expect((await violations(page)).map((one) => one.split(':')[0])).toEqual(expect.arrayContaining(['label', 'color-contrast']))
    await page.close()
  })
})

