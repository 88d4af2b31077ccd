/**
 * A process that, once it is told to, posts to the journal of one project as fast as it can, three entries at a time, and prints
 * each posting when the store has acknowledged it.
 * Arguments: the place as JSON, a name that no other recorder has, and postings to send again first, by name and number.
 */
import { once } from 'node:events'
import { openRecords, type RecordsPlace } from '../../../src/store/open-records.ts'
import { entry, project } from '../samples.ts'

const [place = '', name = '', ...again] = process.argv.slice(2)
const records = await openRecords(JSON.parse(place) as RecordsPlace)
await records.createProject(project('p'))
process.stdout.write('open\n')
await once(process.stdin, 'data')
process.stdin.destroy()
for (const posting of again) await post(posting)
for (let round = 1; ; round += 1) await post(`${name}-${round}`)

/** Pipes are written at once: what was said has left this process before the next posting begins. */
async function post(posting: string): Promise<void> {
  const entries = ['a', 'b', 'c'].map((part, index) => entry(`${posting}-${part}`, { opening: `w-${index}` }))
  const answer = await records.appendEntries('p', entries, { receivedAt: '2026-03-02T09:00:00.000Z', receivedBy: name, posting: `${posting} by ${name}` }, new Map())
  if (!answer.ok) throw new Error(answer.reason)
  const placed = answer.appended.map((one) => (one.outcome === 'idTaken' ? 'taken' : `${one.entry.id}=${one.entry.sequence}`))
  process.stdout.write(`posted ${posting} ${placed.join(' ')}\n`)
}
