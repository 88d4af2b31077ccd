import { describe, expect, test } from 'vitest'
import { oscalOf } from '../../src/exports/oscal.ts'
import { building, evidence, quarryWalk } from './building.ts'
import { oscalFaults } from './checks.ts'
import { oscalAsWritten } from './oscal-as-written.ts'

const { results: [result], 'back-matter': { resources }, ...head } = oscalAsWritten.parse(oscalOf(building(quarryWalk)))['assessment-results']
const findingOf = (rule: string) => result?.findings?.find(({ target }) => target['target-id'] === `${rule}_obj`)

describe('OSCAL assessment results', () => {
  test('hold what the standard asks for, and no reference leads nowhere', () => {
    expect(oscalFaults(oscalOf(building(quarryWalk)))).toEqual([])
    expect(oscalFaults(oscalOf(building([])))).toEqual([])
  })

  test('the check finds what is wrong', () => {
    const document = structuredClone(oscalOf(building(quarryWalk))) as { 'assessment-results': { metadata: Record<string, unknown>; results: { risks: unknown[] }[] } }
    document['assessment-results'].metadata['last-modified'] = '2026-02-30T00:00:00Z'
    expect(oscalFaults(document).join()).toContain('metadata/last-modified')
    document['assessment-results'].metadata['last-modified'] = '2026-02-28T00:00:00Z'
    document['assessment-results'].results[0]?.risks.pop()
    expect(oscalFaults(document).join()).toMatch(/leads nowhere$/)
  })

  test('a rule is a control that is satisfied where it is met at every opening', () => {
    expect(findingOf('lintel.bearing-length')).toMatchObject({
      description: 'Not met: Tannery Row, bay 3 shop window, left end; Foundry Street, gable louver, left end; Foundry Street, gable louver, right end.\nMet: Tannery Row, bay 3 shop window, right end.',
      target: { status: { state: 'not-satisfied', reason: 'fail' } },
    })
    const states = new Map(result?.findings?.map(({ target }) => [target.status.reason, target.status.state]))
    expect(states).toEqual(new Map([['fail', 'not-satisfied'], ['other', 'not-satisfied'], ['pass', 'satisfied']]))
  })

  test('what cannot be decided is never satisfied, and says what to do', () => {
    const open = result?.findings?.filter(({ props }) => props.some(({ name, value }) => name === 'not-determined' && value !== '0')) ?? []
    expect(open.length).toBeGreaterThan(0)
    expect(open.filter(({ target }) => target.status.state === 'satisfied')).toEqual([])
    expect(open.filter(({ target: { status } }) => status.reason === 'other' && !status.remarks)).toEqual([])
  })

  test('a miss is a risk with its remedies, and approved where it is waived', () => {
    const risk = result?.risks?.find(({ title }) => title === 'Tannery Row, bay 3 shop window: Lintel bearing at each end, left end')
    expect(risk).toMatchObject({ status: 'deviation-approved', remediations: [{ lifecycle: 'recommendation', title: 'Before it is covered' }, { title: 'After it is covered' }], 'risk-log': { entries: [{ 'status-change': 'deviation-approved' }] } })
    expect(risk?.['related-observations']).toHaveLength(1)
    expect(result?.risks?.filter(({ status }) => status === 'open').length).toBeGreaterThan(1)
  })

  test('an observation has its method, its time and its evidence with the hash', () => {
    const read = result?.observations?.find(({ description }) => description === 'Bearing on the masonry, left end: 3 1/2 in')
    expect(read).toMatchObject({ methods: ['EXAMINE'], collected: '2026-03-04T15:00:00.000Z', remarks: 'Tape held at the toe.' })
    expect(read).not.toHaveProperty('types')
    const resource = resources.find(({ uuid }) => `#${uuid}` === read?.['relevant-evidence']?.[0]?.href)
    expect(resource?.rlinks).toEqual([{ href: 'https://pictures.example/left%20end%7C%5B1%5D.jpg', hashes: [{ algorithm: 'SHA-256', value: evidence.sha256 }] }])
    expect(result?.observations?.map(({ methods }) => methods[0])).toEqual(['EXAMINE', 'EXAMINE', 'EXAMINE', 'TEST'])
  })

  test('a reading that was overruled or corrected stays, as history', () => {
    const history = result?.observations?.filter(({ types }) => types?.includes('historic')).map(({ description, remarks }) => [description, remarks])
    expect(history).toEqual([['Bearing on the masonry, left end: 8 in', undefined], ['Bearing on the masonry, right end: 8 in', 'Taken out of account: read at another window']])
  })

  test('sign-offs, waivers, looks and corrections are its log', () => {
    expect(result?.['assessment-log']?.entries.map(({ title }) => title.replace('Tannery Row, bay 3 shop window: ', ''))).toEqual(['hold point signed off', 'modification', 'remedy chosen', 'looked at after mending', 'entry taken out of account'])
  })

  test('an opening that is not described far enough is named', () => expect(result?.description).toContain('Not evaluated, since more has to be known: unknown (opening).'))

  test('the same building has the same document, another moment another id', () => {
    expect(oscalOf(building(quarryWalk))).toEqual(oscalOf(building(quarryWalk)))
    expect(oscalAsWritten.parse(oscalOf(building(quarryWalk, { at: '2026-03-10T00:00:00.000Z' })))['assessment-results'].uuid).not.toBe(head.uuid)
  })
})
