import { createHash } from 'node:crypto'
import { describe, expect, test } from 'vitest'
import { outcomeWords } from '../../src/evaluation/words.ts'
import { holdPoints } from '../../src/opening/hold-points.ts'
import { escaped } from '../../src/report/markup.ts'
import { policyOf } from '../../src/report/document.ts'
import { shellWords } from '../shell-words.ts'
import { complaintsAbout, evaluated, reported } from './reported.ts'

const missed = evaluated('missed-end-dam')
const page = reported(missed)
const { evaluation } = missed

const sections = sectionsOf(page)

/** What is said at each hold point: of what needs somebody, and of what is settled. */
function sectionsOf(text: string): ReadonlyMap<string, string> {
  const open = text.matchAll(/<section class="hold-point" aria-labelledby="at-(\w+)">([\s\S]*?)(?=<section class="hold-point"|<section aria-labelledby="(?:settled|quantities)")/g)
  const settled = text.matchAll(/<tbody><tr class="group"><th scope="rowgroup" colspan="4" id="settled-(\w+)">([\s\S]*?)<\/tbody>/g)
  const sections = new Map<string, string>()
  for (const [, id = '', own = ''] of [...open, ...settled]) sections.set(id, (sections.get(id) ?? '') + own)
  return sections
}

describe('every finding', () => {
  test.each(evaluation.findings)('$rule stands once, under its hold point', ({ rule, holdPoint }) => {
    const stands = [...sections].flatMap(([id, text]) => [...text.matchAll(new RegExp(`id="${rule.replaceAll('.', '\\.')}"`, 'g'))].map(() => id))
    expect(stands).toEqual([holdPoint])
  })

  test.each(evaluation.findings)('$rule stands with its outcome, its requirement, its source and the grade of its evidence', ({ rule, title, holdPoint, chain, evidence, required, outcome }) => {
    const own = ownPart(sections.get(holdPoint) ?? '', rule)
    for (const { action, locator, document } of chain) {
      if (action === 'published') expect(own).toContain(escaped(locator ?? ''))
      else if (document !== evaluation.adoption) expect(own).toContain(escaped(document ?? ''))
    }
    expect(own).toContain(`class="evidence ${evidence}"`)
    expect(outcome === 'notDetermined' ? captionOver(sections.get(holdPoint) ?? '', rule) : own).toContain(` ${outcomeWords[outcome]}`)
    if (required.text.length > 200) expect(page).toContain(`<p class="in-full" id="all-${rule}">${escaped(`${title}: ${required.text}`)}.</p>`)
    else expect(own).toContain(escaped(required.text))
  })

  test('that is missed has its remedies, and its cautions by number', () => {
    const metric = evaluated('metric-precast-sill')
    const text = reported(metric)
    const misses = metric.evaluation.findings.filter(({ outcome }) => outcome === 'fail')
    expect(misses.length).toBeGreaterThan(3)
    for (const { rule, holdPoint, remedy, cautions, measured } of misses) {
      const own = ownPart(sectionsOf(text).get(holdPoint) ?? '', rule)
      for (const said of [measured?.text, remedy?.beforeCoverUp, remedy?.afterCoverUp]) expect(own).toContain(escaped(said ?? 'nothing'))
      for (const caution of cautions) {
        const number = /<li id="caution-(\d+)">$/.exec(text.slice(0, text.indexOf(`>${escaped(caution)}</li>`) + 1))?.[1]
        expect(own).toContain(`href="#caution-${number ?? 'none'}"`)
      }
    }
  })

  test.each([['at', 12], ['settled', 12]] as const)('stands in the order of the work: %s', (of, most) => {
    const order = [...page.matchAll(new RegExp(`id="${of}-(\\w+)"`, 'g'))].map(([, id]) => id)
    expect(order.length).toBeGreaterThan(most / 2)
    expect(order).toEqual(holdPoints.map(({ id }) => id as string).filter((id) => order.includes(id)))
  })

  test('that is met stands with what was found, at each end', () => {
    const met = evaluation.findings.filter(({ outcome }) => outcome === 'pass')
    expect(met.length).toBeGreaterThan(20)
    for (const { rule, holdPoint, members, measured } of met) for (const end of members.length > 1 ? members : [{ measured }]) if (end.measured) expect(ownPart(sections.get(holdPoint) ?? '', rule)).toContain(escaped(end.measured.text))
  })
})

/** What is said of one rule: its card, its row or its line. */
function ownPart(section: string, rule: string): string {
  return section.split(/(?=<article|<tr>)/).find((part) => part.includes(`id="${rule}"`)) ?? ''
}

/** The caption of the table in which a rule stands. */
function captionOver(section: string, rule: string): string {
  return /<caption>([\s\S]*?)<\/caption>/.exec(section.slice(section.lastIndexOf('<caption>', section.indexOf(`id="${rule}"`))))?.[1] ?? ''
}

describe('the page', () => {
  test('says verdict, notice, release and both digests', () => {
    expect(page).toMatch(/<h2 id="verdict">Verdict: <span class="outcome incomplete">[\s\S]{1,600}? Incomplete<\/span><\/h2>/)
    expect(evaluation.summary.verdict).toBe('incomplete')
    for (const said of [evaluation.notice, evaluation.catalog.release, evaluation.catalog.digest, evaluation.digest, evaluation.method]) expect(page).toContain(escaped(said))
  })

  test('says every figure that was computed, and what is missing for the others', () => {
    const quantities = page.slice(page.indexOf('id="quantities"'))
    const plain = quantities.replaceAll(/<[^>]+>/g, '')
    for (const { title, value, status, formula, steps, indicative, tables } of evaluation.quantities) {
      expect(quantities).toContain(escaped(title))
      if (status === 'computed' && !/ (in|ft|lbf|psi)/.test(value ?? '')) expect(quantities).toContain(escaped(value ?? ''))
      if (status === 'computed') for (const told of [formula, ...steps]) expect(plain).toContain(escaped(told))
      for (const table of tables) expect(quantities.includes(escaped(`${title}: ${table.title}`))).toBe(!indicative)
    }
  })

  test('has every drawing in it', () => {
    expect([...page.matchAll(/<svg xmlns[^>]*data-kind="(\w+)"/g)].map(([, kind]) => kind)).toEqual(['elevation', 'section', 'flashingPattern', 'weepsAndTies'])
  })

  test('has the request as a shell takes it', () => {
    const hostile = { opening: { reference: "O'Hara's $(id) `x`" } }
    const call = /<pre[^>]*>([\s\S]*?)<\/pre>/.exec(reported(missed, { origin: { publicUrl: 'https://wythe.example', path: null, request: hostile } }))?.[1] ?? ''
    const plain = call.replaceAll('&#39;', "'").replaceAll('&quot;', '"').replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&amp;', '&')
    const words = shellWords(plain).flat()
    expect(JSON.parse(words.at(-1) ?? '')).toEqual(hostile)
  })

  test.each(['missed-end-dam', 'baseline-window', 'louver', 'metric-precast-sill', 'arch'])('of %s is valid HTML', async (fixture) => {
    expect(await complaintsAbout(reported(evaluated(fixture)))).toEqual([])
  })

  test('says so where nothing can be drawn', () => expect(reported(missed, { drawings: [], withoutDrawings: 'Nothing <is> drawn.' })).toContain('Nothing &lt;is&gt; drawn.'))

  test('is the same for the same evaluation', () => expect(reported(missed)).toBe(page))
})

describe('the validator is awake', () => {
  test('to a table row outside a table, an id used twice and a tag left open', async () => {
    const broken = page.replace('<main>', '<main><p id="next"><div><tr>')
    expect((await complaintsAbout(broken)).map((complaint) => complaint.split(' ')[0])).toEqual(expect.arrayContaining(['no-dup-id', 'element-permitted-content', 'close-order']))
  })
})

describe('what people write', () => {
  const hostile = `</title><script>alert(1)</script>"'&<img src=x onerror=alert(2)>\u202e\u0000]]>}</style>`
  const attacked = reported(evaluated('missed-end-dam', { reference: hostile }))

  test('is shown and never becomes markup', async () => {
    expect(attacked).toContain('&lt;script&gt;alert(1)&lt;/script&gt;')
    expect(attacked).not.toMatch(/<script|<img|onerror=alert\(2\)>[^&]|\u0000/)
    expect([...attacked.matchAll(/<\/style>/g)]).toHaveLength(1)
    expect(await complaintsAbout(attacked)).toEqual([])
  })

  test('leaves the policy of the page as it is: its own style, no script, nothing from outside', () => {
    const style = /<style>([\s\S]*?)<\/style>/.exec(attacked)?.[1] ?? ''
    const digest = createHash('sha256').update(style).digest('base64')
    expect(policyOf(attacked)).toBe(`default-src 'none'; style-src 'sha256-${digest}'; img-src data:; base-uri 'none'; form-action 'none'`)
  })

  test('an address that is none of the web leads nowhere', () => {
    const chain = [{ ...evaluation.findings[0]?.chain[0], action: 'published', readIn: 'javascript:alert(1)' }]
    const findings = evaluation.findings.map((finding) => ({ ...finding, chain })) as typeof evaluation.findings
    expect(reported({ ...missed, evaluation: { ...evaluation, findings } })).not.toContain('href="javascript')
  })
})

test('nothing is taken from outside', () => {
  expect(page).not.toMatch(/<(?:script|link|iframe|object|embed|img)\b|url\(|@import/)
})
