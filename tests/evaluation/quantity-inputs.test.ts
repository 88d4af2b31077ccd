import { expect, test } from 'vitest'
import type { Comparator, QuantityLimit } from '../../src/catalog/limit.ts'
import { quantityInputs } from '../../src/evaluation/quantity-inputs.ts'
import { realCatalog } from '../catalog/real-catalog.ts'
import { citation, openingWith, resolvedRule } from './subject.ts'

const catalog = await realCatalog()

function limitOf(comparator: Comparator, figures: Partial<QuantityLimit>) {
  const rule = resolvedRule({ check: { fact: 'ties.verticalSpacing', comparator } }, { ...citation, governing: 'inchPound', inchPound: '24 [in_i]', si: '610 mm', ...figures })
  const ruleSet = { jurisdiction: null, resolvedAt: null, asOf: '2026-01-01', adoption: null, editions: [], adopted: true, inPart: false, rules: [rule], repealed: [] }
  return quantityInputs(openingWith({}), ruleSet, catalog).limit(rule.rule.rule)
}

test('a quantity is computed by the figure that governs', () => {
  expect(limitOf('notMoreThan', {})).toMatchObject({ quantity: { amount: 609_600_000 }, text: 'at most 24 in (610 mm)' })
  expect(limitOf('notMoreThan', { governing: 'si' })).toMatchObject({ quantity: { amount: 610_000_000 } })
})

test.each<readonly [Comparator, number]>([['notMoreThan', 609_600_000], ['lessThan', 609_600_000], ['notLessThan', 737_000_000], ['moreThan', 737_000_000]])(
  'where the text contradicts itself, %s is computed by the stricter figure, and says so',
  (comparator, amount) => {
    for (const governing of ['inchPound', 'si'] as const) {
      expect(limitOf(comparator, { governing, si: '737 mm', printedConflict: 'So printed.' })).toMatchObject({ quantity: { amount }, text: expect.stringContaining('the stricter figure is taken') as string })
    }
  },
)
