import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { XMLValidator } from 'fast-xml-parser'
import { validateXML } from 'xmllint-wasm'
import { draw, drawingKinds, drawings } from '../../src/drawing/index.ts'
import { corpus } from '../corpus.ts'
import { anyFacts } from '../evaluation/any-opening.ts'
import { openingWith } from '../evaluation/subject.ts'
import { described, documentOf, openingFiles, windowWith } from '../opening/openings.ts'
import { catalog, evaluated, shown } from './drawn.ts'
import { boxesOf, boxOfText, faultsOf, overlapsOf } from './overlaps.ts'
import { allIn, partIn, readSvg } from './read-svg.ts'

const openings = corpus(catalog)

test('nothing overlaps and nothing leaves the frame in any drawing of the corpus', () => {
  const faults = openings.flatMap(({ name, description }) => {
    const opening = described(description)
    return drawings(opening, evaluated(opening)).flatMap(({ kind, svg }) => faultsOf(svg).map((fault) => `${kind} of ${name}: ${fault}`))
  })
  expect(openings.length).toBeGreaterThan(500)
  expect(faults.slice(0, 25)).toEqual([])
}, 300_000)

/** Several descriptions laid over each other, so that many facts are known, or one with few. */
const someFacts = fc.array(anyFacts, { minLength: 1, maxLength: 4 }).map((several): Readonly<Record<string, unknown>> => Object.assign({}, ...several) as Record<string, unknown>)

/** Found by chance: a tie deeper in the brick than the brick is thick, and the letter of a fold among the measures beside a small blank. */
const foundBefore = [
  { 'opening.kind': 'window', 'opening.width': '4 in', 'opening.height': '4 in', 'opening.pierWidth': [null, '0 in'], 'wall.veneer.unitHeight': '1 in', 'wall.veneer.unitLength': '2 in', 'wall.heightAboveHead': '0 in', 'ties.kind': 'corrugated', 'ties.embedment': '9.5 in' },
  {
    'opening.width': '6.625 in', 'wall.veneer.unitLength': '2.6875 in', 'wall.veneer.thickness': '11 in', 'wall.airSpace': '21.625 in', 'wall.insulationThickness': '16.5625 in', 'head.flashing.upstand': '30.5 in',
    'head.flashing.projection': '7.125 in', 'head.flashing.slope': '35 deg', 'sill.kind': 'stone', 'sill.flashing.endDamHeight': '8.375 in', 'sill.flashing.upstand': '9.8125 in',
  },
]

test('whatever an opening is, its drawings are well-formed, tell no wrong number, and nothing in them overlaps or leaves the frame', () => {
  fc.assert(fc.property(someFacts, (facts) => {
    const opening = openingWith(facts)
    for (const { kind, svg, description } of drawings(opening, evaluated(opening))) {
      expect([kind, faultsOf(svg)]).toEqual([kind, []])
      expect([kind, XMLValidator.validate(svg)]).toEqual([kind, true])
      expect(`${svg}${description}`).not.toMatch(/NaN|Infinity|undefined|null/)
    }
  }), { numRuns: 60, examples: foundBefore.map((facts): [Readonly<Record<string, unknown>>] => [facts]) })
}, 300_000)

describe('the check of overlaps', () => {
  const { drawing } = shown('elevation', documentOf('missed-end-dam.yaml'))

  test('finds a text that is moved onto another', () => {
    const moved = drawing.svg.replace(/<text x="[\d.]+" y="[\d.]+"([^>]*)>6&apos;-0&quot;</, '<text x="100" y="10"$1>6&apos;-0&quot;<')
    expect(moved).not.toBe(drawing.svg)
    expect(faultsOf(moved).join(' ')).toMatch(/overlap/)
  })

  test('finds a text that grows out of the frame', () => {
    expect(faultsOf(drawing.svg.replaceAll('Front elevation', 'Front elevation '.repeat(12))).join(' ')).toMatch(/leaves the frame/)
  })

  test('finds a line that leaves the frame', () => {
    expect(faultsOf(drawing.svg.replace(/(data-part="bond"[\s\S]*?<path d="M)[\d.]+/, '$1-30')).join(' ')).toMatch(/a line at -30/)
  })

  test('tells boxes beside each other from boxes on each other', () => {
    const box = (what: string, left: number) => ({ what, left, right: left + 10, top: 0, bottom: 4 })
    expect(overlapsOf([box('a', 0), box('b', 10)])).toEqual([])
    expect(overlapsOf([box('a', 0), box('b', 9)])).toEqual(['"a" and "b" overlap'])
  })
})

describe('every drawing of every fixture', () => {
  const all = openingFiles.flatMap((file) => { const opening = described(documentOf(file)); return drawings(opening, evaluated(opening)).map((drawing) => ({ file, drawing })) })

  test('is well-formed XML by another parser too', async () => {
    const { errors } = await validateXML({ xml: all.map(({ file, drawing }) => ({ fileName: `${file}-${drawing.kind}.xml`, contents: drawing.svg })), normalization: 'format' })
    expect(errors).toEqual([])
  })

  test.each(all.map(({ file, drawing }) => [`${drawing.kind} of ${file}`, drawing] as const))('%s can be read aloud, carries its notice and its scale', (_, { svg, title, description }) => {
    const root = readSvg(svg)
    const [named, explained] = root.children
    expect(root.attributes).toMatchObject({ role: 'img', 'aria-labelledby': `${named?.attributes['id'] ?? ''} ${explained?.attributes['id'] ?? ''}` })
    expect([named?.name, explained?.name]).toEqual(['title', 'desc'])
    expect(named?.attributes['id']).toMatch(/^[A-Za-z][\w-]+$/)
    expect(title.length).toBeGreaterThan(10)
    expect(description).toMatch(/authority having jurisdiction prevail/)
    const texts = (part: string) => allIn(partIn(root, { part })).map(({ text }) => text).join(' ')
    expect(texts('notice')).toMatch(/Not to be built from.*licensed professional/)
    expect(texts('scale')).toMatch(/1:\d+|scale/i)
  })

  test.each(all.map(({ file, drawing }) => [`${drawing.kind} of ${file}`, drawing] as const))('%s numbers each callout in words, at its place and by a shape', (_, { svg, callouts, description }) => {
    const root = readSvg(svg)
    for (const { number, text } of callouts) {
      expect(description).toContain(text.replaceAll(/\s+/g, ' '))
      const data = { number: String(number) }
      expect(allIn(partIn(root, { part: 'mark', ...data })).some((one) => one.name === 'text' && one.text === String(number))).toBe(true)
      expect(allIn(partIn(root, { part: 'legendRow', ...data })).map((one) => one.text).join(' ')).toMatch(/Fails|Not determined/)
    }
    expect(svg).not.toMatch(/<style|<script|<image|href|url\(|fill="(?!none|white|black|lightgray)/)
  })
})

/** Texts that would end an attribute or an element, run a script, turn the line round, or cannot be written in XML at all. */
const hostile = ['</text></svg><script>alert(1)</script>', '"><svg onload=alert(1)>', ']]>&<!--', '\u0000\u0007\uFFFE\uD800', '\u202Egnp.exe\u2066', '&lt;&#x41;', 'W'.repeat(2000), '高'.repeat(300), 'a\nb\tc', '${7*7}']

test.each(hostile)('a reference that is hostile is only a text: %j', (reference) => {
  const opening = { ...described(windowWith()), reference }
  for (const { svg } of drawings(opening, evaluated(opening))) {
    expect(XMLValidator.validate(svg)).toBe(true)
    expect(faultsOf(svg)).toEqual([])
    const names = new Set(allIn(readSvg(svg)).map(({ name }) => name))
    expect([...names].filter((name) => !['svg', 'title', 'desc', 'g', 'path', 'text', 'circle'].includes(name))).toEqual([])
    expect(allIn(readSvg(svg)).flatMap(({ attributes }) => Object.keys(attributes)).filter((name) => name.startsWith('on'))).toEqual([])
    expect(svg).not.toMatch(/[\u0000-\u0009\u000B-\u001F\u202A-\u202E\u2066-\u2069]/)
  }
})

test('any text at all makes a drawing that can be parsed', () => {
  const opening = described(windowWith())
  const full = evaluated(opening)
  fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (reference) => {
    const { svg } = draw('elevation', { ...opening, reference }, full)
    expect(XMLValidator.validate(svg)).toBe(true)
    expect(faultsOf(svg)).toEqual([])
  }))
})

test('several drawings can stand in one page: no id is used twice', () => {
  const ids = ['missed-end-dam.yaml', 'baseline-window.yaml'].flatMap((file) => { const opening = described(documentOf(file)); return drawings(opening, evaluated(opening)).flatMap(({ svg }) => [...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id)) })
  expect(new Set(ids).size).toBe(ids.length)
})

test('the same opening and evaluation give the same drawing', () => {
  const opening = described(documentOf('baseline-window.yaml'))
  expect(drawings(opening, evaluated(opening))).toEqual(drawings(opening, evaluated(opening)))
})

test.each(drawingKinds)('%s looks as it did', async (kind) => {
  const { drawing } = shown(kind, documentOf('missed-end-dam.yaml'))
  await expect(drawing.svg).toMatchFileSnapshot(`looks/${kind}.svg`)
})

test('a box is as wide as its text, on the side of its anchor', () => {
  const text = { name: 'text', attributes: { 'x': '50', 'y': '10', 'font-size': '3', 'text-anchor': 'end' }, children: [], text: 'bearing' }
  expect(boxOfText(text)).toMatchObject({ right: 50, what: 'bearing' })
  expect(boxOfText(text).left).toBeLessThan(50 - 3 * 7 * 0.4)
  expect(boxesOf({ name: 'svg', attributes: {}, children: [text], text: '' })).toHaveLength(1)
})
