import { loadCatalog } from '../store/load-catalog.ts'
import type { CommandResult } from './output.ts'

/** Checks a catalog folder: shapes, references, units, amendments and every example. */
export async function checkCatalogFolder(folder: string): Promise<CommandResult> {
  const loaded = await loadCatalog(folder)
  if (!loaded.ok) {
    const lines = loaded.problems.map(({ code, path, pointer, detail }) => `${path}${pointer === '' ? '' : `#${pointer}`}\n  ${code}: ${detail}`)
    return { text: `${lines.join('\n')}\n${loaded.problems.length === 1 ? '1 problem' : `${loaded.problems.length} problems`}. The catalog is not put to use.\n`, exitCode: 1 }
  }
  const { rules, publications, jurisdictions, amendments, parameters, tables, release, digest } = loaded.catalog
  const limits = [...rules.values()].flatMap((rule) => rule.limits)
  const graded = (['primary', 'secondary', 'memory'] as const).map((grade) => `${limits.filter(({ evidence }) => evidence === grade).length} ${grade}`)
  const lines = [
    `Release ${release}, ${digest}`,
    `${rules.size} rules with ${limits.length} limits (${graded.join(', ')}) and ${[...rules.values()].reduce((sum, rule) => sum + rule.examples.length, 0)} examples, all as stated`,
    `${publications.size} publications, ${jurisdictions.size} jurisdictions, ${amendments.length} amendments, ${parameters.size} parameters, ${tables.size} tables`,
  ]
  return { text: `${lines.join('\n')}\n`, exitCode: 0 }
}
