/** How one cost grows with how many there are of something. */
export interface Curve {
  readonly name: string
  readonly against: string
  readonly points: readonly (readonly [size: number, microseconds: number])[]
}

const [width, height, margin, right] = [380, 220, 64, 32] as const
const columns = 2

/** A panel for each curve, both ways in powers of ten, with a thin line that grows in proportion to compare with. */
export function plotOf(curves: readonly Curve[]): string {
  const rows = Math.ceil(curves.length / columns)
  const panels = curves.map((curve, index) => `<g transform="translate(${(index % columns) * width} ${Math.floor(index / columns) * height})">${panelOf(curve)}</g>`)
  const size = `width="${columns * width}" height="${rows * height}" viewBox="0 0 ${columns * width} ${rows * height}"`
  return `<svg xmlns="http://www.w3.org/2000/svg" ${size} role="img" aria-labelledby="title" font-family="sans-serif" font-size="11"><title id="title">What each thing costs as there is more of something</title><rect width="100%" height="100%" fill="white"/>${panels.join('')}</svg>\n`
}

function panelOf({ name, against, points }: Curve): string {
  const [x, y] = [scale(points.map(([size]) => size), margin, width - right), scale(points.map(([, each]) => each), height - margin, 34)]
  const [first] = points
  const last = points.at(-1)
  if (!first || !last) return ''
  const path = points.map(([size, each]) => `${x.at(size)},${y.at(each)}`).join(' ')
  const top = Math.min(y.most, (first[1] * last[0]) / first[0])
  const proportion = `<line x1="${x.at(first[0])}" y1="${y.at(first[1])}" x2="${x.at((first[0] * top) / first[1])}" y2="${y.at(top)}" stroke="#777" stroke-dasharray="2 3"/>`
  const marks = points.map(([size, each]) => `<circle cx="${x.at(size)}" cy="${y.at(each)}" r="3"/>`).join('')
  const ticks = [...x.powers.map((power) => `<text x="${x.at(power)}" y="${height - margin + 16}" text-anchor="middle">${power.toLocaleString('en')}</text>`), ...y.powers.map((power) => `<text x="${margin - 6}" y="${y.at(power) + 4}" text-anchor="end">${power.toLocaleString('en')}</text><line x1="${margin}" x2="${width - right}" y1="${y.at(power)}" y2="${y.at(power)}" stroke="#ddd"/>`)]
  return `<text x="${margin - 44}" y="18" font-weight="bold">${name}</text>${ticks.join('')}${proportion}<polyline points="${path}" fill="none" stroke="black" stroke-width="1.5"/>${marks}<text x="${width / 2}" y="${height - 14}" text-anchor="middle">${against} (µs each; dotted: in proportion)</text>`
}

/** From one power of ten to another. */
function scale(values: readonly number[], from: number, to: number) {
  const [low, high] = [Math.floor(Math.log10(Math.min(...values))), Math.max(Math.ceil(Math.log10(Math.max(...values))), Math.floor(Math.log10(Math.min(...values))) + 1)]
  return {
    most: 10 ** high,
    powers: Array.from({ length: high - low + 1 }, (_, index) => 10 ** (low + index)),
    at: (value: number) => Math.round((from + ((Math.log10(value) - low) / (high - low)) * (to - from)) * 10) / 10,
  }
}
