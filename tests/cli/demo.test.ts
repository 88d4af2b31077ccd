import { expect, test } from 'vitest'
import { realCatalog } from '../catalog/real-catalog.ts'
import { runCompiled } from './run-compiled.ts'

test('the demonstration shows every opening of the building over both doors, with the same verdict, and ends', async () => {
  const { code, stdout, stderr } = await runCompiled('cli/demo.js')
  expect({ code, stderr }).toEqual({ code: 0, stderr: '' })
  const { buildings } = await realCatalog()
  for (const { openings } of buildings.values()) {
    for (const { story, opening } of openings) {
      const reference = String(opening['reference'])
      expect(stdout).toContain(story)
      const [, overRest] = new RegExp(`^${reference}: ([A-Z]+)$`, 'm').exec(stdout) ?? []
      const [, overGraphql] = new RegExp(`^${reference} +([a-z]+) +lintel `, 'm').exec(stdout) ?? []
      expect(overRest?.toLowerCase(), reference).toMatch(/^(pass|attention|incomplete|fail)$/)
      expect(overGraphql, reference).toBe(overRest?.toLowerCase())
    }
  }
})
