import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as later } from 'node:timers/promises'
import type supertest from 'supertest'
import { expect } from 'vitest'
import type { z } from 'zod'
import { operations } from '../../src/operations/index.ts'
import { bodyOf, problemIn } from './jurisdiction.ts'

/** A version 7 UUID that is told apart by its last digits. */
export const id = (last: number) => `0199a000-0000-7000-8000-${String(last).padStart(12, '0')}`

export const quarryWalk = readFileSync(join(import.meta.dirname, '../fixtures/schedules/quarry-walk.csv'), 'utf8')

type Request = z.input<typeof operations.importSchedule.input>

/** What the columns of that schedule tell. */
export const mapping = {
  lengthUnit: 'in', markColumn: 'Mark', at: '2026-03-02T09:00:00Z', by: 'design-office',
  columns: [
    { column: 'Type', fact: 'opening.kind', values: [['DH', 'window'], ['FX', 'window'], ['CS', 'window'], ['SGD', 'slidingDoor'], ['DR', 'door'], ['VT', 'vent']].map(([cell = '', value]) => ({ cell, value })) },
    { column: 'M.O. Width', fact: 'opening.width' },
    { column: 'M.O. Height', fact: 'opening.height' },
    { column: 'Head support', fact: 'head.support.kind', values: [{ cell: 'Loose angle', value: 'looseSteelAngle' }] },
    { column: 'Lintel', fact: 'head.support.section' },
    { column: 'Bearing L', fact: 'head.support.bearing', end: 'left' },
    { column: 'Bearing R', fact: 'head.support.bearing', end: 'right' },
    { column: 'Head flashing L', fact: 'head.flashing.extensionPastJamb', end: 'left' },
    { column: 'Head flashing R', fact: 'head.flashing.extensionPastJamb', end: 'right' },
    { column: 'End dam', fact: 'head.flashing.endDamHeight' },
    { column: 'Flashing', fact: 'head.flashing.material', values: [{ cell: 'SS', value: 'stainlessSteel' }] },
    { column: 'Weeps', fact: 'head.weeps.kind' },
    { column: 'Weep spacing', fact: 'head.weeps.spacing' },
    { column: 'Sill', fact: 'sill.kind', values: [{ cell: 'Rowlock', value: 'brickRowlock' }, { cell: 'Threshold', value: 'doorThreshold' }] },
  ],
  forEveryRow: [
    { fact: 'wall.veneer.unit', value: 'modular' }, { fact: 'wall.veneer.thickness', value: '3 5/8 in' }, { fact: 'wall.airSpace', value: '2 in' }, { fact: 'wall.heightAboveHead', value: '4 ft' },
    { fact: 'head.flashing.present', value: true }, { fact: 'head.flashing.stockLength', value: '10 ft' }, { fact: 'head.flashing.upstand', value: '8 in' },
  ],
} satisfies Omit<Request, 'project' | 'import' | 'csv'>

/** Projects of one service, each by its number. A service that is busy is asked again, as it asks for. */
export function projectsOf(http: ReturnType<typeof supertest>, token: string) {
  const asked = async (request: () => supertest.Test): Promise<supertest.Response> => {
    for (;;) {
      const response = await request().set('authorization', `Bearer ${token}`)
      if (response.status !== 503) return response
      await later(200)
    }
  }
  const send = (path: string, body: object) => asked(() => http.post(path).send(body))
  const read = (path: string) => asked(() => http.get(path))
  const graphql = (query: string, variables: object) => asked(() => http.post('/graphql').send({ query, variables }))
  const make = async (number: number) => {
    const project = id(number)
    const path = `/v1/projects/${project}`
    expect((await send('/v1/projects', { id: project, title: '12 Quarry Walk', jurisdiction: 'us-xa-101', asOf: '2026-03-01' })).status).toBe(201)
    const imported = (csv: string, change: object) => send(`${path}/schedule-imports`, { ...mapping, import: id(900), csv, ...change })
    const take = async (csv: string, change: object = {}) => bodyOf(operations.importSchedule, await imported(csv, change))
    const refuse = async (csv: string, change: object = {}) => {
      const response = await imported(csv, change)
      expect(response.status).toBe(422)
      return problemIn(response)
    }
    return { project, path, take, refuse }
  }
  return { send, read, graphql, make }
}
