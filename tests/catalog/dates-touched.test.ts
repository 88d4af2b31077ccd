import { expect, test } from 'vitest'
import type { Amendment } from '../../src/catalog/amendment.ts'
import type { Catalog } from '../../src/catalog/catalog.ts'
import { datesTouched } from '../../src/catalog/dates-touched.ts'
import { loadPatched } from './small-catalog.ts'

const loaded = await loadPatched({})
if (!loaded.ok) throw new Error('the small catalog does not load')
const small: Catalog = loaded.catalog

const act = (jurisdiction: string, effectiveFrom: string, effectiveUntil: string | null = null): Amendment => ({
  amendment: `${jurisdiction}/x`, jurisdiction, amends: { publication: 'irc', editions: ['2018'] }, instrument: { kind: 'act', number: '1', adopted: '2018-01-01' },
  effectiveFrom, effectiveUntil, application: 'permitApplicationDate', supersedes: [], modifications: [], examples: [],
})

test.each<readonly [string, Amendment, readonly string[]]>([
  ['its own bounds alone, where nothing else happens', act('aa-closed', '2000-01-01', '2001-01-01'), ['2000-01-01', '2001-01-01']],
  ['adoptions of an outer layer and amendments of its own', act('aa-open-01', '2019-01-01'), ['2019-01-01', '2020-01-01', '2021-04-07', '2025-07-01']],
  ['amendments and adoptions of the layers within', act('aa', '2021-01-01', '2024-01-01'), ['2021-01-01', '2021-04-07', '2023-01-01', '2024-01-01']],
  ['nothing of its neighbors', act('aa-closed-01', '2019-01-01'), ['2019-01-01', '2023-01-01']],
  ['nothing before it or after it', act('aa-open-01', '2021-05-01', '2025-01-01'), ['2021-05-01', '2025-01-01']],
])('%s', (_, amendment, dates) => expect(datesTouched(small, [amendment])).toEqual(dates))

test('of several amendments each date is named once', () => {
  expect(datesTouched(small, [act('aa-open-01', '2026-01-01'), act('aa', '2026-01-01', '2027-01-01')])).toEqual(['2026-01-01', '2027-01-01'])
})
