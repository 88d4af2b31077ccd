import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { z } from 'zod'
import { uriOf } from '../../src/exports/address.ts'
import { bcfOf } from '../../src/exports/bcf.ts'
import type { ExportedBuilding } from '../../src/exports/exported-building.ts'
import { oscalOf } from '../../src/exports/oscal.ts'
import { instant, line } from '../../src/exports/plain-text.ts'
import { sarifOf } from '../../src/exports/sarif.ts'
import { unreadEntry } from '../../src/record/entry.ts'
import { building, designOf, entryId, opening } from './building.ts'
import { bcfFaults, filesIn, oscalFaults, sarifFaults } from './checks.ts'

/** What people paste and what phones send: control characters, markup, ends of lines of every kind. Half characters do not get into the record. */
const odd = fc.constantFrom('\u0000', '\u0007', '\u001b', '\u0085', '\ufffe', '\uffff', '\u2028', '\r', '\n', '\t', ' ', '\u00a0', '<', '&', ']]>', '"', "'", '{0}', '[a](b)', '%', '#', '😀', 'é', 'x')
const anyText = fc.oneof(fc.string({ unit: 'binary', maxLength: 40 }), fc.string({ unit: odd, maxLength: 12 }))
const someText = anyText.filter((text) => text.length > 0)
const clocks = fc.constantFrom('0001-01-01T00:00:00Z', '9999-12-31T23:59:59-14:00', '2026-03-03T10:00:00-05:00', '2024-02-29T00:00:00.5Z')
const links = fc.oneof(fc.webUrl({ withFragments: true, withQueryParameters: true }), anyText.map((text) => `https://pictures.example/${text}`), anyText.map((text) => `urn:x:${text}`), fc.constantFrom('https://[::1]:8/a[b]|c?d=[e]#f#g', 'https://a.example/%zz%', 'mailto:a@b.example')).filter((link) => z.url().safeParse(link).success)

const evidence = links.map((link) => [{ link, sha256: '0f'.repeat(32) }])
const said = fc.record({ title: someText, reference: someText, by: someText, at: clocks, note: anyText, evidence, reason: someText, number: someText, office: someText, conditions: anyText })

type Said = typeof said extends fc.Arbitrary<infer T> ? T : never

function buildingOf({ title, reference, by, at, note, evidence: pictures, reason, number, office, conditions }: Said): ExportedBuilding {
  const about = { by, at, note, evidence: pictures }
  const short = { ...about, observation: { fact: 'head.support.bearing', member: 'left', value: '3 1/2 in', method: 'interview', holdPoint: 'lintelSet' } }
  const entries = [
    { ...about, design: { description: { ...designOf('missed-end-dam'), reference } } }, short,
    { ...about, waiver: { rule: 'lintel.bearing-length', kind: 'waiver', instrument: { kind: 'notice', number, adopted: '2026-03-05' }, grantedBy: office, conditions } },
    { ...about, signOff: { holdPoint: 'lintelSet', reason } },
    { ...about, verification: { rule: 'flashing.end-dam-present', result: 'mended', holdPoint: 'headFlashing' } },
    { ...about, correction: { entry: entryId(999), reason } },
  ]
  const one = opening('w-1', 100, [{ receivedAt: '2026-03-03T16:00:00.000Z', entries }])
  const whole = building([one], { scope: 'misses' })
  return { ...whole, project: { ...whole.project, title } }
}

describe('whatever people write', () => {
  test('is taken in by the record', () => {
    fc.assert(fc.property(said, (words) => {
      for (const { body } of buildingOf(words).openings[0]?.entries ?? []) expect(unreadEntry.safeParse(body).error?.issues ?? []).toEqual([])
    }), { numRuns: 15 })
  })

  test('SARIF stays valid by the published schema', () => {
    fc.assert(fc.property(said, (words) => { expect(sarifFaults(sarifOf(buildingOf(words)))).toEqual([]) }), { numRuns: 40 })
  })

  test('OSCAL stays as the standard asks', () => {
    fc.assert(fc.property(said, (words) => { expect(oscalFaults(oscalOf(buildingOf(words)))).toEqual([]) }), { numRuns: 40 })
  })

  test('BCF stays well-formed and as the standard asks', async () => {
    await fc.assert(fc.asyncProperty(said, async (words) => { expect(await bcfFaults(filesIn(bcfOf(buildingOf(words))))).toEqual([]) }), { numRuns: 25 })
  }, 120_000)
})

test('a line has no blank at its ends and is never empty', () => {
  fc.assert(fc.property(anyText, (text) => { expect(line(text)).toMatch(/^\S(.*\S)?$/u) }))
  expect(line(' a\r\n\u0000 b ')).toBe('a b')
  expect(line('\u0000')).toBe('–')
})

test('an address has only the characters of RFC 3986, and stays what it is where it has no others', () => {
  fc.assert(fc.property(links, (link) => {
    const uri = uriOf(link)
    expect(uri).toMatch(/^[a-z][a-z0-9+.-]*:(?:[\w.~:/?@!$&'()*+,;=-]|%[0-9a-f]{2}|\[[0-9a-f:.]+\])*(?:#(?:[\w.~:/?@!$&'()*+,;=-]|%[0-9a-f]{2})*)?$/i)
    expect(uriOf(uri)).toBe(uri)
  }), { numRuns: 500 })
  expect(uriOf('https://pictures.example/a/b.jpg?c=d&e=%20#f')).toBe('https://pictures.example/a/b.jpg?c=d&e=%20#f')
})

test.each([
  ['2026-03-03T10:00:00-05:00', '2026-03-03T15:00:00.000Z'],
  ['0001-01-01T00:00:00Z', '2026-03-04T00:00:00.000Z'],
  ['9999-12-31T23:59:59-14:00', '2026-03-04T00:00:00.000Z'],
])('%s by the clock of a device is %s', (at, utc) => expect(instant(at, '2026-03-04T00:00:00.000Z')).toBe(utc))
