import { z } from 'zod'
import { defineRecordOperation } from './operation.ts'

const text = z.string()

export const listReleases = defineRecordOperation({
  name: 'listReleases',
  summary: 'List releases',
  description: 'The cut releases of the catalog that one can evaluate by, and the one in use.',
  input: z.strictObject({}),
  output: z
    .strictObject({
      current: z.strictObject({ release: text, digest: text, adoptions: z.int().min(0).max(1_000_000).meta({ description: 'Amendments adopted through the service that are in it.' }) }).meta({ id: 'CurrentRelease' }),
      cut: z.array(text),
    })
    .meta({ id: 'Releases' }),
  answer: async ({ active, catalog }) => ({
    ok: true,
    value: { current: { release: catalog.release, digest: catalog.digest, adoptions: active.state.sequence }, cut: [...(await active.releases())] },
  }),
})
