import { afterEach, describe, expect, test } from 'vitest'
import { openRecords, type RecordsPlace } from '../../src/store/open-records.ts'
import type { Claim } from '../../src/store/outbox.ts'
import type { Records } from '../../src/store/records.ts'
import { at, happening, start, webhook } from '../webhooks/outbox-clock.ts'
import { adoption, draft, entry, evaluation, project } from './samples.ts'

const received = { receivedAt: start, receivedBy: 'token-1', posting: 'posting-1' }

/** What every outbox has to keep. */
export function keepsTheOutbox(freshPlace: () => Promise<RecordsPlace>): void {
  const opened: Records[] = []
  const open = async (...webhooks: readonly string[]): Promise<Records> => {
    const records = await openRecords(await freshPlace())
    opened.push(records)
    for (const id of webhooks) await records.createWebhook(webhook(id), 9)
    return records
  }
  afterEach(async () => { await Promise.all(opened.splice(0).map((records) => records.close())) })

  const claim = (records: Records, seconds: number, passOver: readonly string[] = []) => records.claim({ now: at(seconds), leaseUntil: at(seconds + 60), passOver })
  const claimed = async (records: Records, seconds: number): Promise<Claim> => {
    const got = await claim(records, seconds)
    if (!got) throw new Error('nothing is due')
    return got
  }
  const events = async (records: Records, id: string) => (await records.listDeliveries(id, null, null, 99)).items.map(({ event }) => event).toReversed()

  describe('a webhook', () => {
    test('comes back as it went in, and there are only so many', async () => {
      const records = await open()
      const full = webhook('w', { description: 'the office', projects: ['p', 'q'] })
      expect(await records.createWebhook(full, 1)).toBe(true)
      expect(await records.createWebhook(webhook('x'), 1)).toBe(false)
      expect(await records.readWebhook('w')).toStrictEqual(full)
      expect(await records.readWebhook('x')).toBeUndefined()
      await records.createWebhook(webhook('a'), 9)
      expect((await records.listWebhooks(null, 1))).toEqual({ items: [webhook('a')], next: 'a' })
      expect((await records.listWebhooks('a', 9))).toEqual({ items: [full], next: null })
    })

    test('is deleted with what was on its way to it', async () => {
      const records = await open('w', 'x')
      await records.createProject(project('p'), [happening('e')])
      expect(await records.deleteWebhook('w')).toBe(true)
      expect(await records.deleteWebhook('w')).toBe(false)
      expect([await events(records, 'w'), await events(records, 'x')]).toEqual([[], ['e']])
      expect((await claimed(records, 1)).webhook.id).toBe('x')
      expect(await claim(records, 2)).toBeUndefined()
    })

    test('keeps its old secrets for a while, and not too many', async () => {
      const records = await open('w')
      const first = webhook('w').secrets[0]?.sealed ?? ''
      expect((await records.rotateSecret('w', { sealed: 'second' }, at(0), at(100)))?.secrets).toEqual([{ sealed: 'second', until: null }, { sealed: first, until: at(100) }])
      expect((await records.rotateSecret('w', { sealed: 'third' }, at(50), at(150)))?.secrets).toEqual([{ sealed: 'third', until: null }, { sealed: 'second', until: at(150) }, { sealed: first, until: at(100) }])
      expect((await records.rotateSecret('w', { sealed: 'fourth' }, at(100), at(200)))?.secrets.map(({ sealed }) => sealed)).toEqual(['fourth', 'third', 'second'])
      expect((await records.rotateSecret('w', { sealed: 'fifth' }, at(100), at(200)))?.secrets.map(({ sealed }) => sealed)).toEqual(['fifth', 'fourth', 'third'])
      expect(await records.rotateSecret('none', { sealed: 'x' }, at(0), at(1))).toBeUndefined()
    })

    test('keeps the public key of each pair of keys, and hands it out with a claim', async () => {
      const records = await open()
      const [first, second] = [{ sealed: 'one', publicKey: 'whpk_one' }, { sealed: 'two', publicKey: 'whpk_two' }]
      await records.createWebhook(webhook('w', { secrets: [{ ...first, until: null }] }), 9)
      const both = [{ ...second, until: null }, { ...first, until: at(100) }]
      expect((await records.rotateSecret('w', second, at(0), at(100)))?.secrets).toStrictEqual(both)
      await records.createProject(project('p'), [happening('e')])
      expect((await claimed(records, 1)).webhook.secrets).toStrictEqual(both)
    })
  })

  describe('an event', () => {
    test('goes out with what it tells of, and not with what was refused', async () => {
      const records = await open('w')
      await records.createProject(project('p'), [happening('made')])
      await records.createProject(project('p'), [happening('refused-1')])
      await records.changeProject('p', 'sha256:p', project('p', { version: 'v2' }), [happening('changed')])
      await records.changeProject('p', 'sha256:p', project('p', { version: 'v3' }), [happening('refused-2')])
      await records.keepEvaluation(evaluation('e'), [happening('kept', { project: null })])
      await expect(records.keepEvaluation(evaluation('e'), [happening('refused-3')])).rejects.toThrow()
      await records.createDraft(draft('d'))
      await records.adopt(adoption('one'), draft('d', { version: 'other' }), 0, [happening('refused-4')])
      await records.adopt(adoption('one'), draft('d'), 0, [happening('adopted', { project: null })])
      await records.adopt(adoption('one'), null, 1, [happening('refused-5')])
      expect((await events(records, 'w')).toSorted()).toEqual(['adopted', 'changed', 'kept', 'made'])
    })

    test('of a posting is told what became of each entry; one that fails takes the posting back', async () => {
      const records = await open('w')
      await records.createProject(project('p'))
      const post = (ids: readonly string[], id: string) => records.appendEntries('p', ids.map((one) => entry(one)), received, new Map(), (appended) => [happening(id, { text: () => appended.map(({ outcome }) => outcome).join() })])
      await post(['a'], 'first')
      await post(['a', 'b'], 'second')
      expect([(await claimed(records, 1)).text, (await claimed(records, 1)).text]).toEqual(['recorded', 'alreadyRecorded,recorded'])
      // The id of an event is taken
      await expect(post(['c'], 'first')).rejects.toThrow()
      expect((await records.readEntries('p', null, 0, 9)).map(({ id }) => id)).toEqual(['a', 'b'])
      await records.appendEntries('p', [entry('d')], received, new Map([['w-1', 0]]), () => { throw new Error('not asked when it has grown') })
    })

    test('goes to whoever listens for it, and is not kept for anybody else', async () => {
      const records = await open()
      const listening = [webhook('all'), webhook('type', { eventTypes: ['evaluationKept'] }), webhook('p', { projects: ['p'] }), webhook('q', { projects: ['q'] }), webhook('off', { disabledAt: start, disabledBecause: 'gone' })]
      for (const one of listening) await records.createWebhook(one, 9)
      await records.createProject(project('p'), [happening('in p')])
      await records.createProject(project('q'), [happening('in q', { project: 'q' }), happening('of none', { project: null, type: 'evaluationKept' }), happening('unheard', { type: 'amendmentAdopted' })])
      const got = Object.fromEntries(await Promise.all(listening.map(async ({ id }) => [id, (await events(records, id)).toSorted()] as const)))
      expect(got).toEqual({ all: ['in p', 'in q'], type: ['of none'], p: ['in p'], q: ['in q'], off: [] })
    })

    test('is numbered within its source without a gap, in the order in which it was committed', async () => {
      const records = await open('w')
      await records.createProject(project('p'))
      await Promise.all(Array.from({ length: 12 }, (_, index) => records.appendEntries('p', [entry(`e${index}`)], received, new Map(), () => [happening(`told-${index}`, { text: (sequence) => `${sequence} e${index}` })])))
      const order = (await records.readEntries('p', null, 0, 99)).map(({ id, sequence }) => `${sequence} ${id}`)
      const told: string[] = []
      for (let got = await claim(records, 1); got; got = await claim(records, 1)) told.push(got.text)
      expect(told.toSorted((a, b) => parseInt(a) - parseInt(b))).toEqual(order)
      await records.createProject(project('q'), [happening('other', { source: 'elsewhere' })])
      expect(JSON.parse((await claimed(records, 1)).text)).toEqual({ id: 'other', sequence: 1, words: '3½″' })
    })
  })

  describe('a delivery', () => {
    test('is held by whoever claims it, and by another when the lease has ended', async () => {
      const records = await open('w')
      await records.createProject(project('p'), [happening('e')])
      expect(await claim(records, -1)).toBeUndefined()
      const first = await claimed(records, 0)
      expect(first).toMatchObject({ delivery: { event: 'e', eventType: 'projectCreated', attempts: 1, nextAt: at(60), state: 'due' }, text: '{"id":"e","sequence":1,"words":"3½″"}', webhook: { id: 'w', target: webhook('w').target, secrets: webhook('w').secrets } })
      expect(await claim(records, 59)).toBeUndefined()
      const second = await claimed(records, 60)
      expect(second.delivery).toMatchObject({ id: first.delivery.id, attempts: 2 })
      // The first is late
      expect(await records.settle(first.delivery, { kind: 'delivered', at: at(61), status: 200 })).toEqual({ counted: false, disabled: false })
      expect(await records.settle(second.delivery, { kind: 'delivered', at: at(62), status: 204 })).toEqual({ counted: true, disabled: false })
      expect((await records.listDeliveries('w', null, null, 9)).items).toEqual([{ ...first.delivery, state: 'delivered', attempts: 2, nextAt: null, status: 204, fault: null, deliveredAt: at(62) }])
      expect(await records.readWebhook('w')).toMatchObject({ lastDeliveredAt: at(62) })
      expect(await claim(records, 9_999)).toBeUndefined()
    })

    test('goes to one of several that claim at once', async () => {
      const records = await open('w')
      await records.createProject(project('p'), Array.from({ length: 10 }, (_, index) => happening(`e${index}`)))
      const all = await Promise.all(Array.from({ length: 20 }, () => claim(records, 1)))
      const rest: (Claim | undefined)[] = []
      for (let got = await claim(records, 1); got; got = await claim(records, 1)) rest.push(got)
      const ids = [...all, ...rest].flatMap((got) => (got ? [got.delivery.event] : []))
      expect(ids.toSorted()).toEqual(Array.from({ length: 10 }, (_, index) => `e${index}`))
    })

    test('waits for its next time, and for a webhook that has enough under way', async () => {
      const records = await open('w', 'x')
      await records.createProject(project('p'), [happening('e')])
      expect((await claim(records, 1, ['w']))?.webhook.id).toBe('x')
      expect(await claim(records, 1, ['w', 'x'])).toBeUndefined()
      const { delivery } = await claimed(records, 1)
      await records.settle(delivery, { kind: 'again', nextAt: at(300), status: 503, fault: 'busy' })
      expect((await records.listDeliveries('w', 'due', null, 9)).items).toMatchObject([{ attempts: 1, nextAt: at(300), status: 503, fault: 'busy' }])
      expect(await claim(records, 59)).toBeUndefined()
      expect((await claim(records, 300, ['x']))?.delivery).toMatchObject({ webhook: 'w', attempts: 2 })
    })

    test('that was broken off does not count as an attempt', async () => {
      const records = await open('w')
      await records.createProject(project('p'), [happening('e')])
      await records.settle((await claimed(records, 1)).delivery, { kind: 'released', nextAt: at(2) })
      expect((await claimed(records, 2)).delivery).toMatchObject({ attempts: 1 })
    })

    test('to a receiver that is gone disables its webhook; the rest is held until it is enabled', async () => {
      const records = await open('w', 'x')
      await records.createProject(project('p'), [happening('one'), happening('two')])
      for (const webhookId of ['x', 'x']) {
        const got = await claim(records, 1, ['w'])
        expect(got?.webhook.id).toBe(webhookId)
        if (got) await records.settle(got.delivery, { kind: 'delivered', at: at(1), status: 200 })
      }
      expect(await records.settle((await claimed(records, 1)).delivery, { kind: 'gone', at: at(2), status: 410, fault: 'gone' })).toEqual({ counted: true, disabled: true })
      expect(await records.readWebhook('w')).toMatchObject({ disabledAt: at(2), disabledBecause: 'gone' })
      await records.createProject(project('q'), [happening('three')])
      expect(await events(records, 'w')).toEqual(expect.not.arrayContaining(['three']))
      expect((await claimed(records, 3)).webhook.id).toBe('x')
      expect(await claim(records, 9_999, ['x'])).toBeUndefined()
      expect(await records.enableWebhook('w', at(10_000))).toMatchObject({ disabledAt: null, disabledBecause: null, enabledAt: at(10_000) })
      expect((await claim(records, 10_000, ['x']))?.webhook.id).toBe('w')
      expect(await records.enableWebhook('none', at(0))).toBeUndefined()
    })

    test('that is given up disables a webhook that nothing has reached since, and no other', async () => {
      const giveUp = async (records: Records, seconds: number) => records.settle((await claimed(records, seconds)).delivery, { kind: 'givenUp', at: at(seconds), status: null, fault: 'no answer' })
      const silent = await open('w')
      await silent.createProject(project('p'), [happening('e')])
      expect(await giveUp(silent, 5)).toEqual({ counted: true, disabled: true })
      expect(await silent.readWebhook('w')).toMatchObject({ disabledBecause: 'unreachable' })
      expect((await silent.listDeliveries('w', 'givenUp', null, 9)).items).toMatchObject([{ state: 'givenUp', nextAt: null, fault: 'no answer' }])
      const reached = await open('w')
      await reached.createProject(project('p'), [happening('e'), happening('f')])
      await reached.settle((await claimed(reached, 4)).delivery, { kind: 'delivered', at: at(4), status: 200 })
      expect(await giveUp(reached, 5)).toEqual({ counted: true, disabled: false })
      const renewed = await open()
      await renewed.createWebhook(webhook('w', { enabledAt: at(3) }), 9)
      await renewed.createProject(project('p'), [happening('e')])
      expect(await giveUp(renewed, 5)).toEqual({ counted: true, disabled: false })
    })

    test('can be sent to one webhook alone, and its event again', async () => {
      const records = await open('w', 'x')
      const ping = await records.sendTo('w', happening('ping', { type: 'ping', source: 'w' }))
      expect(ping).toMatchObject({ webhook: 'w', event: 'ping', eventType: 'ping', state: 'due', attempts: 0 })
      const first = await claimed(records, 1)
      await records.settle(first.delivery, { kind: 'delivered', at: at(1), status: 200 })
      expect(await records.replay('w', ping.id, { id: 'again', at: at(5) })).toMatchObject({ id: 'again', event: 'ping', state: 'due', createdAt: at(5), attempts: 0 })
      const second = await claimed(records, 5)
      expect([second.text, second.delivery.event]).toEqual([first.text, 'ping'])
      expect(await records.replay('x', ping.id, { id: 'no', at: at(5) })).toBeUndefined()
    })

    test('is listed newest first, a page at a time', async () => {
      const records = await open('w')
      for (const [index, seconds] of [0, 5, 5, 9].entries()) await records.sendTo('w', happening(`e${index}`, { at: at(seconds) }))
      const first = await records.listDeliveries('w', null, null, 2)
      expect(first.items.map(({ event }) => event)).toEqual(['e3', 'e2'])
      const rest = await records.listDeliveries('w', null, first.next, 2)
      expect(rest.items.map(({ event }) => event)).toEqual(['e1', 'e0'])
      expect(rest.next).toBeNull()
    })

    test('is forgotten in time, but not while it is due', async () => {
      const records = await open('w', 'off')
      for (const id of ['done', 'due']) await records.sendTo('w', happening(id))
      await records.sendTo('off', happening('held'))
      await records.settle((await claimed(records, 1)).delivery, { kind: 'delivered', at: at(1), status: 200 })
      const held = await claim(records, 2, ['w'])
      if (held) await records.settle(held.delivery, { kind: 'again', nextAt: at(3), status: null, fault: 'x' })
      await records.sendTo('off', happening('gone'))
      const gone = await claim(records, 2, ['w'])
      if (gone) await records.settle(gone.delivery, { kind: 'gone', at: at(2), status: 410, fault: 'gone' })
      expect(await records.forgetDeliveries(at(0))).toBe(0)
      expect(await records.forgetDeliveries(at(1))).toBe(3)
      expect([await events(records, 'w'), await events(records, 'off')]).toEqual([['due'], []])
      expect((await claimed(records, 2)).delivery.event).toBe('due')
    })
  })
}
