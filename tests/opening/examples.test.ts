import { describe, expect, test } from 'vitest'
import { facts } from '../../src/opening/facts.ts'
import { valueOf } from '../../src/opening/opening.ts'
import { described, documentOf, openingFiles } from './openings.ts'

const length = (amount: number) => ({ dimension: 'length', amount })

describe('the example openings', () => {
  test('there are some', () => expect(openingFiles.length).toBeGreaterThanOrEqual(6))

  test.each(openingFiles)('%s is described without a problem or a contradiction', (file) => {
    const opening = described(documentOf(file))
    expect(opening.reference).toBeTruthy()
    expect([...opening.facts].filter(([, readings]) => readings.some((reading) => reading?.conflictsWith))).toEqual([])
  })

  test('of the baseline window every fact is known, at both ends', () => {
    const { facts: known } = described(documentOf('baseline-window.yaml'))
    expect([...facts.keys()].filter((path) => known.get(path)?.some((reading) => reading === undefined) ?? true)).toEqual([])
  })

  test('the missed end dam is at the right', () => {
    expect(described(documentOf('missed-end-dam.yaml')).facts.get('head.flashing.endDamPresent')?.map((reading) => reading?.value)).toEqual([true, false])
  })

  test('the half-seen head is known at the left only, each length to its own tape', () => {
    const { facts: known } = described(documentOf('half-seen-head.yaml'))
    expect(known.get('head.flashing.endDamHeight')).toMatchObject([{ value: length(44_450_000), resolution: 1_587_500 }, undefined])
    expect(known.get('head.flashing.extensionPastSupport')).toMatchObject([{ value: length(114_300_000), resolution: 6_350_000 }, undefined])
    expect(known.has('head.flashing.barrierLap')).toBe(false)
  })

  test('the metric opening leads with SI', () => {
    const opening = described(documentOf('metric-precast-sill.yaml'))
    expect(opening.unitSystem).toBe('si')
    expect(valueOf(opening, 'wall.heightAboveHead')).toEqual(length(1_400_000_000))
  })
})
