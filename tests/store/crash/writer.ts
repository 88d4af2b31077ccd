/**
 * A process that, once it is told to, writes to the records at a place as fast as it can, and prints each record when the store
 * has acknowledged it.
 * Arguments: the place as JSON, a name that no other writer has, and how many rounds (none: until it is killed).
 */
import { once } from 'node:events'
import { openRecords, type RecordsPlace } from '../../../src/store/open-records.ts'
import { adoptInTurn, draft, evaluation } from '../samples.ts'

const [place = '', name = '', rounds = 'Infinity'] = process.argv.slice(2)
const records = await openRecords(JSON.parse(place) as RecordsPlace)
say('open')
await once(process.stdin, 'data')
process.stdin.destroy()
let seen = 0
for (let round = 1; round <= Number(rounds); round += 1) {
  const id = `${name}-${String(round).padStart(6, '0')}`
  await records.createDraft(draft(`${id}-stays`))
  say(`draft ${id}-stays`)
  await records.createDraft(draft(`${id}-goes`))
  say(`draft ${id}-goes`)
  await records.keepEvaluation(evaluation(id))
  say(`evaluation ${id}`)
  const adopted = await adoptInTurn(records, id, `${id}-goes`, seen)
  seen = adopted.sequence
  say(`adoption ${seen} ${adopted.amendment.amendment}`)
}
await records.close()

/** Pipes are written at once: what was said has left this process before the next write begins. */
function say(line: string): void {
  process.stdout.write(`${line}\n`)
}
