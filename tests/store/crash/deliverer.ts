/**
 * A process that, once it is told to, posts entries with an event each as fast as it can, prints each event when the store has
 * acknowledged it, and delivers what is due all the while, beside others that do the same.
 * Arguments: the place as JSON, a name that no other has.
 */
import { once } from 'node:events'
import { openRecords, type RecordsPlace } from '../../../src/store/open-records.ts'
import { entry } from '../samples.ts'
import { delivererTo } from './delivery-account.ts'

const [place = '', name = ''] = process.argv.slice(2)
const records = await openRecords(JSON.parse(place) as RecordsPlace)
process.stdout.write('open\n')
await once(process.stdin, 'data')
process.stdin.destroy()
delivererTo(records).start()
for (let round = 1; ; round += 1) {
  const id = `${name}-${round}`
  const at = new Date().toISOString()
  const event = { id: `told-${id}`, type: 'openingRecorded', project: 'p', source: 'p', at, text: (sequence: number) => JSON.stringify({ id: `told-${id}`, entry: id, sequence }) }
  const answer = await records.appendEntries('p', [entry(id)], { receivedAt: at, receivedBy: name, posting: id }, new Map(), () => [event])
  if (!answer.ok) throw new Error(answer.reason)
  process.stdout.write(`told ${event.id}\n`)
}
