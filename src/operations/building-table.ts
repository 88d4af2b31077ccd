import { z } from 'zod'
import { buildingAsked, buildingFor } from './building.ts'
import { buildingTables, type BuildingTable } from './building-tables.ts'
import { defineRecordOperation } from './operation.ts'

const tables = Object.keys(buildingTables) as [BuildingTable, ...BuildingTable[]]

export const readBuildingTable = defineRecordOperation({
  name: 'readBuildingTable',
  summary: 'Read one table of a building as CSV',
  description: 'One table of the building as RFC 4180 has it, in UTF-8 with a header. A text that a spreadsheet would take for a formula is led by an apostrophe.',
  input: z.strictObject({
    ...buildingAsked,
    table: z.enum(tables).meta({ description: 'Which table; `flashingCuts` is the cutting list.' }),
    byteOrderMark: z.enum(['yes', 'no']).meta({ id: 'ByteOrderMark' }).nullish().meta({ description: 'yes: led by a byte order mark, without which some spreadsheets do not read UTF-8; no when left out.' }),
  }),
  output: z.string(),
  answer: async (deps, { table, byteOrderMark, ...asked }) => {
    const building = await buildingFor(deps, asked)
    if (!building.ok) return building
    const { csvText } = await import('./csv-text.ts')
    return { ok: true, value: csvText(buildingTables[table](building.value), { byteOrderMark: byteOrderMark === 'yes' }) }
  },
})
