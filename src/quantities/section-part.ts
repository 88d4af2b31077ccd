/** A piece of a cross-section, in any one unit of length: what it adds to the whole, and how much of it lies below a height. */
export interface SectionPart {
  readonly area: number
  /** First moments: area × height above the base, area × distance from the left edge. */
  readonly momentOfHeight: number
  readonly momentOfWidth: number
  /** Second moments about the base, about the left edge, and the product of the two. */
  readonly secondOfHeight: number
  readonly secondOfWidth: number
  readonly product: number
  readonly below: (height: number) => Below
}

export interface Below {
  readonly area: number
  readonly momentOfHeight: number
}

interface Rectangle {
  readonly left: number
  readonly base: number
  readonly width: number
  readonly height: number
}

export function rectangle({ left, base, width, height }: Rectangle): SectionPart {
  const [right, top] = [left + width, base + height]
  const upTo = (level: number): Below => ({ area: width * (level - base), momentOfHeight: (width * (level ** 2 - base ** 2)) / 2 })
  return {
    ...upTo(top),
    momentOfWidth: (height * (right ** 2 - left ** 2)) / 2,
    secondOfHeight: (width * (top ** 3 - base ** 3)) / 3,
    secondOfWidth: (height * (right ** 3 - left ** 3)) / 3,
    product: ((right ** 2 - left ** 2) * (top ** 2 - base ** 2)) / 4,
    below: (level) => upTo(Math.min(Math.max(level, base), top)),
  }
}

/** A square corner from which the two edges run: +1 to the right or up, -1 to the left or down. */
export interface Corner {
  readonly x: number
  readonly y: number
  readonly toX: 1 | -1
  readonly toY: 1 | -1
  readonly radius: number
}

const quarter = Math.PI / 4

/** What lies between a square corner and the arc that touches both edges: added at a fillet, taken away at a rounded toe. */
export function corner({ x, y, toX, toY, radius: r }: Corner): SectionPart {
  const area = r ** 2 * (1 - quarter)
  const first = r ** 3 * (5 / 6 - quarter)
  const second = r ** 4 * (1 - (5 / 4) * quarter)
  const product = r ** 4 * (1 / 8 + 2 / 3 - quarter)
  return {
    area,
    momentOfHeight: area * y + toY * first,
    momentOfWidth: area * x + toX * first,
    secondOfHeight: area * y ** 2 + 2 * y * toY * first + second,
    secondOfWidth: area * x ** 2 + 2 * x * toX * first + second,
    product: area * x * y + x * toY * first + y * toX * first + toX * toY * product,
    below: (level) => {
      const near = nearEdge(r, Math.min(Math.max(toY * (level - y), 0), r))
      const nearMoment = near.area * y + toY * near.first
      return toY > 0 ? { area: near.area, momentOfHeight: nearMoment } : { area: area - near.area, momentOfHeight: area * y - first - nearMoment }
    },
  }
}

/** The part of such a corner within a distance of one of its edges, and its first moment about that edge. */
function nearEdge(radius: number, distance: number): { readonly area: number; readonly first: number } {
  if (radius === 0) return { area: 0, first: 0 }
  const left = radius - distance
  const half = Math.sqrt(radius ** 2 - left ** 2)
  const circle = (radius ** 2 * Math.acos(left / radius) - left * half) / 2
  return { area: radius * distance - circle, first: (radius * distance ** 2) / 2 - (radius * circle - half ** 3 / 3) }
}

export function minus(part: SectionPart): SectionPart {
  return {
    area: -part.area,
    momentOfHeight: -part.momentOfHeight,
    momentOfWidth: -part.momentOfWidth,
    secondOfHeight: -part.secondOfHeight,
    secondOfWidth: -part.secondOfWidth,
    product: -part.product,
    below: (level) => {
      const { area, momentOfHeight } = part.below(level)
      return { area: -area, momentOfHeight: -momentOfHeight }
    },
  }
}
