import { expect, test } from 'vitest'
import { openRecords, type RecordsPlace } from '../../src/store/open-records.ts'
import type { Records } from '../../src/store/records.ts'
import { startReceiver } from '../webhooks/receiver.ts'
import { startChild, type Child } from './child.ts'
import { countCalls, later, until } from './contract.ts'
import { journalLosses, journalOf } from './crash/journal-account.ts'
import { delivererTo, eventLosses } from './crash/delivery-account.ts'
import { losses, remembered } from './crash/remembered.ts'
import { webhook } from '../webhooks/outbox-clock.ts'
import { adoptInTurn, project } from './samples.ts'

/** How often a writer is killed; `CRASHES=200` for the long form. */
const crashes = Number(process.env['CRASHES'] ?? 5)

/** What every store has to keep when several processes use it, and when one of them is killed. */
export function isShared(freshPlace: () => Promise<RecordsPlace>): void {
  test('several processes may start at once on an empty store', async () => {
    const place = await freshPlace()
    const opened = await Promise.all(Array.from({ length: 6 }, () => openRecords(place)))
    await Promise.all(opened.map((records, index) => adoptInTurn(records, `n${index}`)))
    expect((await opened[0]?.adoptionsAfter(0))?.map(({ sequence }) => sequence)).toEqual([1, 2, 3, 4, 5, 6])
    await Promise.all(opened.map((records) => records.close()))
  })

  test('an adoption is noticed by another process within a second', async () => {
    const place = await freshPlace()
    await using(place, async (records) => {
      const calls = countCalls(records)
      const writer = await startWriter(place, 'other', 1)
      await later(300)
      expect(calls.count).toBe(0)
      begin(writer)
      await writer.line((line) => line.startsWith('adoption 1 '))
      await until(() => calls.count > 0, 1_000)
      await writer.succeeded()
      expect(await records.adoptionsAfter(0)).toHaveLength(1)
    })
  })

  test('an adoption by another process from before one listens is noticed too', async () => {
    const place = await freshPlace()
    await using(place, (first) => using(place, async (second) => {
      await adoptInTurn(first, 'early')
      const calls = countCalls(second)
      await until(() => calls.count > 0, 1_000)
    }))
  })

  test('two processes that adopt at once leave no gap', async () => {
    const place = await freshPlace()
    const writers = await Promise.all(['one', 'two'].map((name) => startWriter(place, name, 60)))
    writers.forEach(begin)
    await Promise.all(writers.map((writer) => writer.succeeded()))
    await using(place, async (records) => {
      const found = await remembered(records)
      expect(found.adoptions).toHaveLength(120)
      expect(turns(found.adoptions)).toBeGreaterThan(1)
      expect(losses(writers.flatMap(({ lines }) => lines), found, 0)).toEqual([])
    })
  }, 30_000)

  test(`what was acknowledged outlives kill -9, ${crashes} times`, async () => {
    const place = await freshPlace()
    const said: string[] = []
    for (let round = 0; round < crashes; round += 1) {
      const writer = await startWriter(place, `w${round}`)
      begin(writer)
      await writer.line((line) => line.startsWith('adoption '))
      await later(Math.random() * 150)
      await writer.kill()
      said.push(...writer.lines)
    }
    await using(place, async (records) => {
      expect(said.length).toBeGreaterThan(crashes * 5)
      expect(losses(said, await remembered(records), crashes)).toEqual([])
    })
  }, 20_000 + crashes * 5_000)

  test(`a journal to which two post at once outlives kill -9 of both, ${crashes} times, and what was in the air is sent again`, async () => {
    const place = await freshPlace()
    const said: string[] = []
    let inTheAir: readonly string[] = []
    for (let round = 0; round < crashes; round += 1) {
      const names = [`w${round}x`, `w${round}y`]
      const recorders = await Promise.all(names.map((name) => started('crash/recorder.ts', place, name, ...inTheAir)))
      recorders.forEach(begin)
      await Promise.all(recorders.map((recorder, index) => recorder.line((line) => line.startsWith(`posted ${names[index]}-3 `))))
      await later(Math.random() * 150)
      await Promise.all(recorders.map((recorder) => recorder.kill()))
      said.push(...recorders.flatMap(({ lines }) => lines))
      inTheAir = recorders.map(({ lines }, index) => `${names[index]}-${lines.filter((line) => line.startsWith(`posted ${names[index]}-`)).length + 1}`)
    }
    await using(place, async (records) => {
      const found = await journalOf(records)
      process.stdout.write(`${crashes * 2} recorders killed: ${said.filter((line) => line.startsWith('posted ')).length} postings acknowledged, ${found.length} entries on record\n`)
      expect(found.length).toBeGreaterThanOrEqual(crashes * 2 * 3 * 3)
      expect(journalLosses(said, found, crashes * 2)).toEqual([])
    })
  }, 20_000 + crashes * 8_000)

  test(`events that two deliver outlive kill -9 of both, ${crashes} times: each arrives at least once, and none that did not happen`, async () => {
    const [place, receiver] = [await freshPlace(), await startReceiver()]
    await using(place, async (records) => {
      await records.createProject(project('p'))
      await records.createWebhook(webhook('w', { target: receiver.address, eventTypes: ['openingRecorded'], enabledAt: new Date().toISOString() }), 1)
    })
    const said: string[] = []
    for (let round = 0; round < crashes; round += 1) {
      const tellers = await Promise.all(['x', 'y'].map((name) => started('crash/deliverer.ts', place, `w${round}${name}`)))
      const before = receiver.arrived.length
      tellers.forEach(begin)
      await Promise.all(tellers.map((teller) => teller.line((line) => line.startsWith('told '))))
      await until(() => receiver.arrived.length > before + 3, 20_000)
      await later(Math.random() * 100)
      await Promise.all(tellers.map((teller) => teller.kill()))
      said.push(...tellers.flatMap(({ lines }) => lines))
    }
    await using(place, async (records) => {
      const { deliverDue } = delivererTo(records)
      const due = async () => (await records.listDeliveries('w', 'due', null, 1)).items.length
      for (const end = Date.now() + 20_000; (await due()) > 0 && Date.now() < end;) {
        await deliverDue()
        await later(50)
      }
      const twice = receiver.arrived.length - new Set(receiver.arrived.map(({ headers }) => headers['webhook-id'])).size
      process.stdout.write(`${crashes * 2} deliverers killed: ${said.filter((line) => line.startsWith('told ')).length} events acknowledged, ${receiver.arrived.length} arrivals, ${twice} of them again\n`)
      expect(said.length).toBeGreaterThan(crashes * 2)
      expect(eventLosses(said, receiver.arrived, await journalOf(records))).toEqual([])
    })
    await receiver.close()
  }, 60_000 + crashes * 10_000)
}

function startWriter(place: RecordsPlace, name: string, rounds?: number): Promise<Child> {
  return started('crash/writer.ts', place, name, ...(rounds === undefined ? [] : [String(rounds)]))
}

async function started(file: string, place: RecordsPlace, ...given: readonly string[]): Promise<Child> {
  const writer = startChild(file, JSON.stringify(place), ...given)
  await writer.line((line) => line === 'open')
  return writer
}

function begin(writer: Child): void {
  writer.process.stdin?.write('begin\n')
}

/** How often the one process adopted after the other. */
function turns(adoptions: readonly string[]): number {
  const writers = adoptions.map((one) => /us-xa\/(\w+)/.exec(one)?.[1])
  return writers.filter((writer, index) => index > 0 && writer !== writers[index - 1]).length
}

async function using(place: RecordsPlace, work: (records: Records) => Promise<void>): Promise<void> {
  const records = await openRecords(place)
  try {
    await work(records)
  } finally {
    await records.close()
  }
}
