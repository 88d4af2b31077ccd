import fc from 'fast-check'
import { expect, test } from 'vitest'
import { embedmentOrdinance } from '../api/jurisdiction.ts'
import { damaged, hostile } from './hostile.ts'
import { cases, fuzzedService, holdsUp } from './service.ts'

const { ask } = await fuzzedService()
const ordinance = embedmentOrdinance('us-xa-101')
const url = '/v1/amendment-drafts?validateOnly=true'

/** A text that was damaged several times over. */
const texts = fc.nat({ max: 4 }).chain((times) => Array.from({ length: times }).reduce<fc.Arbitrary<string>>((before) => before.chain(damaged), damaged(ordinance)))

/** An amendment in which some scalar is something else. */
const spoiled = fc.tuple(fc.nat(), hostile).map(([place, value]) => {
  const scalars = [...ordinance.matchAll(/: ([^\s{[][^\n,}]*)/g)]
  const found = scalars[place % scalars.length]
  return found ? ordinance.slice(0, found.index) + `: ${JSON.stringify(value)}` + ordinance.slice(found.index + found[0].length) : ordinance
})

test('whatever is sent as an amendment is judged or refused', async () => {
  let taken = 0
  await fc.assert(
    fc.asyncProperty(fc.oneof(texts, spoiled), async (payload) => {
      const response = await holdsUp(ask({ method: 'POST', url, payload, headers: { 'content-type': 'application/yaml' } }))
      if (response.statusCode < 400) taken += 1
    }),
    { numRuns: cases },
  )
  // Some damage does no harm, so that it is not only the first check that is tried
  expect(taken).toBeGreaterThan(0)
}, 600_000 + cases * 100)
