import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync, existsSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { backUp } from '../../src/store/back-up.ts'
import { linkLines } from '../../src/store/backup-lines.ts'
import { brokenLink, chainStart, linkOf } from '../../src/store/journal.ts'
import { openRecords, type RecordsPlace } from '../../src/store/open-records.ts'
import type { Records } from '../../src/store/records.ts'
import { restore } from '../../src/store/restore.ts'
import { migrationNames } from '../../src/store/sql/migrate.ts'
import { openFile, overFile } from '../../src/store/sql/open-sqlite.ts'
import { tables } from '../../src/store/sql/schema.ts'
import { runCompiled } from '../cli/run-compiled.ts'
import { startChild } from './child.ts'
import { journalOf } from './crash/journal-account.ts'
import { startPostgres, type PostgresServer } from './postgres-server.ts'
import { adoptInTurn, draft, entry, evaluation, project, token } from './samples.ts'

let server: PostgresServer
let count = 0
const folder = mkdtempSync(join(tmpdir(), 'wythe-backup-'))
const fresh = (): string => join(folder, String(++count))
beforeAll(async () => { server = await startPostgres() }, 60_000)
afterAll(async () => {
  await server.end()
  rmSync(folder, { recursive: true, force: true })
})

const kinds: Readonly<Record<string, () => Promise<RecordsPlace>>> = {
  SQLite: async () => ({ dataDir: fresh() }),
  PostgreSQL: async () => ({ databaseUrl: await server.freshDatabase(), dataDir: fresh() }),
}
const kind = (name: string): Promise<RecordsPlace> => kinds[name]?.() ?? Promise.reject(new Error(name))
const takenAt = '2026-03-04T08:00:00.000Z'
const odd = 'one line\u2028two\u2029three\r\nfour "‑" \\ 3⅞″'

describe.each(Object.keys(kinds))('a backup of %s', (from) => {
  test('that was taken while somebody posted is whole at one moment, and comes back in either kind of store', async () => {
    const place = await kind(from)
    await using(place, remember)
    const recorder = startChild('crash/recorder.ts', JSON.stringify(place), 'r')
    await recorder.line((line) => line === 'open')
    recorder.process.stdin?.write('begin\n')
    await recorder.line((line) => line.startsWith('posted r-10 '))
    const file = fresh()
    const rows = await backUp(place, file, takenAt)
    const told = recorder.lines.filter((line) => line.startsWith('posted ')).length
    await recorder.line((line) => line.startsWith(`posted r-${told + 20} `))
    await recorder.kill()
    const all = await using(place, journalOf)
    expect(rows).toMatchObject({ projects: 2, drafts: 1, adoptedAmendments: 2, keptEvaluations: 1, tokens: 2 })
    expect(rows['entries']).toBeGreaterThanOrEqual(30 + 1)
    expect(rows['entries']).toBeLessThan(all.length)
    expect(statSync(file).mode & 0o777).toBe(0o600)

    for (const to of Object.keys(kinds)) {
      const empty = await kind(to)
      expect(await restore(empty, file)).toEqual({ takenAt, rows, broken: [] })
      await using(empty, async (records) => {
        const journal = await journalOf(records)
        expect(journal).toEqual(all.slice(0, (rows['entries'] ?? 0) - 1))
        expect(brokenLink(journal, chainStart)).toBeUndefined()
        expect(await remembered(records)).toEqual(await using(place, remembered))
        const next = await records.appendEntries('p', [entry('next')], { receivedAt: '2026-03-05T08:00:00.000Z', receivedBy: 't', posting: 'x' }, new Map())
        expect(next).toMatchObject({ ok: true, appended: [{ outcome: 'recorded', entry: { sequence: journal.length + 1 } }] })
        await adoptInTurn(records, 'third')
      })
      const again = fresh()
      expect(await backUp(empty, again, takenAt)).toMatchObject({ adoptedAmendments: 3 })
    }
  }, 60_000)

  test('is not restored over anything', async () => {
    const [place, full, file] = [await kind(from), await kind(from), fresh()]
    await using(place, remember)
    await backUp(place, file, takenAt)
    await using(full, (records) => records.createToken(token('mine')))
    await expect(restore(full, file)).rejects.toThrow(/not empty: there is something in "tokens"/)
    await expect(restore(place, file)).rejects.toThrow(/not empty/)
    expect(await using(full, (records) => records.listTokens())).toHaveLength(1)
  })

  test('does not write over a file', async () => {
    const [place, file] = [await kind(from), fresh()]
    await using(place, remember)
    writeFileSync(file, 'mine')
    await expect(backUp(place, file, takenAt)).rejects.toThrow(/EEXIST/)
    expect(readFileSync(file, 'utf8')).toBe('mine')
  })

  test('from before the last migrations is restored, and then brought up to date', async () => {
    const empty = await kind(from)
    const sent = entry('old')
    const { judged, ...body } = { ...sent, body: JSON.stringify(sent.body), project: 'p', sequence: 1, chain: linkOf(chainStart, sent), receivedAt: takenAt, receivedBy: 't', posting: 'x' }
    expect(judged).toBeNull()
    const file = written({ migrations: migrationNames.slice(0, 3) }, [
      { table: 'projects', row: { ...project('p'), lastSequence: 1, lastChain: body.chain } },
      { table: 'entries', row: body },
    ])
    expect(await restore(empty, file)).toMatchObject({ rows: { projects: 1, entries: 1 }, broken: [] })
    expect(await using(empty, journalOf)).toMatchObject([{ id: 'old', judged: null }])
    const [started, older] = [await kind(from), written({ migrations: migrationNames.slice(0, 3) }, [])]
    await using(started, async () => undefined)
    await expect(restore(started, older)).rejects.toThrow(/newer than the backup \(004-judged.*\); restore it into a place that no service has used/)
  })

  test('in which a journal does not hold comes back as it was, and that is told', async () => {
    const empty = await kind(from)
    const row = { ...entry('a'), body: '{"altered":true}', project: 'p', sequence: 1, chain: linkOf(chainStart, entry('a')), receivedAt: takenAt, receivedBy: 't', posting: 'x' } as Readonly<Record<string, unknown>>
    const file = written({}, [{ table: 'projects', row: { ...project('p'), lastSequence: 1, lastChain: String(row['chain']) } }, { table: 'projects', row: { ...project('q'), lastSequence: 4, lastChain: 'sha256:gone' } }, { table: 'entries', row }])
    expect((await restore(empty, file)).broken).toEqual([{ project: 'p', sequence: 1 }, { project: 'q', sequence: 1 }])
    expect(await using(empty, journalOf)).toHaveLength(1)
  })

  test('that the database refuses leaves nothing behind, and its lines are named', async () => {
    const empty = await kind(from)
    const rows = ['a', 'b', 'a'].map((id) => ({ table: 'projects', row: { ...project(id), lastSequence: 0, lastChain: chainStart } }))
    await expect(restore(empty, written({}, rows))).rejects.toThrow(/lines 2 to 4 of the backup are refused: /)
    expect((await using(empty, (records) => records.listProjects(null, null, 10))).items).toEqual([])
  })
})

describe('a damaged backup is refused with the line, and nothing is made', async () => {
  const place: RecordsPlace = { dataDir: fresh() }
  await using(place, remember)
  const file = fresh()
  await backUp(place, file, takenAt)
  const lines = readFileSync(file, 'utf8').trimEnd().split('\n')

  test.each<[string, (lines: readonly string[]) => readonly string[], RegExp]>([
    ['a letter that is another', (all) => all.with(4, (all[4] ?? '').replace('us-xa', 'us-xb')), /^line 5: this line, or a line before it that is gone/],
    ['a line that is gone', (all) => all.toSpliced(3, 1), /^line 4: /],
    ['a line that is there twice', (all) => all.toSpliced(3, 0, all[3] ?? ''), /^line 5: /],
    ['lines that changed places', (all) => all.with(3, all[4] ?? '').with(4, all[3] ?? ''), /^line 4: /],
    ['an end that is gone', (all) => all.slice(0, -1), /^line 10: the backup ends here without its last line/],
    ['half a line', (all) => [...all.slice(0, -2), (all.at(-2) ?? '').slice(0, 90)], /^line 10: /],
    ['something after the end', (all) => [...all, all.at(-1) ?? ''], /^line 12: there is more/],
    ['another file', () => ['{"drafts":[]}'], /^line 1: this is not the beginning of a backup/],
    ['an empty file', () => [''], /^line \d: /],
  ])('%s', async (_, damage, told) => {
    const damaged = fresh()
    writeFileSync(damaged, `${damage(lines).join('\n')}\n`)
    const target = fresh()
    await expect(restore({ dataDir: target }, damaged)).rejects.toThrow(told)
    expect(existsSync(target)).toBe(false)
  })

  test('the one it was made from is not', async () => {
    expect(lines).toHaveLength(11)
    const whole = fresh()
    writeFileSync(whole, `${lines.join('\n')}\n`)
    await expect(restore({ dataDir: fresh() }, whole)).resolves.toMatchObject({ broken: [] })
  })

  test('nor is one of a newer version taken for its own, or a row of a table that there is not', async () => {
    await expect(restore({ dataDir: fresh() }, written({ migrations: [...migrationNames, '999-later'] }, []))).rejects.toThrow(/newer version of this service \(999-later\)/)
    await expect(restore({ dataDir: fresh() }, written({}, [{ table: 'appliedMigrations', row: { name: 'x', appliedAt: takenAt } }]))).rejects.toThrow('line 2: there is no table "appliedMigrations"')
    await expect(restore({ dataDir: fresh() }, written({ format: 2 }, []))).rejects.toThrow(/^line 1: a line of another kind of backup: format /)
  })
})

test('every table is in a backup, or it is said why it is not', async () => {
  const place = fresh()
  await using({ dataDir: place }, async () => undefined)
  const db = overFile(await openFile(join(place, 'records.sqlite')))
  const there = (await db.introspection.getTables()).map(({ name }) => name.replaceAll(/_(\w)/g, (_, letter: string) => letter.toUpperCase()))
  await db.destroy()
  expect(Object.keys(tables).toSorted()).toEqual(there.toSorted())
})

describe('on the command line', () => {
  test('a backup is made and restored', async () => {
    const [from, to, file] = [fresh(), fresh(), fresh()]
    await using({ dataDir: from }, remember)
    const made = await runCompiled('cli/wythe.js', ['backup', file], { DATA_DIR: from })
    expect(made).toMatchObject({ code: 0, stderr: '' })
    expect(made.stdout).toContain('       2 projects\n       1 entries\n       1 drafts\n       2 adopted amendments\n       1 kept evaluations\n       2 tokens\n')
    const restored = await runCompiled('cli/wythe.js', ['restore', file], { DATA_DIR: to })
    expect(restored).toMatchObject({ code: 0, stderr: '' })
    expect(restored.stdout).toContain('The chain of every journal holds.')
    expect(await runCompiled('cli/wythe.js', ['restore', file], { DATA_DIR: to })).toMatchObject({ code: 1, stdout: expect.stringContaining('not empty') as string })
  })

  test.each([
    ['where there are no records', 'backup', () => ({ DATA_DIR: join(folder, 'none') }), /There are no records at .*none/],
    ['of what is only in memory', 'backup', () => ({ DATA_DIR: ':memory:' }), /only in memory/],
    ['from a file that is not there', 'restore', () => ({ DATA_DIR: fresh() }), /no such file/],
  ])('it is told %s', async (_, command, environment, told) => {
    const { code, stdout } = await runCompiled('cli/wythe.js', [command, join(folder, 'no-file')], environment())
    expect(code).toBe(1)
    expect(stdout).toMatch(told)
    expect(existsSync(join(folder, 'none'))).toBe(false)
  })

  test('a PostgreSQL database that no service has used, and one that another version has used, are not backed up', async () => {
    const databaseUrl = await server.freshDatabase()
    await expect(backUp({ databaseUrl, dataDir: '' }, fresh(), takenAt)).rejects.toThrow(/^The records at postgres:\/\/127[^@]*: there is nothing of this service$/)
    const dataDir = fresh()
    await using({ dataDir }, async () => undefined)
    const db = overFile(await openFile(join(dataDir, 'records.sqlite')))
    await db.deleteFrom('appliedMigrations').where('name', '=', '004-judged').execute()
    await db.destroy()
    await expect(backUp({ dataDir }, fresh(), takenAt)).rejects.toThrow(/another version/)
  })
})

/** One or two of everything, with texts that are hard to carry. */
async function remember(records: Records): Promise<void> {
  await records.createProject(project('p', { title: odd, jurisdiction: null }))
  await records.createProject(project('q'))
  await records.appendEntries('q', [entry('e', { body: { says: `${odd}\u0000` }, judged: { at: 'once' } })], { receivedAt: takenAt, receivedBy: 't', posting: 'x' }, new Map())
  await records.createDraft(draft('d', { document: { says: odd } }))
  await records.keepEvaluation(evaluation('k'))
  await records.createToken(token('t'))
  await records.createToken(token('u', { expiresAt: takenAt, revokedAt: takenAt }))
  await adoptInTurn(records, 'first')
  await adoptInTurn(records, 'second')
}

async function remembered(records: Records): Promise<readonly unknown[]> {
  return [
    await records.readEntries('q', null, 0, 10), (await records.listProjects(['q'], null, 10)).items, (await records.readProject('p'))?.title, (await records.listDrafts(null, null, 10)).items,
    await records.readEvaluation('k'), await records.listTokens(), (await records.adoptionsAfter(0)).slice(0, 2),
  ]
}

/** A backup that was put together by hand. */
function written(head: object, rows: readonly object[]): string {
  const [file, link] = [fresh(), linkLines()]
  const all = [{ backup: 'wythe', format: 1, takenAt, migrations: migrationNames, ...head }, ...rows, { rows: rows.length }]
  writeFileSync(file, all.map(link).join(''))
  return file
}

async function using<T>(place: RecordsPlace, work: (records: Records) => Promise<T>): Promise<T> {
  const records = await openRecords(place)
  try {
    return await work(records)
  } finally {
    await records.close()
  }
}
