import { facts, isHidden, nextToHide } from '../opening/facts.ts'
import { compareHoldPoints, type HoldPoint } from '../opening/hold-points.ts'
import { askedAbout, questionName, type Asked } from './question-name.ts'
import type { Reasons } from './reasons.ts'

/** The sections of a form, in their order: what is hidden next, what belongs to this hold point, what is left open from earlier ones. */
export const sectionNames = ['lastChance', 'now', 'overdue'] as const
export type SectionName = (typeof sectionNames)[number]

export interface Question extends Asked {
  readonly name: string
  readonly section: SectionName
  readonly reasons: Reasons
  /** True where somebody has read it already, and nothing contradicts that. */
  readonly isRead: boolean
}

/** A question that matters, was never answered, and whose answer can no longer be seen. */
export type Covered = Asked & { readonly name: string; readonly hiddenBy: HoldPoint; readonly reasons: Reasons }

/** What is known already. */
export interface Standing {
  /** False where a form is made for no opening in particular. */
  readonly onRecord: boolean
  /** Whether a question still wants an answer: nobody has read it, or two readings contradict each other. */
  readonly isOpen: (asked: Asked & { readonly name: string }) => boolean
}

/** The questions of a hold point: section by section, unread ones first, mandatory ones first, and beside each other what lies beside each other. */
export function questionsAt(holdPoint: HoldPoint, reasonsOf: ReadonlyMap<string, Reasons>, standing: Standing): readonly Question[] {
  const questions = [...reasonsOf].flatMap(([fact, reasons]) => askedAbout(fact).flatMap((asked): Question[] => {
    const name = questionName(asked)
    const isOpen = standing.isOpen({ ...asked, name })
    const section = sectionOf(fact, holdPoint, reasons, { isOpen, onRecord: standing.onRecord })
    return section ? [{ ...asked, name, section, reasons, isRead: standing.onRecord && !isOpen }] : []
  }))
  return questions.toSorted((a, b) => sectionNames.indexOf(a.section) - sectionNames.indexOf(b.section) || weight(a) - weight(b))
}

export function coveredAt(holdPoint: HoldPoint, reasonsOf: ReadonlyMap<string, Reasons>, { onRecord, isOpen }: Standing): readonly Covered[] {
  if (!onRecord) return []
  return [...reasonsOf].flatMap(([fact, reasons]) => {
    const hiddenBy = facts.get(fact)?.hiddenBy
    if (!hiddenBy || !isHidden(fact, holdPoint) || !isMandatory(reasons)) return []
    return askedAbout(fact).map((asked) => ({ ...asked, name: questionName(asked), hiddenBy, reasons })).filter(isOpen)
  })
}

export function isMandatory({ rules }: Reasons): boolean {
  return rules.some(({ rule }) => rule.force === 'mandatory')
}

interface State {
  readonly isOpen: boolean
  readonly onRecord: boolean
}

/** Where a question belongs; undefined where its fact cannot be seen, or where nobody needs it at this hold point. */
function sectionOf(fact: string, holdPoint: HoldPoint, reasons: Reasons, { isOpen, onRecord }: State): SectionName | undefined {
  const { from, hiddenBy } = facts.get(fact) ?? {}
  if (!isInSight(fact, holdPoint)) return undefined
  const next = nextToHide(holdPoint)
  if (hiddenBy !== undefined && hiddenBy === next) return 'lastChance'
  if (from === holdPoint) return 'now'
  if (!isOpen) return undefined
  if (reasons.rules.some(({ rule }) => rule.holdPoint === holdPoint)) return 'now'
  const wasDue = reasons.rules.some(({ rule }) => rule.force === 'mandatory' && compareHoldPoints(rule.holdPoint, holdPoint) < 0)
  // Without a record, a look at finished work takes in whatever shows.
  return wasDue && (onRecord || next === null) ? 'overdue' : undefined
}

function isInSight(fact: string, holdPoint: HoldPoint): boolean {
  const from = facts.get(fact)?.from
  return from !== undefined && compareHoldPoints(from, holdPoint) <= 0 && !isHidden(fact, holdPoint)
}

/** Unread before read, mandatory first, then what any rule asks for, then what only a quantity needs. */
function weight({ reasons, isRead }: Question): number {
  return (isRead ? 3 : 0) + (isMandatory(reasons) ? 0 : reasons.rules.length > 0 ? 1 : 2)
}
