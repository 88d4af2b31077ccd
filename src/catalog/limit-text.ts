import type { Comparator, Limit } from './limit.ts'

const words: Readonly<Record<Comparator, string>> = {
  notLessThan: 'at least', notMoreThan: 'at most', lessThan: 'less than', moreThan: 'more than', equalTo: '', oneOf: 'one of', noneOf: 'other than',
}

/** A limit in a few words: "at least 4 in (102 mm)", "other than aluminum, lead". */
export function limitText(limit: Limit, comparator: Comparator): string {
  return `${words[comparator]} ${amountText(limit)}`.trim()
}

function amountText(limit: Limit): string {
  if ('inchPound' in limit) return bothText(limit)
  if ('value' in limit) return limit.value === true ? 'yes' : limit.value === false ? 'no' : limit.value
  if ('values' in limit) return limit.values.join(', ')
  if ('proportion' in limit) return `${limit.proportion} of ${limit.of}`
  return `the value of table ${limit.table}`
}

function bothText({ inchPound, si, governing }: { inchPound: string; si: string; governing: string }): string {
  const [first, second] = governing === 'inchPound' ? [inchPound, si] : [si, inchPound]
  return first === second ? tradeUnits(first) : `${tradeUnits(first)} (${tradeUnits(second)})`
}

/** UCUM codes as people write them. */
export function tradeUnits(text: string): string {
  return text
    .replace('[lbf_av]/[ft_i]2', 'psf').replace('[lbf_av]', 'lbf').replace('[in_i]', 'in').replace('[ft_i]', 'ft').replace('[psi]', 'psi')
    .replace('[mil_i]', 'mil').replace('[mi_i]/h', 'mph').replace(/ 1$/, '')
}
