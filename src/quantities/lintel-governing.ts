import { quantityText } from '../units/quantity-text.ts'
import { defineQuantity } from './define.ts'
import { onLintel } from './lintel-needs.ts'
import { confirmed } from './lintel-sources.ts'
import { asksOf, combined, fact, foundOnce, parameter, result, together, type Found, type Need } from './need.ts'

/** One check of the lintel, and the part it uses of what is allowed; without a part, why it is not known. */
interface Judged {
  readonly check: string
  readonly part: number | undefined
  readonly state: string
}

const bendingChecks: readonly (readonly [check: string, part: Need<number>])[] = [
  ['bending', result('lintel.bending-stress-ratio')],
  ['bending', result('lintel.moment-ratio')],
  ['deflection', result('lintel.deflection-ratio')],
]

const checks: readonly (readonly [check: string, part: Need<number>])[] = [
  ...bendingChecks,
  ['greatest deflection', combined({ deflection: result('lintel.deflection'), cap: parameter('lintel.deflection-cap') }, ({ deflection, cap }) => deflection / cap)],
  ['shear', result('lintel.shear-ratio')],
  ['bearing', result('lintel.bearing-stress-ratio')],
  ['steel specification', result('lintel.specification-ratio')],
  ['prescriptive span', combined({ width: fact.amount('opening.width'), span: result('lintel.prescriptive-span') }, ({ width, span }) => width / span)],
]

/** Every check that applies; unknown only while none of them is known. */
const judged = foundOnce<readonly Judged[]>({
  asks: asksOf(...checks.map(([, part]) => part)),
  find: (inputs) => {
    const found = checks.map(([check, part]) => ({ check, part: part.find(inputs) })).filter(({ part }) => applies(part))
    const known = together(found.flatMap(({ part }) => (part.known ? [part] : [])))
    if (known.known && known.value.length > 0) return { ...known, value: found.map(({ check, part }) => judge(check, part)) }
    return together<never>(bendingChecks.map(([, part]) => part.find(inputs)).filter(applies).filter((part) => !part.known))
  },
})

/** What decides about the lintel, with every check beside it. */
export const lintelGoverning = defineQuantity({
  id: 'lintel.governing',
  title: 'What governs the lintel',
  part: 'head',
  dimension: null,
  structural: true,
  onlyWhenKnown: true,
  formula: 'the check that uses the greatest part of what is allowed',
  appliesTo: onLintel,
  needs: { judged },
  compute: ({ judged }) => {
    const governing = judged.reduce((worst, one) => ((one.part ?? 0) > (worst.part ?? 0) ? one : worst))
    const open = judged.filter(({ part }) => part === undefined).map(({ check }) => check)
    return {
      value: governing.check,
      steps: judged.map(({ check, part, state }) => `${check}: ${part === undefined ? state : `${ratioText(part)}, ${state}`}`),
      tables: [tableOf(judged)],
      notes: [...((governing.part ?? 0) > 1 ? ['This lintel is not enough as it stands.'] : []), ...(open.length > 0 ? [`Not known and able to govern instead: ${open.join(', ')}.`] : []), confirmed],
    }
  },
})

function tableOf(judged: readonly Judged[]) {
  return {
    title: 'Checks of the lintel',
    columns: [{ title: 'Check', dimension: null }, { title: 'Part of what is allowed', dimension: 'ratio' as const }, { title: 'How it stands', dimension: null }],
    rows: judged.map(({ check, part, state }) => [check, part ?? null, state]),
  }
}

function judge(check: string, part: Found<number>): Judged {
  if (part.known) return { check, part: part.value, state: part.value > 1 ? 'too much' : 'within what is allowed' }
  return { check, part: undefined, state: part.missing.length > 0 ? `not known; missing ${part.missing.join(', ')}` : (part.because?.why ?? 'not known') }
}

function applies(part: Found<number>): boolean {
  return part.known || part.because?.status !== 'notApplicable'
}

function ratioText(amount: number): string {
  return quantityText({ dimension: 'ratio', amount }, 'inchPound')
}
