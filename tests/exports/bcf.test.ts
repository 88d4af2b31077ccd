import { unzipSync } from 'fflate'
import { describe, expect, test } from 'vitest'
import { bcfOf } from '../../src/exports/bcf.ts'
import { building, quarryWalk } from './building.ts'
import { bcfFaults, filesIn, markupsIn } from './checks.ts'

const files = filesIn(bcfOf(building(quarryWalk)))
const topics = markupsIn(files)
const topicOf = (title: string) => topics.find(([, markup]) => markup.includes(`<Title>${title}</Title>`))?.[1] ?? ''
const bearing = topicOf('Tannery Row, bay 3 shop window: Lintel bearing at each end, left end')

describe('BCF 3.0', () => {
  test('holds what the standard asks for', async () => {
    expect(await bcfFaults(files)).toEqual([])
    expect(await bcfFaults(filesIn(bcfOf(building([]))))).toEqual([])
  })

  test('the check finds what is wrong', async () => {
    const path = topics[0]?.[0] ?? ''
    const wrong = (change: (markup: string) => string) => bcfFaults({ ...files, [path]: change(files[path] ?? '') })
    expect((await wrong((markup) => markup.replace(/<CreationDate>.*<\/CreationDate>/, ''))).join()).toContain('CreationAuthor')
    expect((await wrong((markup) => markup.replace('<Stage>', '<Stage>Some other '))).join()).toContain('is not listed')
    expect((await wrong((markup) => markup.replace('</Title>', '<&</Title>'))).join()).toContain('parser error')
  })

  test('has one topic for each miss, and more where asked for', () => {
    const misses = quarryWalk.flatMap(({ assessment }) => assessment?.findings ?? []).flatMap(({ outcome, members }) => (members.length < 2 ? [outcome] : members.map((end) => end.outcome)))
    const counted = (outcome: string) => misses.filter((one) => one === outcome).length
    expect(topics).toHaveLength(counted('fail') + counted('notDetermined'))
    expect(markupsIn(filesIn(bcfOf(building(quarryWalk, { scope: 'misses' }))))).toHaveLength(counted('fail'))
    expect(topics.filter(([, markup]) => markup.includes('TopicType="Not determined"'))).toHaveLength(counted('notDetermined'))
  })

  test('a topic says what was found, what is required and how to put it right', () => {
    expect(bearing).toContain('TopicType="Requirement not met" TopicStatus="Waived"')
    expect(bearing).toContain('Not met: found 3 1/2 in, required at least 6 in (152 mm); off by -2 1/2 in (-63.5 mm).')
    expect(bearing).toMatch(/Before cover-up: .*\nAfter: .*\nCaution: /)
    expect(bearing).toContain('<CreationDate>2026-03-04T15:00:00.000Z</CreationDate>')
    expect(bearing).toContain('<CreationAuthor>inspector</CreationAuthor>')
    expect(bearing).toContain('<Url>https://pictures.example/left%20end%7C%5B1%5D.jpg</Url>')
    expect(bearing).toContain('<ReferenceLink>https://wythe.example/v1/projects/0199a000-0000-7000-8000-00000000ffff/openings/bay-3</ReferenceLink>')
  })

  test('what was said about it follows in the order of its time', () => {
    const comments = [...bearing.matchAll(/<Author>(.*)<\/Author>\s*<Comment>(.*?)[.:]/g)].map(([, author, text]) => [author, text])
    expect(comments).toEqual([['inspector', 'Tape held at the toe'], ['building official', 'modification by Quarry County building department'], ['inspector', 'Signed off']])
  })

  test('has a folder for each topic, forward slashes and no viewpoint', () => {
    const paths = Object.keys(unzipSync(bcfOf(building(quarryWalk))))
    expect(paths.slice(0, 3)).toEqual(['bcf.version', 'project.bcfp', 'extensions.xml'])
    expect(paths.slice(3).filter((path) => !/^[0-9a-f-]{36}\/(markup\.bcf)?$/.test(path))).toEqual([])
    expect(paths.filter((path) => path.endsWith('/'))).toHaveLength(topics.length)
    expect(bearing).not.toContain('Viewpoint')
  })

  test('is the same, byte for byte, for the same building', () => {
    expect(Buffer.from(bcfOf(building(quarryWalk))).equals(Buffer.from(bcfOf(building(quarryWalk))))).toBe(true)
  })
})
