import { describe, expect, test } from 'vitest'
import { cellText, type Table } from '../../src/catalog/reference.ts'
import { angleProperties, torsionConstant, type AngleOutline, type AngleProperties, type TorsionCoefficients } from '../../src/quantities/angle-geometry.ts'
import { inputsOf } from './inputs.ts'

function tableOf(id: string): Table {
  const given = inputsOf({}).table(id)
  if (!given) throw new Error(`the catalog lacks ${id}`)
  return given.table
}

/** The number of a cell in the unit that is printed: "3 1/2 [in_i]" is 3.5. */
function printed(row: Table['rows'][number], column: string): number {
  const [whole = '', fraction = ''] = cellText(row[column]).split(' ')
  const numberOf = (text: string) => text.split('/').map(Number).reduce((a, b) => a / b)
  return numberOf(whole) + (/^\d+\/\d+$/.test(fraction) ? numberOf(fraction) : 0)
}

const coefficients = Object.fromEntries(tableOf('steel.angle-torsion').rows.map(({ coefficient, value }) => [coefficient, value])) as unknown as TorsionCoefficients

/** Half a unit of the third figure: what rounding for print takes away or adds. */
const rounding = (value: number) => 10 ** (Math.floor(Math.log10(value)) - 2) / 2

const columns = {
  area: 'area', centroid: 'centroidHeight', centroidWeak: 'centroidWidth', momentOfInertia: 'momentOfInertia', momentOfInertiaWeak: 'momentOfInertiaWeak',
  sectionModulus: 'sectionModulus', sectionModulusWeak: 'sectionModulusWeak', minorPrincipalInertia: 'minorPrincipalInertia', radiusLeast: 'radiusLeast', plasticModulus: 'plasticModulus',
} as const satisfies Record<string, keyof AngleProperties>
type Column = keyof typeof columns

describe('angles worked by hand', () => {
  // Two rectangles of L4x4x1/2 with square corners: 4 × 1/2 at 1/4 in and 1/2 × 3 1/2 at 2 1/4 in
  test('square corners', () => {
    const { area, centroidHeight, momentOfInertia, sectionModulus, plasticModulus, productOfInertia } = angleProperties({ verticalLeg: 4, horizontalLeg: 4, thickness: 0.5, rootRadius: 0, toeRadius: 0 })
    expect(area).toBeCloseTo(3.75, 12)
    expect(centroidHeight).toBeCloseTo(1.183333, 6)
    // 4/2³/12 + 2 × 0.933333² + (3 1/2)³/24 + 1.75 × 1.066667²
    expect(momentOfInertia).toBeCloseTo(5.561458, 6)
    expect(sectionModulus).toBeCloseTo(5.561458 / 2.816667, 5)
    // Half the area is 1.875 in2, 15/32 in up the flat leg: 1.875 × 0.234375 below and (4 × 1/32 × 1/64 + 1.75 × 1.78125) above
    expect(plasticModulus).toBeCloseTo(1.875 * 0.234375 + 0.125 / 64 + 1.75 * 1.78125, 10)
    // 2 in2 at (0.816667, -0.933333) and 1.75 in2 at (-0.933333, 1.066667) from the centroid
    expect(productOfInertia).toBeCloseTo(-(2 * 0.8166667 * 0.9333333 + 1.75 * 0.9333333 * 1.0666667), 5)
  })

  test('an angle turned over swaps its axes', () => {
    const long = angleProperties({ verticalLeg: 150, horizontalLeg: 90, thickness: 10, rootRadius: 12, toeRadius: 6 })
    const short = angleProperties({ verticalLeg: 90, horizontalLeg: 150, thickness: 10, rootRadius: 12, toeRadius: 6 })
    expect(short.momentOfInertia).toBeCloseTo(long.momentOfInertiaWeak, 4)
    expect(short.sectionModulus).toBeCloseTo(long.sectionModulusWeak, 6)
    expect(short.minorPrincipalInertia).toBeCloseTo(long.minorPrincipalInertia, 4)
    expect(short.principalAngle).toBeCloseTo(90 - long.principalAngle, 8)
  })
})

/** The outline as a polygon of short chords, counterclockwise from the heel. */
function polygon({ verticalLeg: a, horizontalLeg: b, thickness: t, rootRadius: r, toeRadius: q }: AngleOutline): readonly (readonly [number, number])[] {
  const arc = (x: number, y: number, radius: number, from: number, to: number) =>
    Array.from({ length: 3001 }, (_, step) => {
      const angle = ((from + ((to - from) * step) / 3000) * Math.PI) / 180
      return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)] as const
    })
  return [[0, 0], [b, 0], ...arc(b - q, t - q, q, 0, 90), ...arc(t + r, t + r, r, 270, 180), ...arc(t - q, a - q, q, 0, 90), [0, a]]
}

/** Area, centroid and second moments of a polygon by Green's theorem. */
function greens(points: readonly (readonly [number, number])[]) {
  const sums = { area: 0, x: 0, y: 0, xx: 0, yy: 0, xy: 0 }
  points.forEach(([x0, y0], index) => {
    const [x1, y1] = points[(index + 1) % points.length] ?? [0, 0]
    const cross = x0 * y1 - x1 * y0
    sums.area += cross / 2
    sums.x += ((x0 + x1) * cross) / 6
    sums.y += ((y0 + y1) * cross) / 6
    sums.xx += ((x0 ** 2 + x0 * x1 + x1 ** 2) * cross) / 12
    sums.yy += ((y0 ** 2 + y0 * y1 + y1 ** 2) * cross) / 12
    sums.xy += ((x0 * y1 + 2 * x0 * y0 + 2 * x1 * y1 + x1 * y0) * cross) / 24
  })
  const { area } = sums
  const [x, y] = [sums.x / area, sums.y / area]
  return { area, centroidWidth: x, centroidHeight: y, momentOfInertia: sums.yy - area * y ** 2, momentOfInertiaWeak: sums.xx - area * x ** 2, productOfInertia: sums.xy - area * x * y }
}

/** Plastic modulus by adding up thin strips, each as wide as the outline is at its middle. */
function plasticByStrips({ verticalLeg: a, horizontalLeg: b, thickness: t, rootRadius: r, toeRadius: q }: AngleOutline): number {
  const cut = (radius: number, into: number) => (into > 0 && into <= radius ? radius - Math.sqrt(radius ** 2 - into ** 2) : 0)
  const width = (y: number) => (y < t ? b - cut(q, y - (t - q)) : t + cut(r, t + r - y) - cut(q, y - (a - q)))
  const strips = Array.from({ length: 200_000 }, (_, index) => ((index + 0.5) * a) / 200_000).map((y) => ({ y, area: (width(y) * a) / 200_000 }))
  const half = strips.reduce((total, { area }) => total + area, 0) / 2
  let passed = 0
  const middle = strips.find(({ area }) => (passed += area) >= half)?.y ?? NaN
  return strips.reduce((total, { y, area }) => total + Math.abs(y - middle) * area, 0)
}

describe('against numeric integration', () => {
  test.each<AngleOutline>([
    { verticalLeg: 100, horizontalLeg: 100, thickness: 10, rootRadius: 12, toeRadius: 6 },
    { verticalLeg: 150, horizontalLeg: 90, thickness: 10, rootRadius: 12, toeRadius: 6 },
    { verticalLeg: 65, horizontalLeg: 50, thickness: 5, rootRadius: 6, toeRadius: 3 },
    { verticalLeg: 3, horizontalLeg: 5, thickness: 0.25, rootRadius: 0.375, toeRadius: 0.25 },
    { verticalLeg: 4, horizontalLeg: 4, thickness: 0.75, rootRadius: 0, toeRadius: 0 },
  ])('$verticalLeg x $horizontalLeg x $thickness', (outline) => {
    const exact = angleProperties(outline)
    for (const [name, value] of Object.entries(greens(polygon(outline)))) expect(Math.abs(exact[name as keyof AngleProperties] / value - 1), name).toBeLessThan(1e-6)
    expect(Math.abs(exact.plasticModulus / plasticByStrips(outline) - 1)).toBeLessThan(1e-4)
  })
})

const metricRows = tableOf('steel.metric-angle-sections').rows
const metricUnits: Readonly<Partial<Record<Column, number>>> = { momentOfInertia: 1e4, momentOfInertiaWeak: 1e4, minorPrincipalInertia: 1e4, sectionModulus: 1e3, sectionModulusWeak: 1e3 }

function outlineOf(row: Table['rows'][number]): AngleOutline {
  const [verticalLeg, horizontalLeg, thickness, rootRadius, toeRadius] = ['verticalLeg', 'horizontalLeg', 'thickness', 'rootRadius', 'toeRadius'].map((column) => printed(row, column))
  return { verticalLeg: verticalLeg ?? NaN, horizontalLeg: horizontalLeg ?? NaN, thickness: thickness ?? NaN, rootRadius: rootRadius ?? NaN, toeRadius: toeRadius ?? NaN }
}

/**
 * Printed figures that do not follow from the printed outline within rounding or 0.2 %. None is off by more than 2 %.
 * For the weakest axis the European range is printed a little low throughout; the 130 mm and 250 mm legs are printed unevenly.
 * The computed area of L65x65x7 is what its printed mass gives (6.83 kg/m), and the computed 1067 cm4 of L200x200x18 lies midway between its printed neighbors (960 and 1170).
 */
const metricMisfits: readonly string[] = [
  'L65x65x7 area 873, computed 869.7',
  'L65x65x7 minorPrincipalInertia 13.8, computed 13.87',
  'L100x65x9 minorPrincipalInertia 27.4, computed 27.50',
  'L100x65x11 minorPrincipalInertia 32.6, computed 32.76',
  'L100x65x11 radiusLeast 13.8, computed 13.86',
  'L100x65x12 minorPrincipalInertia 35.2, computed 35.34',
  'L110x70x10 minorPrincipalInertia 38.5, computed 38.68',
  'L110x70x12 momentOfInertia 242, computed 241.5',
  'L110x70x12 minorPrincipalInertia 45.2, computed 45.34',
  'L110x70x12 radiusLeast 14.9, computed 14.96',
  'L130x90x10 area 2120, computed 2113',
  'L130x90x10 momentOfInertia 360, computed 358.7',
  'L130x90x10 momentOfInertiaWeak 142, computed 141.3',
  'L130x90x10 sectionModulus 40.7, computed 40.58',
  'L130x90x10 sectionModulusWeak 20.8, computed 20.73',
  'L130x90x12 momentOfInertia 420, computed 421.1',
  'L130x90x12 momentOfInertiaWeak 164, computed 165.1',
  'L130x90x12 sectionModulusWeak 24.4, computed 24.51',
  'L130x90x12 minorPrincipalInertia 93.3, computed 93.82',
  'L130x90x14 momentOfInertiaWeak 188, computed 187.5',
  'L130x90x14 sectionModulus 55.5, computed 55.38',
  'L140x90x8 minorPrincipalInertia 68.9, computed 69.20',
  'L140x90x8 radiusLeast 19.6, computed 19.67',
  'L140x90x10 minorPrincipalInertia 84.2, computed 84.46',
  'L140x90x12 minorPrincipalInertia 98.9, computed 99.19',
  'L150x75x10 momentOfInertiaWeak 85.6, computed 85.37',
  'L150x90x11 minorPrincipalInertia 95.7, computed 96.04',
  'L150x90x11 radiusLeast 19.4, computed 19.47',
  'L150x100x10 momentOfInertiaWeak 199, computed 198.5',
  'L150x100x14 minorPrincipalInertia 153, computed 153.7',
  'L200x100x14 radiusLeast 21.2, computed 21.28',
  'L200x100x15 minorPrincipalInertia 193, computed 193.7',
  'L200x100x16 minorPrincipalInertia 204, computed 205.0',
  'L200x100x16 radiusLeast 21.1, computed 21.18',
  'L200x150x18 minorPrincipalInertia 623, computed 618.1',
  'L200x150x18 radiusLeast 32.2, computed 32.09',
  'L200x200x18 minorPrincipalInertia 1050, computed 1067',
  'L200x200x18 radiusLeast 39, computed 39.29',
  'L250x90x12 momentOfInertia 2560, computed 2565',
  'L250x90x12 minorPrincipalInertia 130, computed 130.6',
  'L250x90x14 centroidWeak 17.2, computed 17.25',
  'L250x90x14 minorPrincipalInertia 149, computed 150.0',
  'L250x90x14 radiusLeast 18, computed 18.06',
  'L250x90x16 minorPrincipalInertia 168, computed 169.0',
  'L250x90x16 radiusLeast 17.9, computed 17.99',
]

describe('metric angles follow from their outline', () => {
  // Sizes and radii of EN 10056-1 with the properties that makers and handbooks print to three figures
  test('every figure of every row, within rounding or 0.2 %, but those listed', () => {
    const misfits = metricRows.flatMap((row) => {
      const properties = angleProperties(outlineOf(row))
      return (Object.keys(columns) as Column[]).filter((column) => row[column] !== undefined).flatMap((column) => {
        const [value, expected] = [properties[columns[column]] / (metricUnits[column] ?? 1), printed(row, column)]
        return Math.abs(value - expected) <= Math.max(rounding(expected) * 1.0001, expected * 0.002) ? [] : [`${cellText(row['section'])} ${column} ${expected}, computed ${value.toPrecision(4)}`]
      })
    })
    expect(misfits).toEqual(metricMisfits)
  })

  test('the torsion constant of every row, within rounding', () => {
    const misfits = metricRows.filter((row) => Math.abs(torsionConstant(outlineOf(row), coefficients) / 1e4 - printed(row, 'torsionConstant')) > rounding(printed(row, 'torsionConstant')) * 1.0001)
    expect(misfits.map((row) => row['section'])).toEqual([])
  })

  // tan α as printed in the same tables
  test.each([['L150x90x10', 0.36], ['L100x75x8', 0.547], ['L200x100x10', 0.263], ['L250x90x16', 0.149], ['L65x50x5', 0.577], ['L100x100x10', 1]])('%s is stiffest about an axis of slope %f', (section, slope) => {
    const row = metricRows.find((one) => one['section'] === section) ?? {}
    expect(Math.tan((angleProperties(outlineOf(row)).principalAngle * Math.PI) / 180)).toBeCloseTo(slope, 3)
  })

  // Four figures, as the documentation of https://github.com/ahmedalisteel-star/ecp205-lrfd works them for L100x100x10: A, I, least radius
  test('L100x100x10 to four figures', () => {
    const { area, momentOfInertia, radiusLeast } = angleProperties({ verticalLeg: 10, horizontalLeg: 10, thickness: 1, rootRadius: 1.2, toeRadius: 0.6 })
    expect([area.toFixed(2), momentOfInertia.toFixed(1), radiusLeast.toFixed(2)]).toEqual(['19.15', '176.7', '1.95'])
  })
})

const inchRows = tableOf('steel.angle-sections').rows

/** The outline of an angle of the shapes database, with a share of the fillet that its k distance leaves room for, and of the toe that its thickness does. */
function inchOutline(row: Table['rows'][number], fillet: number, toe: number): AngleOutline {
  const [verticalLeg, horizontalLeg, thickness, k] = [printed(row, 'verticalLeg'), printed(row, 'horizontalLeg'), printed(row, 'thickness'), printed(row, 'fillet')]
  return { verticalLeg, horizontalLeg, thickness, rootRadius: fillet * (k - thickness), toeRadius: toe * thickness }
}

/** Rows whose printed figure lies outside both, by how many units of the third figure. */
function outside(column: Column, least: AngleOutline, greatest: AngleOutline, expected: number): number {
  const [low, high] = [angleProperties(least)[columns[column]], angleProperties(greatest)[columns[column]]]
  return Math.max(low - expected, expected - high, 0) / (2 * rounding(expected))
}

/**
 * The database does not print its toe radii, and for most rows no one pair of radii gives all the figures. With square corners none of the
 * 137 rows comes out whole, and with the best pair only a few. What can be held is that every figure lies between the barest outline, no fillet and toes
 * rounded to the full thickness, and the fullest, the whole fillet k - t and square toes. These do not, by these units of the third figure.
 */
const inchMisfits: readonly string[] = [
  'L2x2x1/8 radiusLeast 0.8',
  'L2-1/2x2-1/2x3/16 minorPrincipalInertia 0.7',
  'L2-1/2x2-1/2x3/16 radiusLeast 4.1',
  'L3x2-1/2x3/16 radiusLeast 1.7',
  'L3x3x3/16 radiusLeast 1.6',
  'L4x4x1/4 radiusLeast 0.5',
  'L4x4x1/4 plasticModulus 1.2',
  'L8x4x7/16 momentOfInertiaWeak 0.7',
  'L8x4x1/2 momentOfInertiaWeak 0.7',
  'L8x4x5/8 momentOfInertiaWeak 0.9',
  'L8x4x3/4 momentOfInertiaWeak 0.9',
  'L8x6x3/4 momentOfInertiaWeak 0.5',
]

describe('angles of the shapes database lie between the barest and the fullest outline', () => {
  test('every figure of every row, within rounding, but those listed', () => {
    const misfits = inchRows.flatMap((row) =>
      (Object.keys(columns) as Column[]).filter((column) => !column.startsWith('centroid')).flatMap((column) => {
        const units = outside(column, inchOutline(row, 0, 1), inchOutline(row, 1, 0), printed(row, column))
        return units <= 0.5001 ? [] : [`${cellText(row['section'])} ${column} ${units.toFixed(1)}`]
      }),
    )
    expect(misfits).toEqual(inchMisfits)
  })

  test('the torsion constant likewise', () => {
    const misfits = inchRows.filter((row) => {
      const [low, high] = [inchOutline(row, 0, 1), inchOutline(row, 1, 0)].map((outline) => torsionConstant(outline, coefficients))
      return printed(row, 'torsionConstant') + rounding(printed(row, 'torsionConstant')) < (low ?? NaN) || printed(row, 'torsionConstant') - rounding(printed(row, 'torsionConstant')) > (high ?? NaN)
    })
    expect(misfits.map((row) => row['section'])).toEqual([])
  })

  // So a size that no table holds is computed as the barest outline: square corners would promise more than a rolled angle has
  test('square corners overstate the strength of most rows, by up to 2.6 %', () => {
    const over = inchRows.map((row) => angleProperties(inchOutline(row, 0, 0)).sectionModulus / printed(row, 'sectionModulus') - 1)
    expect(over.filter((share) => share > 0.001).length).toBeGreaterThan(100)
    expect(Math.max(...over)).toBeCloseTo(0.026, 3)
  })
})
