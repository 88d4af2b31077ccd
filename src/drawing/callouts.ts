import type { Finding } from '../evaluation/document.ts'
import type { FullEvaluation } from '../evaluation/evaluate.ts'
import type { Callout } from './drawing.ts'
import type { End } from './known.ts'
import type { Point } from './shape.ts'

/** Parts that can be pointed at in a drawing: the name of the part, or "part:left" where it has two ends. */
export type Anchors = ReadonlyMap<string, Point>

export interface CalloutGroup {
  readonly number: number
  readonly sign: 'fail' | 'advice' | 'undetermined'
  readonly at: Point
  readonly callouts: readonly Callout[]
  readonly findings: readonly Finding[]
  readonly part: string
}

export interface CalledOut {
  readonly groups: readonly CalloutGroup[]
  /** Findings that fail or are open and have no place in this drawing. */
  readonly elsewhere: number
}

/** Which facts belong to which part; the first that fits. */
const partsOfFacts: readonly (readonly [start: string, part: string])[] = [
  ['head.flashing.endDam', 'endDam'], ['head.flashing.extension', 'headFlashingEnd'], ['head.flashing.upstand', 'upstand'], ['head.flashing.barrierLap', 'barrierLap'],
  ['head.flashing.topEdge', 'upstand'], ['head.flashing.projection', 'drip'], ['head.flashing.drip', 'drip'], ['head.flashing.frontEdge', 'drip'], ['head.flashing.splice', 'headSplice'], ['head.flashing', 'headFlashing'],
  ['head.support.bearing', 'bearing'], ['head.support.endGap', 'bearing'], ['head.support', 'lintel'], ['head.weeps', 'headWeeps'],
  ['sill.flashing.endDam', 'sillEndDam'], ['sill.flashing', 'sillFlashing'], ['sill.weeps', 'sillWeeps'], ['sill.pan', 'sillPan'], ['sill.gapUnderFrame', 'sillPan'], ['sill', 'sill'],
  ['base.weeps', 'baseWeeps'], ['base.flashing', 'baseFlashing'], ['base', 'base'], ['ties', 'ties'], ['barrier.headFlap', 'barrierLap'], ['barrier', 'barrier'],
  ['jambs', 'jambs'], ['wall.airSpace', 'airSpace'], ['wall.cavity', 'airSpace'], ['wall.veneer', 'veneer'], ['wall', 'wall'], ['opening', 'opening'],
]

/** Where a part is not drawn by itself, what it belongs to. */
const within: Readonly<Record<string, string>> = {
  endDam: 'headFlashing', headFlashingEnd: 'headFlashing', upstand: 'headFlashing', drip: 'headFlashing', headSplice: 'headFlashing', barrierLap: 'barrier', bearing: 'lintel',
  sillEndDam: 'sillFlashing', sillFlashing: 'sill', sillPan: 'sill', baseFlashing: 'base', baseWeeps: 'baseFlashing', veneer: 'wall', head: 'lintel',
}

const mostFails = 8

/** Findings that fail get a number each, as far as there is room; what is not determined gets one number for each part. */
export function calledOutIn(anchors: Anchors, { assessment }: FullEvaluation): CalledOut {
  const open = assessment.findings.filter(({ outcome }) => outcome === 'fail' || outcome === 'notDetermined')
  const placed = open.flatMap((finding) => placesOf(finding, anchors))
  const fails = placed.filter(({ finding }) => finding.outcome === 'fail').toSorted((a, b) => rank(a.finding) - rank(b.finding))
  const alone = fails.slice(0, mostFails).map((one) => [one])
  const rest = [...grouped(fails.slice(mostFails)), ...grouped(placed.filter(({ finding }) => finding.outcome === 'notDetermined'))]
  return { groups: [...alone, ...rest].map((members, index) => groupOf(members, index + 1)), elsewhere: open.length - placed.length }
}

interface Placed {
  readonly finding: Finding
  readonly part: string
  readonly key: string
  readonly at: Point
}

function placesOf(finding: Finding, anchors: Anchors): readonly Placed[] {
  for (let part: string | undefined = partOf(finding); part !== undefined; part = within[part]) {
    const keys = [`${part}:${finding.member ?? 'right'}`, part, `${part}:left`]
    const key = keys.find((one) => anchors.has(one))
    const at = key === undefined ? undefined : anchors.get(key)
    if (key !== undefined && at) return [{ finding, part, key, at }]
  }
  return []
}

function partOf({ fact, part }: Finding): string {
  return partsOfFacts.find(([start]) => fact?.startsWith(start))?.[1] ?? part
}

/** What the law asks for comes first. */
function rank({ force }: Finding): number {
  return force === 'mandatory' ? 0 : 1
}

function grouped(placed: readonly Placed[]): readonly (readonly Placed[])[] {
  const byKey = new Map<string, Placed[]>()
  for (const one of placed) byKey.set(one.key, [...(byKey.get(one.key) ?? []), one])
  return [...byKey.values()]
}

function groupOf(members: readonly Placed[], number: number): CalloutGroup {
  const findings = members.map(({ finding }) => finding)
  const isFail = findings.some(({ outcome }) => outcome === 'fail')
  const sign = isFail ? (findings.some(({ force }) => force === 'mandatory') ? 'fail' : 'advice') : 'undetermined'
  const callouts = findings.map((finding): Callout => ({ number, rule: finding.rule, outcome: finding.outcome === 'fail' ? 'fail' : 'notDetermined', text: calloutText(finding) }))
  return { number, sign, at: members[0]?.at ?? [0, 0], callouts, findings, part: members[0]?.part ?? '' }
}

function calloutText({ title, member, measured, required, outcome }: Finding): string {
  const where = member === null ? title : `${title}, ${endWords[member]}`
  if (outcome !== 'fail') return `${where}: required ${required.text}`
  return `${where}: ${measured ? `${measured.text}, ` : ''}required ${required.text}`
}

const endWords: Readonly<Record<End, string>> = { left: 'left end', right: 'right end' }

/** The line that stands beside the number in the legend. */
export function legendText({ sign, callouts, findings }: CalloutGroup): string {
  const [first] = callouts
  if (sign === 'undetermined') return `Not determined: ${listed(findings)}.`
  const force = findings.some(({ force }) => force === 'mandatory') ? 'Fails, mandatory' : 'Fails, recommended'
  return callouts.length === 1 ? `${force}: ${first?.text ?? ''}.` : `${force} (${callouts.length} findings): ${listed(findings)}.`
}

const mostListed = 4

function listed(findings: readonly Finding[]): string {
  const titles = [...new Set(findings.map(({ title }) => title))]
  const more = titles.length - mostListed
  return `${titles.slice(0, mostListed).join('; ')}${more > 0 ? `; and ${more} more` : ''}`
}
