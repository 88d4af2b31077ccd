import type { Finding, Verdict } from '../evaluation/document.ts'
import type { HoldPoint } from '../opening/hold-points.ts'
import type { UnitSystem } from '../units/dimension.ts'

/** An amount in both unit systems. */
interface InBoth {
  readonly inchPound: string
  readonly si: string
}

interface Counts {
  readonly pass: number
  readonly fail: number
  readonly notDetermined: number
  readonly notApplicable: number
}

export interface ReadinessShown {
  readonly holdPoint: HoldPoint
  readonly ready: boolean
  readonly signedOff: boolean
  readonly undecided: readonly string[]
  readonly notMet: readonly string[]
  readonly waived: readonly string[]
}

export interface OpeningShown extends Counts {
  readonly opening: string
  readonly reference: string | null
  readonly unitSystem: UnitSystem
  readonly holdPoint: HoldPoint | null
  readonly verdict: Verdict
  readonly mandatoryFailures: number
  readonly mandatoryNotDetermined: number
  readonly noLongerInSight: readonly string[]
  readonly readiness: readonly ReadinessShown[]
}

export interface FailureShown extends Pick<Finding, 'rule' | 'title' | 'holdPoint' | 'member' | 'measured' | 'required' | 'margin' | 'remedy' | 'cautions' | 'evidence' | 'chain' | 'withinResolution'> {
  readonly opening: string
  readonly reference: string | null
  readonly waived: boolean
  readonly covered: boolean | null
  readonly seen: { readonly at: string; readonly by: string } | null
}

export interface WalkShown {
  readonly holdPoint: HoldPoint
  readonly title: string
  readonly openings: readonly { readonly opening: string; readonly reference: string | null; readonly facts: readonly { readonly title: string; readonly lastChance: boolean; readonly mandatory: boolean }[] }[]
}

export interface LintelShown {
  readonly mark: string
  readonly count: number
  readonly references: readonly string[]
  readonly width: InBoth | null
  readonly support: string | null
  readonly section: string | null
  readonly chosen: string
  readonly length: InBoth
  readonly bearing: InBoth | null
  readonly weight: InBoth | null
}

export interface PieceShown {
  readonly place: string
  readonly length: InBoth
  readonly girth: InBoth | null
  readonly count: number
  readonly references: readonly string[]
}

export interface CutListShown {
  readonly place: string
  readonly girth: InBoth | null
  readonly plan: { readonly bars: readonly { readonly stock: InBoth; readonly pieces: readonly { readonly reference: string; readonly length: InBoth }[]; readonly offcut: InBoth }[] }
}

export interface TotalShown extends InBoth {
  readonly title: string
  readonly counted: readonly string[]
  readonly notKnown: readonly string[]
}

/** A building as its report shows it; texts are ready to be read. */
export interface ReportedBuilding {
  readonly project: string
  readonly title: string
  readonly jurisdiction: string | null
  readonly asOf: string
  readonly editions: readonly string[]
  readonly basis: string
  readonly catalog: { readonly release: string; readonly digest: string }
  readonly openings: number
  readonly evaluated: number
  readonly verdicts: Readonly<Record<Verdict | 'notEvaluated', number>>
  readonly holdPoints: readonly (Counts & { readonly holdPoint: HoldPoint; readonly title: string; readonly ready: number; readonly notReady: number; readonly signedOff: number })[]
  readonly status: readonly OpeningShown[]
  readonly failures: readonly FailureShown[]
  readonly walks: readonly WalkShown[]
  readonly lintels: readonly LintelShown[]
  readonly flashing: readonly PieceShown[]
  readonly cutLists: readonly CutListShown[]
  readonly totals: readonly TotalShown[]
  readonly gaps: readonly { readonly reference: string; readonly title: string; readonly missing: readonly string[]; readonly why: string | null }[]
  readonly notEvaluated: readonly { readonly opening: string; readonly reference: string | null; readonly problems: readonly { readonly pointer: string; readonly detail: string }[] }[]
  readonly notice: string
}
