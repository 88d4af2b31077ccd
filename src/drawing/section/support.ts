import { angleKinds, angleOf } from '../angle.ts'
import type { Frame } from '../drawn.ts'
import { outline, type Point, type Shape } from '../shape.ts'
import { cutField } from './hatch.ts'
import type { Layers } from './layers.ts'

/** What a support is drawn as when its size is not known. */
const unknownSize = 90

/** The support of the brick over the head, in millimeters: what the flashing lies on. */
export interface Support {
  readonly kind: string | undefined
  readonly known: boolean
  /** Level of the bed on it. */
  readonly bed: number
  /** The standing leg: its front and how high it is; no height without one. */
  readonly leg: { readonly x: number; readonly height: number; readonly thickness: number }
  readonly shapes: (at: Frame['at']) => readonly Shape[]
}

export function supportOf({ known }: Frame, layers: Layers): Support {
  const kind = known.choice('head.support.kind')
  if (kind === undefined || angleKinds.includes(kind)) return angleSupport(known, layers, kind)
  const isArch = kind === 'masonryArch'
  const depth = isArch ? layers.brick?.length : known.length('head.support.depth')
  const width = isArch ? layers.thickness : known.length('head.support.width')
  const [drawnDepth, drawnWidth] = kind === 'none' ? [0, 0] : [depth ?? 2 * layers.course, width ?? layers.thickness]
  const isKnown = depth !== undefined && width !== undefined
  const material = isArch ? 'brick' : kind === 'woodMember' ? 'wood' : 'concrete'
  return {
    kind, known: isKnown || kind === 'none', bed: drawnDepth, leg: { x: layers.thickness, height: 0, thickness: 0 },
    shapes: (at) => (kind === 'none' ? [] : [cutField(material, [at(0, 0), at(drawnWidth, 0), at(drawnWidth, drawnDepth), at(0, drawnDepth)], isKnown)]),
  }
}

function angleSupport(known: Frame['known'], { thickness: brickBack }: Layers, kind: string | undefined): Support {
  const angle = angleOf(known)
  const { vertical, horizontal, thickness } = angle ?? { vertical: unknownSize, horizontal: unknownSize, thickness: 8 }
  const overhang = known.length('head.support.veneerOverhang') ?? brickBack + thickness - horizontal
  const back = overhang + horizontal
  const points = (at: Frame['at']): readonly Point[] => [at(overhang, 0), at(back, 0), at(back, vertical), at(back - thickness, vertical), at(back - thickness, thickness), at(overhang, thickness)]
  return {
    kind, known: angle !== undefined && kind !== undefined, bed: thickness, leg: { x: back - thickness, height: vertical, thickness },
    shapes: (at) => [angle && kind !== undefined ? outline('steel', ...points(at)) : outline('unknown', ...points(at))],
  }
}
