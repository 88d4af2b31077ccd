import type { Outcome } from '../catalog/rule.ts'
import type { ChainStep } from '../catalog/rule-set.ts'
import type { UnitSystem } from '../units/dimension.ts'
import type { Finding, Verdict } from './document.ts'

/** What an outcome is called wherever people read it. */
export const outcomeWords: Readonly<Record<Outcome, string>> = { pass: 'Met', fail: 'Not met', notDetermined: 'Not determined', notApplicable: 'Does not apply' }

export const verdictWords: Readonly<Record<Verdict, string>> = { pass: 'Pass', attention: 'Attention', incomplete: 'Incomplete', fail: 'Fail' }

/** What a verdict means, in one sentence. */
export const verdictMeanings: Readonly<Record<Verdict, string>> = {
  pass: 'Every rule that applies is met.',
  attention: 'Every mandatory rule is met; a recommendation is not.',
  incomplete: 'Nothing mandatory is missed by what is known, but mandatory rules are not decided.',
  fail: 'At least one mandatory rule is not met.',
}

/** One figure in both systems, that of the opening or of the papers first. */
export function inBoth({ inchPound, si }: Readonly<Record<UnitSystem, string>>, first: UnitSystem | undefined): string {
  const [lead, other] = first === 'si' ? [si, inchPound] : [inchPound, si]
  return lead === other ? lead : `${lead} (${other})`
}

/** ", right end", where there are two. */
export function endOf(member: Finding['member']): string {
  return member === null ? '' : `, ${member} end`
}

/** "irc 2021 R703.8.3 > adoption us-xa/irc-2021": publication, then everyone who acted on it. */
export function sourceText(chain: readonly ChainStep[]): string {
  return chain.map(stepText).join(' > ')
}

export function stepText({ action, layer, publication, edition, locator, document, modification }: ChainStep): string {
  if (action === 'published') return [publication, edition, locator].filter((word) => word !== null).join(' ')
  return `${action} ${document ?? layer}${modification === null ? '' : `#${modification}`}`
}
