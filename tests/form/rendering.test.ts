import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { operations } from '../../src/operations/index.ts'
import { bodyOf, jurisdictionService } from '../api/jurisdiction.ts'
import { openBrowser } from './browser.ts'
import { servePage } from './page-server.ts'

// A general-purpose form library (react-jsonschema-form, with a validator for JSON Schema 2020-12) shows what a running service answers.
const { app, http, tokenFor } = await jurisdictionService()
const token = await tokenFor({ kind: 'record' })
const project = '0199a000-0000-7000-8000-000000000001'
const phone = { width: 390, height: 844 }
const desk = { width: 1280, height: 900 }

let chromium: Awaited<ReturnType<typeof openBrowser>>
let site: Awaited<ReturnType<typeof servePage>>

beforeAll(async () => {
  site = await servePage(await app.listen({ port: 0, host: '127.0.0.1' }))
  chromium = await openBrowser()
  await send('/v1/projects', { id: project, title: 'Invented house', jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' }).expect(201)
}, 120_000)

afterAll(async () => {
  await chromium.close()
  await site.close()
})

const send = (path: string, body: object) => http.post(path).set('authorization', `Bearer ${token}`).send(body)
const record = async (opening: string) => bodyOf(operations.readOpeningRecord, await http.get(`/v1/projects/${project}/openings/${opening}`).set('authorization', `Bearer ${token}`))

let made = 0
const newId = () => `0199b000-0000-7000-8000-${String((made += 1)).padStart(12, '0')}`

/** An opening as drawn, and its form in a browser. */
async function opened(opening: string, holdPoint: string, viewport: { width: number; height: number }): Promise<{ page: Page; again: () => Promise<Page> }> {
  const description = { lengthUnit: 'in', opening: { kind: 'window', width: 48, height: 60 }, head: { support: { kind: 'looseSteelAngle', bearing: 6 } } }
  await send(`/v1/projects/${project}/entries`, { entries: [{ id: newId(), opening, at: '2026-03-02T08:00:00Z', by: 'architect', design: { description } }] }).expect(200)
  const query = new URLSearchParams({ project, opening, holdPoint, token, filling: newId(), at: '2026-03-03T09:00:00Z' })
  const again = async () => {
    const page = await chromium.browser.newPage({ viewport })
    await page.goto(`${site.address}/?${query.toString()}`)
    await page.getByRole('button', { name: 'Submit' }).waitFor()
    return page
  }
  return { page: await again(), again }
}

/** Types as a person does, key by key, in the field with this label. */
async function type(page: Page, label: string, text: string): Promise<void> {
  const field = page.getByLabel(label, { exact: true })
  await field.click()
  await page.keyboard.press('ControlOrMeta+A')
  await page.keyboard.type(text)
}

/** Chooses with the keyboard: the first letters of a choice select it. */
async function choose(page: Page, label: string, letters: string): Promise<void> {
  await page.getByLabel(label, { exact: true }).focus()
  await page.keyboard.type(letters)
}

async function submitted(page: Page): Promise<readonly string[]> {
  const before = await page.locator('output').textContent()
  await page.getByRole('button', { name: 'Submit' }).click()
  await expect.poll(() => page.locator('output').textContent(), { timeout: 20_000 }).not.toBe(before)
  return ((await page.locator('output').textContent()) ?? '').split('\n').toSorted()
}

describe('a form in a browser', { timeout: 90_000 }, () => {
  test('on a phone: is filled by hand, and the record holds what was typed', async () => {
    const { page, again } = await opened('w-1', 'lintelSet', phone)
    await type(page, 'Bearing on the masonry, left', '6 1/8 in')
    await type(page, 'Bearing on the masonry, right', '5 1/2')
    await choose(page, 'Corrosion protection of the steel', 'Hot')
    await choose(page, 'Seat of the bearing, left', 'Mor')
    await type(page, 'Angle', 'L5x3-1/2x5/16')
    await type(page, 'Note', 'Right end seen from the scaffold.')
    await page.getByRole('button', { name: 'Submit' }).click()
    await page.getByText(`Bearing on the masonry, right: Write it like 3 7/8 in, 4'-6 1/2" or 98 mm.`).waitFor()
    expect(await page.locator('output').textContent()).toBe('')
    await type(page, 'Bearing on the masonry, right', '5 1/2"')
    expect(await submitted(page)).toEqual([
      'head_support_bearingSeat_left recorded', 'head_support_bearing_left recorded', 'head_support_bearing_right recorded', 'head_support_protection recorded', 'head_support_section recorded',
    ])
    const { facts, standing } = await record('w-1')
    expect(facts.map(({ fact, member, governs }) => [fact, member, governs.value, governs.holdPoint, governs.by])).toEqual([
      ['head.support.section', null, 'L5x3-1/2x5/16', 'lintelSet', 'inspector'],
      ['head.support.bearing', 'left', '6 1/8 in', 'lintelSet', 'inspector'],
      ['head.support.bearing', 'right', '5 1/2"', 'lintelSet', 'inspector'],
      ['head.support.bearingSeat', 'left', 'mortarBed', 'lintelSet', 'inspector'],
      ['head.support.protection', null, 'hotDipGalvanized', 'lintelSet', 'inspector'],
    ])
    expect(standing.notMet).toContain('lintel.bearing-length')
    await page.close()

    const twice = await again()
    await type(twice, 'Bearing on the masonry, left', '6 1/8 in')
    await type(twice, 'Note', 'Right end seen from the scaffold.')
    expect(await submitted(twice)).toEqual(['head_support_bearing_left alreadyRecorded'])
    expect((await record('w-1')).facts).toHaveLength(5)
    await twice.close()
  })

  test('at a desk: shows the last chances first, and an untouched question stays unanswered', async () => {
    const { page } = await opened('w-2', 'headFlashing', desk)
    expect(await page.locator('legend').allTextContents()).toEqual(['Head flashing complete: w-2', 'Last chance to see', 'To be seen now', 'Still to be seen from before'])
    const labels = await page.locator('label').allTextContents()
    expect(labels[0]).toBe('Head flashing present')
    expect(labels.at(-1)).toBe('Note')
    await choose(page, 'Head flashing present', 'Y')
    await choose(page, 'End dam, left', 'Y')
    await choose(page, 'End dam, right', 'N')
    await type(page, 'Splices in the head flashing', '0')
    await type(page, 'Drip past the face', '-1/8 in')
    expect(await submitted(page)).toEqual([
      'head_flashing_endDamPresent_left recorded', 'head_flashing_endDamPresent_right recorded', 'head_flashing_present recorded', 'head_flashing_projection recorded', 'head_flashing_splices recorded',
    ])
    expect((await record('w-2')).facts.map(({ fact, member, governs }) => [fact, member, governs.value])).toEqual([
      ['head.flashing.present', null, 'true'], ['head.flashing.endDamPresent', 'left', 'true'], ['head.flashing.endDamPresent', 'right', 'false'],
      ['head.flashing.projection', null, '-1/8 in'], ['head.flashing.splices', null, '0'],
    ])
    await page.close()
  })

  test.each([['a phone', phone], ['a desk', desk]])('fits %s: nothing runs out at the side, and every field has its name', async (_, viewport) => {
    const { page } = await opened(`w-fit-${viewport.width}`, 'jambRise', viewport)
    expect(await page.evaluate<number>('document.documentElement.scrollWidth')).toBeLessThanOrEqual(viewport.width)
    const unnamed = await page.evaluate<string[]>('[...document.querySelectorAll("input, select, textarea")].filter(({ labels }) => labels.length === 0).map(({ id }) => id)')
    expect(unnamed).toEqual([])
    await page.close()
  })
})
