import { createHash } from 'node:crypto'
import canonicalize from 'canonicalize'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { canonicalBytes, lastingPart, plainBytes } from '../../src/catalog/canonical.ts'
import { digestOf, digestOfText, useSha256 } from '../../src/catalog/digest.ts'
import { evaluate } from '../../src/evaluation/evaluate.ts'
import { describeOpening } from '../../src/opening/describe.ts'
import { usePlatformSha256 } from '../../src/store/platform-sha256.ts'
import { corpus } from '../corpus.ts'
import { realCatalog, resolved } from './real-catalog.ts'

const decoder = new TextDecoder()
const canonicalText = (value: unknown) => decoder.decode(canonicalBytes(value))
const plainText = (value: unknown) => decoder.decode(plainBytes(value))

describe('canonical text', () => {
  test('is that of RFC 8785, section 3.2.2', () => {
    const sample: unknown = JSON.parse(String.raw`{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"string":"\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/","literals":[null,true,false]}`)
    expect(canonicalText(sample)).toBe(String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`)
  })

  test('sorts as RFC 8785, section 3.2.3, does', () => {
    const sample = { '\u20ac': 'Euro Sign', '\r': 'Carriage Return', '\ufb33': 'Hebrew Letter Dalet With Dagesh', '1': 'One', '\ud83d\ude00': 'Emoji: Grinning Face', '\u0080': 'Control', '\u00f6': 'Latin Small Letter O With Diaeresis' }
    const order = ['Carriage Return', 'One', 'Control', 'Latin Small Letter O With Diaeresis', 'Euro Sign', 'Emoji: Grinning Face', 'Hebrew Letter Dalet With Dagesh']
    const places = order.map((name) => canonicalText(sample).indexOf(name))
    expect(places).toEqual(places.toSorted((a, b) => a - b))
  })

  test('is what the library says of any JSON, whether parts of it last or not', () => {
    fc.assert(fc.property(fc.jsonValue(), (value) => {
      const whole = { before: value, after: [value, null, -0, 1e21] }
      expect(canonicalText(whole)).toBe(canonicalize(whole))
      expect(canonicalText(lastingPart(structuredClone(whole)))).toBe(canonicalize(whole))
    }))
  })

  test.each([['half of a pair', 'a\ud800'], ['no number', NaN], ['no end', Infinity]])('refuses %s as the library does', (_, value) => {
    expect(() => canonicalText({ value })).toThrow()
    expect(() => canonicalize({ value })).toThrow()
  })

  test('leaves out what is undefined, and asks what tells its own JSON', () => {
    const odd = { none: undefined, list: [undefined, 1, Symbol('one')], at: new Date(0), big: '"\\\u0007' }
    expect(canonicalText(odd)).toBe(canonicalize(odd))
  })

  test('of more than a few kinds of objects with equally many members is right all the same', () => {
    const kinds = Array.from({ length: 40 }, (_, index) => ({ [`b${index}`]: 1, [`a${index}`]: 2 }))
    expect(canonicalText([...kinds, ...kinds])).toBe(canonicalize([...kinds, ...kinds]))
  })

  test('of every evaluation of the corpus is what the library says', async () => {
    const catalog = await realCatalog()
    const rules = resolved(catalog, { jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' })
    for (const { name, description } of corpus(catalog).filter((_, index) => index % 24 === 0)) {
      const opening = describeOpening(description)
      if (!opening.ok) throw new Error(name)
      const assessment = evaluate(opening.value, rules, catalog, null)
      const expected = canonicalize(assessment) ?? ''
      expect(canonicalText(assessment) === expected, name).toBe(true)
      expect(digestOf(assessment) === digestOfText(expected), name).toBe(true)
    }
  })
})

describe('JSON as it stands', () => {
  const whole = (value: unknown) => ({ before: value, after: [value, null, -0, 1e21], '1': 'a number comes first' })

  test('is what JSON.stringify says of any JSON, whether parts of it last or not', () => {
    fc.assert(fc.property(fc.jsonValue(), (value) => {
      expect(plainText(whole(value))).toBe(JSON.stringify(whole(value)))
      const lasting = lastingPart(structuredClone(whole(value)))
      for (const time of ['first', 'again']) expect(plainText(lasting), time).toBe(JSON.stringify(whole(value)))
    }))
  })

  test('is what JSON.stringify says of any text and of what JSON has no word for', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary' }), (text) => { expect(plainText([text, { [text]: text }])).toBe(JSON.stringify([text, { [text]: text }])) }))
    const odd = { none: undefined, list: [undefined, 1, Symbol('one'), NaN, -Infinity], at: new Date(0), big: '"\\\u0007', half: 'a\ud800', pair: '\ud83d\ude00' }
    expect(plainText(odd)).toBe(JSON.stringify(odd))
  })

  test('of one part is kept for each manner of writing by itself', () => {
    const part = lastingPart({ b: 1, a: 2 })
    for (const time of ['first', 'again']) expect([canonicalText({ part }), plainText({ part })], time).toEqual(['{"part":{"a":2,"b":1}}', '{"part":{"b":1,"a":2}}'])
  })

  test('is whole where it is longer than the room made beforehand', () => {
    const long = { text: 'x'.repeat(3_000_000), after: ['″'.repeat(700_000), 1] }
    expect(plainText(long) === JSON.stringify(long)).toBe(true)
    expect(plainText({ after: 1 })).toBe('{"after":1}')
  })

  test('begins anew after something that cannot be written', () => {
    expect(() => canonicalText({ before: 'written', value: NaN })).toThrow()
    expect(canonicalText({ a: 1 })).toBe('{"a":1}')
  })

  test('does not change with what is written later', () => {
    const first = plainBytes({ a: 1 })
    plainBytes({ b: 2 })
    expect(decoder.decode(first)).toBe('{"a":1}')
  })
})

test('what lasts cannot be changed', () => {
  const part = lastingPart({ chain: [{ layer: 'practice' }] })
  expect(() => { part.chain.push({ layer: 'another' }) }).toThrow(TypeError)
  expect(() => { Object.assign(part.chain[0] ?? {}, { layer: 'another' }) }).toThrow(TypeError)
})

describe('SHA-256', () => {
  // FIPS 180-4, examples published by NIST: one block, two blocks; and the empty message
  const published = [
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    ['abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq', '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1'],
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
  ] as const

  test('gives the published digests, with the portable hash and with that of the platform', () => {
    for (const [text, digest] of published) expect(digestOfText(text)).toBe(`sha256:${digest}`)
    usePlatformSha256()
    for (const [text, digest] of published) expect(digestOfText(text)).toBe(`sha256:${digest}`)
  })

  test('of a platform that gives another digest is refused, and what was in use stays', () => {
    expect(() => useSha256((bytes) => createHash('sha256').update(bytes.subarray(1)).digest('hex'))).toThrow(/another digest/)
    expect(() => useSha256(() => '')).toThrow(/another digest/)
    expect(() => useSha256((bytes) => createHash('sha512').update(bytes).digest('hex'))).toThrow(/another digest/)
    expect(digestOfText('abc')).toBe(`sha256:${published[0][1]}`)
  })
})
