import { afterAll, beforeAll, expect, test } from 'vitest'
import { textWidth } from '../../src/drawing/text-width.ts'
import { drawings } from '../../src/drawing/index.ts'
import { openBrowser } from '../form/browser.ts'
import { described, documentOf } from '../opening/openings.ts'
import { evaluated } from './drawn.ts'

let opened: Awaited<ReturnType<typeof openBrowser>>
beforeAll(async () => { opened = await openBrowser() }, 120_000)
afterAll(() => opened.close())

interface Laid { readonly text: string; readonly size: number; readonly bold: boolean; readonly width: number }

/** Runs in the page. */
const laidOut = `[...document.querySelectorAll('svg text')].map((text) => ({ text: text.textContent, size: Number(text.getAttribute('font-size')), bold: text.getAttribute('font-weight') === 'bold', width: text.getComputedTextLength() }))`

/** As a browser lays them out: what the room was reckoned for, and what lies on something else. */
test.each(['missed-end-dam.yaml', 'baseline-window.yaml', 'metric-precast-sill.yaml', 'wide-garage-door.yaml'])('no text of %s is wider in a browser than was reckoned, and the drawing has a name for a screen reader', async (file) => {
  const opening = described(documentOf(file))
  const page = await opened.browser.newPage()
  for (const { svg, title } of drawings(opening, evaluated(opening))) {
    await page.setContent(`<!doctype html><body>${svg}</body>`)
    const texts = await page.evaluate<readonly Laid[]>(laidOut)
    expect(texts.length).toBeGreaterThan(10)
    expect(texts.filter(({ text, size, bold, width }) => width > textWidth(text, size, bold ? 'bold' : 'normal') + 0.05)).toEqual([])
    expect(await page.getByRole('img', { name: title }).count()).toBe(1)
  }
  await page.close()
}, 120_000)
