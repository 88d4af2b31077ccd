import { mkdtemp, readdir, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'libsql'
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest'
import { openRecords } from '../../src/store/open-records.ts'
import type { Records } from '../../src/store/records.ts'
import { openFile } from '../../src/store/sql/open-sqlite.ts'
import { keepsTheContract, later } from './contract.ts'
import { adoptInTurn, adoption, draft } from './samples.ts'
import { keepsTheJournal } from './journal-contract.ts'
import { keepsTheOutbox } from './outbox-contract.ts'
import { keepsAnswers } from './kept-answers-contract.ts'
import { isShared } from './shared.ts'

let root = ''
let places = 0
beforeAll(async () => { root = await mkdtemp(join(tmpdir(), 'wythe-sqlite-')) })
afterAll(() => rm(root, { recursive: true, force: true }))

const freshPlace = async (): Promise<{ dataDir: string }> => ({ dataDir: join(root, 'deep', String(++places)) })

describe('SQLite in a file', () => keepsTheContract(freshPlace))

describe('SQLite in memory', () => keepsTheContract(async () => ({ dataDir: ':memory:' })))

describe('the journal in SQLite', () => keepsTheJournal(freshPlace))

describe('the outbox in SQLite', () => keepsTheOutbox(freshPlace))
describe('kept answers in SQLite', () => keepsAnswers(freshPlace))

describe('SQLite among processes', () => isShared(freshPlace))

describe('the file', () => {
  let opened: Records | undefined
  afterEach(() => opened?.close())

  async function openBoth(): Promise<{ records: Records; raw: Database.Database; dataDir: string }> {
    const { dataDir } = await freshPlace()
    const records = await openRecords({ dataDir })
    opened = records
    return { records, raw: new Database(join(dataDir, 'records.sqlite')), dataDir }
  }

  test('is made in its folder, writes ahead, and syncs every commit', async () => {
    const { dataDir } = await openBoth()
    expect(await readdir(dataDir)).toContain('records.sqlite')
    const database = await openFile(join(dataDir, 'records.sqlite'))
    const settings = ['journal_mode', 'synchronous', 'foreign_keys'].map((name) => database.prepare(`pragma ${name}`).all()[0])
    expect(settings).toEqual([{ journal_mode: 'wal' }, { synchronous: 2 }, { foreign_keys: 1 }])
    database.close()
  })

  test('refuses to change what was adopted', async () => {
    const { records, raw } = await openBoth()
    await adoptInTurn(records, 'one')
    expect(() => raw.exec(`update adopted_amendments set digest = 'other'`)).toThrow('new rows only')
    expect(() => raw.exec('delete from adopted_amendments')).toThrow('new rows only')
    expect(await records.adoptionsAfter(0)).toEqual([{ sequence: 1, ...adoption('one') }])
  })

  test('that another process is writing to makes a write wait, and nothing else', async () => {
    const { records, raw } = await openBoth()
    raw.exec('begin immediate')
    let written = false
    const writing = records.createDraft(draft('mine')).then(() => { written = true })
    const before = Date.now()
    await later(50)
    expect(Date.now() - before).toBeLessThan(1_000)
    expect(written).toBe(false)
    raw.exec(`insert into tokens (id, secret_hash, title, scopes, created_at) values ('t', 'h', 'T', '[]', '2026-01-01')`)
    raw.exec('commit')
    await writing
    expect((await records.findToken('h'))?.id).toBe('t')
    raw.exec(`update tokens set title = 'later'`)
    expect((await records.findToken('h'))?.title).toBe('later')
  })

  test('is read while another process is writing to it', async () => {
    const { records, raw } = await openBoth()
    await records.createDraft(draft('d'))
    raw.exec('begin immediate')
    expect(await records.readDraft('d')).toEqual(draft('d'))
    raw.exec('rollback')
  })

  test('shows what others commit after a write of ours was refused', async () => {
    const { records, raw } = await openBoth()
    await records.createDraft(draft('d'))
    await expect(records.createDraft(draft('d'))).rejects.toThrow('UNIQUE')
    expect(await records.readDraft('d')).toEqual(draft('d'))
    raw.exec(`update drafts set version = 'later'`)
    expect((await records.readDraft('d'))?.version).toBe('later')
  })

  test('that a newer version has used is left alone', async () => {
    const { records, raw, dataDir } = await openBoth()
    await records.close()
    raw.exec(`insert into applied_migrations values ('999-later', '2030-01-01')`)
    await expect(openRecords({ dataDir })).rejects.toThrow(`${join(dataDir, 'records.sqlite')} cannot be opened: a newer version of this service has used it (999-later)`)
  })

  test('is named when it is no database, and when its folder is none', async () => {
    const file = join(root, 'records.sqlite')
    await writeFile(file, 'no database, but a text that is long enough to be taken for one. '.repeat(20))
    await expect(openRecords({ dataDir: root })).rejects.toThrow(`The records in ${file} cannot be opened: file is not a database`)
    await expect(openRecords({ dataDir: file })).rejects.toThrow(`The records in ${join(file, 'records.sqlite')} cannot be opened: EEXIST`)
  })

  test('is watched without keeping the process alive', async () => {
    const { records } = await openBoth()
    const timers = (): number => process.getActiveResourcesInfo().filter((name) => name === 'Timeout').length
    const before = timers()
    records.onAdoption(() => undefined)
    expect(timers()).toBe(before)
  })
})
