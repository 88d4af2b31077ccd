import type { Catalog } from '../catalog/catalog.ts'
import type { ResolvedRule } from '../catalog/rule-set.ts'
import type { Assessment, Finding } from '../evaluation/document.ts'
import type { Miss } from '../record/finding-history.ts'
import type { OpeningRecord, RecordedEntry } from '../record/opening-record.ts'

/** Which findings go out: what is not met; that and what is not decided; or every one. */
export const exportScopes = ['misses', 'open', 'all'] as const
export type ExportScope = (typeof exportScopes)[number]

/** One opening with all that an export tells of it. */
export interface ExportedOpening {
  readonly opening: string
  readonly record: OpeningRecord
  /** Everything on record of it, in the order in which it arrived. */
  readonly entries: readonly RecordedEntry[]
  /** As it was seen, and as it was drawn where nobody has looked yet; null while it is not described far enough. */
  readonly assessment: Assessment | null
  /** What has to be known before it can be evaluated at all. */
  readonly missing: readonly string[]
  /** The findings before the last posting; null where that was the first look. */
  readonly before: readonly Finding[] | null
  readonly misses: readonly Miss[]
}

/** A building as it goes out. The same one gives the same document, byte for byte. */
export interface ExportedBuilding {
  readonly project: { readonly id: string; readonly title: string; readonly jurisdiction: string | null; readonly asOf: string; readonly edition: string | null; readonly publication: string | null; readonly createdAt: string }
  readonly catalog: Pick<Catalog, 'release' | 'digest' | 'cautions'>
  /** The name of the arithmetic and logic by which it was judged. */
  readonly method: string
  /** What applies at its place and date. */
  readonly rules: readonly ResolvedRule[]
  readonly openings: readonly ExportedOpening[]
  readonly scope: ExportScope
  /** When the document is made. */
  readonly at: string
  /** Where the service is reached, without a slash at the end. */
  readonly publicUrl: string
}
