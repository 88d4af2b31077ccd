import type { InjectOptions, LightMyRequestResponse } from 'fastify'
import { expect } from 'vitest'
import { problemDocument } from '../../src/api/problem-document.ts'
import { jurisdictionService } from '../api/jurisdiction.ts'

/** How many cases: `FUZZ=1000000` for the long form. */
export const cases = Number(process.env['FUZZ'] ?? 400)

/** How long a case may take before it counts as hung, on however slow a machine. */
const longest = 20_000

const project = '0199a000-0000-7000-8000-000000000001'

/** A service with something on record, asked by somebody who may do everything. */
export async function fuzzedService() {
  const service = await jurisdictionService()
  const token = await service.tokenFor({ kind: 'record' }, { kind: 'administer' }, { kind: 'amend', jurisdiction: 'us-xa' }, { kind: 'evaluate' })
  const headers = { authorization: `Bearer ${token}` }
  const ask = (options: InjectOptions) => service.app.inject({ ...options, headers: { ...headers, ...options.headers } })
  await ask({ method: 'POST', url: '/v1/projects', payload: { id: project, title: 'House', jurisdiction: 'us-xa-101', asOf: '2026-03-01' } })
  const about = { opening: 'w-1', at: '2026-03-01T12:00:00Z', by: 'inspector' }
  await ask({ method: 'POST', url: `/v1/projects/${project}/entries`, payload: { entries: [{ id: '0199a000-0000-7000-8000-000000000002', ...about, design: { description: { lengthUnit: 'in', opening: { kind: 'window', width: 48, height: 60 } } } }] } })
  return { ...service, ask, ids: [project] }
}

/** Answered in time, with something that callers can read, and without a fault; and nothing got into the prototypes. */
export async function holdsUp(asked: Promise<LightMyRequestResponse>): Promise<LightMyRequestResponse> {
  const began = performance.now()
  const response = await asked
  expect(response.statusCode, response.body.slice(0, 500)).toBeLessThan(500)
  expect(performance.now() - began).toBeLessThan(longest)
  expect(({} as { polluted?: unknown }).polluted).toBeUndefined()
  if (response.statusCode >= 400 && response.headers['content-type']?.toString().startsWith('application/problem+json')) problemDocument.parse(response.json())
  return response
}
