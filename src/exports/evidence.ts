import type { UnreadEntry } from '../record/entry.ts'
import type { ExportedOpening } from './exported-building.ts'
import { looksAfterMending, readingsBehind, type Judged } from './judged.ts'
import { uriOf } from './address.ts'

/** A picture or a paper that is kept elsewhere. */
export interface Evidence {
  readonly entry: string
  readonly uri: string
  readonly sha256: string
  readonly takenAt: string | null
}

export function bodyOf({ entries }: ExportedOpening, id: string): UnreadEntry | undefined {
  return entries.find((entry) => entry.id === id)?.body as UnreadEntry | undefined
}

export function evidenceOf(at: ExportedOpening, entry: string): readonly Evidence[] {
  return (bodyOf(at, entry)?.evidence ?? []).map(({ link, sha256, takenAt }) => ({ entry, uri: uriOf(link), sha256, takenAt: takenAt ?? null }))
}

/** What shows a finding: the evidence of its readings, its waivers and of whoever looked after mending, each picture once. */
export function evidenceBehind(judged: Judged): readonly Evidence[] {
  const entries = [...readingsBehind(judged), ...judged.waivers, ...looksAfterMending(judged)].map(({ entry }) => entry)
  const all = [...new Set(entries)].flatMap((entry) => evidenceOf(judged.at, entry))
  return [...new Map(all.map((one) => [`${one.uri} ${one.sha256}`, one])).values()]
}
