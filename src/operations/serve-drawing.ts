import { drawOpening, type drawing } from './draw-opening.ts'
import type { RecordOperation } from './operation.ts'
import { catalogAsked, release } from './serve-evaluation.ts'

const drawingRequest = drawOpening.input.extend(release).meta({ id: 'DrawingRequest' })

/** A drawing by the active catalog or by a past release. */
export const serveDrawing: RecordOperation<typeof drawingRequest, typeof drawing> = {
  ...drawOpening,
  cost: { units: 6 },
  input: drawingRequest,
  run: async (deps, raw) => {
    const asked = await catalogAsked(deps, raw)
    return asked.ok ? drawOpening.run({ ...deps, catalog: asked.value.catalog }, asked.value.request) : asked
  },
}
