import { describe, expect, test } from 'vitest'
import { operations } from '../../src/operations/index.ts'
import { bcfFaults, filesIn, oscalFaults, sarifFaults } from '../exports/checks.ts'
import { bodyOf, jurisdictionService } from './jurisdiction.ts'

const { http, tokenFor } = await jurisdictionService()
const inspector = await tokenFor({ kind: 'record' })
const clerk = await tokenFor({ kind: 'amend', jurisdiction: 'us-xa-101' })

const id = (last: number) => `0199b000-0000-7000-8000-${String(last).padStart(12, '0')}`
const send = (path: string, body: object) => http.post(path).set('authorization', `Bearer ${inspector}`).send(body)
const read = (path: string, token = inspector) => http.get(path).set('authorization', `Bearer ${token}`).buffer(true).parse((response, done) => {
  const parts: Buffer[] = []
  response.on('data', (part: Buffer) => parts.push(part))
  response.on('end', () => done(null, Buffer.concat(parts)))
})
const exports = `/v1/projects/${id(1)}/exports`

const window = { reference: 'W-1', lengthUnit: 'in', opening: { kind: 'window', width: 48, height: 60 }, head: { support: { kind: 'looseSteelAngle', bearing: 6 } } }
const about = (last: number, opening: string, by = 'inspector') => ({ id: id(last), opening, at: '2026-03-02T09:00:00Z', by })
await send('/v1/projects', { id: id(1), title: '12 Quarry Walk', jurisdiction: 'us-xa-101', asOf: '2026-03-01' }).expect(201)
await send(`/v1/projects/${id(1)}/entries`, { entries: [{ ...about(2, 'n-1', 'drafting'), design: { description: window } }, { ...about(3, 's-1', 'drafting'), design: { description: { ...window, reference: 'W-2' } } }] }).expect(200)
await send(`/v1/projects/${id(1)}/entries`, { entries: [{ ...about(4, 'n-1'), observation: { fact: 'head.support.bearing', member: 'left', value: '3 in', method: 'examine', holdPoint: 'lintelSet' } }] }).expect(200)

const json = (body: unknown) => JSON.parse((body as Buffer).toString('utf8')) as object

describe('the findings of a building', () => {
  test('go out as SARIF', async () => {
    const response = await read(`${exports}/sarif`).expect(200).expect('content-type', /^application\/sarif\+json/).expect('content-disposition', `attachment; filename="${id(1)}.sarif"`)
    expect(sarifFaults(json(response.body))).toEqual([])
    expect(json(response.body)).toMatchObject({ runs: [{ tool: { driver: { informationUri: 'https://wythe.example/reference' } }, invocations: [{ endTimeUtc: '2026-03-01T12:00:00.000Z' }] }] })
  })

  test('go out as assessment results in OSCAL', async () => {
    const response = await read(`${exports}/oscal`).expect(200).expect('content-type', /^application\/json/)
    expect(oscalFaults(json(response.body))).toEqual([])
  })

  test('go out as topics in BCF, and only those of the openings that are asked for', async () => {
    const response = await read(`${exports}/bcf`).expect(200).expect('content-type', 'application/zip').expect('content-disposition', `attachment; filename="${id(1)}.bcf"`)
    const files = filesIn(response.body as Buffer)
    expect(await bcfFaults(files)).toEqual([])
    const titles = (some: Readonly<Record<string, string>>) => Object.values(some).flatMap((text) => /<Title>(.*)<\/Title>/.exec(text)?.[1] ?? [])
    expect(titles(files)).toContain('W-1: Lintel bearing at each end, left end')
    expect(titles(filesIn((await read(`${exports}/bcf?startsWith=s-&findings=open`)).body as Buffer)).filter((title) => !title.startsWith('W-2: '))).toEqual([])
  })

  test('are the same over GraphQL, the zip in Base64', async () => {
    for (const format of ['sarif', 'oscal', 'bcf'] as const) {
      const answered = await send('/graphql', { query: `query($project: String!) { projectExport(project: $project, format: ${format}) { project mediaType fileName inBase64 content } }`, variables: { project: id(1) } })
      const { data: { projectExport } } = answered.body as { data: { projectExport: unknown } }
      const { content, inBase64 } = bodyOf(operations.exportProject, { body: projectExport })
      expect(Buffer.from(content, inBase64 ? 'base64' : 'utf8').equals((await read(`${exports}/${format}`)).body as Buffer)).toBe(true)
    }
  })

  test('need a token that may record, a project that is there and a format that is known', async () => {
    await http.get(`${exports}/sarif`).expect(401)
    await http.get(`${exports}/sarif`).set('authorization', `Bearer ${clerk}`).expect(403)
    await http.get(`/v1/projects/${id(99)}/exports/sarif`).set('authorization', `Bearer ${inspector}`).expect(404).expect('content-type', /^application\/problem\+json/)
    const wrong = await http.get(`${exports}/pdf?findings=some`).set('authorization', `Bearer ${inspector}`).expect(422)
    expect((wrong.body as { errors: { code: string; pointer: string }[] }).errors.map(({ code, pointer }) => `${code} ${pointer}`)).toEqual(['notAllowed /format', 'notAllowed /findings'])
  })
})
