import fc from 'fast-check'

/** Values that have broken parsers, matchers and databases before. */
const nasty: readonly unknown[] = [
  '', ' ', '\u0000', '\u202e', '\ud800', 'w\udc00', { '\udbff': 1 }, '﷽'.repeat(50), '٣', '½', '3 7/8 in', "4'-6 1/2\"", '-1 in', '1e309 mm', '0x10', 'NaN', 'Infinity', '__proto__', 'constructor', 'toString', '../../etc/passwd', '%00', '${7*7}', "' or 1=1 --", '<script>',
  'a'.repeat(10_000), `${'1'.repeat(400)} in`, `${'1 '.repeat(2_000)}in`, `${'-'.repeat(5_000)}x`, `${'a-'.repeat(3_000)}!`, '('.repeat(2_000), `${'1/'.repeat(1_000)}1`,
  0, -0, 1e308, -1e308, 5e-324, 2 ** 53 + 1, null, true, false, [], {}, [[]], [null, null], [null, null, null], { '': null }, { length: 1e9 }, { toString: 'x' }, { value: 1, unit: 'parsec' }, { value: '1'.repeat(60), unit: 'in' },
  nested(500), { constructor: { prototype: { polluted: true } } },
]

export const hostile: fc.Arbitrary<unknown> = fc.oneof({ weight: 3, arbitrary: fc.constantFrom(...nasty) }, { weight: 1, arbitrary: fc.jsonValue({ maxDepth: 3 }) })

/** Damage done to a text: something cut out, put in or said twice. */
export function damaged(text: string): fc.Arbitrary<string> {
  const place = fc.nat({ max: Math.max(0, text.length) })
  const piece = fc.constantFrom('"__proto__":{"polluted":true},', '{', '}', '[', ']', '"', ',', ':', '\\', '\u0000', '\ud800', '\\ud800', '&a [*a,*a]', '!!js/function x', '<<: *x', '- ', '\n  ', '\t', '1e999', '9'.repeat(50), 'null')
  return fc.tuple(place, place, piece, fc.nat({ max: 3 })).map(([from, to, put, way]) => {
    const [a, b] = [Math.min(from, to), Math.max(from, to)]
    if (way === 0) return text.slice(0, a) + put + text.slice(a)
    if (way === 1) return text.slice(0, a) + text.slice(Math.min(b, a + 40))
    return way === 2 ? text.slice(0, b) + text.slice(a, b) + text.slice(b) : text.slice(0, a)
  })
}

function nested(depth: number): unknown {
  return depth === 0 ? 0 : [nested(depth - 1)]
}
