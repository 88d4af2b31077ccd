import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { parse, stringify } from 'yaml'
import { readAmendmentText } from '../../src/catalog/intake.ts'
import type { IntakeCode } from '../../src/catalog/intake/limits.ts'
import { readTexts } from '../read-sources.ts'

type Format = 'json' | 'yaml'

const valueOf = (text: string, format: Format) => {
  const read = readAmendmentText(text, format)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value
}
const problemOf = (text: string, format: Format) => {
  const read = readAmendmentText(text, format)
  return read.ok ? 'taken in' : `${read.problems[0]?.code ?? ''}: ${read.problems[0]?.detail ?? ''}`
}

const real = `  - modification: m1
    kind: substitution
    target: { rule: lintel.bearing-length, part: limit }
    old: { inchPound: "4 [in_i]" }
    new: { governing: inchPound, inchPound: "6 [in_i]", si: "152 mm", locator: 9-304(a) }
`

describe('what is taken in', () => {
  const files = [...readTexts('catalog', '.yaml')].filter(([path]) => path.includes('/amendments/') || path.startsWith('rules/'))

  test('is read like the same file of the catalog, as YAML and as JSON', () => {
    expect(files.length).toBeGreaterThan(100)
    for (const [path, text] of files) {
      const expected: unknown = parse(text)
      expect(valueOf(text, 'yaml'), path).toEqual(expected)
      for (const json of [JSON.stringify(expected), JSON.stringify(expected, null, 2)]) {
        expect(valueOf(json, 'json'), path).toEqual(expected)
        expect(valueOf(json, 'yaml'), path).toEqual(expected)
      }
    }
  })

  test('may hold as many modifications as an amendment may have', () => {
    const read = valueOf(`amendment: a/b\nmodifications:\n${real.repeat(2_000)}`, 'yaml') as { modifications: unknown[] }
    expect(read.modifications).toHaveLength(2_000)
    expect((valueOf(JSON.stringify(read), 'json') as typeof read).modifications).toEqual(read.modifications)
    expect((valueOf(`modifications:\n${'- a: 1\n'.repeat(2_000)}examples:\n${'- b: 1\n'.repeat(2_000)}`, 'yaml') as typeof read).modifications).toHaveLength(2_000)
  })

  test.each<readonly [string, unknown]>([
    ['note: "a: b, [c] {d} & *e !f --- # g"', { note: 'a: b, [c] {d} & *e !f --- # g' }],
    ['note: |\n  - one\n  - two: three\n  --- four\nlast: 1', { note: '- one\n- two: three\n--- four\n', last: 1 }],
    ['note: >-\n  one\n  two\n', { note: 'one two' }],
    ['# first\n---\na: 1 # one\n', { a: 1 }],
    ['a:\n- b\n-\n  c: 1\n- - d\n  - e', { a: ['b', { c: 1 }, ['d', 'e']] }],
    ['date: 2021-03-08\nnumber: 2021-17\nnone: null\nyes: true', { date: '2021-03-08', number: '2021-17', none: null, yes: true }],
    ['a: constructor', { a: 'constructor' }],
  ])('%j', (text, expected) => expect(valueOf(text, 'yaml')).toEqual(expected))

  test('is whatever can be written in either format', () => {
    const bounded = fc.jsonValue({ depthSize: 'small' }).filter((value) => !/"(__proto__|constructor|prototype)":/.test(JSON.stringify(value)))
    fc.assert(fc.property(bounded, (value) => {
      const plain: unknown = JSON.parse(JSON.stringify(value))
      expect(valueOf(JSON.stringify(plain), 'json')).toEqual(plain)
      if (plain !== null) expect(valueOf(stringify(plain), 'yaml')).toEqual(plain)
    }), { numRuns: 200 })
  })
})

/** Levels of indentation, each a column further in. */
const stairs = Array.from({ length: 1_000 }, (_, depth) => `${' '.repeat(depth)}a:\n`).join('')
const laughs = `a: &a [x, x]\n${Array.from({ length: 30 }, (_, level) => `k${level}: &a [*a, *a, *a, *a, *a, *a, *a, *a, *a]\n`).join('')}`
const filled = (text: string) => text.repeat(Math.floor(1_000_000 / text.length))

describe('what is refused', () => {
  test.each<readonly [string, Format, string, IntakeCode, string]>([
    ['ten megabytes of JSON', 'json', '['.repeat(10_000_000), 'textTooLarge', 'Split it'],
    ['ten megabytes of YAML', 'yaml', 'a'.repeat(10_000_000), 'textTooLarge', 'Split it'],
    ['fifty thousand modifications in JSON', 'json', `{"modifications":[${Array<string>(50_000).fill('{}').join()}]}`, 'tooManyMembers', 'Split it'],
    ['fifty thousand modifications in YAML', 'yaml', `modifications:\n${'- {}\n'.repeat(50_000)}`, 'tooManyMembers', 'Line 2002'],
    ['as many real ones as there is room for', 'yaml', `modifications:\n${real.repeat(4_000)}`, 'tooManyMembers', 'Line 10002'],
    ['too many in brackets', 'yaml', `modifications: [${'{},'.repeat(2_001)}]`, 'tooManyMembers', 'Line 1'],
    ['too many keys', 'yaml', Array.from({ length: 100_000 }, (_, index) => `k${index}: 1`).join('\n'), 'tooManyMembers', 'Line 2001'],
    ['too many keys of JSON', 'json', `{${Array.from({ length: 70_000 }, (_, index) => `"k${index}":1`).join()}}`, 'tooManyMembers', 'members'],
    ['a hundred thousand brackets', 'yaml', '['.repeat(100_000), 'textTooDeep', 'more than 64 deep'],
    ['a hundred thousand brackets of JSON', 'json', `${'['.repeat(100_000)}${']'.repeat(100_000)}`, 'textTooDeep', 'more than 64 deep'],
    ['a hundred thousand objects of JSON', 'json', '{"all":'.repeat(100_000), 'textTooDeep', 'more than 64 deep'],
    ['a hundred thousand dashes', 'yaml', `${'- '.repeat(100_000)}x`, 'textTooDeep', 'more than 64 deep'],
    ['a thousand levels of indentation', 'yaml', stairs, 'textTooDeep', 'more than 64 deep'],
    ['a hundred levels of indentation', 'yaml', stairs.split('\n').slice(0, 90).join('\n'), 'textTooDeep', 'Line 65'],
    ['aliases that explode', 'yaml', laughs, 'aliasRefused', 'Write out'],
    ['an alias alone', 'yaml', 'a: *b', 'aliasRefused', 'Line 1: aliases'],
    ['a tag', 'yaml', 'a: 1\nb: !!js/function "x"', 'tagRefused', 'Line 2: tags'],
    ['a directive', 'yaml', '%TAG ! tag:x,2000:\n---\na: 1', 'tagRefused', 'directives'],
    ['a prototype', 'yaml', 'a: 1\n__proto__: { b: 1 }', 'keyRefused', 'Line 2: "__proto__"'],
    ['a prototype in quotes', 'yaml', '{ "__proto__": { b: 1 } }', 'keyRefused', '"__proto__"'],
    ['a prototype in disguise', 'yaml', 'a:\n  "\\u005f_proto__": { b: 1 }', 'keyRefused', 'Line 2: "__proto__"'],
    ['a prototype of JSON', 'json', '{\n"a": {"__proto__": {}}}', 'keyRefused', 'Line 2: "__proto__"'],
    ['a prototype of JSON in disguise', 'json', '{"\\u005f_proto__": {}}', 'keyRefused', '"__proto__"'],
    ['a constructor deep inside', 'json', '[[{"a": [{"constructor": 1}]}]]', 'keyRefused', '"constructor"'],
    ['the word prototype as a key', 'yaml', 'a: { prototype: 1 }', 'keyRefused', '"prototype"'],
    ['one key twice', 'yaml', 'a: 1\nb: 2\na: 3', 'duplicateKey', 'Line 3: "a"'],
    ['one key twice in two spellings', 'yaml', '{ a: 1, "a": 2 }', 'duplicateKey', '"a"'],
    ['one key of JSON twice', 'json', '{"a": 1,\n"a": 2}', 'duplicateKey', 'Line 2: "a"'],
    ['one key of JSON twice in two spellings', 'json', '{"a": 1, "\\u0061": 2}', 'duplicateKey', '"a"'],
    ['two documents', 'yaml', 'a: 1\n---\nb: 2', 'severalDocuments', 'Line 2'],
    ['two documents with an end between them', 'yaml', '---\na: 1\n...\nb: 2', 'severalDocuments', 'Line 4'],
    ['a key of several parts', 'yaml', '? [a, b]\n: c', 'unreadable', 'question mark'],
    ['a list as a key', 'yaml', '[a, b]: c', 'unreadable', 'no key'],
    ['a key without a value between brackets that do not match', 'yaml', 'a: [b }', 'unreadable', 'Line 1'],
    ['a bracket too many', 'yaml', 'a: [b]]', 'unreadable', 'closes what nobody opened'],
    ['a tab in the place of spaces', 'yaml', 'a:\n\tb: 1', 'unreadable', 'Line 2'],
    ['two keys in a line', 'yaml', 'a: b: c', 'unreadable', 'two keys in one line'],
    ['an open quote', 'yaml', 'a: "b', 'unreadable', 'quote'],
    ['nothing', 'yaml', '# only a comment', 'unreadable', 'nothing'],
    ['nothing of JSON', 'json', '', 'unreadable', 'not JSON'],
    ['YAML sent as JSON', 'json', 'a: 1', 'unreadable', 'not JSON'],
    ['half of JSON', 'json', '{"a": "b', 'unreadable', 'not JSON'],
  ])('%s', (_, format, text, code, detail) => {
    expect(problemOf(text, format).slice(0, 300)).toMatch(new RegExp(`^${code}: `))
    expect(problemOf(text, format)).toContain(detail)
    expect(problemOf(text, format).length).toBeLessThan(400)
  })

  test('leaves the objects of the language as they are', () => {
    for (const format of ['json', 'yaml'] as const) problemOf('{"__proto__": {"polluted": true}, "constructor": {"prototype": {"polluted": true}}}', format)
    expect('polluted' in {}).toBe(false)
  })
})

/** Generous, since other work may share the machine; the figures that are printed are the ones to look at. */
const generous = 500

test.each<readonly [string, Format, string]>([
  ['10 MB of JSON', 'json', '['.repeat(10_000_000)],
  ['10 MB of YAML', 'yaml', '- a\n'.repeat(2_500_000)],
  ['50 000 modifications in JSON', 'json', `{"modifications":[${Array<string>(50_000).fill('{"modification":"m"}').join().slice(0, 1_000_000)}`],
  ['50 000 modifications in YAML', 'yaml', `modifications:\n${'- {}\n'.repeat(50_000)}`],
  ['50 000 modifications in brackets', 'yaml', `modifications: [${'{},'.repeat(50_000)}]`],
  ['brackets 100 000 deep', 'yaml', '['.repeat(100_000)],
  ['JSON 100 000 deep', 'json', '{"not":'.repeat(100_000)],
  ['dashes 100 000 deep', 'yaml', '- '.repeat(100_000)],
  ['indentation 1 000 deep', 'yaml', stairs],
  ['aliases that explode', 'yaml', laughs],
  ['a prototype key', 'yaml', '__proto__: { a: 1 }'],
  ['1 MB of closing brackets', 'yaml', filled('}')],
  ['1 MB of commas', 'yaml', `[${filled(',')}`],
  ['1 MB of colons', 'yaml', filled(':\n')],
  ['1 MB of keys in a line', 'yaml', filled('a: b: ')],
  ['1 MB of open quotes', 'yaml', filled('": ')],
  ['1 MB of bad escapes', 'yaml', `"${filled('\\q')}"`],
  ['1 MB of empty lines', 'yaml', filled('\n')],
  ['1 MB of comments', 'yaml', filled('#\n')],
  ['1 MB of lines that are no keys', 'yaml', filled('"a"\n')],
  ['1 MB of escaped quotes of JSON', 'json', `"${filled('\\"')}`],
  ['1 MB of open quotes of JSON', 'json', filled('"')],
])('%s is refused for little work', (name, format, text) => {
  const start = performance.now()
  const read = readAmendmentText(text, format)
  const took = performance.now() - start
  process.stdout.write(`${name}: ${took.toFixed(1)} ms\n`)
  expect(read.ok).toBe(false)
  expect(took).toBeLessThan(generous)
})
